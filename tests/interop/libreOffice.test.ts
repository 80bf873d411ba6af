import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Cell, Workbook, type Worksheet } from "exceljs";
import { hopTest } from "../../sample-workbooks/hopTest";
import { createEngine, createHost } from "../../src/host";
import { openXlsx, saveBook } from "../../src/host/xlsx";
import { analyse, asText, convert, libreOffice, longest } from "./handToAndFro";

const sample = join(__dirname, "../../sample-workbooks/fjordvik-handball.xlsx");
const folder = mkdtempSync(join(tmpdir(), "tapeline-interop-"));
const at = (...names: string[]) => join(folder, ...names);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function open(path: string): Promise<Workbook> {
  const workbook = new Workbook();
  await workbook.xlsx.readFile(path);
  return workbook;
}

/** The rows below the headings of the written table, as LibreOffice holds them after its own calculation. */
function rowsOf(path: string, sheet: number, name: string): string[][] {
  convert(path, asText(sheet), folder);
  const text = readFileSync(path.replace(/\.xlsx$/, `-${name}.csv`), "utf8");
  const rows = text.split("\n").map((line) => line.split(";").map((cell) => cell.replace(/^"(.*)"$/, "$1")));
  return (
    rows
      .slice(rows.findIndex(([first]) => first === "Athlete") + 1)
      // Cautions and the summary stand below; a row of the table has its difference in the fourth column.
      .filter(
        ([first = "", , , difference = ""]) => first !== "" && difference !== "" && !Number.isNaN(Number(difference)),
      )
  );
}

/** Percentage difference of the best trials: 100 x (right - left) / larger (Bishop et al. 2018), by hand. */
function byHand(left: readonly number[], right: readonly number[]): number {
  const [l, r] = [Math.max(...left), Math.max(...right)];
  return (100 * (r - l)) / Math.max(l, r);
}

(libreOffice ? describe : describe.skip)(
  "a workbook made by LibreOffice, analysed by us, reopened by LibreOffice",
  () => {
    let alone: Workbook;
    let analysed: Workbook;

    beforeAll(async () => {
      const made = convert(join(__dirname, "data", "squad.fods"), "xlsx", folder);
      await analyse(made, "U18 hops!A3:H9", at("analysed.xlsx"));
      mkdirSync(at("again"));
      // Both go through the same program once more, so that what differs is what we changed.
      alone = await open(convert(made, "xlsx", at("again")));
      analysed = await open(convert(at("analysed.xlsx"), "xlsx", at("again")));
    }, 4 * longest);

    it(
      "has the result of every athlete",
      () => {
        const squad = alone.getWorksheet("U18 hops")!;
        const rows = rowsOf(at("analysed.xlsx"), 3, "Asymmetry");
        expect(rows.map(([athlete]) => athlete)).toEqual(
          expect.arrayContaining([4, 5, 6, 7, 8, 9].map((row) => squad.getCell(row, 1).value)),
        );
        for (let row = 4; row <= 9; row += 1) {
          const trials = [2, 3, 4, 5, 6, 7].map((column) => squad.getCell(row, column).value as number);
          const written = rows.find(([athlete]) => athlete === squad.getCell(row, 1).value)!;
          expect(Number(written[3])).toBeCloseTo(byHand(trials.slice(0, 3), trials.slice(3)), 8);
        }
      },
      longest,
    );

    it("has its sheets and names, and one sheet more", () => {
      const names = (workbook: Workbook) => workbook.worksheets.map((sheet) => sheet.name);
      expect(names(alone)).toEqual(["U18 hops", "Notes"]);
      expect(names(analysed)).toEqual(["U18 hops", "Notes", "Asymmetry"]);
      expect(alone.definedNames.getRanges("LeftTrials").ranges).toEqual(["'U18 hops'!$B$4:$D$9"]);
      expect(analysed.definedNames.getRanges("LeftTrials")).toEqual(alone.definedNames.getRanges("LeftTrials"));
    });

    it.each(["U18 hops", "Notes"])("has lost no value, formula, format, look or note of %s", (name) => {
      const before = contents(alone.getWorksheet(name)!);
      expect(Object.keys(before).length).toBeGreaterThan(1);
      expect(contents(analysed.getWorksheet(name)!)).toEqual(before);
    });

    it("has its locks, its links, and texts that are indented, turned and shrunk", () => {
      const notes = alone.getWorksheet("Notes")!;
      // That the file has them in the first place; that nothing changed is compared above.
      expect(notes.getCell("A2").alignment.indent).toBe(2);
      const lockedIn = (path: string) => {
        const { sheets, sheetOrder } = openXlsx(new Uint8Array(readFileSync(path)), "locks").workbook;
        return sheets![sheetOrder![1]!]!.cellData![1]![0]!.custom?.locked;
      };
      expect(["squad.xlsx", "analysed.xlsx"].map((name) => lockedIn(at("again", name)))).toEqual([false, false]);
      expect(notes.getCell("B2").alignment).toMatchObject({ textRotation: 45, shrinkToFit: true });
      expect(notes.getCell("A3").hyperlink).toBe("https://example.org/hops?a=1&b=2");
      const lockOf = (workbook: Workbook) =>
        (workbook.getWorksheet("Notes") as unknown as { sheetProtection?: object }).sheetProtection;
      expect(lockOf(alone)).toMatchObject({ sheet: true });
      expect(lockOf(analysed)).toEqual(lockOf(alone));
    });

    it("shows the values of its formulas", () => {
      const before = alone.getWorksheet("Notes")!.getCell("B1");
      expect(before.result).toBeCloseTo(2716.5 / 18, 8); // sum and count of the left trials of squad.fods, by hand
      expect(analysed.getWorksheet("Notes")!.getCell("B1").result).toBeCloseTo(2716.5 / 18, 8);
    });

    it(
      "still knows its table as ours, so that a rerun renews it",
      async () => {
        await analyse(at("again", "analysed.xlsx"), "U18 hops!A3:H9", at("renewed.xlsx"));
        const names = (await open(at("renewed.xlsx"))).worksheets.map((sheet) => sheet.name);
        expect(names).toEqual(["U18 hops", "Notes", "Asymmetry"]);
      },
      longest,
    );

    it("has its column widths, row heights and merged cells", () => {
      const [before, after] = [alone, analysed].map((workbook) => workbook.getWorksheet("U18 hops")!) as [
        Worksheet,
        Worksheet,
      ];
      // A width counts in characters, LibreOffice's in hundredths of a millimetre: half a pixel may be lost between.
      for (let column = 1; column <= 8; column += 1) {
        expect(after.getColumn(column).width).toBeCloseTo(before.getColumn(column).width!, 0);
      }
      expect(after.getRow(1).height).toBeCloseTo(before.getRow(1).height, 0);
      expect(before.model.merges).toEqual(["A1:D1"]);
      expect(after.model.merges).toEqual(before.model.merges);
    });
  },
);

