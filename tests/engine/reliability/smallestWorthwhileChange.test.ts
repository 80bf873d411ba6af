import { betweenAthleteSpread } from "../../../src/engine/reliability/betweenAthleteSpread";
import { smallestWorthwhileChange } from "../../../src/engine/reliability/smallestWorthwhileChange";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";

describe("smallest worthwhile change", () => {
  // Source: R 4.2.2 sd, var, analysis of variance.
  test.each(reliabilitySets)("a fifth of each of the three spreads: $name", ({ results, reference }) => {
    for (const [kind, key] of [
      ["observed", "pooled_over_trials"],
      ["ofMeans", "of_athlete_means"],
      ["true", "true_score"],
    ] as const) {
      const standardDeviation = unwrap(betweenAthleteSpread(results, kind));
      expectRelative(unwrap(smallestWorthwhileChange({ standardDeviation })), reference["SWC_0.2"][key], 1e-9);
    }
  });

  test("another share, or a size the coach names", () => {
    expect(unwrap(smallestWorthwhileChange({ standardDeviation: 10, share: 0.3 }))).toBe(3);
    expect(unwrap(smallestWorthwhileChange({ anchor: 0.05 }))).toBe(0.05);
  });

  test("no spread beyond noise gives no smallest change", () => {
    const standardDeviation = unwrap(
      betweenAthleteSpread(
        [
          [1, 2],
          [2, 1.1],
          [1.4, 1.6],
        ],
        "true",
      ),
    );
    expect(standardDeviation).toBe(0);
    expect(smallestWorthwhileChange({ standardDeviation })).toMatchObject({
      reasons: [{ code: "notPositive", facts: { what: "the smallest worthwhile change", value: 0 } }],
    });
  });
});
