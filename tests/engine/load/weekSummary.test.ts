import fc from "fast-check";
import { weekSummary } from "../../../src/engine/load/weekSummary";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, fullColumn } from "../../reference/reference";
import { cell, notFinitePaths } from "../measurements";

const days = fullColumn("training_load", "load_au");
const weeks = [0, 1, 2, 3, 4, 5].map((week) => days.slice(7 * week, 7 * week + 7));
const reference = expected("training_load");

describe("the training load of a week", () => {
  // Source: R 4.2.2 sum, mean, sd; the divisor n by sqrt(6 / 7).
  test.each([0, 1, 2, 3, 4, 5])("week %d agrees with R", (week) => {
    const wanted = reference.weeks[week];
    const summary = unwrap(weekSummary(weeks[week]!));
    expect(summary).toMatchObject({ total: wanted.total, daysReported: 7, cautions: [] });
    expectRelative(summary.mean!, wanted.mean, 1e-11);
    expectRelative(summary.standardDeviation!, wanted.sd_n_minus_1, 1e-11);
    expectRelative(summary.monotony!, wanted.monotony_n_minus_1, 1e-11);
    expectRelative(summary.strain!, wanted.strain_n_minus_1, 1e-11);
    const byN = unwrap(weekSummary(weeks[week]!, { divisor: "n" }));
    expectRelative(byN.standardDeviation!, wanted.sd_population, 1e-11);
    expectRelative(byN.monotony!, wanted.monotony_population, 1e-11);
    expectRelative(byN.strain!, wanted.strain_population, 1e-11);
  });

  test("with a missing day has a total and says so, but no monotony", () => {
    const summary = unwrap(weekSummary([420, 300, null, 0, 480, 600, 0]));
    expect(summary).toMatchObject({ total: 1800, daysReported: 6, monotony: null, strain: null, mean: null });
    expect(summary.cautions).toEqual([
      {
        code: "daysMissing",
        message:
          "1 of the 7 days was not reported: the total counts the others only, and monotony is not given. Type 0 for a rest day.",
        facts: { missing: 1 },
      },
    ]);
    const { cautions } = unwrap(weekSummary([420, null, null, 0, 480, 600, 0]));
    expect(cautions[0]!.message).toMatch(/^2 of the 7 days were not reported/);
  });

  test("without variation has no monotony", () => {
    for (const load of [0, 300, 0.1]) {
      expect(unwrap(weekSummary(new Array(7).fill(load)))).toMatchObject({
        mean: load,
        standardDeviation: 0,
        monotony: null,
        strain: null,
        cautions: [
          {
            code: "noVariation",
            message: "All seven days are equal; monotony is not defined without variation.",
            facts: {},
          },
        ],
      });
    }
  });

  test("other than seven days, none reported and negative loads are refused", () => {
    expect(weekSummary(days.slice(0, 6))).toEqual({
      ok: false,
      reasons: [
        {
          code: "notAWeek",
          message: "A week has seven days; 6 were given. Leave days nobody reported blank and type 0 for rest.",
          facts: { days: 6 },
        },
      ],
    });
    expect(weekSummary(new Array(7).fill(null))).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { what: "reported days", needed: 1, got: 0 } }],
    });
    expect(weekSummary([1, 2, 3, 4, 5, 6, -7])).toMatchObject({
      ok: false,
      reasons: [{ code: "negative", facts: { what: "day total", value: -7 } }],
    });
  });

  test("monotony has no unit, strain has the load's, order does not matter, nothing is NaN", () => {
    const aWeek = fc.array(fc.nat(1000), { minLength: 7, maxLength: 7 });
    fc.assert(
      fc.property(aWeek, fc.integer({ min: 2, max: 9 }), (week, factor) => {
        const summary = unwrap(weekSummary(week));
        const scaled = unwrap(weekSummary(week.map((load) => load * factor)));
        const reversed = unwrap(weekSummary([...week].reverse()));
        if (summary.monotony === null) return;
        expectRelative(scaled.monotony!, summary.monotony, 1e-12);
        expectRelative(scaled.strain!, factor * summary.strain!, 1e-12);
        expectRelative(reversed.monotony!, summary.monotony, 1e-12);
      }),
    );
    fc.assert(
      fc.property(fc.array(cell(-10, 1000), { maxLength: 9 }), (week) => {
        expect(notFinitePaths(weekSummary(week))).toEqual([]);
      }),
    );
  });
});
