import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import { composite, modifiedZScore, percentileRank, squadRank, tScore, zScore } from "../../src/functions/standing";
import { expected, expectRelative, labels, rows } from "../reference/reference";
import { eventDirection, standingSets } from "../reference/standingSets";
import { across, down, expectError } from "./cells";

const listOf = (answers: unknown[][]) => answers.flat() as number[];

describe("the standing of a squad", () => {
  // Source: R 4.2.2 mean, sd, median, mad, rank and counts; scipy percentileofscore (mean, weak) agrees.
  it.each(standingSets)("agrees with R: $name", ({ scores, direction, inOrder }) => {
    const range = down(scores);
    const checks: [number[], string][] = [
      [listOf(zScore(range, direction)), "z"],
      [listOf(tScore(range, direction)), "T_score"],
      [listOf(modifiedZScore(range, direction)), "modified_z"],
      [listOf(percentileRank(range, direction)), "pr_midrank_hazen"],
      [listOf(percentileRank(range, direction, "inclusive")), "pr_inc"],
      [listOf(percentileRank(range, direction, "exclusive")), "pr_exc"],
      [listOf(percentileRank(range, direction, "weak")), "pr_weak_le"],
      [listOf(squadRank(range, direction)), "rank_competition_best1"],
      [listOf(squadRank(range, direction, "average")), "rank_average_best1"],
    ];
    for (const [answers, key] of checks) {
      const wanted = inOrder(key);
      answers.forEach((answer, index) => {
        expect(Math.abs(answer - wanted[index]!)).toBeLessThan(1e-9 * Math.max(1, Math.abs(wanted[index]!)));
      });
    }
  });

  const functions = { squadRank, percentileRank, zScore, tScore, modifiedZScore };

  it.each(Object.entries(functions))("%s keeps gaps empty, in the shape of the range", (_, standing) => {
    const answers = standing(down([10, null, 30, "inj", 25, 0]));
    const complete = listOf(standing(across(10, 30, 25)));
    expect(answers).toEqual([[complete[0]], [""], [complete[1]], [""], [complete[2]], [""]]);
  });

  it.each(Object.entries(functions))("%s takes text for a slip, and says which scores are better", (_, standing) => {
    expectError(() => standing(down([10, 20, "25 cm"])), "#VALUE!", /25 cm/);
    expectError(() => standing(down([10, 20, 30]), "bigger"), "#VALUE!", /Use higher or lower/);
    expectError(() => standing(down([null, ""])), "#N/A", /At least \d scores? /);
  });

  // Source: by hand.
  it("counts a 0 as a score when told so, as in changes", () => {
    expect(squadRank(across(-2, 0, 3), "higher", undefined, null, "value")).toEqual([[3, 2, 1]]);
    expect(squadRank(across(-2, 0, 3))).toEqual([[2, "", 1]]);
  });

  // Source: by hand, 41.2 and 41.200000001 are one step of 0.1.
  it("judges ties at the step of the instrument", () => {
    expect(squadRank(across(41.2, 41.200000001, 40), "higher", "competition", 0.1)).toEqual([[1, 1, 3]]);
    expect(squadRank(across(41.2, 41.200000001, 40))).toEqual([[2, 1, 3]]);
    expect(percentileRank(across(41.2, 41.200000001, 40), "higher", "weak", 0.1)[0]![0]).toBe(100);
    expectError(
      () => squadRank(across(1, 2), "higher", "competition", -1),
      "#VALUE!",
      /step of the instrument must be above/,
    );
    expectError(() => squadRank(across(1, 2), "higher", "shared"), "#VALUE!", /Use competition or average/);
    expectError(() => percentileRank(across(1, 2), "higher", "normal"), "#VALUE!", /Use midrank, .* or weak/);
  });

  it("needs spread to tell distances", () => {
    expectError(() => zScore(across(5, 5, 5)), "#N/A", /equal/);
    expectError(() => modifiedZScore(across(5, 5, 5, 9)), "#N/A", /More than half/);
  });
});

describe("COMPOSITE", () => {
  const athletes = labels("heptathlon", "athlete");

  // Source: R 4.2.2 scale and weighted sums.
  it.each(["composite", "composite_equal"])("of the heptathlon agrees with R: %s", (key) => {
    const reference = expected("heptathlon")[key];
    const events = Object.keys(reference.weights);
    const weights = key === "composite" ? across(...events.map((event) => reference.weights[event])) : undefined;
    const answers = composite(rows("heptathlon", events), weights, across(...events.map(eventDirection)));
    athletes.forEach((athlete, index) => {
      expect(Math.abs(answers[index]![0] - reference.composite_z[athlete])).toBeLessThan(1e-9);
    });
  });

  const scores = [
    [1, 4],
    [2, 1],
    [3, null],
    [5, 9],
  ];

  it("leaves a test out where its weight is 0 or empty", () => {
    const first = down(scores.map(([score]) => score));
    expect(composite(scores, across(1, 0))).toEqual(zScore(first));
    expect(composite(scores, across(1, null))).toEqual(zScore(first));
  });

  it("weighs all tests alike where no weight is given, as between two commas", () => {
    expect(composite(scores, across(null))).toEqual(composite(scores));
    expect(composite(scores, across("", 0))).toEqual(composite(scores));
  });

  it("gives none to an athlete tested on too little, and the others theirs", () => {
    const answers = composite(scores, across(0.5, 0.5));
    expect(answers[2]).toEqual([""]);
    expectRelative(composite(scores, across(0.8, 0.2))[2]![0], zScore(down([1, 2, 3, 5]))[2]![0], 1e-12);
    expect(answers.filter(([score]) => typeof score === "number")).toHaveLength(3);
  });

  it("takes higher as better where nothing is said, and one word for all tests", () => {
    expect(composite(scores, undefined, across("higher", null))).toEqual(composite(scores));
    const turned = composite(scores, undefined, across("lower"));
    expectRelative(turned[0]![0], -composite(scores)[0]![0], 1e-12);
  });

  it("says what does not fit", () => {
    expectError(() => composite(scores, across(1, 2, 3)), "#VALUE!", /2 tests and 3 weights/);
    expectError(() => composite(scores, across(1, -2)), "#N/A", /weight of test 2 must be above zero/);
    expectError(() => composite(scores, undefined, across("up", "down")), "#VALUE!", /Use higher or lower/);
    expectError(() => composite([[1, "4 kg"]]), "#VALUE!", /4 kg/);
    expectError(() => composite([[1], [1], [1]]), "#N/A", /equal/);
  });
});
