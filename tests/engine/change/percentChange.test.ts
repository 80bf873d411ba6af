import { percentChange } from "../../../src/engine/change/percentChange";
import { unwrap } from "../../../src/engine/result";

describe("change in percent", () => {
  // Source: arithmetic.
  test("of the earlier score", () => {
    expect(unwrap(percentChange(40, 44))).toBeCloseTo(10, 12);
    expect(unwrap(percentChange(2, 1.9))).toBeCloseTo(-5, 12);
  });

  test("missing scores, zeros and negative values are refused", () => {
    expect(percentChange(null, 0)).toMatchObject({
      reasons: [
        { code: "missing", facts: { what: "the earlier score" } },
        { code: "notPositive", facts: { what: "the later score", value: 0 } },
      ],
    });
    expect(percentChange(-1.6, 0.8)).toMatchObject({
      reasons: [{ facts: { what: "the earlier score", value: -1.6 } }],
    });
    expect(percentChange(0, null)).toMatchObject({
      reasons: [
        { code: "notPositive", facts: { what: "the earlier score", value: 0 } },
        { code: "missing", facts: { what: "the later score" } },
      ],
    });
  });
});
