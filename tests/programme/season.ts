import { Workbook } from "exceljs";
import { isLift, battery as sampleBattery, type TestKey, testKeys } from "../../sample-workbooks/battery";
import { season } from "../../sample-workbooks/season";
import { squad as sampleSquad } from "../../sample-workbooks/squad";
import { exerciseLibrary } from "../../src/programme/exerciseLibrary";
import type { Cell, Grid } from "../../src/reading/grid";
import type { MeasureKey } from "../../src/reading/measures";
import { readResults } from "../../src/reading/readResults";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import type { Background } from "../../src/store/background";
import type { BatteryTest } from "../../src/store/battery";
import type { Exercise } from "../../src/store/exercises";
import { type KeptResult, mergeKept, type StandingResult, toKept } from "../../src/store/keptResults";
import { days } from "../season/scores";

/* The season of the sample workbook as our own reading gets it, without a workbook program. */

/** A sheet as our reading gets it: days as serial numbers of the 1900 date system (day 0 is 30 December 1899). */
function gridOf(workbook: Workbook, name: string): Grid {
  const sheet = workbook.getWorksheet(name)!;
  const cells = Array.from({ length: sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.columnCount }, (_, column): Cell => {
      const { value } = sheet.getCell(row + 1, column + 1);
      return value instanceof Date ? value.getTime() / 86_400_000 + 25_569 : ((value ?? null) as Cell);
    }),
  );
  const nothing = { hiddenRows: [], unselectedRows: [], unselectedColumns: [], mergedAreas: [] };
  return { sheet: name, firstRow: 0, firstColumn: 0, cells, ...nothing };
}

async function sampleWorkbook(): Promise<Workbook> {
  const workbook = new Workbook();
  await workbook.xlsx.load((await season()) as unknown as ArrayBuffer);
  return workbook;
}

/** How the club tests, as a coach would set it up: the quality, which way is better, sides, trials and their mean. */
function batteryTest(key: TestKey, measure: MeasureKey | null, more: Partial<BatteryTest> = {}): BatteryTest {
  const { quality, better, sides, trials, heading, unit } = sampleBattery[key];
  return {
    ...{
      test: heading.replace(/ (flight|contact) time$/, ""),
      measure,
      quality,
      unit,
      direction: better,
      sides,
      trials,
    },
    ...{ reduction: "mean", lowest: null, highest: null, retestAfterWeeks: 8, protocol: null, caution: null },
    ...more,
  };
}

const battery: readonly BatteryTest[] = testKeys.flatMap((key): BatteryTest[] => {
  if (isLift(key)) return [batteryTest(key, "estimatedMaximum")];
  if (key === "sprint") return [batteryTest(key, "time30")];
  if (key === "countermovementJump") return [batteryTest(key, "flightTime")];
  if (key === "dropJumpContact") return [];
  if (key === "dropJumpFlight") return [batteryTest(key, "reactiveStrengthIndex", { unit: "m/s" })];
  return [batteryTest(key, null)];
});

export const background: Background = {
  squad: sampleSquad.map(({ name, role, team, birthYear, bodyMass, stature }) => ({
    ...{ athlete: name, role, group: team, dominantSide: null, birthYear, bodyMass, stature, notes: null },
  })),
  battery,
  weights: [],
};

/** The exercises, with the qualities as the club calls them. */
const clubsName: Readonly<Record<string, string>> = {
  "Lower-body power": "Jumping power",
  "Upper-body power": "Throwing power",
  Strength: "Maximal strength",
  "Muscle capacity": "Trunk and leg capacity",
};

export const exercises: readonly Exercise[] = exerciseLibrary.map((exercise) => ({
  ...exercise,
  quality: clubsName[exercise.quality] ?? exercise.quality,
}));

export type Season = {
  readonly kept: readonly StandingResult[];
  /** Those before the block. */
  readonly before: readonly StandingResult[];
  readonly diary: Grid;
};

const standing = (rows: readonly KeptResult[]): StandingResult[] =>
  rows.map((row, offset) => ({ ...row, offset, cell: `Results!G${offset + 5}` }));

export async function readSeason(): Promise<Season> {
  const workbook = await sampleWorkbook();
  const kept = days.flatMap(({ sheet }) => {
    const grid = gridOf(workbook, sheet);
    const map = recogniseColumns(grid);
    return toKept(readResults(grid, map).results, { sheet, day: map.date }).kept;
  });
  const { added } = mergeKept([], kept);
  return {
    kept: standing(added),
    before: standing(added.filter(({ date }) => date < "2026-10-01")),
    diary: gridOf(workbook, "Diary"),
  };
}
