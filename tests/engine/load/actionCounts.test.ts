import fc from "fast-check";
import { actionCounts } from "../../../src/engine/load/actionCounts";
import { unwrap } from "../../../src/engine/result";

describe("counts of actions", () => {
  // Source: by hand.
  test("total, largest day and largest four days in a row", () => {
    expect(unwrap(actionCounts([40, 0, 55, 60, 0, 70, 20]))).toEqual({
      total: 245,
      daysReported: 7,
      largestDay: 70,
      largestFourDays: 185,
      cautions: [],
    });
  });

  test("a missing day is named and breaks the rows of four", () => {
    const counts = unwrap(actionCounts([40, 30, null, 60, 10, 70, 20]));
    expect(counts).toMatchObject({
      total: 230,
      daysReported: 6,
      largestFourDays: 160,
      cautions: [
        {
          code: "daysMissing",
          message: "1 of 7 days were not reported, so the counts are too low by what happened then.",
          facts: { missing: 1, days: 7 },
        },
      ],
    });
    expect(unwrap(actionCounts([40, null, 60])).largestFourDays).toBeNull();
  });

  test("no report, negative and broken counts are refused", () => {
    expect(actionCounts([null, null])).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { what: "reported days", needed: 1, got: 0 } }],
    });
    expect(actionCounts([3, -1])).toMatchObject({
      ok: false,
      reasons: [{ code: "negative", facts: { what: "daily count", value: -1 } }],
    });
    expect(actionCounts([3, 1.5])).toEqual({
      ok: false,
      reasons: [
        {
          code: "notWhole",
          message: "Actions are counted in whole numbers; 1.5 is none.",
          facts: { count: 1.5 },
        },
      ],
    });
  });

  test("a day cannot exceed four days, nor these the total", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(200), { minLength: 4, maxLength: 30 }), (days) => {
        const { largestDay, largestFourDays, total } = unwrap(actionCounts(days));
        expect(largestDay).toBeLessThanOrEqual(largestFourDays!);
        expect(largestFourDays).toBeLessThanOrEqual(total);
      }),
    );
  });
});
