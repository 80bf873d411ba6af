import fc from "fast-check";
import { jumpPower } from "../../../src/engine/jumps/jumpPower";
import { powerEquations } from "../../../src/engine/jumps/powerEquations";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

const names = powerEquations.map(({ name }) => name);

describe("the power of a jump", () => {
  // Source: R 4.2.2 arithmetic on the published equations, 40 cm, 75 kg, 178 cm.
  test.each([
    ["sayersSquatJump", 3770.5],
    ["sayersCountermovementJump", 3736.5],
    ["harmanPeak", 3354],
    ["harmanAverage", 1180],
    ["johnsonBahamondePeak", 3635.1],
    ["johnsonBahamondeAverage", 1645.1],
    ["canavanVescovi", 3125.9],
    ["lewis", 1030.05],
  ] as const)("by %s is %d W", (equation, watts) => {
    const power = unwrap(jumpPower(40, 75, { equation, statureCentimetres: 178 }));
    expectRelative(power.watts, watts, equation === "lewis" ? 5e-6 : 1e-12);
    expectRelative(power.wattsPerKilogram, power.watts / 75, 1e-15);
  });

  // Source: Canavan & Vescovi 2004, abstract: mean predictions for 20 women of 65.9 kg were 2920.8 W (Sayers, squat jump), 2925.1 W
  // (Sayers, countermovement jump) and 2585.0 W (Harman); their own equation fits 2425.4 W. The height follows from the first.
  test("the signs are those that reproduce published group means", () => {
    const height = (2920.8 + 2055 - 45.3 * 65.9) / 60.7;
    expectRelative(unwrap(jumpPower(height, 65.9, { equation: "harmanPeak" })).watts, 2585, 0.003);
    expectRelative(unwrap(jumpPower(height, 65.9, { equation: "sayersCountermovementJump" })).watts, 2925.1, 0.003);
    expectRelative(unwrap(jumpPower(height, 65.9, { equation: "canavanVescovi" })).watts, 2425.4, 0.003);
  });

  test("says which power it is and what to beware of", () => {
    expect(unwrap(jumpPower(40, 75))).toMatchObject({ power: "peak", cautions: [] });
    expect(unwrap(jumpPower(40, 75, { equation: "harmanAverage" })).power).toBe("average");
    expect(unwrap(jumpPower(40, 75, { equation: "lewis" })).cautions).toMatchObject([{ code: "reservation" }]);
    for (const height of [14.9, 65.1]) {
      expect(unwrap(jumpPower(height, 75)).cautions).toMatchObject([{ code: "outsideFittedRange" }]);
    }
  });

  test("a missing stature, a power below zero and nonsense are refused", () => {
    expect(jumpPower(40, 75, { equation: "johnsonBahamondePeak" })).toMatchObject({
      ok: false,
      reasons: [{ code: "statureNeeded" }],
    });
    expect(jumpPower(5, 30)).toMatchObject({ ok: false, reasons: [{ code: "notPositive" }] });
    expect(jumpPower(40, Number.NaN).ok).toBe(false);
    expect(jumpPower(40, 75, { statureCentimetres: -1 }).ok).toBe(false);
  });

  test("rises with height and mass, never NaN", () => {
    const positive = fc.double({ min: 20, max: 120, noNaN: true });
    fc.assert(
      fc.property(positive, positive, fc.constantFrom(...names), (height, mass, equation) => {
        const watts = (h: number, m: number) => {
          const result = jumpPower(h, m, { equation, statureCentimetres: 175 });
          return result.ok ? result.value.watts : 0;
        };
        expect(watts(height + 1, mass)).toBeGreaterThanOrEqual(watts(height, mass));
        expect(watts(height, mass + 1)).toBeGreaterThanOrEqual(watts(height, mass));
      }),
    );
    fc.assert(
      fc.property(
        fc.double(),
        fc.double(),
        fc.double(),
        fc.constantFrom(...names),
        (h, m, statureCentimetres, equation) => {
          expect(notFinitePaths(jumpPower(h, m, { equation, statureCentimetres }))).toEqual([]);
        },
      ),
    );
  });
});
