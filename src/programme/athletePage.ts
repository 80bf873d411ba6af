import type { ReportColumn } from "../analyses/report";
import { inSentence, say } from "../language/say";
import type { PlannedRow } from "../store/planTable";
import { coachsChoice, type Priority } from "../store/priorityTable";
import { isSameWording } from "../store/sameName";
import { askedFor } from "./asked";
import { attendanceWords } from "./attendance";
import { type AskedStanding, sureAndMaybe } from "./demands";
import { counted, listed } from "./listed";
import { heading, type Page, type PagePart, paragraph, quiet, strong } from "./page";
import type { QualityProfile, QualityStanding } from "./qualityProfile";
import { isBetter, isWorse, type ReviewedChange } from "./review";
import type { WeakerSide } from "./weakerSides";

export type AthleteFacts = {
  readonly profile: QualityProfile;
  /** The athlete's qualities as the role asks for them (`askedOf`). */
  readonly asked: readonly AskedStanding[];
  readonly priorities: readonly Pick<Priority, "rank" | "quality" | "why">[];
  /** The athlete's own weaker sides. */
  readonly sides: readonly WeakerSide[];
  /** What became of the athlete's tests over the last block; empty before the first retest. */
  readonly changes: readonly ReviewedChange[];
  /** The coming block. */
  readonly plan: readonly PlannedRow[];
  readonly isMinor: boolean;
  /** Last ISO day of the tests. */
  readonly date: string;
};

/** One page about one athlete, for the athlete: the picture first, then plain words. Nobody else's results are on it. */
export function athletePage(facts: AthleteFacts): Page {
  const { profile, asked, priorities, changes, plan, isMinor, date } = facts;
  const { athlete, role, comparedWith } = profile;
  const tested = asked.filter(({ z }) => z !== null);
  const strengths = tested.filter(({ judgement }) => judgement === "strength").map(({ quality }) => quality);
  const untested = asked.filter(({ z }) => z === null).map(({ quality }) => quality);
  return {
    sheet: athlete,
    title: athlete,
    subtitle: [role, say`Tests up to ${date}`].filter((word) => word !== null).join(" · "),
    parts: [
      heading(say`Where you stand`),
      ...(tested.length > 0
        ? standing(tested, role, comparedWith)
        : [paragraph(say`There are no tests to compare yet.`)]),
      strong(
        strengths.length > 0
          ? say`Your strengths: ${listed(strengths)}.`
          : say`No quality stands out beyond the noise of the tests yet.`,
      ),
      ...(untested.length > 0 ? [quiet(say`Not tested: ${listed(untested)}.`)] : []),
      heading(say`What to work on`),
      ...(priorities.length > 0
        ? priorities.map((priority) => paragraph(priorityWords(priority, facts)))
        : [paragraph(say`Nothing can be said before you have been tested.`)]),
      ...(changes.length > 0 ? [heading(say`Since the last tests`), ...whatChanged(changes)] : latestResults(profile)),
      ...(plan.length > 0 ? [heading(say`What is next`), paragraph(nextWords(plan))] : []),
      ...cautions(isMinor).map(quiet),
    ],
  };
}

const standingWords: Readonly<Record<QualityStanding["judgement"], string>> = {
  strength: say`a strength`,
  weakness: say`to work on`,
  "in between": say`as most`,
  "too noisy to say": say`too close to say`,
  "not tested": say`not tested`,
};

/** Points are ten times the z score, as a T score without its 50: an athlete reads a sign more easily than a middle. */
const pointsOf = (z: number): number => Math.round(10 * z);

const quietNumber = (key: string, name: string): ReportColumn => ({
  ...{ key, heading: name, meaning: say`For the picture.`, format: "0", quiet: true },
});

function standing(
  tested: readonly AskedStanding[],
  role: string | null,
  { name, athletes }: QualityProfile["comparedWith"],
): PagePart[] {
  const isNoiseKnown = tested.some(({ limits }) => limits !== null);
  return [
    {
      kind: "table",
      columns: [
        { key: "quality", heading: say`Quality`, meaning: say`A physical quality.` },
        { key: "asked", heading: say`Asked for`, meaning: say`How much it counts for the role; 1 as any other.` },
        {
          key: "points",
          heading: say`Points`,
          meaning: say`From the middle: 10 points are one standard deviation; above 0 is better. ± what noise may add.`,
        },
        {
          key: "words",
          heading: say`In words`,
          meaning: say`What the points mean, the noise of the tests considered.`,
        },
        quietNumber("maybeBelow", say`May be, below`),
        quietNumber("maybeAbove", say`May be, above`),
        quietNumber("sure", say`For certain`),
      ],
      rows: tested.map(({ quality, weight, z, limits, judgement }) => {
        const { sure, maybeBelow, maybeAbove } = sureAndMaybe(z!, limits);
        const give = limits === null ? " ± ?" : ` ± ${Math.max(pointsOf((limits.high - limits.low) / 2), 1)}`;
        return [
          ...[quality, askedFor(weight), `${signed(pointsOf(z!))}${give}`, standingWords[judgement]],
          ...[maybeBelow, maybeAbove, sure].map((end) => Math.round(100 * end) / 10),
        ];
      }),
      toFillIn: false,
    },
    {
      kind: "picture",
      place: "beside",
      isLayered: true,
      chart: {
        kind: "bar",
        title: say`You, against the middle (0)`,
        categories: "quality",
        series: [
          { column: "maybeBelow", name: say`May be, below`, tone: "soft" },
          { column: "maybeAbove", name: say`May be, above`, tone: "soft" },
          { column: "sure", name: say`For certain`, tone: "strong" },
        ],
        valueAxisTitle: say`Points from the middle: right is better`,
      },
    },
    quiet(
      say`Asked for: how much it counts ${role === null ? say`for you` : say`for your role (${inSentence(role)})`}; 1 is as any other. ` +
        say`0 is the middle of ${name} (${athletes} tested); two in three lie between −10 and +10. ` +
        (isNoiseKnown
          ? say`Dark bar: that far for certain. Light bar: as far as the noise of the tests lets it be; “?” where that is not known.`
          : say`How noisy the tests are is not known yet, so the bars are light: nothing is for certain.`),
    ),
  ];
}

