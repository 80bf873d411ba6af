import { groupBy } from "../analyses/groupBy";
import type { Report, ReportChart, ReportColumn, ReportValue } from "../analyses/report";
import { mean } from "../engine/moments";
import { atStart, inSentence, say } from "../language/say";
import { type Exposure, exposures, type LoadWeek } from "./loadWeeks";

/** What can be followed through a season: the load, or what was counted. */
export type LoadMeasure = "load" | Exposure;

/** A week this many times the mean of the four before is named. Common practice, no source. */
export const risenTimes = 1.75;
const weeksBefore = 4;
/** With fewer weeks behind them, an athlete has no usual load yet. */
const fewestBefore = 3;

export const measured = ({ total, counts }: LoadWeek, measure: LoadMeasure): number | null =>
  measure === "load" ? total : counts[measure];

/** The mean of an athlete's own four weeks before one; null where too few are known. */
export function usualBefore(weeks: readonly LoadWeek[], index: number, measure: LoadMeasure): number | null {
  const before = weeks.slice(Math.max(0, index - weeksBefore), index).flatMap((week) => measured(week, measure) ?? []);
  return before.length < fewestBefore ? null : mean(before);
}

/** How a week compares with the athlete's own four before it; null where too few are known. */
export function timesUsual(weeks: readonly LoadWeek[], index: number, measure: LoadMeasure = "load"): number | null {
  const usual = usualBefore(weeks, index, measure);
  const here = measured(weeks[index]!, measure);
  return here === null || usual === null || usual === 0 ? null : here / usual;
}

/** What a coach might want to know of a week, without alarm. */
function noteOn(weeks: readonly LoadWeek[], index: number, counted: readonly Exposure[]): string {
  const { total, sessions, unrated } = weeks[index]!;
  if (sessions === 0) return say`Nothing written down.`;
  const notes: string[] = [];
  if (unrated > 0) {
    notes.push(
      unrated === 1
        ? say`1 session without a rating: the load is too low by as much.`
        : say`${unrated} sessions without a rating: the load is too low by as much.`,
    );
  }
  const times = timesUsual(weeks, index);
  if (times !== null && times >= risenTimes) {
    notes.push(say`${times.toFixed(1)} times the mean of the weeks before: ask how she or he is.`);
  } else if (total !== null && times === null) notes.push(say`Too few weeks before to compare with.`);
  for (const kind of counted) {
    const more = timesUsual(weeks, index, kind);
    if (more !== null && more >= risenTimes)
      notes.push(
        say`${more.toFixed(1)} times as many ${inSentence(exposureColumns[kind].heading)} as in the weeks before.`,
      );
  }
  return notes.join(" ");
}

const loadColumns: readonly ReportColumn[] = [
  { key: "athlete", heading: say`Athlete`, meaning: say`Name as in the diary.` },
  { key: "week", heading: say`Week of`, meaning: say`Monday of the week, YYYY-MM-DD.` },
  { key: "attended", heading: say`Sessions`, meaning: say`Sessions the athlete was at.`, format: "0" },
  {
    key: "load",
    heading: atStart(say`load`),
    meaning: say`Rating times minutes, added up over the week.`,
    format: "0",
  },
  {
    key: "change",
    heading: say`Change (%)`,
    meaning: say`From the week before, in percent of it.`,
    format: "+0;-0;0",
  },
  {
    key: "monotony",
    heading: say`Monotony`,
    meaning: say`Mean of the days over their standard deviation: high where all days are alike.`,
    format: "0.00",
  },
  { key: "strain", heading: say`Strain`, meaning: say`Load times monotony.`, format: "0" },
];

const exposureColumns: Readonly<Record<(typeof exposures)[number], ReportColumn>> = {
  throws: { key: "throws", heading: say`Throws`, meaning: say`At full effort, in the week.`, format: "0" },
  jumps: { key: "jumps", heading: say`Jumps`, meaning: say`At full effort, in the week.`, format: "0" },
  sprints: { key: "sprints", heading: say`Sprints`, meaning: say`At full effort, in the week.`, format: "0" },
  deliveries: {
    key: "deliveries",
    heading: say`Deliveries`,
    meaning: say`Bowled or pitched, in the week.`,
    format: "0",
  },
};

const endColumns: readonly ReportColumn[] = [
  { key: "note", heading: say`Note`, meaning: say`What to look at, if anything.` },
  { key: "row", heading: say`Row`, meaning: say`Athlete and week: by it a row is found again.`, quiet: true },
];

const noPrediction = say`A week far above the others is a reason to talk, no prediction of an injury: such measures describe how the load moved, and none has been shown to say who will be hurt.`;

const cautions = [
  noPrediction,
  say`Monotony and strain stem from observations in endurance athletes and have no validated limits.`,
  say`Ratings are how hard it felt. Compare athletes with themselves, not with each other.`,
];

const method =
  say`Load is rating (0 to 10) times minutes; a day without an entry counts as rest (Foster 1998, Med Sci Sports Exerc ` +
  say`30:1164-1168). A week at ${risenTimes} times the mean of the four before is named: common practice, no source.`;

type Origin = { readonly source: string; readonly date: string };

