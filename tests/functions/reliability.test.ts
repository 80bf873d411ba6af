import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import {
  agreement,
  detectableChange,
  intraclass,
  reliability,
  sessionPairs,
  trialNoise,
  typicalError,
  typicalErrorPercent,
  typicalErrorWithGaps,
  withinVariation,
  worthwhileChange,
} from "../../src/functions/reliability";
import { column, expected, expectRelative, rows } from "../reference/reference";
import { reliabilitySets } from "../reference/reliabilitySets";
import { across, byLabel, down, expectError, failing } from "./cells";

/** The sets as a range; those of Student hold true zeros. */
const sets = reliabilitySets.map(({ name, results, reference }) => ({
  name,
  range: results.map((row) => [...row]),
  reference,
  zeros: name.startsWith("sleep_student") ? "value" : "missing",
}));
const named = (start: string) => sets.find(({ name }) => name.startsWith(start))!;
const reaction = named("sleepstudy");

// biome-ignore lint/suspicious/noExplicitAny: cells hold anything
function expectLimits(cells: any[], { value, ci_low, ci_high }: Record<string, number>, tolerance = 1e-7): void {
  expectRelative(cells[0], value!, tolerance);
  expectRelative(cells[1], ci_low!, tolerance);
  expectRelative(cells[2], ci_high!, tolerance);
}

describe("RELIABILITY", () => {
  // Source: R 4.2.2 analysis of variance, qchisq, t.test(paired = TRUE), psych::ICC; minimal detectable change by scipy 1.17.1
  // stats.t.ppf(.975, 17) x sqrt(2) = 2.98372980427790 typical errors of two sessions.
  it("agrees with R line by line", () => {
    const lines = byLabel(reliability(reaction.range));
    const { reference } = reaction;
    expect(lines).toMatchObject({ Athletes: [18, "", ""], Sessions: [3, "", ""], "Athletes left out": [0, "", ""] });
    expectLimits(lines["Typical error"]!, reference.TE_two_way);
    expectLimits(lines["ICC(3,1)"]!, reference.icc["ICC(3,1)"]);
    expectLimits(lines["Typical error in percent"]!, reference.CV_log_two_way);
    const { mean, ci_low, ci_high } = reference.consecutive[0].mean_change;
    expectLimits(lines["Mean change, session 1 to 2"]!, { value: mean, ci_low, ci_high });
    expectRelative(lines["Smallest worthwhile change"]![0], reference["SWC_0.2"].true_score, 1e-9);
    const two = byLabel(reliability(rows("sleepstudy_day0_2", ["day0", "day1"])));
    expectRelative(two["Minimal detectable change"]![0], 2.9837298042779037 * two["Typical error"]![0], 1e-9);
  });

  it("leaves out athletes with a gap from every line, and says how many", () => {
    const withGap = byLabel(reliability([...reaction.range, [null, 300, 310], [290, "DNS", 280]]));
    expect(withGap).toEqual({ ...byLabel(reliability(reaction.range)), "Athletes left out": [2, "", ""] });
  });

  it("keeps the lines it can answer", () => {
    const lines = byLabel(reliability(rows("sleep_student", ["drug1", "drug2"]), 0.95, "value"));
    expect(lines["Typical error"]![0]).toBeGreaterThan(0);
    expect(lines["Typical error in percent"]![0]).toEqual(failing("#N/A", /above zero/));
  });

  it("says why it cannot answer", () => {
    expectError(
      () =>
        reliability([
          [1, 2],
          [2, null],
          [3, 4],
        ]),
      "#N/A",
      /At least 3 athletes with every result.*are 2/,
    );
    expectError(() => reliability(down([1, 2, 3])), "#N/A", /At least 2 sessions/);
    expectError(
      () =>
        reliability([
          [1, 2],
          [2, "x2"],
          [3, 4],
        ]),
      "#VALUE!",
      /x2/,
    );
    expectError(() => reliability(reaction.range, 95), "#VALUE!", /95 is not/);
  });
});