const signed = (points: number): string => (points < 0 ? `−${-points}` : points > 0 ? `+${points}` : "0");

/** A priority as the athlete is told it; what the coach has chosen keeps the coach's words. */
function priorityWords(
  { rank, quality, why }: AthleteFacts["priorities"][number],
  { profile, asked, sides }: AthleteFacts,
): string {
  if (why.startsWith(coachsChoice)) return `${rank}. ${quality}. ${why}${/[.!?]$/.test(why) ? "" : "."}`;
  const own = asked.find((one) => isSameWording(one.quality, quality));
  const side = sides.find((one) => one.quality !== null && isSameWording(one.quality, quality));
  const points = own?.z === null || own === undefined ? null : pointsOf(own.z);
  const place =
    points === null
      ? ""
      : points < 0
        ? say`You are ${counted(-points, "point")} below the middle of ${profile.comparedWith.name}.`
        : say`You are at the middle or above it: build on it.`;
  const counts = own && own.weight > 1 ? say`It counts more than others${roleWords(profile.role)}.` : "";
  const told = [place, counts, side?.why ?? ""].filter((words) => words !== "");
  return `${rank}. ${quality}. ${told.join(" ")}`.trim();
}

const roleWords = (role: string | null): string => (role === null ? "" : say` for your role (${inSentence(role)})`);

function whatChanged(changes: readonly ReviewedChange[]): PagePart[] {
  const attendance = changes.find((change) => change.attendance !== null)?.attendance ?? null;
  return [
    {
      kind: "table",
      columns: [
        { key: "series", heading: say`Test`, meaning: say`The test, with its unit.` },
        { key: "before", heading: say`Before`, meaning: say`Score at the earlier test day.`, format: "General" },
        { key: "after", heading: say`Now`, meaning: say`Score at the latest test day.`, format: "General" },
        {
          key: "overNoise",
          heading: say`Change`,
          meaning: say`The change over what the test's noise alone explains: beyond 1 to either side is more than noise.`,
          format: "+0.0;-0.0;0.0",
          quiet: true,
        },
        { key: "real", heading: say`Was it real?`, meaning: say`The change against the test's own noise.` },
      ],
      rows: changes.map((change) => {
        const { series, unit, before, after, overNoise } = change;
        return [
          unit ? `${series} (${unit})` : series,
          shortened(before),
          shortened(after),
          overNoise === null ? null : Number(overNoise.toFixed(1)),
          realWords(change),
        ];
      }),
      toFillIn: false,
    },
    {
      kind: "picture",
      place: "beside",
      chart: {
        kind: "bar",
        title: say`Change, in sizes of the test's noise`,
        categories: "series",
        series: [{ column: "overNoise", name: say`Change`, tone: "strong" }],
        valueAxisTitle: say`Change ÷ noise: right is better`,
      },
    },
    quiet(
      say`Bars: the change over the noise of the test. It is called real where it is the larger of the two.${
        attendance === null ? "" : say` You were there for ${attendanceWords(attendance)}.`
      }`,
    ),
  ];
}

/** Four figures, trailing zeros away. */
const shortened = (score: number): number => Number(score.toPrecision(4));

function realWords(change: ReviewedChange): string {
  if (change.overNoise === null) return say`noise not known`;
  if (isBetter(change)) return say`yes, better`;
  return isWorse(change) ? say`yes, worse` : say`cannot tell`;
}

/** Before the first retest: the results themselves. */
const latestResults = ({ qualities }: QualityProfile): PagePart[] =>
  qualities.every(({ z }) => z === null)
    ? []
    : [
        heading(say`Your results`),
        {
          kind: "table",
          columns: [
            { key: "series", heading: say`Test`, meaning: say`The test.` },
            { key: "score", heading: say`Result`, meaning: say`Score of the latest test day.`, format: "General" },
            { key: "unit", heading: say`Unit`, meaning: say`Unit of the result.` },
          ],
          rows: qualities.flatMap(({ tests }) =>
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
  return say`From ${first!.begins}: ${counted(weeks, "week")} with ${counted(sessions, "session")} a week. ${listed(exercises)}.`;
}

const cautions = (isMinor: boolean): string[] => [
  say`Test results vary by themselves from day to day; one result decides nothing. Pain, or back from an injury: speak to your physiotherapist or doctor before you train or test.`,
  ...(isMinor ? [say`Under 18: heavy lifting and maximal tests only under qualified supervision.`] : []),
];
