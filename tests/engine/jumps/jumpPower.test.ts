import fc from "fast-check";
import { jumpPower } from "../../../src/engine/jumps/jumpPower";
import { powerEquation, powerEquations } from "../../../src/engine/jumps/powerEquations";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

const names = powerEquations.map(({ name }) => name);

describe("the power of a jump", () => {
  // Source: R 4.2.2 arithmetic on the published equations, 40 cm, 75 kg, 178 cm.
  test.each([
    ["sayersSquatJump", 3770.5, "peak"],
    ["sayersCountermovementJump", 3736.5, "peak"],
    ["harmanPeak", 3354, "peak"],
    ["harmanAverage", 1180, "average"],
    ["johnsonBahamondePeak", 3635.1, "peak"],
    ["johnsonBahamondeAverage", 1645.1, "average"],
    ["canavanVescovi", 3125.9, "peak"],
    ["lewis", 1030.05, "average"],
  ] as const)("by %s is %d W, %s", (equation, watts, kind) => {
    const power = unwrap(jumpPower(40, 75, { equation, statureCentimetres: 178 }));
    expect(power.power).toBe(kind);
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

  test("is given with the reservation of its equation", () => {
    expect(unwrap(jumpPower(40, 75)).cautions).toEqual([]);
    expect(unwrap(jumpPower(40, 75, { equation: "lewis" })).cautions).toEqual([
      {
        code: "reservation",
        message: powerEquation("lewis").reservation,
        facts: { equation: "lewis" },
      },
    ]);
  });

  // Source: the heights trusted are common practice, no source.
  test("is given with a caution for a height outside 15 to 65 cm", () => {
    expect(unwrap(jumpPower(15, 75)).cautions).toEqual([]);
    expect(unwrap(jumpPower(65, 75)).cautions).toEqual([]);
    for (const value of [14.9, 65.1]) {
      expect(unwrap(jumpPower(value, 75)).cautions).toMatchObject([
        { code: "outsideFittedRange", facts: { what: "jump height", low: 15, high: 65, value, unit: "cm" } },
      ]);
    }
  });

  test.each(["johnsonBahamondePeak", "johnsonBahamondeAverage"] as const)("by %s needs a stature", (equation) => {
    const { label } = powerEquation(equation);
    expect(jumpPower(40, 75, { equation })).toEqual({
      ok: false,
      reasons: [
        {
          code: "statureNeeded",
          message: `The equation of ${label} needs the athlete's stature in centimetres.`,
          facts: { equation: label },
        },
      ],
    });
  });

  // Source: by hand, 60.7 x 5 + 45.3 x 30 - 2055 = -392.5.
  test("below zero, and nonsense, are refused", () => {
    const refused = jumpPower(5, 30);
    expect(refused).toMatchObject({
      ok: false,
      reasons: [{ code: "notPositive", facts: { what: "estimated power" } }],
    });
    expect(!refused.ok && refused.reasons[0]!.facts.value).toBeCloseTo(-392.5, 9);
    expect(jumpPower(40, Number.NaN)).toMatchObject({ reasons: [{ code: "notFinite", facts: { what: "body mass" } }] });
    expect(jumpPower(-40, 75)).toMatchObject({ reasons: [{ code: "notPositive", facts: { what: "jump height" } }] });
    expect(jumpPower(40, 75, { statureCentimetres: -1 })).toMatchObject({ reasons: [{ facts: { what: "stature" } }] });
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
