import fc from "fast-check";
import { dayTotals } from "../../../src/engine/load/dayTotals";
import { unwrap } from "../../../src/engine/result";
import { notFinitePaths } from "../measurements";

describe("day totals of a diary", () => {
  const span = { firstDay: 100, lastDay: 103 };
  const entries = [
    { day: 100, load: 300 },
    { day: 100, load: 120 },
    { day: 102, load: 0 },
    { day: 103, load: 200 },
    { day: 103, load: null },
    { day: 99, load: 999 },
    { day: 104, load: 999 },
  ];

  // Source: by hand.
  test("sum the sessions; a day nobody reported is missing, a rest day is 0, an unrated session leaves no total", () => {
    expect(unwrap(dayTotals(entries, span))).toEqual([420, null, 0, null]);
    expect(unwrap(dayTotals(entries, { ...span, unreported: "rest" }))).toEqual([420, 0, 0, null]);
  });

  test("days that are none, an empty span and negative loads are refused", () => {
    expect(dayTotals([{ day: 100.5, load: 1 }], span)).toEqual({
      ok: false,
      reasons: [
        {
          code: "notADay",
          message: "A day must be a whole serial number; 100.5 is not.",
          facts: { day: "100.5" },
        },
      ],
    });
    expect(dayTotals([{ day: 100, load: -1 }], span)).toMatchObject({
      ok: false,
      reasons: [{ code: "negative", facts: { what: "session load", value: -1 } }],
    });
    expect(dayTotals([], { firstDay: Number.NaN, lastDay: 45000 }).ok).toBe(false);
  });

  test("a diary holds one day to 3660, ten years", () => {
    expect(unwrap(dayTotals([], { firstDay: 100, lastDay: 100 }))).toEqual([null]);
    expect(unwrap(dayTotals([], { firstDay: 1, lastDay: 3660 }))).toHaveLength(3660);
    for (const [firstDay, lastDay] of [
      [101, 100],
      [1, 3661],
    ] as const) {
      expect(dayTotals([], { firstDay, lastDay })).toMatchObject({
        ok: false,
        reasons: [{ code: "outOfRange", facts: { what: "days of the diary", low: 1, high: 3660 } }],
      });
    }
  });

  test("the order of entries does not matter, and an unrated session anywhere in a day leaves it without a total", () => {
    const anEntry = fc.record({
      day: fc.integer({ min: 98, max: 105 }),
      load: fc.option(fc.nat(900), { nil: null, freq: 5 }),
    });
    fc.assert(
      fc.property(fc.array(anEntry, { maxLength: 12 }), (diary) => {
        const totals = unwrap(dayTotals(diary, span));
        expect(unwrap(dayTotals([...diary].reverse(), span))).toEqual(totals);
        totals.forEach((total, index) => {
          const ofDay = diary.filter(({ day }) => day === span.firstDay + index);
          const isKnown = ofDay.length > 0 && ofDay.every(({ load }) => load !== null);
          expect(total).toBe(isKnown ? ofDay.reduce((sum, { load }) => sum + load!, 0) : null);
        });
        expect(notFinitePaths(totals)).toEqual([]);
      }),
    );
  });
});
