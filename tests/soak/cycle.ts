import { analyses } from "../../src/analyses";
import type { Host } from "../../src/host";
import { readSelection } from "../../src/sheet/readSelection";
import { takeBack } from "../../src/sheet/takeBack";
import { writeReport } from "../../src/sheet/writeReport";
import { askGrid } from "../askGrid";

const trials = ["Left 1 (cm)", "Left 2 (cm)", "Left 3 (cm)", "Right 1 (cm)", "Right 2 (cm)", "Right 3 (cm)"];

/** A sheet of hops, one row per athlete, selected as a coach would select it. */
export const addHops = (athletes: number): Promise<void> =>
  Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.add("Hops");
    const rows = Array.from({ length: athletes }, (_, row) => [
      `Athlete ${row + 1}`,
      ...trials.map((_, column) => 150 + ((row * 37 + column * 11) % 40) + row / 1000),
    ]);
    const area = sheet.getRangeByIndexes(0, 0, athletes + 1, trials.length + 1);
    area.values = [["Athlete", ...trials], ...rows];
    sheet.activate();
    area.select();
    await context.sync();
  });

const asymmetry = analyses.find(({ id }) => id === "asymmetry")!;

/** Asks the selection, and writes the answer or renews it. */
export async function analyse() {
  const selection = await readSelection();
  if (selection.kind === "empty") throw new Error("Nothing is selected.");
  const { answer } = askGrid(asymmetry, selection.grid);
  if (!answer.ok) throw new Error(answer.reasons[0]!.message);
  const written = await writeReport(answer.value, "soak");
  if (written.kind !== "written") throw new Error(written.kind);
  return written.deed;
}

/** What a coach does all season: analyse, correct a result, analyse again, take both back. */
export async function cycle(host: Host, turn: number): Promise<void> {
  const first = await analyse();
  await select("Hops");
  await host.type(`Hops!B${2 + (turn % 20)}`, 150 + (turn % 17));
  const second = await analyse();
  for (const deed of [second, first]) {
    const { kind } = await takeBack(deed);
    if (kind !== "takenBack") throw new Error(`Turn ${turn}: ${kind}`);
  }
  await select("Hops");
}

const select = (sheet: string): Promise<void> =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getUsedRange();
    context.workbook.worksheets.getItem(sheet).activate();
    range.select();
    await context.sync();
  });
