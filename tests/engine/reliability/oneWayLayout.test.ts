import { oneWayLayout } from "../../../src/engine/reliability/oneWayLayout";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, groups, rows } from "../../reference/reference";

describe("one-way layout of unequally many results", () => {
  // Source: certified values of NIST StRD; with 13 leading digits in
  // common SmLs07 leaves doubles a step of 1e-4, hence its tolerance.
  test.each([
    ["nist_AtmWtAg", 1e-9],
    ["nist_SmLs01", 1e-12],
    ["nist_SmLs04", 1e-8],
    ["nist_SmLs07", 2e-4],
  ])("%s", (dataset, tolerance) => {
    const layout = unwrap(oneWayLayout(groups(dataset, "group", "y"), { confidence: 0.95 }));
    const { certified } = expected(dataset);
    expectRelative(layout.f, certified.F, tolerance);
    expectRelative(layout.betweenAthletes, certified.MS_between, tolerance);
    expectRelative(layout.withinAthletes, certified.MS_within, tolerance);
    expectRelative(layout.typicalError.value, certified.residual_sd, tolerance);
  });

  // Source: R 4.2.2; the lme4 manual prints the variance components 1764.05 and 2451.25 of Dyestuff.
  test.each([
    ["dyestuff_long", () => groups("dyestuff_long", "batch", "yield"), expected("dyestuff_long").oneway],
    [
      "orthodont_missing",
      () => rows("orthodont_missing", ["age8", "age10", "age12", "age14"]),
      expected("orthodont_missing").oneway_unbalanced,
    ],
  ])("%s", (_, results, reference) => {
    const layout = unwrap(oneWayLayout(results(), { confidence: 0.95 }));
    expect(layout.resultCount).toBe(reference.N);
    expectRelative(layout.betweenAthletes, reference.MSB, 1e-10);
    expectRelative(layout.withinAthletes, reference.MSW, 1e-10);
    expectRelative(layout.effectiveResultsPerAthlete, reference.k0, 1e-10);
    expectRelative(layout.intraclassCorrelation, reference.ICC1, 1e-10);
    expectRelative(layout.typicalError.value, reference.TE, 1e-10);
    expectRelative(layout.typicalError.low, reference.TE_ci.ci_low ?? reference.TE_ci[0], 1e-9);
    expectRelative(layout.typicalError.high, reference.TE_ci.ci_high ?? reference.TE_ci[1], 1e-9);
  });

  test("athletes without any result change nothing", () => {
    const results = groups("dyestuff_long", "batch", "yield");
    const padded = [[], ...results, [null, null]];
    expect(oneWayLayout(padded, { confidence: 0.95 })).toEqual(oneWayLayout(results, { confidence: 0.95 }));
  });

  test("a single repeated athlete and copied results are refused", () => {
    expect(oneWayLayout([[1, 2], [3]], { confidence: 95 })).toMatchObject({
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        { code: "tooFew", facts: { what: "athletes with two results", needed: 2, got: 1 } },
      ],
    });
    expect(
      oneWayLayout(
        [
          [0.1, 0.1, 0.1],
          [3, 3],
        ],
        { confidence: 0.95 },
      ),
    ).toMatchObject({ reasons: [{ code: "noSpread", facts: { what: "results of each athlete" } }] });
  });
});
