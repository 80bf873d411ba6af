/**
 * `npm run bench:host`: how long the embedded host takes to open a large workbook, and to read 50,000 cells through
 * the API in one round trip, held against reading the same cells from its engine directly.
 */
import { median } from "../../src/engine/moments";
import { createEngine, createHost } from "../../src/host";
import { openXlsx, restoreBook, saveXlsx } from "../../src/host/xlsx";
import { openingTimes } from "./inThePage";
import { milliseconds, secondsOf } from "./time";

const goal = { openSeconds: 2, ratio: 1.5 };
const rounds = 15;

void main().then(() => process.exit());

async function main(): Promise<void> {
  const bytes = await largeWorkbook(2000, 20);
  const list = (seconds: readonly number[]) => seconds.map((each) => `${each.toFixed(2)} s`).join(", ");
  const opened: { seconds: number; work: number }[] = [];
  for (let round = 0; round < 3; round += 1) {
    const before = process.cpuUsage();
    const seconds = await secondsOf(1, () => open(bytes));
    const { user, system } = process.cpuUsage(before);
    opened.push({ seconds, work: (user + system) / 1e6 });
  }
  console.log(`Opening a workbook of 2,000 rows and 20 columns (${kilobytes(bytes)} kB), three times:`);
  console.log(`  ${list(opened.map(({ seconds }) => seconds))}   (goal: below ${goal.openSeconds} s)`);
  console.log(`  processor time of all threads ${list(opened.map(({ work }) => work))}`);

  const inPage = await openingTimes(bytes, 3);
  if (inPage) {
    console.log("Opening it in the page, which stands already, three times (Chromium):");
    console.log(
      `  until the grid can be used ${list(inPage.map(({ grid }) => grid))}   (goal: below ${goal.openSeconds} s)`,
    );
    console.log(`  of which the page itself was at work ${list(inPage.map(({ work }) => work))}`);
    console.log(`  until the task pane is there ${list(inPage.map(({ pane }) => pane))}`);
  } else {
    console.log("Opening it in the page was NOT measured: that needs Chromium and a build (npm run build).");
  }

  const { api, call, cells } = await reading(2500, 20);
  const against = (seconds: readonly number[]) => (median(api) / median(seconds)).toFixed(2);
  console.log(`Reading 50,000 cells, medians of ${rounds} rounds, in turns:`);
  console.log(`  API, one sync                    ${milliseconds(median(api))}`);
  console.log(
    `  engine, its own call for a range ${milliseconds(median(call))}   ratio ${against(call)} (goal: at most ${goal.ratio})`,
  );
  console.log(`  engine, cell by cell             ${milliseconds(median(cells))}   ratio ${against(cells)}`);
}

/** A workbook of names, numbers with decimals, and formulas over their rows, as an .xlsx file. */
async function largeWorkbook(rowCount: number, columnCount: number): Promise<Uint8Array> {
  const cell = (row: number, column: number) => {
    if (column === 0) return { v: `Athlete ${row + 1}`, t: 1 };
    if (column === columnCount - 1) return { f: `=MAX(B${row + 1}:G${row + 1})`, v: 200, t: 2 };
    return { v: 120 + ((row * 37 + column * 11) % 800) / 10, t: 2 };
  };
  const rows = Array.from({ length: rowCount }, (_, row) =>
    Object.fromEntries(Array.from({ length: columnCount }, (_, column) => [column, cell(row, column)])),
  );
  const { bytes } = saveXlsx({
    snapshot: {
      sheetOrder: ["sheet"],
      sheets: { sheet: { id: "sheet", name: "Results", rowCount, columnCount, cellData: { ...rows } } },
    },
    activeSheetId: "sheet",
    shownFormula: (formula) => formula,
    spillOf: () => undefined,
    charts: [],
    pageSetups: new Map(),
    lockOf: () => null,
    structure: null,
    state: { settings: {}, customProperties: {}, documentProperties: {}, sheetProperties: {}, xmlParts: [] },
  });
  return bytes;
}

/** From the bytes of the file to a workbook whose formulas all have their values. */
async function open(bytes: Uint8Array) {
  const opened = openXlsx(bytes, "large");
  const engine = createEngine({ workbook: opened.workbook });
  const host = createHost(engine);
  restoreBook(host.book, opened);
  await host.settle();
  return host;
}

async function reading(rowCount: number, columnCount: number) {
  const host = await open(await largeWorkbook(rowCount, columnCount));
  const throughApi = () =>
    host.Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Results").getRangeByIndexes(0, 0, rowCount, columnCount);
      range.load("values");
      await context.sync();
      return range.values;
    });
  const sheet = host.book.api.getActiveWorkbook()!.getActiveSheet();
  const byCall = async () => sheet.getRange(0, 0, rowCount, columnCount).getValues();
  const matrix = sheet.getSheet().getCellMatrix();
  const byCell = async () =>
    Array.from({ length: rowCount }, (_, row) =>
      Array.from({ length: columnCount }, (_, column) => matrix.getValue(row, column)?.v ?? ""),
    );
  const [shown, ...held] = [await throughApi(), await byCall(), await byCell()].map((values) => JSON.stringify(values));
  if (held.some((values) => values !== shown)) throw new Error("The API and the engine give different values.");

  const times = { api: [] as number[], call: [] as number[], cells: [] as number[] };
  for (let round = 0; round < rounds; round += 1) {
    times.api.push(await secondsOf(1, throughApi));
    times.call.push(await secondsOf(1, byCall));
    times.cells.push(await secondsOf(1, byCell));
  }
  return times;
}

const kilobytes = (bytes: Uint8Array): number => Math.round(bytes.length / 1000);
