import type { Direction, Reduction } from "../engine/trials/reduction";
import { say } from "../language/say";
import { type MeasureKey, measureOf, seriesName } from "../reading/measures";
import { numberFrom, unitSymbol } from "./cellSchemas";
import { choice, measure, name, number, open, text } from "./columnKinds";
import { nameKey } from "./sameName";
import { readStoreTable, type StoreRemark, type StoreTable, type TableCells } from "./storeTable";

/** One number that the squad is tested on, as the coach has set it up: a test, or one measure of a test. */
export type BatteryTest = {
  readonly test: string;
  readonly measure: MeasureKey | null;
  /** Physical quality it stands for, in the coach's words, e.g. "Speed". */
  readonly quality: string | null;
  /** Symbol of the unit. */
  readonly unit: string | null;
  readonly direction: Direction;
  readonly sides: 1 | 2;
  readonly trials: number;
  readonly reduction: Reduction;
  /** Plausible range, in `unit`. Outside is a question, not an error. */
  readonly lowest: number | null;
  readonly highest: number | null;
  readonly retestAfterWeeks: number | null;
  readonly protocol: string | null;
  readonly caution: string | null;
};

const directionWords: Readonly<Record<Direction, string>> = { higher: say`higher`, lower: say`lower` };

const scoreWords: Readonly<Record<Reduction, string>> = {
  best: say`best`,
  mean: say`mean`,
  median: say`median`,
  meanOfBestTwo: say`mean of best two`,
};

export const batteryTable: StoreTable<BatteryTest> = {
  id: "battery",
  name: "Tapeline_Battery",
  sheet: say`Battery`,
  title: say`Test battery`,
  use: say`One row per number: a test, or one measure of a test. A measure computed from others (an estimated maximum) is listed, never typed in.`,
  columns: {
    test: {
      ...name,
      heading: say`Test`,
      meaning: say`Name of the test as it stands on your test sheets.`,
      width: 24,
    },
    measure: {
      ...measure,
      meaning: say`What the number is, where a test gives several (load and repetitions); else empty.`,
    },
    quality: {
      ...text,
      heading: say`Quality`,
      meaning: say`The physical quality the test stands for. Tests of one quality count together.`,
      width: 20,
    },
    unit: {
      ...open,
      heading: say`Unit`,
      meaning: say`Unit in which results are kept, e.g. cm, s, kg. Empty: the usual unit of the measure.`,
      format: "@",
      width: 8,
      cell: unitSymbol(),
      absent: ({ measure }) => (measure ? measureOf(measure).unit : null),
    },
    direction: {
      heading: say`Better`,
      meaning: say`Which results are better: higher (a jump) or lower (a sprint time).`,
      ...choice(directionWords, say`neither higher nor lower`),
      width: 9,
      absent: ({ measure }) => (measure ? measureOf(measure).better : null) ?? "higher",
    },
    sides: {
      heading: say`Sides`,
      meaning: say`2 where left and right are tested by themselves, else 1.`,
      format: "0",
      width: 8,
      choices: ["1", "2"],
      cell: numberFrom(1, 2, { whole: true }).transform((sides) => sides as 1 | 2 | null),
      absent: () => 1,
      write: (sides) => sides,
    },
    trials: {
      heading: say`Trials`,
      meaning: say`How many trials each athlete has, on each side.`,
      format: "0",
      width: 8,
      cell: numberFrom(1, 20, { whole: true }),
      absent: () => 1,
      write: (trials) => trials,
    },
    reduction: {
      heading: say`Score`,
      meaning: say`How the trials of a day become one score: best, mean, median, or mean of best two.`,
      ...choice(scoreWords, say`no score; best, mean, median or mean of best two is needed`),
      width: 16,
      absent: () => "best",
    },
    lowest: {
      ...number("General", 0, 1e6),
      heading: say`Lowest`,
      meaning: say`Lowest plausible result, in the unit of the row. A result below is asked about, not refused.`,
      width: 9,
    },
    highest: {
      ...number("General", 0, 1e6),
      heading: say`Highest`,
      meaning: say`Highest plausible result, in the unit of the row. A result above is asked about, not refused.`,
      width: 9,
    },
    retestAfterWeeks: {
      ...number("0", 1, 104),
      heading: say`Retest (weeks)`,
      meaning: say`After how many weeks the test is due again.`,
      width: 9,
    },
    protocol: {
      ...text,
      heading: say`Protocol`,
      meaning: say`How the test is done, the same way each time. Printed on entry sheets.`,
      width: 50,
    },
    caution: {
      ...text,
      heading: say`Caution`,
      meaning: say`What to mind before and during the test. Printed on entry sheets.`,
      width: 50,
    },
  },
  once: ({ test, measure }) => ({
    key: nameKey(seriesName(test, measure)),
    called: `“${seriesName(test, measure)}”`,
  }),
};

export function readBattery(cells: TableCells): {
  battery: readonly BatteryTest[];
  remarks: readonly StoreRemark[];
} {
  const { rows, remarks } = readStoreTable(batteryTable, cells);
  return { battery: rows.map(({ row }) => row), remarks };
}

/** Whether results of it are typed in; the others are computed from these. */
export const isEntered = ({ measure }: BatteryTest): boolean => measure === null || !measureOf(measure).derived;
