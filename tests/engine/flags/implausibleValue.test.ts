import fc from "fast-check";
import { implausibleValue } from "../../../src/engine/flags/implausibleValue";
import { plausibleRanges } from "../../../src/engine/flags/plausibleRanges";
import { unitSlips } from "../../../src/engine/flags/unitSlips";

describe("implausible values", () => {
  // Source: definitions of the units (inch 2.54 cm, pound 0.45359237 kg, day 1440 min).
  test.each([
    ["metres", "singleHop", 1.85, 185, "in metres"],
    ["metres", "jumpHeight", 0.35, 35, "in metres"],
    ["metres", "singleHop", 3.2, 320, "in metres"],
    ["millimetres", "broadJump", 2100, 210, "in millimetres"],
    ["inches", "broadJump", 77, 195.58, "in inches"],
    ["milliseconds", "sprint10", 1850, 1.85, "in milliseconds"],
    ["decimalSignLost1", "sprint20", 31, 3.1, "with the decimal sign lost"],
    ["decimalSignLost2", "sprint10", 185, 1.85, "with the decimal sign lost"],
    ["centimetres", "stature", 178, 1.78, "in centimetres"],
    ["millimetres", "stature", 1780, 1.78, "in millimetres"],
    ["inches", "stature", 70, 1.778, "in inches"],
    ["pounds", "bodyMass", 200, 90.718474, "in pounds"],
    ["grams", "bodyMass", 75000, 75, "in grams"],
    ["hundredPointScale", "sessionRating", 70, 7, "on a scale to 100"],
    ["seconds", "sessionDuration", 5400, 90, "in seconds"],
  ] as const)("%s in the %s", (slip, range, value, corrected, words) => {
    const flag = implausibleValue(value, plausibleRanges[range])!;
    expect(flag).toMatchObject({ code: "unitSlip", facts: { slip, value } });
    expect(flag.facts.corrected).toBeCloseTo(corrected, 6);
    expect(flag.reason).toContain(`; typed ${words} it would be `);
  });

  // Source: a day is 24 hours of 60 minutes; a sheet keeps 1:30 as 1.5 / 24 of a day.
  test.each([
    ["hoursAndMinutes", 1.5 / 24, "as hours and minutes, which the sheet took for a time of day"],
    ["hours", 1.5, "in hours"],
  ])("%s in a duration of minutes", (slip, value, words) => {
    const duration = { what: "match", unit: "min", low: 30, high: 150 } as const;
    const flag = implausibleValue(value, duration)!;
    expect(flag).toMatchObject({ facts: { slip, corrected: expect.closeTo(90, 9) } });
    expect(flag.reason).toContain(`; typed ${words} it would be 90 min.`);
  });

  test("are told with what the value would be in the right unit", () => {
    expect(implausibleValue(200, plausibleRanges.bodyMass)).toEqual({
      code: "unitSlip",
      reason: "200 is no likely body mass in kg; typed in pounds it would be 90.7 kg.",
      facts: { value: 200, what: "body mass", unit: "kg", slip: "pounds", corrected: 90.718474 },
    });
  });

  test("minutes and seconds that the sheet took for hours and minutes", () => {
    const shuttle = { what: "shuttle time", unit: "s", low: 120, high: 600 } as const;
    expect(implausibleValue(5 / 24 + 10 / 1440, shuttle)).toMatchObject({
      reason: expect.stringContaining(
        "typed as minutes and seconds, which the sheet took for a time of day it would be",
      ),
      facts: { slip: "minutesAndSeconds", corrected: 310 },
    });
  });

  test("a value no slip explains is implausible, one in range is not, and a missing one is nothing", () => {
    expect(implausibleValue(3000, plausibleRanges.jumpHeight)).toEqual({
      code: "implausibleValue",
      reason: "3000 cm is outside the 5 to 90 cm that a jump height plausibly takes.",
      facts: { value: 3000, what: "jump height", unit: "cm", low: 5, high: 90 },
    });
    for (const value of [5, 35, 90]) expect(implausibleValue(value, plausibleRanges.jumpHeight)).toBeNull();
    for (const value of [4.9, 90.1]) expect(implausibleValue(value, plausibleRanges.jumpHeight)).not.toBeNull();
    // In metres at either end of the range.
    for (const value of [0.05, 0.9]) {
      expect(implausibleValue(value, plausibleRanges.jumpHeight)).toMatchObject({ facts: { slip: "metres" } });
    }
    expect(implausibleValue(null, plausibleRanges.jumpHeight)).toBeNull();
    expect(implausibleValue(Number.NaN, plausibleRanges.jumpHeight)).toMatchObject({ code: "implausibleValue" });
  });

  test("pounds within the range are found by the usual value", () => {
    expect(implausibleValue(165, plausibleRanges.bodyMass)).toBeNull();
    expect(implausibleValue(165, plausibleRanges.bodyMass, { usual: 75 })).toMatchObject({ facts: { slip: "pounds" } });
    expect(implausibleValue(80, plausibleRanges.bodyMass, { usual: 75 })).toBeNull();
    // Half as heavy again, and no unit explains it: other flags see to it.
    expect(implausibleValue(120, plausibleRanges.bodyMass, { usual: 75 })).toBeNull();
  });

  test("a corrected value counts within 15 % of the usual one, not beyond", () => {
    // Source: by hand; 200 lb are 90.7 kg, 14.8 % above 79 kg and 16.3 % above 78 kg.
    expect(implausibleValue(200, plausibleRanges.bodyMass, { usual: 79 })).toMatchObject({ code: "unitSlip" });
    expect(implausibleValue(200, plausibleRanges.bodyMass, { usual: 78 })).toMatchObject({ code: "implausibleValue" });
  });

  test("a value far below the usual one is a slip too, though in range", () => {
    expect(implausibleValue(14, plausibleRanges.jumpHeight)).toBeNull();
    expect(implausibleValue(14, plausibleRanges.jumpHeight, { usual: 35 })).toMatchObject({
      facts: { slip: "inches" },
    });
  });

  test("every range is of a test of its own", () => {
    const tests = Object.values(plausibleRanges).map(({ what }) => what);
    expect(new Set(tests.filter((what) => /^[a-z0-9]/.test(what))).size).toBe(tests.length);
  });

  test("every slip of a unit is found when it leaves the range", () => {
    const aRange = fc.constantFrom(...Object.values(plausibleRanges));
    fc.assert(
      fc.property(aRange, fc.double({ min: 0, max: 1, noNaN: true }), (range, share) => {
        const value = range.low + share * (range.high - range.low);
        expect(implausibleValue(value, range)).toBeNull();
        for (const { factor } of unitSlips[range.unit]) {
          const typed = value / factor;
          // Rounding at the edge of the range is no question of units.
          if (typed * factor < range.low || typed * factor > range.high) continue;
          const outside = typed < range.low || typed > range.high;
          expect(implausibleValue(typed, range)?.code ?? null).toBe(outside ? "unitSlip" : null);
        }
      }),
    );
  });
});
