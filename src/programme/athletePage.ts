import type { PlannedRow } from "../store/planTable";
import type { Priority } from "../store/priorityTable";
import { attendanceWords } from "./attendance";
import { heading, type Page, type PagePart, paragraph, quiet, strong } from "./page";
import type { QualityProfile, QualityStanding } from "./qualityProfile";
import type { ReviewedChange } from "./review";

export type AthleteFacts = {
  readonly profile: QualityProfile;
  readonly priorities: readonly Pick<Priority, "rank" | "quality" | "why">[];
  /** What became of the athlete's tests over the last block; empty before the first retest. */
  readonly changes: readonly ReviewedChange[];
  /** The coming block. */
  readonly plan: readonly PlannedRow[];
  readonly isMinor: boolean;
  /** Last ISO day of the tests. */
  readonly date: string;
};

/** One page about one athlete, for the athlete: the picture first, then plain words. Nobody else's results are on it. */
export function athletePage({ profile, priorities, changes, plan, isMinor, date }: AthleteFacts): Page {
  const { athlete, role, qualities } = profile;
  const tested = qualities.filter(({ z }) => z !== null);
  const strengths = tested.filter(({ judgement }) => judgement === "strength").map(({ quality }) => quality);
  const untested = qualities.filter(({ z }) => z === null).map(({ quality }) => quality);
  return {
    sheet: athlete,
    title: athlete,
    subtitle: [role, `Tests up to ${date}`].filter((word) => word !== null).join(" · "),
    parts: [
      heading("Where you stand"),
      ...(tested.length > 0 ? standing(tested) : [paragraph("There are no tests to compare yet.")]),
      strong(
        strengths.length > 0
          ? `Your strengths: ${listed(strengths)}.`
          : "No quality stands out beyond the noise of the tests yet.",
      ),
      ...(untested.length > 0 ? [quiet(`Not tested: ${listed(untested)}.`)] : []),
      heading("What to work on"),
      ...(priorities.length > 0
        ? priorities.map(({ rank, quality, why }) => paragraph(`${rank}. ${quality}. ${why}`))
        : [paragraph("Nothing can be said before you have been tested.")]),
      ...(changes.length > 0 ? [heading("Since the last tests"), ...whatChanged(changes)] : latestResults(tested)),
      ...(plan.length > 0 ? [heading("What is next"), paragraph(nextWords(plan))] : []),
      ...cautions(isMinor).map(quiet),
    ],
  };
}

const standingWords: Readonly<Record<QualityStanding["judgement"], string>> = {
  strength: "a strength",
  weakness: "to work on",
  "in between": "as most",
  "too noisy to say": "too close to say",
  "not tested": "not tested",
};

/** Points are ten times the z score, as a T score without its 50: an athlete reads a sign more easily than a middle. */
const standing = (tested: readonly QualityStanding[]): PagePart[] => [
  {
    kind: "table",
    columns: [
      { key: "quality", heading: "Quality", meaning: "A physical quality." },
      {
        key: "points",
        heading: "Points",
        meaning: "From the squad's middle: 10 points are one standard deviation; above 0 is better.",
        format: "+0;-0;0",
      },
      { key: "words", heading: "In words", meaning: "What the points mean, the noise of the tests considered." },
    ],
    rows: tested.map(({ quality, z, judgement }) => [quality, Math.round(10 * z!), standingWords[judgement]]),
    toFillIn: false,
  },
  {
    kind: "picture",
    place: "beside",
    chart: {
      kind: "bar",
      title: "You, against the squad's middle (0)",
      categories: "quality",
      series: [{ column: "points", name: "You", tone: "strong" }],
      valueAxisTitle: "Points: right of 0 is better",
    },
  },
  quiet("0 is the middle of the squad. Two in three athletes lie between −10 and +10 points."),
];

function whatChanged(changes: readonly ReviewedChange[]): PagePart[] {
  const attendance = changes.find((change) => change.attendance !== null)?.attendance ?? null;
  return [
    {
      kind: "table",
      columns: [
        { key: "series", heading: "Test", meaning: "The test, with its unit." },
        { key: "before", heading: "Before", meaning: "Score at the earlier test day.", format: "General" },
        { key: "after", heading: "Now", meaning: "Score at the latest test day.", format: "General" },
        {
          key: "overNoise",
          heading: "Change",
          meaning: "The change over what the test's noise alone explains: beyond 1 to either side is more than noise.",
          format: "+0.0;-0.0;0.0",
          quiet: true,
        },
        { key: "real", heading: "Was it real?", meaning: "The change against the test's own noise." },
      ],
      rows: changes.map(({ series, unit, before, after, overNoise }) => [
        unit ? `${series} (${unit})` : series,
        shortened(before),
        shortened(after),
        overNoise === null ? null : Number(overNoise.toFixed(1)),
        realWords(overNoise),
      ]),
      toFillIn: false,
    },
    {
      kind: "picture",
      place: "beside",
      chart: {
        kind: "bar",
        title: "Change, in sizes of the test's noise",
        categories: "series",
        series: [{ column: "overNoise", name: "Change", tone: "strong" }],
        valueAxisTitle: "Right of +1: better for real",
      },
    },
    quiet(
      `Change in sizes of the test's noise: between −1 and +1 nobody can tell it from chance.${
        attendance === null ? "" : ` You were there for ${attendanceWords(attendance)}.`
      }`,
    ),
  ];
}

/** Four figures, trailing zeros away. */
const shortened = (score: number): number => Number(score.toPrecision(4));

function realWords(overNoise: number | null): string {
  if (overNoise === null) return "noise not known";
  if (overNoise > 1) return "yes, better";
  return overNoise < -1 ? "yes, worse" : "cannot tell";
}

/** Before the first retest: the results themselves. */
const latestResults = (tested: readonly QualityStanding[]): PagePart[] =>
  tested.length === 0
    ? []
    : [
        heading("Your results"),
        {
          kind: "table",
          columns: [
            { key: "series", heading: "Test", meaning: "The test." },
            { key: "score", heading: "Result", meaning: "Score of the latest test day.", format: "General" },
            { key: "unit", heading: "Unit", meaning: "Unit of the result." },
          ],
          rows: tested.flatMap(({ tests }) =>
            tests.map(({ series, score, unit }) => [series, shortened(score), unit ?? ""]),
          ),
          toFillIn: false,
        },
      ];

function nextWords(plan: readonly PlannedRow[]): string {
  const weeks = new Set(plan.map(({ week }) => week)).size;
  const [first] = plan;
  const sessions = new Set(plan.filter(({ week }) => week === first!.week).map(({ session }) => session)).size;
  const exercises = [...new Set(plan.map(({ exercise }) => exercise))];
  return `From ${first!.begins}: ${counted(weeks, "week")} with ${counted(sessions, "session")} a week. ${listed(exercises)}.`;
}

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? "" : "s"}`;

const cautions = (isMinor: boolean): string[] => [
  "Test results vary by themselves from day to day; one result decides nothing. Pain or injury: speak to your physiotherapist or doctor first.",
  ...(isMinor ? ["Under 18: heavy lifting and maximal tests only under qualified supervision."] : []),
];

const listed = (words: readonly string[]): string =>
  words.length <= 1 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
