import { limbVariability } from "../../../src/engine/asymmetry/limbVariability";
import { normalCumulative } from "../../../src/engine/distributions/normal";
import { unwrap } from "../../../src/engine/result";
import { reducedScoreMoments } from "../../../src/engine/trials/reducedScoreMoments";
import { normalNoise } from "../measurements";

describe("the rule that asymmetry must exceed the variability of the limbs", () => {
  // Source: R 4.2.2 sd and mean.
  test("takes the larger coefficient of variation", () => {
    const variability = unwrap(limbVariability([178, 182, 180], [196, null, 204, 200]));
    expect(variability.left).toBeCloseTo(1.1111111, 7);
    expect(variability.right).toBeCloseTo(2, 12);
    expect(variability.limit).toBe(variability.right);
  });

  test("is the left side's when that one is the larger", () => {
    expect(unwrap(limbVariability([196, 204], [180, 181])).limit).toBeCloseTo((100 * Math.sqrt(32)) / 200, 12);
  });

  test("refuses single trials and values that have no ratio", () => {
    expect(limbVariability([180, null], [200])).toMatchObject({
      ok: false,
      reasons: [
        { code: "tooFew", facts: { what: "left trials", needed: 2, got: 1 } },
        { code: "tooFew", facts: { what: "right trials", needed: 2, got: 1 } },
      ],
    });
    const notPositive = { ok: false, reasons: [{ code: "notPositive", facts: { what: "every trial" } }] };
    expect(limbVariability([180, 0], [200, 198])).toMatchObject(notPositive);
    expect(limbVariability([180, 182], [200, -198])).toMatchObject(notPositive);
  });

  // Source of the rates in the documentation: scipy 1.17.1 stats.norm.sf, and numpy simulation (0.289 and 0.204).
  test("the rule is as lenient as its documentation says", () => {
    const falseAlarms = (variance: number): number => 2 * (1 - normalCumulative(1 / Math.sqrt(2 * variance)));
    expect(falseAlarms(1)).toBeCloseTo(0.4795001, 6);
    expect(falseAlarms(reducedScoreMoments(3, "best").variance)).toBeCloseTo(0.3444746, 6);
    expect(falseAlarms(reducedScoreMoments(3, "mean").variance)).toBeCloseTo(0.2206714, 6);

    const draw = normalNoise(3);
    const trials = () => [draw(), draw(), draw()].map((noise) => 200 * Math.exp(0.05 * noise));
    let alarms = 0;
    for (let athlete = 0; athlete < 20_000; athlete++) {
      const [left, right] = [trials(), trials()];
      const [leftBest, rightBest] = [Math.max(...left), Math.max(...right)];
      const asymmetry = 100 * (1 - Math.min(leftBest, rightBest) / Math.max(leftBest, rightBest));
      if (asymmetry > unwrap(limbVariability(left, right)).limit) alarms++;
    }
    expect(Math.abs(alarms / 20_000 - 0.289)).toBeLessThan(0.012);
  });
});
