import { confidenceRefusals, transformEstimate } from "../../src/engine/confidence";

describe("confidence", () => {
  test("is a share; a percentage and certainty are refused", () => {
    expect(confidenceRefusals(0.95)).toEqual([]);
    for (const confidence of [95, 1, 0, Number.NaN]) {
      expect(confidenceRefusals(confidence)).toMatchObject([{ code: "outOfRange" }]);
    }
  });

  test("an estimate goes to another scale with its limits", () => {
    expect(transformEstimate({ value: 2, low: 1, high: 3 }, (x) => 10 * x)).toEqual({ value: 20, low: 10, high: 30 });
  });
});
