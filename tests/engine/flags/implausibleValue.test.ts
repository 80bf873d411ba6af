import fc from "fast-check";
import { implausibleValue } from "../../../src/engine/flags/implausibleValue";
import { plausibleRanges } from "../../../src/engine/flags/plausibleRanges";
import { unitSlips } from "../../../src/engine/flags/unitSlips";

describe("implausible values", () => {
  // Source: definitions of the units (inch 2.54 cm, pound 0.45359237 kg, day 1440 min).
  test.each([
    ["a hop typed in metres", 1.85, "singleHop", "metres", 185],
    ["a jump typed in inches is still a jump; in metres it is found", 0.35, "jumpHeight", "metres", 35],
    ["a sprint typed in milliseconds", 1850, "sprint10", "milliseconds", 1.85],
    ["a sprint whose decimal sign was lost", 185, "sprint10", "decimalSignLost2", 1.85],
    ["stature in centimetres", 178, "stature", "centimetres", 1.78],
    ["stature in inches", 70, "stature", "inches", 1.778],
    ["body mass in pounds", 200, "bodyMass", "pounds", 90.718474],
    ["body mass in grams", 75000, "bodyMass", "grams", 75],
    ["a rating on a scale to 100", 70, "sessionRating", "hundredPointScale", 7],
    ["a session typed in seconds", 5400, "sessionDuration", "seconds", 90],
  ] as const)("%s", (_, value, range, slip, corrected) => {
    const flag = implausibleValue(value, plausibleRanges[range]);
    expect(flag).toMatchObject({ code: "unitSlip", facts: { slip, value } });
    expect(flag!.facts.corrected).toBeCloseTo(corrected, 6);
  });

  test("minutes and seconds that the sheet took for hours and minutes", () => {
    const shuttle = { what: "shuttle time", unit: "s", low: 120, high: 600 } as const;
    expect(implausibleValue(5 / 24 + 10 / 1440, shuttle)).toMatchObject({
      facts: { slip: "minutesAndSeconds", corrected: 310 },
    });
  });

  test("a value no slip explains is implausible, one in range is not, and a missing one is nothing", () => {
    expect(implausibleValue(3000, plausibleRanges.jumpHeight)).toMatchObject({ code: "implausibleValue" });
    expect(implausibleValue(35, plausibleRanges.jumpHeight)).toBeNull();
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
