import { groupBy } from "../analyses/groupBy";
import type { ReportColumn } from "../analyses/report";
import { say } from "../language/say";
import type { Exercise } from "../store/exercises";
import type { PlanRow } from "../store/planTable";
import { isSameWording } from "../store/sameName";
import { heading, type Page, type PagePart, paragraph, quiet } from "./page";

const columns: readonly ReportColumn[] = [
  { key: "exercise", heading: say`Exercise`, meaning: say`What to do.` },
  { key: "sets", heading: say`Sets`, meaning: say`Number of sets.`, format: "0" },
  { key: "repetitions", heading: say`Repetitions`, meaning: say`Amount of each set.` },
  {
    key: "intensity",
    heading: say`How hard`,
    meaning: say`Share of the estimated maximum, and repetitions left in reserve.`,
  },
  { key: "load", heading: say`Load (kg)`, meaning: say`Bar and plates together.`, format: "0.0" },
  { key: "done", heading: say`Done, set by set`, meaning: say`Load and repetitions of each set: room for a pencil.` },
];

const everySession = say`Warm up first. Stop at pain or when technique breaks down, and tell the coach.`;

/** The sheet one athlete takes into one session, with room to write what was done; null where nothing is planned. */
export function athleteSession(
  rows: readonly PlanRow[],
  week: number,
  session: number,
  exercises: readonly Exercise[] = [],
): Page | null {
  const own = rowsOf(rows, week, session);
  return sessionPage(own, own[0]?.athlete ?? "", [
    tableOf(own, hasLoads(own)),
    ...cautionsOn(own, exercises),
    paragraph(say`Rating of the session (0 to 10): ____   Minutes: ____`),
  ]);
}

/** The same session of a group on one page: athlete by athlete. */
export function groupSession(
  rows: readonly PlanRow[],
  group: string,
  week: number,
  session: number,
  exercises: readonly Exercise[] = [],
): Page | null {
  const own = rowsOf(rows, week, session);
  const byAthlete = groupBy(own, ({ athlete }) => athlete);
  return sessionPage(own, group, [
    ...[...byAthlete].flatMap(([athlete, planned]) => [heading(athlete), tableOf(planned, hasLoads(own))]),
    ...cautionsOn(own, exercises),
  ]);
}

/** Rows of a session that are to be done: with no sets, the coach has left one out. */
const rowsOf = (rows: readonly PlanRow[], week: number, session: number): PlanRow[] =>
  rows.filter((row) => row.week === week && row.session === session && row.sets !== 0);

/** The page of a session's rows; null where there are none. */
function sessionPage([first]: readonly PlanRow[], title: string, parts: readonly PagePart[]): Page | null {
  if (!first) return null;
  const { week, session, begins } = first;
  return {
    ...{ sheet: `${title} ${week}.${session}`, title, parts },
    subtitle: say`Week ${week} (from ${begins}), session ${session}`,
  };
}

/** What to mind in every session, and in those exercises of this one that say so: each caution once. */
function cautionsOn(rows: readonly PlanRow[], exercises: readonly Exercise[]): PagePart[] {
  const planned = exercises.filter(({ exercise }) => rows.some((row) => isSameWording(row.exercise, exercise)));
  const cautions = [...new Set(planned.flatMap(({ caution }) => caution ?? []))];
  return [
    quiet(everySession),
    ...cautions.map((caution) => {
      const named = planned.filter((one) => one.caution === caution).map(({ exercise }) => exercise);
      return quiet(`${named.join(", ")}: ${caution}`);
    }),
  ];
}

/** Where no load is reckoned on a page, the pencil gets its room. */
const hasLoads = (rows: readonly PlanRow[]): boolean => rows.some(({ load }) => load !== null);

const tableOf = (rows: readonly PlanRow[], withLoads: boolean): PagePart => ({
  kind: "table",
  columns: columns.filter(({ key }) => withLoads || key !== "load"),
  rows: rows.map(({ exercise, sets, repetitions, intensity, load }) => [
    ...[exercise, sets, repetitions, intensity],
    ...(withLoads ? [load] : []),
    null,
  ]),
  toFillIn: true,
});