(libreOffice ? describe : describe.skip)("the sample workbook, analysed by us", () => {
  it(
    "opens in LibreOffice with every athlete's result",
    async () => {
      await analyse(sample, "Hop test!A3:H29", at("sample.xlsx"));
      const { worksheets } = await open(at("sample.xlsx"));
      const place = worksheets.findIndex(({ name }) => name === "Asymmetry") + 1;
      const rows = rowsOf(at("sample.xlsx"), place, "Asymmetry");
      expect(rows).toHaveLength(26);
      for (const { athlete, left, right } of hopTest()) {
        expect(Number(rows.find(([name]) => name === athlete.name)![3])).toBeCloseTo(byHand(left, right), 8);
      }
    },
    2 * longest,
  );
});

(libreOffice ? describe : describe.skip)("a sheet set up for printing by us", () => {
  it(
    "is printed by LibreOffice as we said: paper, fitting, margins, area, titles, headers and breaks",
    async () => {
      const host = createHost(createEngine());
      await host.Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getActiveWorksheet();
        sheet.getRange("A1:F60").values = Array.from({ length: 60 }, (_, row) => [row, 1, 2, 3, 4, 5]);
        sheet.pageLayout.set({
          orientation: "Landscape",
          paperSize: "A4",
          centerHorizontally: true,
          printGridlines: true,
        });
        sheet.pageLayout.zoom = { horizontalFitToPages: 1 };
        sheet.pageLayout.setPrintMargins("Inches", { left: 0.5, top: 1 });
        sheet.pageLayout.setPrintArea("A1:F50");
        sheet.pageLayout.setPrintTitleRows("$1:$2");
        sheet.pageLayout.headersFooters.defaultForAllPages.centerFooter = "Page &P of &N";
        sheet.horizontalPageBreaks.add("A21");
        await context.sync();
      });
      writeFileSync(at("printed.xlsx"), saveBook(host.book).bytes);
      host.dispose();
      mkdirSync(at("printed"));
      // What LibreOffice understood is read from the file it writes in turn.
      const printed = readFileSync(convert(at("printed.xlsx"), "xlsx", at("printed")));
      const [setup] = Object.values(openXlsx(new Uint8Array(printed), "printed").pageSetups);
      expect(setup).toMatchObject({
        orientation: "Landscape",
        paper: 9,
        zoom: { across: 1, down: null },
        centerHorizontally: true,
        printGridlines: true,
        printArea: [{ row: 0, column: 0, rowCount: 50, columnCount: 6 }],
        titleRows: { start: 0, count: 2 },
        titleColumns: null,
        rowBreaks: [20],
      });
      expect(setup!.margins.left).toBeCloseTo(36, 0);
      expect(setup!.margins.top).toBeCloseTo(72, 0);
      expect(setup!.headers.odd.centerFooter).toMatch(/Page &P of &N$/);
    },
    2 * longest,
  );
});

/** Everything a cell holds and how it looks, by its address. */
function contents(sheet: Worksheet): Record<string, object> {
  const found: Record<string, object> = {};
  sheet.eachRow((row) => {
    row.eachCell((cell) => {
      found[cell.address] = contentOf(cell);
    });
  });
  return found;
}

const contentOf = ({ value, numFmt, font, fill, border, alignment, protection, note }: Cell): object => ({
  value,
  protection,
  numFmt,
  font: { bold: font?.bold, italic: font?.italic, size: font?.size, color: font?.color, name: font?.name },
  // Of a solid fill the second colour is never seen, and every program writes its own there.
  fill: fill?.type === "pattern" ? { pattern: fill.pattern, colour: fill.fgColor } : fill,
  border,
  alignment,
  note: typeof note === "object" ? note.texts?.map(({ text }) => text).join("") : note,
});
