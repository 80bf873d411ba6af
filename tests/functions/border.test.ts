import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import { directionOf, reductionOf, trialsOf } from "../../src/functions/border";

describe("trialsOf(range)", () => {
  it("takes numbers, and treats blanks, zeros, errors and marks for no trial as missing", () => {
    expect(trialsOf([[150, null, "", 0, "DNS", "inj", "-", { error: 42 }]])).toEqual([
      150,
      null,
      null,
      null,
      null,
      null,
      null,
      null,
    ]);
  });

  it("takes a data type by its basic value", () => {
    expect(trialsOf([[{ type: "FormattedNumber", basicType: "Double", basicValue: 151.5 }]])).toEqual([151.5]);
  });

  it.each([["182 cm"], ["1,82"], ["about 180"], [true]])("refuses %p rather than skip it", (cell) => {
    expect(() => trialsOf([[cell]])).toThrow(expect.objectContaining({ code: "#VALUE!" }));
  });
});

describe("words in formulas", () => {
  it("are read in any case and spacing, the first where left out", () => {
    expect(reductionOf(null)).toBe("best");
    expect(reductionOf("Mean of best two")).toBe("meanOfBestTwo");
    expect(directionOf("LOWER")).toBe("lower");
  });

  it("are refused with the list of those that work", () => {
    expect(() => reductionOf("max")).toThrow("Use best, mean, median or meanOfBestTwo.");
  });
});
