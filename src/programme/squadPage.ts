import { groupBy } from "../analyses/groupBy";
import type { ReportColumn } from "../analyses/report";
import { median } from "../engine/moments";
import { say } from "../language/say";
import type { PlannedRow } from "../store/planTable";
import type { Priority } from "../store/priorityTable";
import { askedFor } from "./asked";
import type { Attendance } from "./attendance";
import { type Away, daysMissed } from "./away";
import type { SquadDemand } from "./demands";
import { counted, listed, listedUpTo } from "./listed";
import { heading, type Page, type PagePart, paragraph, quiet, strong } from "./page";
import { isBetter, isWorse, type ReviewedChange } from "./review";

export type SquadFacts = {
  /** "Squad", or the name of a group of it. */
  readonly name: string;
  readonly athletes: number;
  /** Whom the athletes are compared with ("the squad"), each once. */
  readonly comparedWith: readonly string[];
  /** As `squadDemands` has them: what counts most first. */
  readonly demands: readonly SquadDemand[];
  readonly changes: readonly ReviewedChange[];
  /** Of everybody in the diary, over the block that was reviewed. */
  readonly attendance: readonly (Attendance & { readonly athlete: string })[];
  readonly away: Away;
  /** Athletes who were not at the latest tests. */
  readonly untested: readonly string[];
  readonly priorities: readonly Pick<Priority, "athlete" | "rank" | "quality">[];
  /** The coming block. */
  readonly plan: readonly PlannedRow[];
  /** Last ISO day of the tests. */
  readonly date: string;
};

/**
 * One page about the squad, for the head coach: pictures first, then plain words. Who is away is said, never why: the
 * reasons are for those who treat the athlete to tell.
 */
export function squadPage(facts: SquadFacts): Page {
  const { name, athletes, date } = facts;
  return {
    sheet: say`${name} overview`,
    title: name,
    subtitle: say`${counted(athletes, "athlete")} · Tests up to ${date}`,
    parts: [
      heading(say`What the game asks for, and who stands out`),
      ...standing(facts),
      heading(say`Who has changed for real`),
      ...whoChanged(facts),
      heading(say`Who was there`),
      paragraph(attendanceSentence(facts)),
      paragraph(awaySentence(facts)),
      heading(say`What is next`),
      paragraph(nextSentence(facts)),
      quiet(
        say`For the coaching staff: personal data. Test results vary from day to day; who plays is not decided by them. Pain, injury and return from it: ask those who treat the athlete. Maximal tests of under-18s only under qualified supervision.`,
      ),
    ],
  };
}

/** Counts to either side of zero, for the picture; none where there is nobody. */
const drawn: readonly ReportColumn[] = [
  { key: "left", heading: say`To the left`, meaning: say`For the picture.`, format: "0;0", quiet: true },
  { key: "right", heading: say`To the right`, meaning: say`For the picture.`, format: "0", quiet: true },
];

const drawnCounts = (left: number, right: number): (number | null)[] => [
  left === 0 ? null : -left,
  right === 0 ? null : right,
];

/** So many names at most in one sentence. */
const mostNames = 8;

function standing({ demands, comparedWith }: SquadFacts): PagePart[] {
  const tested = demands.filter((one) => one.tested > 0);
  const untested = demands.filter((one) => one.tested === 0).map(({ quality }) => quality);
  if (tested.length === 0) return [paragraph(say`There are no tests to compare yet.`)];
  const most = tested.filter(({ weight }) => weight === tested[0]!.weight);
  // What is lacked where it counts: the weight times the share of athletes who stand below.
  const needs = tested
    .map((one) => ({ ...one, need: (one.weight * one.weak.length) / one.tested }))
    .filter(({ need }) => need > 0)
    .sort((a, b) => b.need - a.need);
  return [
    {
      kind: "table",
      columns: [
        { key: "quality", heading: say`Quality`, meaning: say`A physical quality.` },
        {
          key: "asked",
          heading: say`Asked for`,
          meaning: say`Mean of its weights over the athletes' roles; 1 as any other.`,
        },
        { key: "tested", heading: say`Tested`, meaning: say`Athletes with results.`, format: "0" },
        { key: "weak", heading: say`Below`, meaning: say`Athletes below the rest by more than noise.`, format: "0" },
        { key: "strong", heading: say`Above`, meaning: say`Athletes above the rest by more than noise.`, format: "0" },
        ...drawn,
      ],
      rows: tested.map(({ quality, weight, tested: count, weak, strong: above }) => [
        ...[quality, askedFor(weight), count, weak.length, above.length, ...drawnCounts(weak.length, above.length)],
      ]),
      toFillIn: false,
    },
    {
      kind: "picture",
      place: "beside",
      chart: {
        kind: "bar",
        title: say`Athletes who stand out`,
        categories: "quality",
        series: [
          { column: "left", name: say`Below`, tone: "strong" },
          { column: "right", name: say`Above`, tone: "soft" },
        ],
        valueAxisTitle: say`Athletes below the rest (left) and above it (right)`,
      },
    },
    strong(
      most.length === tested.length
        ? say`All qualities are asked for alike, as the weights stand.`
        : say`Asked for most: ${listed(most.map(({ quality }) => quality))}.`,
    ),
    paragraph(
      needs.length === 0
        ? say`In no quality does anybody stand below the rest by more than noise.`
        : needs
            .slice(0, 3)
            .map(
              ({ quality, weak, tested: count }) =>
                say`${quality}: ${weak.length} of ${count} below the rest (${listedUpTo(weak, 4)}).`,
            )
            .join(" "),
    ),
    quiet(
      say`Each is compared with ${listed(comparedWith)}, so nobody is below because all are: these are the ones who stand out by more than the noise of the tests.${untested.length > 0 ? say` Asked for, but not tested: ${listed(untested)}.` : ""}`,
    ),
  ];
}

