import { onSheet, openHost } from "./openHost";

/** Page: excel/excel-add-ins-worksheet-functions. */
const opened = openHost();

test("functions take values, ranges and each other's results", () =>
  onSheet(opened.host, async (sheet, context) => {
    sheet.getRange("A1:B3").values = [
      ["Ada", 40],
      ["Eva", 45],
      ["Ida", 50],
    ];
    const { functions } = context.workbook;
    const found = functions.vlookup("Eva", sheet.getRange("A1:B3"), 2, false).load("value,error");
    const sum = functions
      .sum(functions.vlookup("Ada", sheet.getRange("A1:B3"), 2, false), sheet.getRange("B3"), 1)
      .load("value");
    const quantile = functions.norm_S_Inv(0.975).load("value");
    await context.sync();
    expect([found.value, found.error, sum.value]).toEqual([45, "", 91]);
    // Standard normal 97.5th percentile, NIST/SEMATECH e-Handbook 1.3.6.7.1: 1.960.
    expect(quantile.value).toBeCloseTo(1.95996, 4);
  }));

test("formulas written before are calculated; an error is told beside the value", () =>
  onSheet(opened.host, async (sheet, context) => {
    sheet.getRange("A1:B1").formulas = [[3, "=A1*2"]];
    const sum = context.workbook.functions.sum(sheet.getRange("A1:B1")).load("value");
    const missing = context.workbook.functions.vlookup("x", sheet.getRange("A1:B1"), 2, false).load("value,error");
    await context.sync();
    expect([sum.value, missing.value, missing.error]).toEqual([9, null, "#N/A"]);
  }));
