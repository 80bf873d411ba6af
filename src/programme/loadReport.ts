import { groupBy } from "../analyses/groupBy";
import type { Report, ReportChart, ReportColumn, ReportValue } from "../analyses/report";
import { mean } from "../engine/moments";
import { exposures, type LoadWeek } from "./loadWeeks";

/** A week this many times the mean of the four before is named. Common practice, no source. */
export const risenTimes = 1.75;
const weeksBefore = 4;
/** With fewer weeks behind them, an athlete has no usual load yet. */
const fewestBefore = 3;

/** How a week compares with the athlete's own four before it; null where too few are known. */
export function timesUsual(weeks: readonly LoadWeek[], index: number): number | null {
  const before = weeks.slice(Math.max(0, index - weeksBefore), index).flatMap(({ total }) => total ?? []);
  const { total } = weeks[index]!;
  const usual = before.length < fewestBefore ? 0 : mean(before);
  return total === null || usual === 0 ? null : total / usual;
}

/** What a coach might want to know of a week, without alarm. */
function noteOn(weeks: readonly LoadWeek[], index: number): string {
  const { total, sessions, unrated } = weeks[index]!;
  if (sessions === 0) return "Nothing written down.";
  const notes: string[] = [];
  if (unrated > 0) {
    notes.push(`${unrated} session${unrated === 1 ? "" : "s"} without a rating: the load is too low by as much.`);
  }
  const times = timesUsual(weeks, index);
  if (times !== null && times >= risenTimes) {
    notes.push(`${times.toFixed(1)} times the mean of the weeks before: ask how she or he is.`);
  } else if (total !== null && times === null) notes.push("Too few weeks before to compare with.");
  return notes.join(" ");
}

const loadColumns: readonly ReportColumn[] = [
  { key: "athlete", heading: "Athlete", meaning: "Name as in the diary." },
  { key: "week", heading: "Week of", meaning: "Monday of the week, YYYY-MM-DD." },
  { key: "attended", heading: "Sessions", meaning: "Sessions the athlete was at.", format: "0" },
  { key: "load", heading: "Load", meaning: "Rating times minutes, added up over the week.", format: "0" },
  {
    key: "change",
    heading: "Change (%)",
    meaning: "From the week before, in percent of it.",
    format: "+0;-0;0",
  },
  {
    key: "monotony",
    heading: "Monotony",
    meaning: "Mean of the days over their standard deviation: high where all days are alike.",
    format: "0.00",
  },
  { key: "strain", heading: "Strain", meaning: "Load times monotony.", format: "0" },
];

const exposureColumns: Readonly<Record<(typeof exposures)[number], ReportColumn>> = {
  throws: { key: "throws", heading: "Throws", meaning: "At full effort, in the week.", format: "0" },
  jumps: { key: "jumps", heading: "Jumps", meaning: "At full effort, in the week.", format: "0" },
  sprints: { key: "sprints", heading: "Sprints", meaning: "At full effort, in the week.", format: "0" },
  deliveries: { key: "deliveries", heading: "Deliveries", meaning: "Bowled or pitched, in the week.", format: "0" },
};

const endColumns: readonly ReportColumn[] = [
  { key: "note", heading: "Note", meaning: "What to look at, if anything." },
  { key: "row", heading: "Row", meaning: "Athlete and week: by it a row is found again.", quiet: true },
];

const cautions = [
  "A week far above the others is a reason to talk, no prediction of an injury: such measures describe how the load moved, and none has been shown to say who will be hurt.",
  "Monotony and strain stem from observations in endurance athletes and have no validated limits.",
  "Ratings are how hard it felt. Compare athletes with themselves, not with each other.",
];

const method =
  "Load is rating (0 to 10) times minutes; a day without an entry counts as rest (Foster 1998, Med Sci Sports Exerc " +
  `30:1164-1168). A week at ${risenTimes} times the mean of the four before is named: common practice, no source.`;

/** The diary's weeks, a row for each athlete and week; of one athlete, with a picture of their season. */
export function loadReport(
  weeks: readonly LoadWeek[],
  {
    source,
    date,
    athlete = null,
  }: { readonly source: string; readonly date: string; readonly athlete?: string | null },
): Report {
  const chosen = athlete === null ? weeks : weeks.filter((week) => week.athlete === athlete);
  const counted = exposures.filter((kind) => chosen.some(({ counts }) => counts[kind] !== null));
  const rows = [...groupBy(chosen, (week) => week.athlete).values()].flatMap((own) =>
    own.map((week, index): ReportValue[] => [
      ...[week.athlete, week.monday, week.attended, week.total, week.change, week.monotony, week.strain],
      ...counted.map((kind) => week.counts[kind]),
      ...[noteOn(own, index), `${week.athlete}, ${week.monday}`],
    ]),
  );
  const named = rows.filter((row) => String(row[row.length - 2]).includes("times the mean"));
  return {
    analysis: "load",
    sheet: "Load",
    title: athlete === null ? "Load by week" : `Load by week: ${athlete}`,
    summary: [
      named.length === 0
        ? "No week stands out from the weeks before it."
        : `${named.length === 1 ? "One week stands" : `${named.length} weeks stand`} out from the weeks before: ${named
            .map(([who, week]) => `${who} (week of ${week})`)
            .join(", ")}.`,
    ],
    table: {
      name: "Tapeline_Load",
      columns: [...loadColumns, ...counted.map((kind) => exposureColumns[kind]), ...endColumns],
      rows,
      rowKey: "row",
    },
    ...(athlete === null ? {} : { chart: seasonChart("week", "load", athlete) }),
    cautions,
    provenance: provenanceOf(chosen, source, date),
    ...{ marks: [], testAgain: [] },
  };
}

/** The season of the squad so far: a row for each week, with the mean load of those who have one. */
export function seasonLoadReport(
  weeks: readonly LoadWeek[],
  { source, date }: { readonly source: string; readonly date: string },
): Report {
  const rows = [...groupBy(weeks, ({ monday }) => monday)]
    .sort(([a], [b]) => a.localeCompare(b))
    .map(([monday, own]): ReportValue[] => {
      const totals = own.flatMap(({ total }) => total ?? []);
      return [monday, totals.length, totals.length === 0 ? null : mean(totals)];
    });
  return {
    analysis: "seasonLoad",
    sheet: "Season load",
    title: "Load of the squad by week",
    summary: [`${rows.length} weeks in the diary.`],
    table: {
      name: "Tapeline_SeasonLoad",
      columns: [
        loadColumns[1]!,
        { key: "athletes", heading: "Athletes", meaning: "How many have a load in the week.", format: "0" },
        { key: "load", heading: "Mean load", meaning: "Rating times minutes, mean of these athletes.", format: "0" },
      ],
      rows,
      rowKey: "week",
    },
    chart: seasonChart("week", "load", "Squad's mean"),
    cautions,
    provenance: provenanceOf(weeks, source, date),
    ...{ marks: [], testAgain: [] },
  };
}

const seasonChart = (categories: string, column: string, name: string): ReportChart => ({
  kind: "line",
  title: "Load by week",
  categories,
  series: [{ column, name, tone: "strong" }],
  valueAxisTitle: "Load (rating × minutes)",
});

const provenanceOf = (weeks: readonly LoadWeek[], source: string, date: string): Report["provenance"] => ({
  ...{ source, date, method, leftOut: [] },
  used: `${new Set(weeks.map(({ athlete }) => athlete)).size} athletes, ${weeks.reduce((sum, { sessions }) => sum + sessions, 0)} sessions`,
});
