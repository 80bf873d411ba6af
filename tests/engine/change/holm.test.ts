import { holm } from "../../../src/engine/change/holm";
import { unwrap } from "../../../src/engine/result";

describe("Holm's adjustment", () => {
  // Source: statsmodels 0.15.0 multipletests(method = "holm").
  test("five p values", () => {
    const adjusted = unwrap(holm([0.01, 0.04, 0.03, 0.005, 0.5]));
    [0.04, 0.09, 0.09, 0.025, 0.5].forEach((p, index) => {
      expect(adjusted[index]).toBeCloseTo(p, 12);
    });
  });

  test("never above 1; no p values is no adjustment; values that are no p are refused", () => {
    expect(unwrap(holm([0.8, 0.9]))).toEqual([1, 1]);
    expect(unwrap(holm([]))).toEqual([]);
    expect(holm([0.5, 5])).toMatchObject({
      reasons: [{ code: "outOfRange", facts: { what: "every p value", low: 0, high: 1, value: 5 } }],
    });
    expect(holm([-0.1]).ok).toBe(false);
    expect(unwrap(holm([0, 1]))).toEqual([0, 1]);
  });
});
