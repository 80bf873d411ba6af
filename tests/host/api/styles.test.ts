import { errorOf, onSheet, openHost } from "./openHost";

/** Pages: excel/excel-add-ins-workbooks and, of the reference, Excel.Style, Excel.StyleCollection, Range.style. */
const opened = openHost();

test("a new style says what it is told, and cells with it look so", () =>
  onSheet(opened.host, async (sheet, context) => {
    const { styles } = context.workbook;
    styles.add("Personal best");
    const style = styles.getItem("Personal best");
    style.font.bold = true;
    style.fill.color = "#C6EFCE";
    style.textOrientation = 38;
    style.shrinkToFit = true;
    style.locked = false;
    style.numberFormat = "0.0";
    const range = sheet.getRange("A1:B1");
    range.style = "Personal best";
    range.load("style,numberFormat,format/textOrientation,format/shrinkToFit,format/protection/locked");
    range.load("format/font/bold,format/fill/color");
    style.load("name,builtIn,locked,includeProtection,font/bold,fill/color");
    await context.sync();
    expect([range.style, range.numberFormat, range.format.textOrientation]).toEqual([
      "Personal best",
      [["0.0", "0.0"]],
      38,
    ]);
    expect([range.format.shrinkToFit, range.format.protection.locked]).toEqual([true, false]);
    expect([range.format.font.bold, range.format.fill.color]).toEqual([true, "#C6EFCE"]);
    expect([style.builtIn, style.locked, style.includeProtection, style.font.bold]).toEqual([false, false, true, true]);
  }));

test("cells follow what their style says later, and are Normal once it is deleted", () =>
  onSheet(opened.host, async (sheet, context) => {
    context.workbook.styles.add("Watch");
    const style = context.workbook.styles.getItem("Watch");
    const cell = sheet.getRange("A1");
    cell.style = "Watch";
    style.font.italic = true;
    cell.load("format/font/italic,style");
    await context.sync();
    expect([cell.style, cell.format.font.italic]).toEqual(["Watch", true]);
    style.delete();
    cell.load("format/font/italic,style");
    const gone = context.workbook.styles.getItemOrNullObject("Watch");
    await context.sync();
    expect([cell.style, cell.format.font.italic, gone.isNullObject]).toEqual(["Normal", false, true]);
  }));

test("built-in styles are there under both their names, and set only what they speak of", () =>
  onSheet(opened.host, async (sheet, context) => {
    const cell = sheet.getRange("A1");
    cell.numberFormat = [["0.00"]];
    cell.style = opened.host.Excel.BuiltInStyle.accent1_20;
    cell.load("style,numberFormat,format/fill/color");
    const normal = context.workbook.styles.getItem("Normal").load("builtIn,font/name,font/size");
    await context.sync();
    expect([cell.style, cell.numberFormat, cell.format.fill.color]).toEqual(["20% - Accent1", [["0.00"]], "#D9E1F2"]);
    expect([normal.builtIn, normal.font.name, normal.font.size]).toEqual([true, "Calibri", 11]);
  }));

test.each([
  ["a name there is", "Good", "ItemAlreadyExists"],
  ["no name", " ", "InvalidArgument"],
])("%s is refused for a new style", async (_what, name, code) => {
  const error = await errorOf(onSheet(opened.host, async (_sheet, context) => context.workbook.styles.add(name)));
  expect(error.code).toBe(code);
});
