import { Workbook } from "exceljs";
import type { Host } from "../../src/host";
import { openXlsx, saveBook } from "../../src/host/xlsx";
import { keepResults } from "../../src/sheet/keepResults";
import { makeEntrySheet } from "../../src/sheet/makeEntrySheet";
import { markCells } from "../../src/sheet/marks";
import { setUp } from "../../src/sheet/setUp";
import { writePages } from "../../src/sheet/writePages";
import { writePlan } from "../../src/sheet/writePlan";
import { writePriorities } from "../../src/sheet/writePriorities";
import { writeReport } from "../../src/sheet/writeReport";
import { planEntrySheet } from "../../src/store/entrySheet";
import { addSheet, openWorkbook } from "./openWorkbook";
import { plannedRow, priority } from "./plannedRows";
import { reportOf } from "./reportOf";
import { batteryTest, keptResult, squadMember } from "./storeRows";

/**
 * Texts that a spreadsheet program, a browser or a reader of files may take for more than text. The kinds of formula
 * injection are those of OWASP's page "CSV Injection" (from memory): = + - @ tab, and a formula behind a quote.
 */
const hostile: Readonly<Record<string, string>> = {
  equals: '=HYPERLINK("https://example.org","Ane")',
  plus: "+1+1",
  minus: "-2+3",
  at: "@SUM(A1:A9)",
  tab: "\t=1+1",
  lineBreak: "Ane\n=1+1",
  apostrophe: "'=1+1",
  html: "<img src=x onerror=alert(1)>",
  markup: "</t></si><si><t>&amp;]]>",
  control: "Ane\u0001\u0008Berg",
  escape: "_x0041_ne",
  rightToLeft: "\u202egreB enA\u202c",
  isolate: "\u2067Ane\u2069",
  number: "1e5",
  date: "1/2",
  truth: "TRUE",
  error: "#N/A!",
  longest: "ab".repeat(16_383),
};
const texts = Object.values(hostile);

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

/** Every cell of the workbook that holds something. */
const cells = () =>
  Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    const used = worksheets.items.map((sheet) => sheet.getUsedRangeOrNullObject().load("values,formulas"));
    await context.sync();
    return used.flatMap((range) =>
      range.isNullObject
        ? []
        : range.values.flatMap((row, r) =>
            row.flatMap((value, c) => (value === "" ? [] : [{ value, formula: range.formulas[r]![c] }])),
          ),
    );
  });

/** All of them stand in cells, none of which computes; and so they do in the saved file, read by another program. */
async function expectLiteral(wanted: readonly string[] = texts): Promise<void> {
  const standing = await cells();
  expect(standing.filter(({ value, formula }) => formula !== value)).toEqual([]);
  const values = new Set(standing.map(({ value }) => value));
  expect(wanted.filter((text) => !values.has(text))).toEqual([]);

  const { bytes, losses } = saveBook(host.book);
  expect(losses).toEqual([]);
  const read = new Workbook();
  await read.xlsx.load(bytes as unknown as ArrayBuffer);
  const inFile = new Set<string>();
  for (const sheet of read.worksheets) {
    sheet.eachRow((row) =>
      row.eachCell((cell) => {
        expect(cell.formula).toBeUndefined();
        expect(cell.hyperlink).toBeUndefined();
        if (typeof cell.value === "string") inFile.add(cell.value);
      }),
    );
  }
  // That program leaves the format's spelling of control characters as it stands in the file.
  const spelled = wanted.filter((text) => text !== hostile.control && text !== hostile.escape);
  expect(spelled.filter((text) => !inFile.has(text))).toEqual([]);
  const again = JSON.stringify(openXlsx(bytes, "again").workbook);
  expect(wanted.filter((text) => !again.includes(JSON.stringify(text)))).toEqual([]);
}

describe("text that is not only text is written literally", () => {
  it("in the tables of squad and results", async () => {
    await setUp({ squad: texts.map((text) => squadMember(text, { role: text, notes: text })) });
    await keepResults(
      texts.map((text, index) => keptResult({ athlete: text, test: text, trial: index + 1, source: text })),
    );
    await expectLiteral();
  });

  it("in a report, its lines, its chart and its renewal", async () => {
    const report = reportOf(
      texts.map((text, index) => [text, 150 + index, text]),
      { summary: texts.slice(0, -1), cautions: texts.slice(0, -1) },
    );
    await writeReport(report, "key");
    await writeReport(report, "key");
    await expectLiteral();
    const [chart] = host.charts.list();
    expect(host.charts.dataOf(chart!).categories).toEqual(texts);
  });

  it("in priorities, plan and their renewal", async () => {
    for (let times = 1; times <= 2; times += 1) {
      await writePriorities(texts.map((text, index) => priority(text, index + 1, text)));
      await writePlan(texts.map((text) => plannedRow(text, text, { why: text })));
    }
    await expectLiteral();
  });

  it("on the sheet of a test day", async () => {
    const short = texts.slice(0, -1);
    const tests = [batteryTest("Hop", { unit: "cm", protocol: "=1+1", caution: "@x" })];
    await makeEntrySheet(
      planEntrySheet({ date: "2026-08-11", tests, athletes: short.map((text) => squadMember(text, { role: text })) }),
    );
    await expectLiteral(short);
  });

  it("on pages for athletes, under a name that a sheet can have", async () => {
    for (const text of texts) {
      const { stopped } = await writePages([
        { sheet: text, title: text, subtitle: text, parts: [{ kind: "heading", text: text.slice(0, 200) }] },
      ]);
      expect({ text: text.slice(0, 40), stopped }).toEqual({ text: text.slice(0, 40), stopped: null });
    }
    // Lines of a page are broken and trimmed; what stays is literal all the same.
    await expectLiteral(texts.filter((text) => text.length < 1000 && !/[\t\n]/.test(text)));
  });

  it("in notes", async () => {
    await addSheet(
      "Hops",
      texts.map(() => [1]),
    );
    await markCells(
      texts.map((why, index) => ({ cell: `A${index + 1}`, why })),
      "Hops",
    );
    const notes = await Excel.run(async (context) => {
      const { notes } = context.workbook.worksheets.getItem("Hops");
      notes.load("items/content");
      await context.sync();
      return notes.items.map(({ content }) => content);
    });
    expect(notes).toEqual(texts.map((text) => `Check: ${text.length <= 1000 ? text : `${text.slice(0, 999)}…`}`));
    await expectLiteral([]);
    expect(JSON.stringify(openXlsx(saveBook(host.book).bytes, "again").workbook.resources)).toContain(hostile.html);
  });
});
