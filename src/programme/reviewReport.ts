import { groupBy } from "../analyses/groupBy";
import type { Report, ReportColumn, ReportValue } from "../analyses/report";
import type { Estimate } from "../engine/confidence";
import { mean } from "../engine/moments";
import { say } from "../language/say";
import { byReason } from "./byReason";
import { isBetter, isWorse, type Review, type ReviewedChange, type ReviewedGroup } from "./review";

/** Where a report of the review was read from, and when. */
type Origin = { readonly source: string; readonly date: string };

const notWhatMadeIt = say`A change tells that something changed, not what made it: growth, rest, practice of the test and the block all count.`;
const noProof = say`Attendance beside a change is no proof that the one made the other.`;

/** "12 of 240 changes are improvements beyond the noise and 3 are declines; the rest cannot be told from noise." */
function counted({ changes, groups }: Review): string {
  const improved = groups.reduce((sum, group) => sum + group.improved, 0);
  const declined = groups.reduce((sum, group) => sum + group.declined, 0);
  return say`Of ${changes.length} changes, ${improved} are improvements beyond the noise and ${declined} declines. The rest cannot be told from noise.`;
}

const provenanceOf = ({ changes }: Review, { source, date }: Origin, method: string): Report["provenance"] => ({
  ...{ source, date, method, leftOut: [] },
  used: say`${new Set(changes.map(({ athlete }) => athlete)).size} athletes, ${changes.length} changes`,
});

const columns = {
  athlete: { key: "athlete", heading: say`Athlete`, meaning: say`Name as in the squad.` },
  role: { key: "role", heading: say`Role`, meaning: say`Role as in the squad.` },
  series: { key: "series", heading: say`Test`, meaning: say`Test and measure.` },
  unit: { key: "unit", heading: say`Unit`, meaning: say`Unit of the scores.` },
  attended: {
    key: "attended",
    heading: say`Sessions attended`,
    meaning: say`Of the block, by the diary.`,
    format: "0",
  },
  held: {
    key: "held",
    heading: say`Sessions held`,
    meaning: say`Sessions of the block at which at least half of the athlete's group was.`,
    format: "0",
  },
} as const satisfies Record<string, ReportColumn>;

/** The review of a block, a row for each athlete and test: what changed, in words, with the chances behind them. */
export function reviewReport(review: Review, origin: Origin): Report {
  const { changes, missing } = review;
  return {
    analysis: "review",
    sheet: say`Review`,
    title: say`Review of the block: every change`,
    summary: [counted(review)],
    table: {
      name: "Tapeline_Review",
      columns: [
        ...[columns.athlete, columns.role, columns.series, columns.unit],
        { key: "before", heading: say`Before`, meaning: say`Last score before the block.`, format: "0.0##" },
        { key: "after", heading: say`After`, meaning: say`Latest score since the block began.`, format: "0.0##" },
        { key: "low", heading: say`Change low`, meaning: say`Lower 95 % limit of the true change.`, format: "0.0##" },
        { key: "high", heading: say`Change high`, meaning: say`Upper 95 % limit of the true change.`, format: "0.0##" },
        {
          key: "better",
          heading: say`Chance better (%)`,
          meaning: say`How likely the true change is an improvement that matters, from these data alone.`,
          format: "0",
        },
        {
          key: "worse",
          heading: say`Chance worse (%)`,
          meaning: say`How likely the true change is a decline that matters, from these data alone.`,
          format: "0",
        },
        { key: "verdict", heading: say`Verdict`, meaning: say`The change beside the test's noise.` },
        ...[columns.attended, columns.held],
        { key: "row", heading: say`Row`, meaning: say`Athlete and test: by it a row is found again.`, quiet: true },
      ],
      rows: changes.map((one) => [
        ...[one.athlete, one.role, one.series, one.unit, one.before, one.after, one.low, one.high],
        ...[one.better, one.worse, one.verdict, one.attendance?.attended ?? null, one.attendance?.held ?? null],
        `${one.athlete}, ${one.series}`,
      ]),
      rowKey: "row",
    },
    cautions: [notWhatMadeIt, noProof, ...byReason(missing)],
    provenance: provenanceOf(review, origin, say`Each change as in the analysis of change since last time.`),
    ...{ marks: [], testAgain: [] },
  };
}

