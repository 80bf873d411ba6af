import { weekToWeekChange } from "../../../src/engine/load/weekToWeekChange";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative } from "../../reference/reference";

const reference = expected("training_load");

describe("the change from week to week", () => {
  // Source: R 4.2.2 100 * diff(totals) / totals.
  test("agrees with R", () => {
    reference.week_change_pct.forEach((percent: number | null, week: number) => {
      if (percent === null) return;
      const [last, now] = [reference.weeks[week - 1].total, reference.weeks[week].total];
      expectRelative(unwrap(weekToWeekChange(last, now)), percent, 1e-10);
    });
  });

  test("from a week of nothing, and of negative totals, is refused", () => {
    expect(weekToWeekChange(0, 500)).toMatchObject({
      ok: false,
      reasons: [{ code: "notPositive", facts: { what: "last week's total", value: 0 } }],
    });
    expect(weekToWeekChange(-500, -1)).toMatchObject({
      ok: false,
      reasons: [
        { code: "negative", facts: { what: "last week's total", value: -500 } },
        { code: "negative", facts: { what: "this week's total", value: -1 } },
      ],
    });
    expect(unwrap(weekToWeekChange(500, 0))).toBe(-100);
  });
});