/** The diary's weeks, a row for each athlete and week; of one athlete, with a picture of their season. */
export function loadReport(
  weeks: readonly LoadWeek[],
  {
    source,
    date,
    athlete = null,
    measure = "load",
  }: Origin & { readonly athlete?: string | null; readonly measure?: LoadMeasure },
): Report {
  const chosen = athlete === null ? weeks : weeks.filter((week) => week.athlete === athlete);
  const counted = exposures.filter((kind) => chosen.some(({ counts }) => counts[kind] !== null));
  const byAthlete = [...groupBy(chosen, (week) => week.athlete).values()];
  const rows = byAthlete.flatMap((own) =>
    own.map((week, index): ReportValue[] => [
      ...[week.athlete, week.monday, week.attended, week.total, week.change, week.monotony, week.strain],
      ...counted.map((kind) => week.counts[kind]),
      ...[noteOn(own, index, counted), `${week.athlete}, ${week.monday}`],
    ]),
  );
  const risen = byAthlete.flatMap((own) => own.filter((_, index) => (timesUsual(own, index) ?? 0) >= risenTimes));
  return {
    analysis: "load",
    sheet: atStart(say`load`),
    title: athlete === null ? say`Load by week` : say`Load by week: ${athlete}`,
    summary: risenWords(risen),
    table: {
      name: "Tapeline_Load",
      columns: [...loadColumns, ...counted.map((kind) => exposureColumns[kind]), ...endColumns],
      rows,
      rowKey: "row",
    },
    ...(athlete === null ? {} : { chart: seasonChart(measure, athlete) }),
    cautions,
    provenance: provenanceOf(chosen, source, date),
    ...{ marks: [], testAgain: [] },
  };
}

/** The weeks that stand out, with the criticism of such measures beside them. */
function risenWords(risen: readonly LoadWeek[]): string[] {
  if (risen.length === 0) return [say`No week stands out from the weeks before it.`];
  const named = risen.map(({ athlete, monday }) => say`${athlete} (week of ${monday})`).join(", ");
  return [
    say`${risen.length === 1 ? say`One week stands` : say`${risen.length} weeks stand`} out from the weeks before: ${named}.`,
    noPrediction,
  ];
}

/** A week of the squad: the mean of those with a number in it, and the lowest and highest of them. */
export type SquadWeek = {
  readonly monday: string;
  readonly athletes: number;
  readonly mean: number | null;
  readonly lowest: number | null;
  readonly highest: number | null;
};

export const squadWeeks = (weeks: readonly LoadWeek[], measure: LoadMeasure): SquadWeek[] =>
  [...groupBy(weeks, ({ monday }) => monday)]
    .sort(([a], [b]) => a.localeCompare(b))
    .map(([monday, own]) => {
      const totals = own.flatMap((week) => measured(week, measure) ?? []);
      if (totals.length === 0) return { monday, athletes: 0, mean: null, lowest: null, highest: null };
      const [lowest, highest] = [Math.min(...totals), Math.max(...totals)];
      return { monday, athletes: totals.length, mean: mean(totals), lowest, highest };
    });

/** The season of the squad so far: a row for each week, with the mean of those who have a load. */
export function seasonLoadReport(
  weeks: readonly LoadWeek[],
  { source, date, measure = "load" }: Origin & { readonly measure?: LoadMeasure },
): Report {
  const season = squadWeeks(weeks, measure);
  const [highest] = [...season].sort((a, b) => (b.mean ?? 0) - (a.mean ?? 0));
  const { heading, meaning } = measureColumns[measure];
  return {
    analysis: "seasonLoad",
    sheet: say`Season load`,
    title: say`${heading} of the squad by week`,
    summary: [
      season.length === 1 ? say`One week in the diary.` : say`${season.length} weeks in the diary.`,
      ...(highest?.mean
        ? [say`The highest mean is that of the week of ${highest.monday}: ${highest.mean.toFixed(0)}.`]
        : []),
    ],
    table: {
      name: "Tapeline_SeasonLoad",
      columns: [
        loadColumns[1]!,
        { key: "athletes", heading: say`Athletes`, meaning: say`How many have a number in the week.`, format: "0" },
        {
          key: measure,
          heading: say`Mean ${inSentence(heading)}`,
          meaning: say`${meaning} Mean of these athletes.`,
          format: "0",
        },
        { key: "lowest", heading: say`Lowest`, meaning: say`Of these athletes.`, format: "0" },
        { key: "highest", heading: say`Highest`, meaning: say`Of these athletes.`, format: "0" },
      ],
      rows: season.map((week): ReportValue[] => [week.monday, week.athletes, week.mean, week.lowest, week.highest]),
      rowKey: "week",
    },
    chart: seasonChart(measure, say`Squad's mean`),
    cautions,
    provenance: provenanceOf(weeks, source, date),
    ...{ marks: [], testAgain: [] },
  };
}

const measureColumns: Readonly<Record<LoadMeasure, ReportColumn>> = { load: loadColumns[3]!, ...exposureColumns };

const seasonChart = (measure: LoadMeasure, name: string): ReportChart => ({
  kind: "line",
  title: say`${measureColumns[measure].heading} by week`,
  categories: "week",
  series: [{ column: measure, name, tone: "strong" }],
  valueAxisTitle: measure === "load" ? say`Load (rating × minutes)` : say`${measureColumns[measure].heading} a week`,
});

const provenanceOf = (weeks: readonly LoadWeek[], source: string, date: string): Report["provenance"] => ({
  ...{ source, date, method, leftOut: [] },
  used: say`${new Set(weeks.map(({ athlete }) => athlete)).size} athletes, ${weeks.reduce((sum, { sessions }) => sum + sessions, 0)} sessions`,
});
