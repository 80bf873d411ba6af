import { betweenAthleteSpread } from "../../../src/engine/reliability/betweenAthleteSpread";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";

describe("standard deviation between athletes", () => {
  // Source: R 4.2.2 sd, var, analysis of variance.
  test.each(reliabilitySets)("observed, of means and true: $name", ({ results, reference }) => {
    for (const [kind, key] of [
      ["observed", "pooled_over_trials"],
      ["ofMeans", "of_athlete_means"],
      ["true", "true_score"],
    ] as const) {
      expectRelative(unwrap(betweenAthleteSpread(results, kind)), reference.between_athlete_SD[key], 1e-9);
    }
  });

  test("no spread beyond noise is a true spread of zero", () => {
    expect(
      unwrap(
        betweenAthleteSpread(
          [
            [1, 2],
            [2, 1.1],
            [1.4, 1.6],
          ],
          "true",
        ),
      ),
    ).toBe(0);
  });

  test("of two athletes is refused", () => {
    const two = [
      [1, 2],
      [2, 4],
    ];
    expect(betweenAthleteSpread(two, "observed")).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "athletes with every result", needed: 3, got: 2 } }],
    });
  });
});