describe("TYPICALERROR", () => {
  // Source: R 4.2.2 analysis of variance and qchisq.
  it.each(sets)("with session shift removed and kept: $name", ({ range, reference, zeros }) => {
    expectLimits(typicalError(range, undefined, undefined, zeros)[0]!, reference.TE_two_way);
    expectLimits(typicalError(range, "kept", 0.95, zeros)[0]!, reference.SEM_one_way);
  });

  it("takes a 0 for missing where nothing is said", () => {
    const range = [
      [0, 3],
      [1, 2],
      [4, 4],
      [6, 5],
    ];
    expect(typicalError(range)).toEqual(typicalError(range.slice(1)));
    expect(typicalError(range, undefined, undefined, "value")).not.toEqual(typicalError(range.slice(1)));
    expectError(() => typicalError(range, "maybe"), "#VALUE!", /Use removed or kept/);
  });

  // Source: lme4 1.1-31 lmer(y ~ factor(trial) + (1 | id)), REML, on data with eight gaps.
  it("with gaps agrees with a mixed model in R", () => {
    const range = rows("orthodont_missing", ["age8", "age10", "age12", "age14"]);
    const [error, low, high] = typicalErrorWithGaps(range)[0]!;
    expectRelative(error, expected("orthodont_missing").mixed_model_all_data.TE, 1e-7);
    expect(low).toBeLessThan(error);
    expect(high).toBeGreaterThan(error);
    expectError(
      () =>
        typicalErrorWithGaps([
          [1, 2],
          [null, 3],
          [2, null],
        ]),
      "#N/A",
      /athletes with two results/,
    );
  });

  // Source: R 4.2.2 log, analysis of variance, qchisq.
  it("in percent agrees with R", () => {
    expectLimits(typicalErrorPercent(reaction.range)[0]!, reaction.reference.CV_log_two_way);
    expectLimits(typicalErrorPercent(reaction.range, "Kept")[0]!, reaction.reference.CV_log_one_way);
    expectError(
      () =>
        typicalErrorPercent([
          [1, 2],
          [-1, 3],
          [2, 2],
        ]),
      "#N/A",
      /above zero/,
    );
  });
});

describe("ICC", () => {
  // Source: psych::ICC (R 4.2.2, psych 2.2.9).
  it.each(["1,1", "2,1", "3,1", "1,k", "2,k", "3,k"])("(%s) with limits agrees with R for every set", (form) => {
    for (const { range, reference, zeros } of sets) {
      expectLimits(intraclass(range, form, null, zeros)[0]!, reference.icc[`ICC(${form})`]);
    }
  });

  // Source: Shrout & Fleiss 1979, table 4, prints ICC(3,1) as .71.
  it("is consistency of one result where nothing is said", () => {
    expect(intraclass(named("shrout").range)[0]![0]).toBeCloseTo(0.71, 2);
    expectError(() => intraclass(reaction.range, "3"), "#VALUE!", /Use 3,1, 1,1, .* or 3,k/);
    expectError(
      () =>
        intraclass([
          [1, 2],
          [1, 2],
          [1, 2],
        ]),
      "#N/A",
      /equal/,
    );
  });
});

describe("WITHINCV", () => {
  // Source: R 4.2.2 sd and mean.
  it("agrees with R by either average", () => {
    expectRelative(withinVariation(reaction.range), reaction.reference.CV_individual.mean, 1e-9);
    expectRelative(withinVariation(reaction.range, "root mean square"), reaction.reference.CV_individual.rms, 1e-9);
  });

  it("leaves out gaps and zeros", () => {
    expect(withinVariation([...reaction.range, [300, 0, null]])).toBe(withinVariation(reaction.range));
    expectError(
      () =>
        withinVariation([
          [1, 2],
          [2, 0],
          [3, null],
        ]),
      "#N/A",
      /athletes with two results/,
    );
    expectError(() => withinVariation(reaction.range, "median"), "#VALUE!", /Use mean or rootMeanSquare/);
  });
});

describe("TRIALNOISE", () => {
  // Source: numpy 2 log and var, scipy 1.17.1 stats.chi2.ppf.
  it("pools sets of unequal size", () => {
    const trials = [
      [180, 185, 178, ""],
      [200, "DNS", 196, 0],
      [150, 152, 149, 155],
      [null, 160, null, null],
    ];
    const [percent, low, high] = trialNoise(trials)[0]!;
    expect(percent).toBeCloseTo(1.7955296480669463, 11);
    expect(low).toBeCloseTo(1.1533633026417354, 9);
    expect(high).toBeCloseTo(3.9965955507845234, 9);
    expectError(() => trialNoise(down([180, 185])), "#N/A", /sets with two trials/);
  });
});

describe("SESSIONPAIRS", () => {
  // Source: R 4.2.2 t.test(paired = TRUE), sd, qchisq.
  it("agrees with R for each pair of sessions", () => {
    const [head, ...pairs] = sessionPairs(reaction.range);
    expect(head).toHaveLength(8);
    expect(pairs).toHaveLength(2);
    pairs.forEach(([from, to, ...cells], index) => {
      const { mean_change, TE } = reaction.reference.consecutive[index];
      expect([from, to]).toEqual([index + 1, index + 2]);
      expectRelative(cells[0], mean_change.mean, 1e-9);
      expectRelative(cells[1], mean_change.ci_low, 1e-8);
      expectRelative(cells[2], mean_change.ci_high, 1e-8);
      expectLimits(cells.slice(3), TE);
    });
  });

  it("has an error for a pair with too few athletes, and the others stay good", () => {
    const [, first, second] = sessionPairs([
      [10, 11, null],
      [12, 12, null],
      [14, 13, 15],
    ]);
    expect(first!.every((value) => typeof value === "number")).toBe(true);
    expect(second!.slice(2)).toEqual(new Array(6).fill(failing("#N/A", /At least 3 athletes/)));
    expectError(() => sessionPairs(down([1, 2, 3])), "#N/A", /At least 2 sessions/);
  });
});

