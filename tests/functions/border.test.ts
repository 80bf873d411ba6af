import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import {
  confidenceOf,
  counted,
  dated,
  dayOf,
  directionOf,
  measured,
  numberOf,
  orElse,
  paired,
  positiveOf,
  reductionOf,
  scored,
  trialsOf,
  values,
  wholeNumberOf,
  worded,
} from "../../src/functions/border";
import { across, expectError, failing } from "./cells";

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

describe("what a 0 is", () => {
  const cells = across(0, null, "", "-", 5);

  it("is decided by the function, or by the coach in the formula", () => {
    expect(measured(cells)).toEqual([[null, null, null, null, 5]]);
    expect(counted(cells)).toEqual([[0, null, null, null, 5]]);
    expect(scored(cells, null)).toEqual(measured(cells));
    expect(scored(cells, "Value")).toEqual(counted(cells));
    expectError(() => scored(cells, "none"), "#VALUE!", /Use missing or value/);
  });

  it("is no day, but a day is", () => {
    // 46023 is 1 January 2026: DATE(2026,1,1) in a spreadsheet with the 1900 date system.
    expect(dated(across(0, null, 46023, 46023.75, "2026-01-01", "1.1.2026"))).toEqual([
      [null, null, 46023, 46023, 46023, 46023],
    ]);
    expect(dated(across("1/2/2026", 5))).toEqual([
      [failing("#VALUE!", /two days/), failing("#VALUE!", /1990 to 2099/)],
    ]);
    expect(dayOf("2026-01-01", "first day")).toBe(46023);
    expectError(() => dayOf(0, "first day"), "#VALUE!", /first day is missing/);
  });
});

describe("readings of a range", () => {
  it("keep the cell that cannot be read beside those that can; a method that needs all stops at it", () => {
    const readings = measured(across(5, "5 kg"));
    expect(readings[0]![0]).toBe(5);
    expect(readings[0]![1]).toEqual(failing("#VALUE!", /5 kg/));
    expectError(() => values(readings), "#VALUE!", /5 kg/);
  });

  it("of data types that hold text are refused like text", () => {
    expect(counted(across({ type: "String", basicType: "String", basicValue: "12" }))).toEqual([
      [failing("#VALUE!", /“12” is text/)],
    ]);
  });

  it("of words know empty cells and errors", () => {
    expect(worded(across("Lower", null, 0, "", "up", { error: 1 }), ["higher", "lower"], "direction")).toEqual([
      ["lower", null, null, null, failing("#VALUE!", /Use higher or lower/), failing("#VALUE!", /shows an error/)],
    ]);
  });

  it("fall back where an optional range or its cell is left out", () => {
    expect(orElse(null, counted, 0)).toEqual([[0]]);
    expect(orElse(across(null, 3), counted, 7)).toEqual([[7, 3]]);
  });

  it("are paired only when equally many", () => {
    expect(paired(["a", [1, 2]], ["b", [3, 4]])).toEqual([
      [1, 3],
      [2, 4],
    ]);
    expectError(() => paired(["loads", [1, 2]], ["dates", [3]]), "#VALUE!", /2 cells with loads and 1 with dates/);
  });
});

describe("single numbers", () => {
  it("are read, fall back, or are missed by name", () => {
    expect(numberOf(0.67, "exponent")).toBe(0.67);
    expect(numberOf(null, "exponent", 0.67)).toBe(0.67);
    expect(numberOf(0, "exponent", 0.67)).toBe(0);
    expectError(() => numberOf(undefined, "exponent"), "#VALUE!", /exponent is missing/);
    expectError(() => numberOf("much", "exponent", 1), "#VALUE!", /much/);
  });

  it("are whole or above zero where they must be", () => {
    expect(wholeNumberOf(7, "span")).toBe(7);
    expectError(() => wholeNumberOf(7.5, "span"), "#VALUE!", /7.5 is not/);
    expect(positiveOf(null, "cap")).toBeUndefined();
    expect(positiveOf(40, "cap")).toBe(40);
    expectError(() => positiveOf(0, "cap"), "#VALUE!", /cap must be above zero; 0 is not/);
  });

  it("as confidence are a share", () => {
    expect(confidenceOf(null)).toBe(0.95);
    expect(confidenceOf(0.9)).toBe(0.9);
    expectError(() => confidenceOf(95), "#VALUE!", /Confidence must be from 0.01 to 0.9999; 95 is not/);
  });
});
