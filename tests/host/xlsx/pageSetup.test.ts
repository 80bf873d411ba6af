import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Workbook, type Worksheet } from "exceljs";
import type { Book } from "../../../src/host/engine/book";
import { openXlsx } from "../../../src/host/xlsx";
import { throughTheEngine } from "./throughTheEngine";

const sample = new Uint8Array(readFileSync(join(__dirname, "data/everything.xlsx")));

/** Sets up the first sheet for printing as a coach's report would be. */
function setUpPage(book: Book): void {
  const sheetId = book.workbook.getSheets()[0]!.getSheetId();
  const { headers } = book.pageSetups.of(sheetId);
  book.pageSetups.change(sheetId, {
    orientation: "Landscape",
    paper: 9,
    zoom: { across: 1, down: null },
    margins: { top: 64.8, bottom: 72, left: 36, right: 43.2, header: 28.8, footer: 14.4 },
    centerHorizontally: true,
    printGridlines: true,
    blackAndWhite: true,
    firstPageNumber: 2,
    printErrors: "Dash",
    printArea: [{ row: 0, column: 0, rowCount: 4, columnCount: 5 }],
    titleRows: { start: 0, count: 1 },
    titleColumns: { start: 0, count: 2 },
    headers: {
      ...headers,
      odd: { ...headers.odd, leftHeader: "Hops && jumps", rightHeader: "&D", centerFooter: "&P of &N" },
      first: { ...headers.first, centerHeader: "Fjordvik HK" },
    },
    differentFirst: true,
    rowBreaks: [2],
    columnBreaks: [3],
  });
}

/** What we save is read back by exceljs, a program that is not ours. */
describe("how a sheet is printed", () => {
  let bytes: Uint8Array;
  let sheet: Worksheet;
  let read: Workbook;

  beforeAll(async () => {
    const saved = await throughTheEngine(sample, setUpPage);
    expect(saved.losses).toEqual([]);
    bytes = saved.bytes;
    read = new Workbook();
    await read.xlsx.load(bytes as unknown as ArrayBuffer);
    sheet = read.getWorksheet("Hops & jumps")!;
  });

  it("is saved as another program reads it", () => {
    expect(sheet.pageSetup).toMatchObject({
      orientation: "landscape",
      paperSize: 9,
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      margins: { left: 0.5, right: 0.6, top: 0.9, bottom: 1, header: 0.4, footer: 0.2 },
      horizontalCentered: true,
      showGridLines: true,
      blackAndWhite: true,
      firstPageNumber: 2,
      errors: "dash",
      printArea: "A1:E4",
      printTitlesRow: "1:1",
      printTitlesColumn: "A:B",
    });
    expect(sheet.headerFooter).toMatchObject({
      differentFirst: true,
      oddHeader: "&LHops && jumps&R&D",
      oddFooter: "&C&P of &N",
      firstHeader: "&CFjordvik HK",
    });
    expect(sheet.properties.tabColor).toEqual({ argb: "FF0F6B5C" });
  });

  it("comes back as it was saved, and another sheet stays as it was", async () => {
    const before = Object.values(openXlsx(sample, "sample").pageSetups);
    const after = Object.values(openXlsx(bytes, "saved").pageSetups);
    expect(after.slice(1)).toEqual(before.slice(1));
    expect(Object.values(openXlsx((await throughTheEngine(bytes)).bytes, "again").pageSetups)).toEqual(after);
    const [setup] = after;
    expect(setup).toMatchObject({
      zoom: { across: 1, down: null },
      printArea: [{ row: 0, column: 0, rowCount: 4, columnCount: 5 }],
      titleRows: { start: 0, count: 1 },
      titleColumns: { start: 0, count: 2 },
      rowBreaks: [2],
      columnBreaks: [3],
    });
    expect(setup!.headers.odd).toMatchObject({ leftHeader: "Hops && jumps", rightHeader: "&D" });
  });

  it("is read from what another program wrote", async () => {
    const other = new Workbook();
    const page = other.addWorksheet("Plan & print", {
      pageSetup: { paperSize: 11, orientation: "landscape", scale: 80, printArea: "A1:C9", printTitlesRow: "1:2" },
      headerFooter: { oddFooter: "Page &P&RLast" },
    });
    page.getCell("A1").value = 1;
    page.getRow(5).addPageBreak();
    const opened = openXlsx(new Uint8Array(await other.xlsx.writeBuffer()), "other");
    expect(Object.values(opened.pageSetups)).toEqual([
      expect.objectContaining({
        paper: 11,
        orientation: "Landscape",
        zoom: { scale: 80 },
        printArea: [{ row: 0, column: 0, rowCount: 9, columnCount: 3 }],
        titleRows: { start: 0, count: 2 },
        rowBreaks: [5],
        headers: expect.objectContaining({
          odd: expect.objectContaining({ centerFooter: "Page &P", rightFooter: "Last" }),
        }),
      }),
    ]);
  });
});