describe("AGREEMENT", () => {
  const reference = expected("bland_altman_1986_pefr").loa_wright1_minus_mini1;
  const wright = down(column("bland_altman_1986_pefr", "wright1"));
  const mini = down(column("bland_altman_1986_pefr", "mini1"));

  // Source: R 4.2.2 mean, sd, qt with ncp; the paper of 1986 prints a mean difference of -2.1 and a SD of 38.8 l/min.
  it.each([
    [undefined, "exact"],
    [1999, "approx1999"],
    ["1986", "approx1986"],
  ])("with confidence limits %s agrees with R", (method, suffix) => {
    const lines = byLabel(agreement(wright, mini, undefined, method));
    expect(lines.Pairs![0]).toBe(17);
    expect(lines["Mean difference"]![0]).toBeCloseTo(-2.1, 1);
    for (const limit of ["lower", "upper"]) {
      const cells = lines[limit === "lower" ? "Lower limit of agreement" : "Upper limit of agreement"]!;
      expectRelative(cells[0], reference[limit], 1e-9);
      expectRelative(cells[1], reference[`${limit}_ci_${suffix}`][0], 1e-7);
      expectRelative(cells[2], reference[`${limit}_ci_${suffix}`][1], 1e-7);
    }
  });

  // Source: R 4.2.2 exp, log, mean, sd.
  it("as ratios agrees with R", () => {
    const lines = byLabel(agreement(wright, mini, "ratio"));
    expectRelative(lines["Mean ratio"]![0], reference.ratio.bias_ratio, 1e-9);
    expectRelative(lines["Lower limit of agreement"]![0], reference.ratio.lower_ratio, 1e-9);
    expectRelative(lines["Upper limit of agreement"]![0], reference.ratio.upper_ratio, 1e-9);
  });

  it("leaves out pairs with a gap, and refuses ranges of different length", () => {
    expect(agreement([...wright, [null], [400]], [...mini, [400], ["DNS"]])).toEqual(agreement(wright, mini));
    expectError(() => agreement(wright, mini.slice(1)), "#VALUE!", /17 cells with first results and 16/);
    expectError(() => agreement(wright, mini, "log"), "#VALUE!", /Use difference or ratio/);
    expectError(() => agreement(across(1, 2), across(2, 2)), "#N/A", /At least 3 pairs/);
  });
});

describe("WORTHWHILECHANGE", () => {
  // Source: R 4.2.2 sd, var, analysis of variance.
  it.each([
    [undefined, "true_score"],
    ["observed", "pooled_over_trials"],
    ["of means", "of_athlete_means"],
  ])("from sessions, spread %s, agrees with R", (spread, key) => {
    expectRelative(worthwhileChange(reaction.range, null, spread), reaction.reference["SWC_0.2"][key], 1e-9);
  });

  // Source: R 4.2.2 sd of day 0, 32.129451065.
  it("from a single column takes the spread observed, and any share", () => {
    const day0 = down(column("sleepstudy_day0_2", "day0"));
    expectRelative(worthwhileChange([...day0, [null], [0]]), 0.2 * 32.129451065, 1e-9);
    expectRelative(worthwhileChange(day0, 0.3), 0.3 * 32.129451065, 1e-9);
  });

  it("says why it cannot answer", () => {
    expectError(() => worthwhileChange(down([1, 2])), "#N/A", /At least 3 scores/);
    expectError(() => worthwhileChange(down([2, 2, 2])), "#N/A", /above zero/);
    expectError(() => worthwhileChange(down([1, 2, "3 s"])), "#VALUE!", /3 s/);
    expectError(() => worthwhileChange(down([1, 2, 3]), 0.2, "wide"), "#VALUE!", /Use true, observed or ofMeans/);
  });
});

describe("DETECTABLECHANGE", () => {
  // Source: R 4.2.2, 1.96 and 1.645 times sqrt(2) times the typical error; scipy 1.17.1 stats.t.ppf(.975, 9) x sqrt(2).
  it("agrees with R and scipy", () => {
    const { TE_two_way, MDC95_from_TE, MDC90_from_TE } = reaction.reference;
    expectRelative(detectableChange(across(TE_two_way.value))[0]![0], MDC95_from_TE, 1e-9);
    expectRelative(detectableChange(across(TE_two_way.value), 0.9)[0]![0], MDC90_from_TE, 1e-9);
    expectRelative(detectableChange(across(1), null, 9)[0]![0], 3.199173339848663, 1e-9);
  });

  it("answers each row for itself", () => {
    const [good, empty, negative, text] = detectableChange(down([1, null, -1, "1 cm"]));
    expect(good![0]).toBeGreaterThan(2.7);
    expect([empty, negative, text]).toEqual([[""], [failing("#N/A", /above zero/)], [failing("#VALUE!", /1 cm/)]]);
    expectError(() => detectableChange(across(1), 0.95, -3), "#VALUE!", /degrees of freedom must be above zero/);
  });
});
