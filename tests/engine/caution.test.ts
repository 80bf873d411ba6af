import {
  type Caution,
  extrapolated,
  fewDegreesOfFreedom,
  groupEstimate,
  outsideFittedRange,
  rounded,
} from "../../src/engine/caution";

describe("what a reader must know beside a value", () => {
  const each: readonly [Caution, string, string, Caution["facts"]][] = [
    [
      extrapolated("estimated maximum", 143.62, 98.25),
      "extrapolated",
      "The estimated maximum (144) lies far beyond what was measured (98.3): extrapolated.",
      { what: "estimated maximum", estimate: 143.62, measuredTo: 98.25 },
    ],
    [
      outsideFittedRange("jump height", 15, 65, 70, "cm"),
      "outsideFittedRange",
      "The equation is trusted for a jump height of 15 to 65 cm; 70 cm is outside.",
      { what: "jump height", low: 15, high: 65, value: 70, unit: "cm" },
    ],
    [
      groupEstimate("oxygen uptake", "standard error 3.5"),
      "groupEstimate",
      "The oxygen uptake is estimated from a group's regression (standard error 3.5); track the raw result and set no training zone from it alone.",
      { what: "oxygen uptake", error: "standard error 3.5" },
    ],
    [
      fewDegreesOfFreedom(1),
      "fewDegreesOfFreedom",
      "The limits rest on 1 degree of freedom and are rough.",
      { degreesOfFreedom: 1 },
    ],
    [
      fewDegreesOfFreedom(2),
      "fewDegreesOfFreedom",
      "The limits rest on 2 degrees of freedom and are rough.",
      { degreesOfFreedom: 2 },
    ],
  ];

  for (const [caution, code, message, facts] of each) {
    test(message, () => expect(caution).toEqual({ code, message, facts }));
  }

  // Source: by hand.
  test.each([
    [0.123456, 0.123],
    [99.94, 99.9],
    [100, 100],
    [-100.4, -100],
    [1234.5, 1235],
    [-0.5556, -0.556],
  ])("%d stands in a sentence as %d", (value, told) => {
    expect(rounded(value)).toBe(told);
  });
});
