import { analyses } from "../../src/analyses";
import type { AnyAnalysis } from "../../src/analyses/analysis";
import type { Report } from "../../src/analyses/report";
import { createEngine, createHost } from "../../src/host";
import { readSelection } from "../../src/sheet/readSelection";
import { takeBack } from "../../src/sheet/takeBack";
import { writeReport } from "../../src/sheet/writeReport";
import { askGrid } from "../askGrid";
import { longSheet, type SheetCell } from "./longSheet";
import { milliseconds, ratio, secondsOf, verdict } from "./time";

/** (a): each analysis, from selection to written table, against reading and writing the same cells with nothing between. */
export async function analysesAgainstCells(sizes: readonly number[], only?: string): Promise<void> {
  console.log("(a) reading, asking and writing, against reading and writing the same cells by the API alone");
  for (const athletes of sizes) {
    for (const analysis of analyses.filter(({ id }) => only === undefined || id === only))
      await one(analysis, athletes);
  }
}

const goal = 1.25;

async function one(analysis: AnyAnalysis, athletes: number): Promise<void> {
  const engine = createEngine();
  const host = createHost(engine);
  host.install(globalThis);
  const cells = longSheet(analysis, athletes);
  await fill(cells);
  const rounds = athletes > 5000 ? 1 : 3;
  let report: Report | null = null;
  let syncs = 0;
  let thinking = 0;
  const ours = await secondsOf(rounds, async () => {
    const before = host.syncs;
    const selection = await readSelection();
    const start = performance.now();
    report = ask(analysis, selection);
    thinking = (performance.now() - start) / 1000;
    if (report === null) return;
    const written = await writeReport(report, "bench");
    syncs = host.syncs - before;
    if (written.kind === "written" && rounds > 1) await takeBack(written.deed);
  });
  const name = `${analysis.id.padEnd(14)}${String(athletes).padStart(7)}`;
  if (report === null) console.log(`  ${name}  refuses these results`);
  else {
    const bare = await secondsOf(rounds, () => readAndWrite(cells.length, cells[0]!.length, report!));
    const told = `${milliseconds(ours)} of which asking ${milliseconds(thinking)}; cells ${milliseconds(bare)}`;
    console.log(
      `  ${name}${told}  ratio${ratio(ours, bare)}, asking adds${ratio(thinking + bare, bare)} ${verdict(thinking + bare <= goal * bare, `at most ${goal}`)}; ${syncs} syncs`,
    );
  }
  host.dispose();
  engine.univer.dispose();
}

const fill = (cells: readonly SheetCell[][]): Promise<void> =>
  Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    for (let row = 0; row < cells.length; row += 10_000) {
      const part = cells.slice(row, row + 10_000);
      sheet.getRangeByIndexes(row, 0, part.length, part[0]!.length).values = part;
      await context.sync();
    }
    sheet.getRangeByIndexes(0, 0, cells.length, cells[0]!.length).select();
    await context.sync();
  });

function ask(analysis: AnyAnalysis, selection: Awaited<ReturnType<typeof readSelection>>): Report | null {
  if (selection.kind === "empty") return null;
  const { answer } = askGrid(analysis, selection.grid);
  return answer.ok ? answer.value : null;
}

/** The same cells in, and as many as the answer has out, on a sheet of their own that goes again. */
const readAndWrite = (rows: number, columns: number, { table }: Report): Promise<void> =>
  Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    const range = worksheets.getActiveWorksheet().getRangeByIndexes(0, 0, rows, columns);
    range.load("values");
    await context.sync();
    const sheet = worksheets.add("Bare");
    const values = [
      table.columns.map(({ heading }) => heading),
      ...table.rows.map((row) => row.map((cell) => cell ?? "")),
    ];
    sheet.getRangeByIndexes(0, 0, values.length, table.columns.length).values = values as unknown[][];
    await context.sync();
    sheet.delete();
    await context.sync();
  });
