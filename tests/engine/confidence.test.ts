import { confidenceRefusals, transformEstimate } from "../../src/engine/confidence";

describe("confidence", () => {
  test("is a share; a percentage and certainty are refused", () => {
    for (const confidence of [0.01, 0.95, 0.9999]) expect(confidenceRefusals(confidence)).toEqual([]);
    for (const value of [95, 1, 0, Number.NaN]) {
      expect(confidenceRefusals(value)).toMatchObject([
        { code: "outOfRange", facts: { what: "confidence", low: 0.01, high: 0.9999, value } },
      ]);
    }
  });

  test("an estimate goes to another scale with its limits", () => {
    expect(transformEstimate({ value: 2, low: 1, high: 3 }, (x) => 10 * x)).toEqual({ value: 20, low: 10, high: 30 });
  });
});
