import { belowLightest, pickLoad } from "../../../src/engine/strength/rounding";

describe("the achievable load a rule picks", () => {
  // Source: by hand.
  test.each([
    [64, "down", 60],
    [64, "nearest", 65],
    [62.5, "nearest", 60],
    [65, "down", 65],
    [65, "nearest", 65],
    [71, "nearest", 70],
    [55, "nearest", 55],
  ] as const)("for %d, %s, is %d", (target, rule, load) => {
    expect(pickLoad([70, 55, 65, 60], target, rule)).toBe(load);
  });

  test("is none when all are above, however near", () => {
    expect(pickLoad([70, 55], 54.9, "nearest")).toBeNull();
    expect(pickLoad([], 54.9, "down")).toBeNull();
  });

  test("the refusal names the lightest load there is", () => {
    expect(belowLightest("the bar", 20, 19)).toEqual({
      code: "belowLightest",
      message: "19 is below the bar (20); use a lighter implement or another exercise.",
      facts: { what: "the bar", lightest: 20, target: 19 },
    });
  });
});
