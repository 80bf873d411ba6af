import { sideMissing } from "../../../src/engine/flags/sideMissing";

// Source: by hand.
describe("a missing side", () => {
  test("is named; two or none are no flag", () => {
    expect(sideMissing(null, 180)).toEqual({
      code: "sideMissing",
      reason: "There is no result for the left side, so the sides cannot be compared.",
      facts: { side: "left" },
    });
    expect(sideMissing(180, null)).toMatchObject({ facts: { side: "right" } });
    expect(sideMissing(0, 180)).toBeNull();
    expect(sideMissing(null, null)).toBeNull();
  });
});
