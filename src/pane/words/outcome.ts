/** What the pane says of the review of a block. */
export const outcomeWords = {
  nothing: "Nothing to review yet",
  nothingText: "This holds the latest results against earlier ones of the same athletes, from another day.",
  source: "the tables Tapeline_Results and Tapeline_Diary",
  view: "What to see",
  views: {
    squad: "The squad, test by test",
    work: "Who did the work, who changed",
    changes: "Every change, in words",
    next: "What comes next",
  },
  ofBlock: (begins: string, ends: string) => `The block from ${begins} to ${ends}.`,
  ofDays: (begins: string, ends: string) =>
    `No plan is kept, so it goes from the first test day to the last: ${begins} to ${ends}.`,
  athlete: "Athlete",
  change: (before: number, after: number, unit: string | null) =>
    `${shown(before)} → ${shown(after)}${unit === null ? "" : ` ${unit}`}`,
  chances: (better: number, worse: number) => `Better by what matters: ${chance(better)}; worse: ${chance(worse)}.`,
  carried: { "carried over": "Carried over", new: "New", done: "Done", "set aside": "Set aside" },
  toPriorities: "To the new priorities",
  all: (count: number) => `Show all ${count}`,
  fewer: "Show fewer",
  work: "Attendance and mean change",
  across: "Sessions attended (%)",
  upwards: "Mean change, in sizes of the noise",
  noise: "Within noise",
} as const;

const shown = (score: number): string => String(Number(score.toPrecision(4)));

/** A chance from 0 to 100, never told as certain. */
const chance = (percent: number): string =>
  percent > 99 ? "over 99 %" : percent < 1 ? "under 1 %" : `${percent.toFixed(0)} %`;
