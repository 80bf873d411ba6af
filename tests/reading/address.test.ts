import fc from "fast-check";
import {
  areaAddress,
  columnLetters,
  compareAddresses,
  gridAddress,
  placeOf,
  quotedSheet,
} from "../../src/reading/address";
import { gridOf } from "./gridOf";

describe("columnLetters(column)", () => {
  it.each([
    [0, "A"],
    [25, "Z"],
    [26, "AA"],
    [701, "ZZ"],
    [702, "AAA"],
    // The last column of a worksheet: Microsoft, "Excel specifications and limits", 16,384 columns.
    [16_383, "XFD"],
  ])("column %i is %s", (column, letters) => expect(columnLetters(column)).toBe(letters));

  it("is undone by placeOf", () => {
    fc.assert(
      fc.property(fc.nat(16_383), fc.nat(1_048_575), (column, row) => {
        expect(placeOf(areaAddress(row, column, 1, 1))).toEqual({ row, column });
      }),
    );
  });
});

describe("gridAddress(grid)", () => {
  it("names sheet and rectangle", () => {
    expect(
      gridAddress(
        gridOf(
          [
            [1, 2],
            [3, 4],
          ],
          { sheet: "Hop test", firstRow: 2, firstColumn: 1 },
        ),
      ),
    ).toBe("'Hop test'!B3:C4");
  });
});

describe("quotedSheet(sheet)", () => {
  it.each([
    ["Hops", "Hops"],
    ["Hop test", "'Hop test'"],
    ["Coach's", "'Coach''s'"],
    ["A1", "'A1'"],
    ["2026", "'2026'"],
  ])("%s is written %s", (sheet, quoted) => expect(quotedSheet(sheet)).toBe(quoted));
});

it("compareAddresses(a, b) goes row by row, and column Z comes before AA", () => {
  expect(["AA1", "B2", "Z1", "A10"].sort(compareAddresses)).toEqual(["Z1", "AA1", "B2", "A10"]);
});
