import { negativeRefusals, positiveRefusals, rangeRefusals } from "../../src/engine/quantities";

const codes = (refusals: readonly { readonly code: string }[]) => refusals.map(({ code }) => code);

describe("quantities that cannot be used", () => {
  test("every one is named, with its reason", () => {
    expect(codes(positiveRefusals({ load: 0, mass: Number.NaN, height: 1 }))).toEqual(["notPositive", "notFinite"]);
    expect(codes(negativeRefusals({ load: 0, mass: Number.POSITIVE_INFINITY, height: -1 }))).toEqual([
      "notFinite",
      "negative",
    ]);
  });

  test("a range includes its ends", () => {
    expect(codes(rangeRefusals("age", 8, 80, 8))).toEqual([]);
    expect(codes(rangeRefusals("age", 8, 80, 80))).toEqual([]);
    expect(codes(rangeRefusals("age", 8, 80, 7.9))).toEqual(["outOfRange"]);
    expect(codes(rangeRefusals("age", 8, 80, Number.NaN))).toEqual(["notFinite"]);
  });
});
