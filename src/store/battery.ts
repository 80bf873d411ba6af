import type { Direction, Reduction } from "../engine/trials/reduction";
import { type MeasureKey, measureOf, seriesName } from "../reading/measures";
import { choiceOf, numberFrom, unitSymbol } from "./cellSchemas";
import { measure, name, open, text } from "./columnKinds";
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

const scoreWords = {
  best: "best",
  mean: "mean",
  median: "median",
  "mean of best two": "meanOfBestTwo",
} as const satisfies Readonly<Record<string, Reduction>>;

const scoreWord = (reduction: Reduction): string =>
  Object.entries(scoreWords).find(([, value]) => value === reduction)![0];

export const batteryTable: StoreTable<BatteryTest> = {
  id: "battery",
  name: "Tapeline_Battery",
  sheet: "Battery",
  title: "Test battery",
  use: "One row per number: a test, or one measure of a test. A measure computed from others (an estimated maximum) is listed, never typed in.",
  columns: {
    test: {
      ...name,
      heading: "Test",
      meaning: "Name of the test as it stands on your test sheets.",
      width: 24,
    },
    measure: {
      ...measure,
      meaning: "What the number is, where a test gives several (load and repetitions); else empty.",
    },
    quality: {
      ...text,
      heading: "Quality",
      meaning: "The physical quality the test stands for. Tests of one quality count together.",
      width: 20,
    },
    unit: {
      ...open,
      heading: "Unit",
      meaning: "Unit in which results are kept, e.g. cm, s, kg. Empty: the usual unit of the measure.",
      format: "@",
      width: 8,
      cell: unitSymbol(),
      absent: ({ measure }) => (measure ? measureOf(measure).unit : null),
    },
    direction: {
      heading: "Better",
      meaning: "Which results are better: higher (a jump) or lower (a sprint time).",
      format: "@",
      width: 9,
      choices: ["higher", "lower"],
      cell: choiceOf({ higher: "higher", lower: "lower" }, "neither higher nor lower"),
      absent: ({ measure }) => (measure ? measureOf(measure).better : null) ?? "higher",
      write: (direction) => direction,
    },
    sides: {
      heading: "Sides",
      meaning: "2 where left and right are tested by themselves, else 1.",
      format: "0",
      width: 8,
      choices: ["1", "2"],
      cell: numberFrom(1, 2, { whole: true }).transform((sides) => sides as 1 | 2 | null),
      absent: () => 1,
      write: (sides) => sides,
    },
    trials: {
      heading: "Trials",
      meaning: "How many trials each athlete has, on each side.",
      format: "0",
      width: 8,
      cell: numberFrom(1, 20, { whole: true }),
      absent: () => 1,
      write: (trials) => trials,
    },
    reduction: {
      heading: "Score",
      meaning: "How the trials of a day become one score: best, mean, median, or mean of best two.",
      format: "@",
      width: 16,
      choices: Object.keys(scoreWords),
      cell: choiceOf<Reduction>(scoreWords, "no score; best, mean, median or mean of best two is needed"),
      absent: () => "best",
      write: scoreWord,
    },
    lowest: {
      ...open,
      heading: "Lowest",
      meaning: "Lowest plausible result, in the unit of the row. A result below is asked about, not refused.",
      format: "General",
      width: 9,
      cell: numberFrom(0, 1e6),
    },
    highest: {
      ...open,
      heading: "Highest",
      meaning: "Highest plausible result, in the unit of the row. A result above is asked about, not refused.",
      format: "General",
      width: 9,
      cell: numberFrom(0, 1e6),
    },
    retestAfterWeeks: {
      ...open,
      heading: "Retest (weeks)",
      meaning: "After how many weeks the test is due again.",
      format: "0",
      width: 9,
      cell: numberFrom(1, 104),
    },
    protocol: {
      ...text,
      heading: "Protocol",
      meaning: "How the test is done, the same way each time. Printed on entry sheets.",
      width: 50,
    },
    caution: {
      ...text,
      heading: "Caution",
      meaning: "What to mind before and during the test. Printed on entry sheets.",
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
