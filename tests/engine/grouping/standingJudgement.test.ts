import fc from "fast-check";
import { standingJudgement } from "../../../src/engine/grouping/standingJudgement";
import { unwrap } from "../../../src/engine/result";
import { measurement, notFinitePaths } from "../measurements";

const judge = (z: number, typicalError: number, against: "zero" | "threshold" = "zero") =>
  unwrap(standingJudgement(z, { typicalError, betweenAthletes: 10, against }));

describe("strength or weakness", () => {
  // Source: R 4.2.2 qnorm(0.975) = 1.959963984540; standard error 3 / 10, limits 0.8 -/+ 0.5879891954.
  test("comes with the limits of the z score", () => {
    const { judgement, z, standardError } = judge(0.8, 3);
    expect({ judgement, standardError }).toEqual({ judgement: "strength", standardError: 0.3 });
    expect(z.low).toBeCloseTo(0.2120108046, 9);
    expect(z.high).toBeCloseTo(1.3879891954, 9);
  });

  test.each([
    [0.8, 3, "zero", "strength"],
    [-0.8, 3, "zero", "weakness"],
    [0.4, 0.1, "zero", "in between"],
    [0.8, 6, "zero", "too noisy to say"],
    [-0.8, 3, "threshold", "too noisy to say"],
    [-1.2, 3, "threshold", "weakness"],
    [0.5, 0, "threshold", "strength"],
    [-0.5, 0, "threshold", "weakness"],
    [0.5, 0, "zero", "strength"],
  ] as const)("z %d with a typical error of %d against %s: %s", (z, error, against, judgement) => {
    expect(judge(z, error, against).judgement).toBe(judgement);
  });

  test("a spread of zero, a negative error and a wild score are refused", () => {
    expect(
      standingJudgement(99, { typicalError: -1, betweenAthletes: 0, threshold: -0.5, confidence: 95 }),
    ).toMatchObject({
      ok: false,
      reasons: [
        { code: "outOfRange", facts: { what: "z score", low: -10, high: 10, value: 99 } },
        { code: "negative", facts: { what: "typical error", value: -1 } },
        { code: "notPositive", facts: { what: "standard deviation between athletes", value: 0 } },
        { code: "notPositive", facts: { what: "threshold", value: -0.5 } },
        { code: "outOfRange", facts: { what: "confidence" } },
      ],
    });
  });

  test("turning the sign turns strength into weakness, never NaN", () => {
    const turned = { strength: "weakness", weakness: "strength" } as Readonly<Record<string, string>>;
    fc.assert(
      fc.property(measurement(-4, 4), measurement(0, 20), (score, error) => {
        const { judgement } = judge(score, error);
        expect(judge(-score, error).judgement).toBe(turned[judgement] ?? judgement);
      }),
    );
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), (score, typicalError, betweenAthletes) => {
        expect(notFinitePaths(standingJudgement(score, { typicalError, betweenAthletes }))).toEqual([]);
      }),
    );
  });
});
