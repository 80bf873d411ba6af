import type { Report } from "../analyses/report";
import type { Review } from "./review";

/** The review of a block, a row for each athlete and test: what changed, whether it was real, and who did the work. */
export function reviewReport(
  { changes, groups, missing }: Review,
  { source, date }: { readonly source: string; readonly date: string },
): Report {
  const improved = groups.reduce((sum, group) => sum + group.improved, 0);
  const declined = groups.reduce((sum, group) => sum + group.declined, 0);
  const grown = groups.flatMap(({ series, change }) =>
    change === null ? [] : [`${series} ${effect(change.corrected.ofAverageSpread)}`],
  );
  return {
    analysis: "review",
    sheet: "Review",
    title: "Review of the block",
    summary: [
      `Of ${changes.length} changes, ${improved} are improvements beyond the noise and ${declined} declines.`,
      ...(grown.length > 0 ? [`Group changes in standard deviations (95 % interval): ${grown.join("; ")}.`] : []),
      ...missing,
    ],
    table: {
      name: "Tapeline_Review",
      columns: [
        { key: "athlete", heading: "Athlete", meaning: "Name as in the squad." },
        { key: "role", heading: "Role", meaning: "Role as in the squad." },
        { key: "series", heading: "Test", meaning: "Test and measure." },
        { key: "unit", heading: "Unit", meaning: "Unit of the scores." },
        { key: "before", heading: "Before", meaning: "Last score before the block.", format: "0.0##" },
        { key: "after", heading: "After", meaning: "Latest score since the block began.", format: "0.0##" },
        { key: "low", heading: "Change low", meaning: "Lower 95 % limit of the true change.", format: "0.0##" },
        { key: "high", heading: "Change high", meaning: "Upper 95 % limit of the true change.", format: "0.0##" },
        {
          key: "better",
          heading: "Chance better (%)",
          meaning: "How likely the true change is an improvement that matters, from these data alone.",
          format: "0",
        },
        {
          key: "worse",
          heading: "Chance worse (%)",
          meaning: "How likely the true change is a decline that matters, from these data alone.",
          format: "0",
        },
        { key: "verdict", heading: "Verdict", meaning: "The change beside the test's noise." },
        { key: "attended", heading: "Sessions attended", meaning: "Of the block, by the diary.", format: "0" },
        {
          key: "held",
          heading: "Sessions held",
          meaning: "Sessions of the block at which at least half of the athlete's group was.",
          format: "0",
        },
        { key: "row", heading: "Row", meaning: "Athlete and test: by it a row is found again.", quiet: true },
      ],
      rows: changes.map((one) => [
        ...[one.athlete, one.role, one.series, one.unit, one.before, one.after, one.low, one.high],
        ...[one.better, one.worse, one.verdict, one.attendance?.attended ?? null, one.attendance?.held ?? null],
        `${one.athlete}, ${one.series}`,
      ]),
      rowKey: "row",
    },
    cautions: [
      "A change tells that something changed, not what made it: growth, rest, practice of the test and the block all count.",
      "Attendance beside a change is no proof that the one made the other.",
    ],
    provenance: {
      ...{ source, date, leftOut: [] },
      method:
        "Each change as in the analysis of change since last time; group changes as g_av, small samples corrected " +
        "(Lakens 2013, Front Psychol 4:863; Cumming 2012).",
      used: `${new Set(changes.map(({ athlete }) => athlete)).size} athletes, ${changes.length} changes`,
    },
    marks: [],
    testAgain: [],
  };
}

const effect = ({ value, low, high }: { readonly value: number; readonly low: number; readonly high: number }) =>
  `${signed(value)} (${signed(low)} to ${signed(high)})`;
const signed = (value: number): string => `${value < 0 ? "−" : "+"}${Math.abs(value).toFixed(2)}`;