/** The review of the squad, a row for each test: the mean change with its interval, also in standard deviations. */
export function reviewGroupReport(review: Review, origin: Origin): Report {
  const { groups, missing } = review;
  const better = groups.filter((group) => betterBy(group) === "better");
  const worse = groups.filter((group) => betterBy(group) === "worse").map(({ series }) => series);
  return {
    analysis: "reviewGroup",
    sheet: say`Review by test`,
    title: say`Review of the block: the squad, test by test`,
    summary: [
      say`The squad got better in ${better.length} of ${groups.length} tests, by intervals that leave no room for no change.`,
      ...(worse.length === 0 ? [] : [say`It got worse in: ${worse.join("; ")}.`]),
    ],
    table: {
      name: "Tapeline_ReviewByTest",
      columns: [
        ...[columns.series, columns.unit],
        { key: "athletes", heading: say`Athletes`, meaning: say`Tested before the block and since.`, format: "0" },
        {
          key: "change",
          heading: say`Mean change`,
          meaning: say`After minus before, in the unit.`,
          format: "+0.0##;-0.0##;0",
        },
        {
          key: "low",
          heading: say`Change low`,
          meaning: say`Lower 95 % limit of the mean change.`,
          format: "+0.0##;-0.0##;0",
        },
        {
          key: "high",
          heading: say`Change high`,
          meaning: say`Upper 95 % limit of the mean change.`,
          format: "+0.0##;-0.0##;0",
        },
        {
          key: "effect",
          heading: say`Better by (SD)`,
          meaning: say`The mean change in standard deviations between athletes (g_av): above 0 is better, also for times.`,
          format: "+0.00;-0.00;0.00",
        },
        { key: "effectLow", heading: say`SD low`, meaning: say`Lower 95 % limit of it.`, format: "+0.00;-0.00;0.00" },
        { key: "effectHigh", heading: say`SD high`, meaning: say`Upper 95 % limit of it.`, format: "+0.00;-0.00;0.00" },
        { key: "improved", heading: say`Improved`, meaning: say`Athletes who improved beyond the noise.`, format: "0" },
        { key: "declined", heading: say`Declined`, meaning: say`Athletes who declined beyond the noise.`, format: "0" },
        { key: "words", heading: say`In words`, meaning: say`Whether the interval leaves room for no change.` },
      ],
      rows: groups.map((group): ReportValue[] => {
        const effect = effectOf(group);
        const { change } = group.change ?? { change: null };
        return [
          ...[
            group.series,
            group.unit,
            group.athletes,
            change?.value ?? null,
            change?.low ?? null,
            change?.high ?? null,
          ],
          ...[effect?.value ?? null, effect?.low ?? null, effect?.high ?? null, group.improved, group.declined],
          groupWords[betterBy(group)],
        ];
      }),
      rowKey: "series",
    },
    chart: {
      kind: "bar",
      title: say`The squad's change, in standard deviations`,
      categories: "series",
      series: [{ column: "effect", name: say`Better by (SD)`, tone: "strong" }],
      valueAxisTitle: say`SD between athletes`,
      ends: { negative: say`Worse`, positive: say`Better` },
    },
    cautions: [notWhatMadeIt, ...byReason(missing)],
    provenance: provenanceOf(
      review,
      origin,
      say`Mean change with its 95 % interval; in standard deviations as g_av, small samples corrected (Lakens 2013, Front Psychol 4:863; Cumming 2012). Fewer than five athletes are looked at one by one.`,
    ),
    ...{ marks: [], testAgain: [] },
  };
}

const groupWords = {
  better: say`Better as a group`,
  worse: say`Worse as a group`,
  unclear: say`Cannot tell: no change is possible too`,
  tooFew: say`Too few for a group: look at each athlete`,
} as const;

