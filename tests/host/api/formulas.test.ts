import { errorOf, onSheet, openHost, valuesAt } from "./openHost";

const opened = openHost();

/** Excel's error values: support.microsoft.com, "How to correct a #REF! error". */
describe("a reference to a sheet there is not", () => {
  it("gives #REF!, is shown as it was typed, and never looks at its own sheet instead", async () => {
    const formulas = ["=Nope!A1", "='No, pe'!$A$1+1", "=SUM(Nope!A1:B2)", "=SUM(Nope!A:A)", '=IFERROR(Nope!A1,"none")'];
    await onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:A5").formulas = formulas.map((formula) => [formula]);
      const range = sheet.getRange("A1:A5").load("values,formulas");
      await context.sync();
      expect(range.values.flat()).toEqual(["#REF!", "#REF!", "#REF!", "#REF!", "none"]);
      expect(range.formulas.flat()).toEqual(formulas);
    });
  });

  it("is none once the sheet is there, whatever the letters' case, and again when it is deleted", async () => {
    await onSheet(opened.host, async (sheet, context) => {
      const other = context.workbook.worksheets.add("Squad data");
      other.getRange("A1").values = [[7]];
      sheet.getRange("A1:B1").formulas = [["='SQUAD DATA'!A1", "=SUM('Squad data'!A1:A3)"]];
      const range = sheet.getRange("A1:B1").load("values");
      await context.sync();
      expect(range.values).toEqual([[7, 7]]);
      other.delete();
      range.load("values");
      await context.sync();
      expect(range.values).toEqual([["#REF!", "#REF!"]]);
    });
  });

  it("leaves text in quotes alone", async () => {
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("A1").formulas = [['="Nope!A1"&LEN("\'x\'!B2")']];
    });
    expect(await valuesAt(opened.host, "A1")).toEqual([["Nope!A16"]]);
  });
});

/** Excel refuses such an entry in its formula bar ("You've entered too few arguments for this function"). */
describe("the number of arguments of a custom function", () => {
  beforeEach(() => {
    const { host } = opened;
    const parameters = [{ name: "left" }, { name: "right" }, { name: "confidence", optional: true }];
    host.registerFunctions({ functions: [{ id: "DIFF", name: "DIFF", parameters }] }, "T");
    host.CustomFunctions.associate("DIFF", (left: number, right: number) => left - right);
  });

  it.each([
    ["=T.DIFF(1)", /too few arguments for T.DIFF: right is missing/],
    ["=T.DIFF()", /left, right are missing/],
    ["=IF(TRUE,1+T.DIFF(1),0)", /too few/],
    ["=T.DIFF(1,2,3,4)", /too many arguments for T.DIFF: it takes 3/],
  ])("makes %s no formula", async (formula, why) => {
    const error = await errorOf(
      onSheet(opened.host, async (sheet) => {
        sheet.getRange("A1").formulas = [[formula]];
      }),
    );
    expect(error.code).toBe("InvalidArgument");
    expect(error.message).toMatch(why);
    expect(await valuesAt(opened.host, "A1")).toEqual([[""]]);
  });

  it("counts places, not values: an argument left empty is one", async () => {
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("A1:C1").formulas = [["=T.DIFF(3,)", "=T.DIFF(5,SUM(1,1))", "=t.diff(B2,{1,2},)"]];
    });
    expect((await valuesAt(opened.host, "A1:B1"))[0]).toEqual([3, 3]);
  });
});

describe("errors in a spilled result", () => {
  it("keep each their own words, by the cell they stand in", async () => {
    const { host } = opened;
    const { Error: FunctionError, ErrorCode } = host.CustomFunctions;
    host.registerFunctions({ functions: [{ id: "ROWS2", name: "ROWS2", parameters: [] }] }, "T");
    host.CustomFunctions.associate("ROWS2", () => [
      [1, new FunctionError(ErrorCode.notAvailable, "Dagnja has no right trial.")],
      [new FunctionError(ErrorCode.invalidNumber, "Aelvi jumped 0 cm."), 4],
    ]);
    await host.type("B2", "=T.ROWS2()");
    expect(await valuesAt(host, "B2:C3")).toEqual([
      [1, "#N/A"],
      ["#NUM!", 4],
    ]);
    expect(["B2", "C2", "B3", "C3"].map((cell) => host.errorMessageAt(cell))).toEqual([
      null,
      "Dagnja has no right trial.",
      "Aelvi jumped 0 cm.",
      null,
    ]);
    await host.type("B2", 1);
    expect(host.errorMessageAt("C2")).toBeNull();
  });
});
