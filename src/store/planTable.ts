import { say } from "../language/say";
import { dayNumber } from "../reading/days";
import { count, date, name, number, text } from "./columnKinds";
import { fingerprint } from "./fingerprint";
import { nameKey, wordingKey } from "./sameName";
import { readStoreTable, type StoreRemark, type StoreTable, type TableCells } from "./storeTable";

/** One exercise of one athlete in one session of a block. */
export type PlanRow = {
  readonly week: number;
  /** ISO day on which the week begins. */
  readonly begins: string;
  readonly session: number;
  readonly athlete: string;
  readonly exercise: string;
  readonly sets: number | null;
  /** Amount of a set with its unit, e.g. "5" or "20 m". */
  readonly repetitions: string | null;
  readonly intensity: string | null;
  /** Bar and plates together, kg. */
  readonly load: number | null;
  /** Contacts or metres of the whole exercise in the session; null where neither is counted. */
  readonly total: number | null;
  readonly why: string | null;
  /** Fingerprint of what we wrote into the row: a row that reads otherwise is the coach's. Null in rows of their own. */
  readonly asPlanned: string | null;
};

/** A row of the plan, before it stands in the workbook. */
export type PlannedRow = Omit<PlanRow, "asPlanned">;

/** What makes two rows the same exercise of the same athlete in the same session. */
export const planKey = ({ week, session, athlete, exercise }: PlannedRow): string =>
  [week, session, nameKey(athlete), wordingKey(exercise)].join("|");

/** The row with its fingerprint. */
export const asPlanned = (row: PlannedRow): PlanRow => ({ ...row, asPlanned: planMark(row) });

/** Whether it reads as we wrote it. */
export const isAsPlanned = (row: PlanRow): boolean => row.asPlanned === planMark(row);

const planMark = (row: PlannedRow): string =>
  fingerprint([
    ...[row.week, row.begins, row.session, row.athlete, row.exercise, row.sets, row.repetitions],
    ...[row.intensity, row.load, row.total, row.why],
  ]);

/** Whether its week was over before an ISO day: it then tells what was planned, and is planned anew no more. */
export const isOver = ({ begins }: Pick<PlanRow, "begins">, day: string): boolean =>
  dayNumber(begins) + 7 <= dayNumber(day);

export const planTable: StoreTable<PlanRow> = {
  id: "plan",
  name: "Tapeline_Plan",
  sheet: say`Plan`,
  title: say`Plan`,
  use: say`One row per athlete, session and exercise. A row you have changed stays as it is when the block is planned anew; weeks that are over stay too, as a record.`,
  columns: {
    week: { ...count(1, 52), heading: say`Week`, meaning: say`Week of the block.`, width: 9 },
    begins: { ...date, heading: say`Begins`, meaning: say`Day on which the week begins.`, width: 12 },
    session: { ...count(1, 14), heading: say`Session`, meaning: say`Session of the week.`, width: 12 },
    athlete: { ...name, heading: say`Athlete`, meaning: say`Name as in the squad.`, width: 24 },
    exercise: { ...name, heading: say`Exercise`, meaning: say`As in the table of exercises.`, width: 30 },
    sets: {
      ...number("0", 0, 50, { whole: true }),
      heading: say`Sets`,
      meaning: say`Number of sets; 0 leaves it out.`,
      width: 9,
    },
    repetitions: { ...text, heading: say`Repetitions`, meaning: say`Amount of each set, with its unit.`, width: 24 },
    intensity: {
      ...text,
      heading: say`How hard`,
      meaning: say`Share of the estimated maximum, and repetitions left in reserve.`,
      width: 24,
    },
    load: { ...number("0.0", 0, 500), heading: say`Load (kg)`, meaning: say`Bar and plates together.`, width: 10 },
    total: {
      ...number("0", 0, 100_000),
      heading: say`Contacts or metres`,
      meaning: say`Of the whole exercise in this session, both sides together.`,
      width: 11,
    },
    why: { ...text, heading: say`Why`, meaning: say`The priority behind it.`, width: 50 },
    asPlanned: {
      ...text,
      heading: say`As planned`,
      meaning: say`The mark by which a row is known as planned. Change the others; clear this to make the row your own.`,
      width: 12,
    },
  },
  once: () => null,
};

export function readPlan(cells: TableCells): { plan: readonly PlanRow[]; remarks: readonly StoreRemark[] } {
  const { rows, remarks } = readStoreTable(planTable, cells);
  return { plan: rows.map(({ row }) => row), remarks };
}