function whoChanged({ changes, untested }: SquadFacts): PagePart[] {
  const missed = untested.length > 0 ? [quiet(say`Not at the latest tests: ${listedUpTo(untested, mostNames)}.`)] : [];
  if (changes.length === 0) return [paragraph(say`Nobody has been tested again yet.`), ...missed];
  const tests = [...groupBy(changes, ({ series }) => series)];
  const sentence = (lead: string, own: readonly ReviewedChange[]): string => {
    const athletes = [...groupBy(own, ({ athlete }) => athlete)].sort((a, b) => b[1].length - a[1].length);
    const told = athletes.map(([athlete, ones]) =>
      ones.length > 1 ? say`${athlete} (${ones.length} tests)` : athlete,
    );
    return athletes.length === 0 ? say`${lead}: nobody.` : `${lead}: ${listedUpTo(told, mostNames)}.`;
  };
  return [
    {
      kind: "table",
      columns: [
        { key: "series", heading: say`Test`, meaning: say`The test.` },
        {
          key: "again",
          heading: say`Tested again`,
          meaning: say`Athletes with results before and after.`,
          format: "0",
        },
        { key: "worse", heading: say`Worse`, meaning: say`Worse by more than noise.`, format: "0" },
        { key: "better", heading: say`Better`, meaning: say`Better by more than noise.`, format: "0" },
        ...drawn,
      ],
      rows: tests.map(([series, own]) => {
        const [worse, better] = [own.filter(isWorse).length, own.filter(isBetter).length];
        return [series, own.length, worse, better, ...drawnCounts(worse, better)];
      }),
      toFillIn: false,
    },
    {
      kind: "picture",
      place: "beside",
      chart: {
        kind: "bar",
        title: say`Athletes who changed beyond noise`,
        categories: "series",
        series: [
          { column: "left", name: say`Worse`, tone: "strong" },
          { column: "right", name: say`Better`, tone: "soft" },
        ],
        valueAxisTitle: say`Athletes who are worse (left) and better (right)`,
      },
    },
    paragraph(
      `${sentence(say`Better for real`, changes.filter(isBetter))} ${sentence(say`Worse for real`, changes.filter(isWorse))}`,
    ),
    quiet(say`By chance alone one change in twenty looks real; who is not named has changed too little to tell.`),
    ...missed,
  ];
}

/** Shares of attendance below this are worth a word with the athlete. Common practice, no source. */
const lowAttendance = 0.7;

function attendanceSentence({ attendance }: SquadFacts): string {
  const shares = attendance
    .filter(({ held }) => held > 0)
    .map(({ athlete, attended, held }) => ({ athlete, share: Math.min(attended / held, 1) }));
  if (shares.length === 0) return say`There is no diary of sessions to tell it from.`;
  const middle = median(shares.map(({ share }) => share));
  const percent = (share: number) => `${Math.round(100 * share)} %`;
  const low = shares.filter(({ share }) => share < lowAttendance).sort((a, b) => a.share - b.share);
  const told = low.map(({ athlete, share }) => `${athlete} (${percent(share)})`);
  return say`Half of the squad were at ${percent(middle)} of the sessions or more. ${
    low.length === 0
      ? say`Nobody was below ${percent(lowAttendance)}.`
      : say`Below ${percent(lowAttendance)}: ${listedUpTo(told, mostNames)}.`
  }`;
}

function awaySentence({ away: { away, returning }, attendance }: SquadFacts): string {
  if (attendance.length === 0) return "";
  const days = say`the last ${daysMissed} days of training`;
  const told = away.map(({ athlete, lastThere }) => say`${athlete} (last there on ${lastThere})`);
  const back = returning.map(({ athlete, since }) => say`${athlete} (since ${since})`);
  return [
    away.length === 0
      ? say`Nobody has missed all of ${days}.`
      : say`Away on all of ${days}: ${listedUpTo(told, mostNames)}.`,
    ...(back.length > 0
      ? [
          say`Back after ${daysMissed} days or more: ${listedUpTo(back, mostNames)}. How much they may do is for those who treat them to say.`,
        ]
      : []),
  ].join(" ");
}

function nextSentence({ plan, priorities }: SquadFacts): string {
  const first = priorities.filter(({ rank }) => rank === 1);
  const byQuality = [...groupBy(first, ({ quality }) => quality)].sort((a, b) => b[1].length - a[1].length);
  const worked = byQuality.slice(0, 4).map(([quality, own]) => `${quality} (${own.length})`);
  const weeks = new Set(plan.map(({ week }) => week)).size;
  const begins = plan.map((row) => row.begins).sort()[0];
  return [
    ...(begins === undefined
      ? [say`No block is planned yet.`]
      : [say`A block of ${counted(weeks, "week")} from ${begins}.`]),
    ...(worked.length > 0 ? [say`First priority of most: ${listed(worked)}.`] : []),
  ].join(" ");
}
