import type { ReportColumn } from "../analyses/report";
import type { PlanRow } from "../store/planTable";
import { heading, type Page, type PagePart, quiet } from "./page";

const columns: readonly ReportColumn[] = [
  { key: "exercise", heading: "Exercise", meaning: "What to do." },
  { key: "sets", heading: "Sets", meaning: "Number of sets.", format: "0" },
  { key: "repetitions", heading: "Repetitions", meaning: "Amount of each set." },
  {
    key: "intensity",
    heading: "How hard",
    meaning: "Share of the estimated maximum, and repetitions left in reserve.",
  },
  { key: "load", heading: "Load (kg)", meaning: "Bar and plates together.", format: "0.0" },
  { key: "done", heading: "Done: load × repetitions of each set", meaning: "Room for a pencil." },
];

const everySession = "Warm up first. Stop at pain or when technique breaks down, and tell the coach.";

/** The sheet one athlete takes into one session, with room to write what was done. */
export function athleteSession(rows: readonly PlanRow[], week: number, session: number): Page | null {
  const own = rows.filter((row) => row.week === week && row.session === session);
  const [first] = own;
  if (!first) return null;
  return {
    sheet: `${first.athlete} ${week}.${session}`,
    title: first.athlete,
    subtitle: `Week ${week}, session ${session}`,
    parts: [
      tableOf(own),
      quiet(everySession),
      { kind: "text", text: "Rating of the session (0 to 10): ____   Minutes: ____", tone: "plain" },
    ],
  };
}

/** The same session of a group on one page: athlete by athlete. */
export function groupSession(rows: readonly PlanRow[], group: string, week: number, session: number): Page | null {
  const own = rows.filter((row) => row.week === week && row.session === session);
  if (own.length === 0) return null;
  const athletes = [...new Set(own.map(({ athlete }) => athlete))];
  return {
    sheet: `${group} ${week}.${session}`,
    title: group,
    subtitle: `Week ${week}, session ${session}`,
    parts: [
      ...athletes.flatMap((athlete): PagePart[] => [
        heading(athlete),
        tableOf(own.filter((row) => row.athlete === athlete)),
      ]),
      quiet(everySession),
    ],
  };
}

const tableOf = (rows: readonly PlanRow[]): PagePart => ({
  kind: "table",
  columns,
  rows: rows.map(({ exercise, sets, repetitions, intensity, load }) => [
    exercise,
    sets,
    repetitions,
    intensity,
    load,
    null,
  ]),
  toFillIn: true,
});
