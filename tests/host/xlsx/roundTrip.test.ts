import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type ConditionalFormattingRule, Workbook, type Worksheet } from "exceljs";
import { openXlsx } from "../../../src/host/xlsx";
import { throughTheEngine } from "./throughTheEngine";

/**
 * The file was written by openpyxl (data/write_samples.py), and what we save of it is read back by exceljs: two
 * programs that are not ours.
 */
const sample = () => new Uint8Array(readFileSync(join(__dirname, "data/everything.xlsx")));

let losses: readonly string[];
let read: Workbook;
let sheet: Worksheet;

beforeAll(async () => {
  const saved = await throughTheEngine(sample());
  losses = saved.losses;
  read = new Workbook();
  await read.xlsx.load(saved.bytes as unknown as ArrayBuffer);
  sheet = read.getWorksheet("Hops & jumps")!;
});

describe("a workbook of another program, opened, calculated and saved", () => {
  it("loses nothing on opening nor on saving", () => {
    expect(openXlsx(sample(), "everything").notices).toEqual([]);
    expect(losses).toEqual([]);
  });

  it("keeps its sheets, their order, the hidden one and the tab's colour", () => {
    expect(read.worksheets.map(({ name, state }) => [name, state])).toEqual([
      ["Hops & jumps", "visible"],
      ["Second", "hidden"],
      ["Filtered", "visible"],
    ]);
    expect(sheet.properties.tabColor).toEqual({ argb: "FF0F6B5C" });
  });

  it("keeps numbers to the last digit, texts to the last blank, truth values and errors", () => {
    expect(sheet.getCell("C3").value).toBe(159.123456789012);
    expect(sheet.getCell("A4").value).toBe("Dagnja ");
    expect(sheet.getCell("G5").value).toBe(true);
    expect(sheet.getCell("G6").value).toEqual({ error: "#N/A" });
    expect(sheet.getCell("G7").value).toBe("1.82 m");
    expect(sheet.getCell("G9").value).toBe('<&> "quoted"\nsecond line');
    expect(sheet.getCell("E2").value).toEqual(new Date(Date.UTC(2026, 7, 11, 9, 30, 15)));
  });

  it("keeps formulas and gives their results, which the file did not have", () => {
    expect(sheet.getCell("D3").value).toEqual({ formula: "MAX(B3:C3)", result: 159.123456789012 });
    expect(sheet.getCell("G8").value).toMatchObject({ formula: "STDEV(B2:B4)" });
    expect(read.getWorksheet("Second")!.getCell("A1").value).toEqual({ formula: "'Hops & jumps'!B2*2", result: 328.5 });
  });

  it("keeps number formats, typefaces, fills, borders and alignments", () => {
    expect(sheet.getCell("B2").numFmt).toBe("0.0");
    expect(sheet.getCell("E2").numFmt).toBe("yyyy-mm-dd hh:mm");
    expect(sheet.getCell("G1").font).toMatchObject({
      name: "Arial",
      size: 14,
      bold: true,
      italic: true,
      underline: true,
      color: { argb: "FFC00000" },
    });
    // Accent 1 of the file's theme, 4F81BD, with a tint of 0.6: shown as B8CCE4 or, rounded another way, B9CDE5.
    expect(sheet.getCell("G2").fill).toMatchObject({ pattern: "solid", fgColor: { argb: "FFB9CDE5" } });
    expect(sheet.getCell("G3").border).toMatchObject({
      left: { style: "thin", color: { argb: "FF0F6B5C" } },
      top: { style: "double" },
      bottom: { style: "medium" },
    });
    expect(sheet.getCell("G4").alignment).toMatchObject({ horizontal: "center", vertical: "top", wrapText: true });
  });

  it("keeps widths to the pixel, heights, hidden rows and columns, merges, gridlines and frozen panes", () => {
    expect(Math.abs(sheet.getColumn("A").width! - 24.5)).toBeLessThan(1 / 7);
    expect(sheet.getColumn("F").hidden).toBe(true);
    expect(sheet.getRow(3).height).toBe(31.5);
    expect(sheet.getRow(4).hidden).toBe(true);
    expect(sheet.getCell("J2").master.address).toBe("I1");
    expect(sheet.views[0]).toMatchObject({ state: "frozen", xSplit: 1, ySplit: 1, showGridLines: false });
  });

  it("keeps tables, names, notes and the filter", () => {
    const table = (
      sheet as unknown as { getTables(): { table: { name: string; tableRef: string } }[] }
    ).getTables()[0]!;
    expect(table.table).toMatchObject({
      name: "Hop_trials",
      tableRef: "A1:E4",
      style: { theme: "TableStyleLight9", showRowStripes: true },
    });
    expect(read.definedNames.getRanges("Left_trials").ranges).toEqual(["'Hops & jumps'!$B$2:$B$4"]);
    expect(sheet.getCell("G1").note).toBe("Measured twice");
    const filtered = read.getWorksheet("Filtered")!;
    expect(filtered.autoFilter).toBe("A1:B3");
    expect(filtered.getRow(3).hidden).toBe(true);
  });

  it("keeps conditional formats in their order", () => {
    const formats = (
      sheet as unknown as { conditionalFormattings: { ref: string; rules: ConditionalFormattingRule[] }[] }
    ).conditionalFormattings;
    expect(formats.map(({ ref, rules }) => [ref, rules[0]!.type])).toEqual([
      ["B2:B4", "cellIs"],
      ["B2:B4", "expression"],
      ["C2:C4", "expression"],
      ["C2:C4", "colorScale"],
      ["D2:D4", "dataBar"],
      ["D2:D4", "iconSet"],
      ["A2:A4", "duplicateValues"],
    ]);
    // A comparison with a cell is saved as the formula it stands for.
    expect(formats[1]!.rules[0]).toMatchObject({ formulae: ["B2<$C$2"] });
  });

  it("keeps the rules for what may be typed", () => {
    expect(sheet.getCell("H2").dataValidation).toMatchObject({ type: "list", formulae: ['"Left,Right"'] });
    expect(sheet.getCell("B50").dataValidation).toMatchObject({ type: "decimal", formulae: [50, 300] });
  });
});

describe("our own sample workbook", () => {
  it("comes back as it was", async () => {
    const bytes = new Uint8Array(readFileSync(join(__dirname, "../../../sample-workbooks/fjordvik-handball.xlsx")));
    const before = openXlsx(bytes, "sample");
    const saved = await throughTheEngine(bytes);
    const after = openXlsx(saved.bytes, "sample");
    expect([...before.notices, ...saved.losses, ...after.notices]).toEqual([]);
    for (const id of before.workbook.sheetOrder!) {
      const [one, other] = [before.workbook.sheets![id]!, after.workbook.sheets![id]!];
      expect(valuesOf(other)).toEqual(valuesOf(one));
      expect(other.freeze).toEqual(one.freeze);
      expect(other.mergeData).toEqual(one.mergeData);
      expect(other.columnData).toEqual(one.columnData);
    }
  });
});

const valuesOf = ({ cellData = {} }: { cellData?: object }) =>
  Object.entries(cellData).map(([row, cells]) => [
    row,
    Object.entries(cells as object).map(([column, { v, f, t }]) => [column, v, f, t]),
  ]);
