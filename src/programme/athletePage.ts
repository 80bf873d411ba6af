import type { ReportColumn } from "../analyses/report";
import type { PlanRow } from "../store/planTable";
import type { Priority } from "../store/priorityTable";
import { heading, type Page, type PagePart, paragraph, quiet, strong } from "./page";
import type { QualityProfile } from "./qualityProfile";

/** What became of an athlete's result from one test day to the next. */
export type ToldChange = {
  readonly athlete: string;
  readonly series: string;
  readonly unit: string | null;
  readonly before: number;
  readonly after: number;
  /** In words, e.g. "Likely a real improvement". */
  readonly verdict: string;
};

export type AthleteFacts = {
  readonly profile: QualityProfile;
  readonly priorities: readonly Priority[];
  readonly changes: readonly ToldChange[];
  readonly plan: readonly PlanRow[];
  readonly isMinor: boolean;
  /** ISO day. */
  readonly date: string;
};

/** How far from the squad's middle counts as a word. In T scores, 50 is the middle and 10 one standard deviation. */
const inT = (z: number): number => Math.round(50 + 10 * z);

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
      ...(tested.length > 0 ? profileParts(tested) : [paragraph("There are no tests to compare yet.")]),
      heading("What it means"),
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
      ...(changes.length > 0 ? [heading("Since the last test"), changeTable(changes)] : []),
      ...(plan.length > 0 ? [heading("Next"), paragraph(nextWords(plan))] : []),
      ...cautions(isMinor).map(quiet),
    ],
  };
}

function profileParts(tested: QualityProfile["qualities"]): PagePart[] {
  const columns: readonly ReportColumn[] = [
    { key: "quality", heading: "Quality", meaning: "A physical quality." },
    {
      key: "t",
      heading: "You (squad's middle is 50)",
      meaning: "T score: 50 is the squad's mean, 10 one standard deviation.",
      format: "0",
    },
    { key: "tests", heading: "From", meaning: "The tests behind it." },
  ];
  const rows = tested.map(({ quality, z, tests }) => [
    quality,
    inT(z!),
    tests
      .map(({ series, score, unit }) => `${series} ${Number(score.toPrecision(4))}${unit ? ` ${unit}` : ""}`)
      .join(", "),
  ]);
  return [
    { kind: "table", columns, rows, toFillIn: false },
    {
      kind: "picture",
      chart: {
        kind: "bar",
        title: "Where you stand: the squad's middle is 50",
        categories: "quality",
        series: [{ column: "t", name: "You", tone: "strong" }],
        valueAxisTitle: "Points (squad's middle 50)",
      },
    },
  ];
}

function changeTable(changes: readonly ToldChange[]): PagePart {
  return {
    kind: "table",
    columns: [
      { key: "series", heading: "Test", meaning: "The test." },
      { key: "before", heading: "Before", meaning: "Score at the earlier test day.", format: "General" },
      { key: "after", heading: "Now", meaning: "Score at the latest test day.", format: "General" },
      { key: "verdict", heading: "Was it real?", meaning: "The change against the test's own noise." },
    ],
    rows: changes.map(({ series, unit, before, after, verdict }) => [
      unit ? `${series} (${unit})` : series,
      Number(before.toPrecision(4)),
      Number(after.toPrecision(4)),
      verdict,
    ]),
    toFillIn: false,
  };
}

function nextWords(plan: readonly PlanRow[]): string {
  const weeks = Math.max(...plan.map(({ week }) => week));
  const sessions = new Set(plan.filter(({ week }) => week === 1).map(({ session }) => session)).size;
  const exercises = [...new Set(plan.map(({ exercise }) => exercise))];
  return `${weeks} weeks with ${sessions} ${sessions === 1 ? "session" : "sessions"} a week: ${listed(exercises)}.`;
}

const cautions = (isMinor: boolean): string[] => [
  "Test results vary by themselves from day to day; one result decides nothing. Pain or injury: speak to your physiotherapist or doctor first.",
  ...(isMinor ? ["Under 18: heavy lifting and maximal tests only under qualified supervision."] : []),
];

const listed = (words: readonly string[]): string =>
  words.length <= 1 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
