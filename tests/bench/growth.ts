import { analyses } from "../../src/analyses";
import type { Cell, Grid } from "../../src/reading/grid";
import { askGrid } from "../askGrid";
import { longSheet } from "./longSheet";
import { milliseconds, secondsOf, verdict } from "./time";

const goal = 1.15;

/** (d) and (e): how reading and asking grow with the rows, and how much memory the largest takes. */
export async function growth(sizes: readonly number[]): Promise<void> {
  const asymmetry = analyses.find(({ id }) => id === "asymmetry")!;
  const rowsEach = longSheet(asymmetry, 1).length - 1;
  const seconds: number[] = [];
  console.log("(d) reading and asking (asymmetry), by rows");
  for (const rows of sizes) {
    const cells = longSheet(asymmetry, Math.ceil(rows / rowsEach)) as Cell[][];
    const grid: Grid = {
      ...{ sheet: "Test", firstRow: 0, firstColumn: 0, cells },
      ...{ hiddenRows: [], unselectedRows: [], unselectedColumns: [], mergedAreas: [] },
    };
    seconds.push(
      await secondsOf(rows > 200_000 ? 1 : 3, () => {
        const { answer } = askGrid(asymmetry, grid);
        if (!answer.ok) throw new Error(answer.reasons[0]!.message);
      }),
    );
    console.log(`  ${String(rows).padStart(9)} rows ${milliseconds(seconds.at(-1)!)}`);
  }
  // From ten thousand on: below that, what happens once weighs more than what happens for each row.
  const from = sizes.findIndex((rows) => rows >= 10_000);
  const exponent = Math.log(seconds.at(-1)! / seconds[from]!) / Math.log(sizes.at(-1)! / sizes[from]!);
  console.log(
    `  growth exponent from ${sizes[from]} rows on: ${exponent.toFixed(2)} ${verdict(exponent <= goal, `at most ${goal}`)}`,
  );
  console.log(`(e) memory peak: ${Math.round(process.resourceUsage().maxRSS / 1024)} MB`);
}
