import { movedFormula, plainFormula } from "../../../src/host/xlsx/formulas";
import { fileFormula } from "../../../src/host/xlsx/write/fileFormula";

/** ECMA-376 part 1, 18.3.1.40: a shared formula stands once; its other cells move its relative references. */
describe("a shared formula moved to another cell", () => {
  it.each([
    ["A1+$A1+A$1+$A$1", 2, 1, "B3+$A3+B$1+$A$1"],
    ["SUM(A1:B2)*LOG10(C3)", 1, 0, "SUM(A2:B3)*LOG10(C4)"],
    ["'A1 sheet'!A1&\"A1\"", 1, 1, "'A1 sheet'!B2&\"A1\""],
    ["Hops[A1]+B1", 1, 0, "Hops[A1]+B2"],
    ["A1", -1, 0, "#REF!"],
  ])("%s by %i rows and %i columns is %s", (formula, rows, columns, moved) => {
    expect(movedFormula(formula, rows, columns)).toBe(moved);
  });
});

/** The marks are those of [MS-XLSX] 2.2.2 (from memory); they must not reach people, nor be missing in the file. */
describe("formulas in the file and before people", () => {
  it.each([
    ["STDEV.S(A1:A9)", "_xlfn.STDEV.S(A1:A9)"],
    ["SORT(UNIQUE(A1:A9))", "_xlfn._xlws.SORT(_xlfn.UNIQUE(A1:A9))"],
    ['TEXTJOIN(", STDEV.S(",TRUE,A1)', '_xlfn.TEXTJOIN(", STDEV.S(",TRUE,A1)'],
    ["LET(best,MAX(A1:A3),best*2)", "_xlfn.LET(_xlpm.best,MAX(A1:A3),_xlpm.best*2)"],
    ["SUM(G1#)", "SUM(_xlfn.ANCHORARRAY(G1))"],
    ["STDEV(A1:A9)", "STDEV(A1:A9)"],
    ["TAPELINE.ASYMMETRY(A1:C1,D1:F1)", "TAPELINE.ASYMMETRY(A1:C1,D1:F1)"],
  ])("%s", (people, file) => {
    expect(fileFormula(`=${people}`, undefined)).toBe(file);
    expect(plainFormula(file)).toBe(people);
  });

  it.each([
    ["[@Best]/2", "Hops[[#This Row],[Best]]/2"],
    ["[@[Load (kg)]]", "Hops[[#This Row],[Load (kg)]]"],
    ["SUM(Other_table[@[A b]:[C d]])", "SUM(Other_table[[#This Row],[A b]:[C d]])"],
    ["SUM(Hops[Best])", "SUM(Hops[Best])"],
    ['"[@Best]"', '"[@Best]"'],
  ])("%s names its row in full", (people, file) => {
    expect(fileFormula(`=${people}`, "Hops")).toBe(file);
  });
});