function betterBy(group: ReviewedGroup): keyof typeof groupWords {
  const effect = effectOf(group);
  if (effect === null) return "tooFew";
  if (effect.low > 0) return "better";
  return effect.high < 0 ? "worse" : "unclear";
}

/** The standardised change, above 0 for the better whatever the test. */
function effectOf({ change, direction }: ReviewedGroup): Estimate | null {
  if (change === null) return null;
  const { value, low, high } = change.corrected.ofAverageSpread;
  return direction === "higher" ? { value, low, high } : { value: -value, low: -high, high: -low };
}

/** Who did the work beside who changed, a row for each athlete. */
export function reviewWorkReport(review: Review, origin: Origin): Report {
  const athletes = [...groupBy(review.changes, ({ athlete }) => athlete).values()];
  const improved = athletes.filter((own) => own.some(isBetter)).length;
  const declined = athletes.filter((own) => own.some(isWorse)).length;
  const shares = athletes.flatMap(([first]) => shareOf(first!) ?? []).sort((a, b) => a - b);
  return {
    analysis: "reviewWork",
    sheet: say`Review by athlete`,
    title: say`Review of the block: who did the work, who changed`,
    summary: [
      say`Of ${athletes.length} athletes, ${improved} improved beyond the noise in at least one test, and ${declined} declined in one.`,
      shares.length === 0
        ? say`The diary says nothing of this block, so nobody's attendance is known.`
        : say`They were there for ${shares[0]!.toFixed(0)} to ${shares.at(-1)!.toFixed(0)} % of their group's sessions.`,
    ],
    table: {
      name: "Tapeline_ReviewByAthlete",
      columns: [
        ...[columns.athlete, columns.role, columns.attended, columns.held],
        { key: "share", heading: say`Attended (%)`, meaning: say`Sessions attended, of those held.`, format: "0" },
        {
          key: "tests",
          heading: say`Tests compared`,
          meaning: say`Tests done before the block and since.`,
          format: "0",
        },
        {
          key: "overNoise",
          heading: say`Mean change (noise)`,
          meaning: say`Mean of the changes, each over what noise alone explains 19 times in 20: above 0 is better, beyond 1 more than noise.`,
          format: "+0.0;-0.0;0.0",
        },
        {
          key: "improved",
          heading: say`Improved in`,
          meaning: say`Tests in which the change was beyond noise, for the better.`,
        },
        {
          key: "declined",
          heading: say`Declined in`,
          meaning: say`Tests in which the change was beyond noise, for the worse.`,
        },
      ],
      rows: athletes.map((own): ReportValue[] => {
        const { athlete, role, attendance } = own[0]!;
        const sizes = own.flatMap(({ overNoise }) => overNoise ?? []);
        const named = (which: (change: ReviewedChange) => boolean) =>
          own
            .filter(which)
            .map(({ series }) => series)
            .join("; ") || null;
        return [
          ...[athlete, role, attendance?.attended ?? null, attendance?.held ?? null, shareOf(own[0]!), own.length],
          ...[sizes.length === 0 ? null : mean(sizes), named(isBetter), named(isWorse)],
        ];
      }),
      rowKey: "athlete",
    },
    ...(shares.length === 0
      ? {}
      : {
          chart: {
            kind: "scatter",
            title: say`Attendance (%, across) and mean change (upwards)`,
            categories: "share",
            series: [{ column: "overNoise", name: say`Athletes`, tone: "strong" }],
            valueAxisTitle: say`Mean change, in sizes of the noise`,
          } as const,
        }),
    cautions: [noProof, notWhatMadeIt, ...byReason(review.missing)],
    provenance: provenanceOf(
      review,
      origin,
      say`A session counts as held when at least half of the athlete's group was there; changes as in the review of every change.`,
    ),
    ...{ marks: [], testAgain: [] },
  };
}

/** Percent of the group's sessions; null where the group held none. */
const shareOf = ({ attendance }: ReviewedChange): number | null =>
  attendance === null || attendance.held === 0 ? null : (100 * attendance.attended) / attendance.held;
