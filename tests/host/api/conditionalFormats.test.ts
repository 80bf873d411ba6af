import { errorOf, onSheet, openHost } from "./openHost";

/** Page: excel/excel-add-ins-conditional-formatting. */
const opened = openHost();

test("borders and the number format of a conditional format are kept by side", () =>
  onSheet(opened.host, async (sheet, context) => {
    const { format } = sheet.getRange("A1:A5").conditionalFormats.add("ContainsText").textComparison;
    format.numberFormat = "0.0";
    format.borders.bottom.style = "Dash";
    format.borders.getItem("EdgeLeft").color = "red";
    format.load("numberFormat");
    format.borders.load("items/sideIndex,items/style,items/color,count");
    await context.sync();
    expect([format.numberFormat, format.borders.count]).toEqual(["0.0", 4]);
    expect(format.borders.items.map(({ sideIndex, style, color }) => [sideIndex, style, color])).toEqual([
      ["EdgeTop", "None", ""],
      ["EdgeBottom", "Dash", ""],
      ["EdgeLeft", "None", "#FF0000"],
      ["EdgeRight", "None", ""],
    ]);
  }));

test("a line style that is none is refused", async () => {
  const error = await errorOf(
    onSheet(opened.host, async (sheet) => {
      const { format } = sheet.getRange("A1").conditionalFormats.add("CellValue").cellValue;
      format.borders.top.style = "Wavy" as Excel.ConditionalRangeBorderLineStyle;
    }),
  );
  expect(error.code).toBe("InvalidArgument");
});

test("bars have borders of their own, negative ones those of the positive until told otherwise", () =>
  onSheet(opened.host, async (sheet, context) => {
    const { positiveFormat, negativeFormat } = sheet.getRange("A1:A5").conditionalFormats.add("DataBar").dataBar;
    positiveFormat.borderColor = "blue";
    negativeFormat.matchPositiveBorderColor = true;
    positiveFormat.load("borderColor");
    negativeFormat.load("borderColor,matchPositiveBorderColor");
    await context.sync();
    expect([positiveFormat.borderColor, negativeFormat.borderColor, negativeFormat.matchPositiveBorderColor]).toEqual([
      "#0000FF",
      "#0000FF",
      true,
    ]);
    negativeFormat.borderColor = "red";
    negativeFormat.load("matchPositiveBorderColor");
    await context.sync();
    expect(negativeFormat.matchPositiveBorderColor).toBe(false);
  }));
