import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Workbook, type Worksheet } from "exceljs";
import { unzipSync } from "fflate";
import { Book } from "../../../src/host/engine/book";
import { createEngine } from "../../../src/host/engine/createEngine";
import { passwordHash } from "../../../src/host/engine/passwords";
import { openXlsx, restoreBook } from "../../../src/host/xlsx";
import { throughTheEngine } from "./throughTheEngine";

/**
 * What the grid does not show, or shows as its nearest, and a file has all the same. The workbook is written by
 * exceljs, and what we save of it is read back by exceljs: an independent program.
 */
async function written(): Promise<Uint8Array> {
  const book = new Workbook();
  const sheet = book.addWorksheet("Plan");
  sheet.getCell("A1").value = "Squad";
  sheet.getCell("A1").alignment = { horizontal: "left", indent: 2 };
  sheet.getCell("A2").value = "A long name that shrinks";
  sheet.getCell("A2").alignment = { shrinkToFit: true, vertical: "distributed" };
  sheet.getCell("A3").value = "Across three columns";
  sheet.getCell("A3").alignment = { horizontal: "centerContinuous" };
  sheet.getCell("A4").value = "Up";
  sheet.getCell("A4").alignment = { textRotation: 45 };
  sheet.getCell("A5").value = "Right to left";
  sheet.getCell("A5").alignment = { readingOrder: "rtl" };
  sheet.getCell("B1").value = 12.5;
  sheet.getCell("B1").protection = { locked: false };
  sheet.getCell("B2").value = { formula: "B1*2" };
  sheet.getCell("B2").protection = { hidden: true };
  sheet.getCell("B3").value = "Hatched";
  sheet.getCell("B3").fill = { type: "pattern", pattern: "lightGrid", fgColor: { argb: "FFC00000" } };
  sheet.getCell("C1").value = { text: "Warm-up", hyperlink: "https://example.org/warm-up?a=1&b=2", tooltip: "How" };
  sheet.getCell("C2").value = { text: "To the squad", hyperlink: "#'Plan'!A1" };
  sheet.getColumn("D").alignment = { horizontal: "right", indent: 1 };
  sheet.getColumn("D").width = 15;
  sheet.getRow(9).protection = { locked: false };
  sheet.getCell("A9").value = "Free";
  await sheet.protect("Fjordvik 2026", { formatCells: true, selectLockedCells: false, spinCount: 10 });
  return new Uint8Array((await book.xlsx.writeBuffer()) as ArrayBuffer);
}

async function reread(bytes: Uint8Array): Promise<Worksheet> {
  const book = new Workbook();
  await book.xlsx.load(bytes as unknown as ArrayBuffer);
  return book.getWorksheet("Plan")!;
}

describe("looks and locks of a file, through the engine and back", () => {
  let before: Worksheet;
  let after: Worksheet;
  let bytesAfter: Uint8Array;

  beforeAll(async () => {
    const bytes = await written();
    before = await reread(bytes);
    const saved = await throughTheEngine(bytes);
    expect(saved.losses).toEqual([]);
    bytesAfter = saved.bytes;
    after = await reread(bytesAfter);
  });

  it.each(["A1", "A2", "A3", "A4", "A5"])("keeps how the text lies in %s", (address) => {
    expect(Object.keys(before.getCell(address).alignment).length).toBeGreaterThan(0);
    expect(after.getCell(address).alignment).toMatchObject(before.getCell(address).alignment);
  });

  it("keeps what is locked and hidden in a protected sheet, and a pattern of a fill", () => {
    expect(before.getCell("B1").protection).toMatchObject({ locked: false });
    expect(after.getCell("B1").protection).toMatchObject({ locked: false });
    expect(after.getCell("B2").protection).toMatchObject({ hidden: true });
    expect(after.getCell("B3").fill).toMatchObject({ pattern: "lightGrid", fgColor: { argb: "FFC00000" } });
  });

  it("keeps links to the web and within the workbook", () => {
    for (const address of ["C1", "C2"]) {
      expect(before.getCell(address).hyperlink).toBeTruthy();
      expect(after.getCell(address).hyperlink).toBe(before.getCell(address).hyperlink);
      expect(after.getCell(address).text).toBe(before.getCell(address).text);
    }
    // exceljs does not read the words that appear over a link; it does write them.
    expect(new TextDecoder().decode(unzipSync(bytesAfter)["xl/worksheets/sheet1.xml"])).toContain('tooltip="How"');
  });

  it("keeps the looks of whole rows and columns, also for what is typed there", async () => {
    expect(after.getColumn("D").alignment).toMatchObject({ horizontal: "right", indent: 1 });
    expect(before.getCell("A9").protection).toMatchObject({ locked: false });
    expect(after.getCell("A9").protection).toMatchObject({ locked: false });
    const typed = await throughTheEngine(await written(), (book) => {
      book.api.getActiveWorkbook()!.getActiveSheet().getRange("D2").setValue(7);
    });
    expect((await reread(typed.bytes)).getCell("D2").alignment).toMatchObject({ horizontal: "right", indent: 1 });
  });

  it("keeps a sheet's protection with its options and what the file had of the password", () => {
    const lockOf = (sheet: Worksheet) => (sheet as unknown as { sheetProtection: object }).sheetProtection;
    expect(lockOf(before)).toMatchObject({ sheet: true, algorithmName: "SHA-512" });
    expect(lockOf(after)).toEqual(lockOf(before));
  });
});

describe("passwords", () => {
  it("has the hash that files know, as openpyxl's hash_password gives it", () => {
    const words = ["test", "secret", "Fjordvik 2026", "a", ""];
    expect(words.map(passwordHash)).toEqual(["CBEB", "DAA7", "EDB3", "CE88", ""]);
  });

  it("protects sheet and workbook of a saved file with the word that was given, and with no other", async () => {
    const sample = new Uint8Array(readFileSync(join(__dirname, "data/everything.xlsx")));
    const saved = await throughTheEngine(sample, (book) => {
      book.protection.protectSheet(book.workbook.getSheets()[0]!.getSheetId(), { allowSort: true }, "secret");
      book.protection.protectStructure("test");
    });
    const opened = openXlsx(saved.bytes, "locked");
    const book = new Book(createEngine({ workbook: opened.workbook }));
    restoreBook(book, opened);
    const [sheetId] = opened.workbook.sheetOrder!;
    expect(book.protection.sheet(sheetId!)!.options).toMatchObject({ allowSort: true, allowFormatCells: false });
    expect(() => book.protection.unprotectSheet(sheetId!, "wrong")).toThrow("protected");
    book.protection.unprotectSheet(sheetId!, "secret");
    expect(book.protection.sheet(sheetId!)).toBeNull();
    expect(() => book.protection.unprotectStructure("")).toThrow("protected");
    book.protection.unprotectStructure("test");
    expect(book.protection.isStructureProtected).toBe(false);
    book.dispose();
  });
});
