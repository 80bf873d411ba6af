import { say } from "../language/say";
import { choice, date, name, number, text } from "./columnKinds";
import { nameKey } from "./sameName";
import { readStoreTable, type StoreRemark, type StoreTable, type TableCells } from "./storeTable";

/** One session of one athlete. */
export type DiaryEntry = {
  /** ISO day. */
  readonly date: string;
  readonly athlete: string;
  readonly session: string | null;
  /** "no": the athlete was not there, which counts as no load. */
  readonly attended: "yes" | "no";
  readonly minutes: number | null;
  /** Perceived exertion of the session, 0 to 10. */
  readonly rating: number | null;
  readonly throws: number | null;
  readonly jumps: number | null;
  readonly sprints: number | null;
  readonly deliveries: number | null;
};

const counted = (heading: string, meaning: string) => ({
  ...number("0", 0, 2000, { whole: true }),
  heading,
  meaning,
  width: 10,
});

export const diaryTable: StoreTable<DiaryEntry> = {
  id: "diary",
  name: "Tapeline_Diary",
  sheet: say`Diary`,
  title: say`Diary`,
  use: say`One row per athlete and session. Ask for the rating half an hour after it. A day without a row counts as a rest day.`,
  columns: {
    date: { ...date, heading: say`Date`, meaning: say`Day of the session.`, width: 12 },
    athlete: { ...name, heading: say`Athlete`, meaning: say`Name as in the squad.`, width: 24 },
    session: { ...text, heading: say`Session`, meaning: say`What it was, in your words.`, width: 20 },
    attended: {
      heading: say`Attended`,
      meaning: say`Yes or no; empty counts as yes.`,
      ...choice({ yes: say`yes`, no: say`no` }, say`neither yes nor no`),
      width: 10,
      absent: () => "yes",
    },
    minutes: { ...number("0", 0, 600), heading: say`Minutes`, meaning: say`Length of the session.`, width: 9 },
    rating: {
      ...number("0.0", 0, 10),
      heading: say`Rating (0-10)`,
      meaning: say`How hard the whole session was, as the athlete says: 0 rest, 10 maximal.`,
      width: 9,
    },
    throws: counted(say`Throws`, say`How many throws at full effort.`),
    jumps: counted(say`Jumps`, say`How many jumps at full effort.`),
    sprints: counted(say`Sprints`, say`How many sprints at full effort.`),
    deliveries: counted(say`Deliveries`, say`How many deliveries bowled or pitched.`),
  },
  once: () => null,
};

export function readDiary(cells: TableCells): { diary: readonly DiaryEntry[]; remarks: readonly StoreRemark[] } {
  const { rows, remarks } = readStoreTable(diaryTable, cells);
  return { diary: rows.map(({ row }) => row), remarks };
}

export type DiaryMerge = {
  readonly added: readonly DiaryEntry[];
  /** Entries that stand already, with the same numbers. */
  readonly same: number;
  /** Entries that stand with other numbers: the coach must say which holds, and nothing is written of these. */
  readonly differing: readonly { readonly standing: DiaryEntry; readonly fresh: DiaryEntry }[];
};

/**
 * What fresh entries mean for those that stand. An entry is known by its day, athlete and session; of several by one
 * name on one day, those that say the same are the same, whatever their order.
 */
export function mergeDiary(standing: readonly DiaryEntry[], fresh: readonly DiaryEntry[]): DiaryMerge {
  const left = new Map<string, Map<string, DiaryEntry[]>>();
  for (const entry of standing) {
    const alike = left.get(entryKey(entry)) ?? new Map<string, DiaryEntry[]>();
    alike.set(numbersOf(entry), [...(alike.get(numbersOf(entry)) ?? []), entry]);
    left.set(entryKey(entry), alike);
  }
  const others = fresh.filter((entry) => left.get(entryKey(entry))?.get(numbersOf(entry))?.pop() === undefined);
  const added: DiaryEntry[] = [];
  const differing: { standing: DiaryEntry; fresh: DiaryEntry }[] = [];
  for (const entry of others) {
    const stands = [...(left.get(entryKey(entry))?.values() ?? [])].find(({ length }) => length > 0)?.pop();
    if (stands === undefined) added.push(entry);
    else differing.push({ standing: stands, fresh: entry });
  }
  return { added, same: fresh.length - others.length, differing };
}

const entryKey = ({ date, athlete, session }: DiaryEntry): string =>
  [date, nameKey(athlete), nameKey(session ?? "")].join("|");

const numbersOf = ({ attended, minutes, rating, throws, jumps, sprints, deliveries }: DiaryEntry): string =>
  [attended, minutes, rating, throws, jumps, sprints, deliveries].join("|");
