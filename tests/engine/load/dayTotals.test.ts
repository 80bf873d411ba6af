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
  ];

  // Source: by hand.
  test("sum the sessions; a day nobody reported is missing, a rest day is 0, an unrated session leaves no total", () => {
    expect(unwrap(dayTotals(entries, span))).toEqual([420, null, 0, null]);
    expect(unwrap(dayTotals(entries, { ...span, unreported: "rest" }))).toEqual([420, 0, 0, null]);
  });

  test("days that are none, an empty span and negative loads are refused", () => {
    expect(dayTotals([{ day: 100.5, load: 1 }], span)).toMatchObject({ ok: false, reasons: [{ code: "notADay" }] });
    expect(dayTotals([], { firstDay: 103, lastDay: 100 }).ok).toBe(false);
    expect(dayTotals([], { firstDay: 0, lastDay: 45000 }).ok).toBe(false);
    expect(dayTotals([], { firstDay: Number.NaN, lastDay: 45000 }).ok).toBe(false);
    expect(dayTotals([{ day: 100, load: -1 }], span).ok).toBe(false);
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
