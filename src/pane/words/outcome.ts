import { numeral, say } from "../../language/say";

/** What the pane says of the review of a block. */
export const outcomeWords = {
  nothing: say`Nothing to review yet`,
  nothingText: say`This holds the latest results against earlier ones of the same athletes, from another day.`,
  source: say`the tables Tapeline_Results and Tapeline_Diary`,
  view: say`What to see`,
  views: {
    squad: say`The squad, test by test`,
    work: say`Who did the work, who changed`,
    changes: say`Every change, in words`,
    next: say`What comes next`,
  },
  ofBlock: (begins: string, ends: string) => say`The block from ${begins} to ${ends}.`,
  ofDays: (begins: string, ends: string) =>
    say`No plan is kept, so it goes from the first test day to the last: ${begins} to ${ends}.`,
  athlete: say`Athlete`,
  change: (before: number, after: number, unit: string | null) =>
    `${numeral(shown(before))} → ${numeral(shown(after))}${unit === null ? "" : ` ${unit}`}`,
  chances: (better: number, worse: number) => say`Better by what matters: ${chance(better)}; worse: ${chance(worse)}.`,
  carried: { "carried over": say`Carried over`, new: say`New`, done: say`Done`, "set aside": say`Set aside` },
  toPriorities: say`To the new priorities`,
  all: (count: number) => say`Show all ${count}`,
  fewer: say`Show fewer`,
  work: say`Attendance and mean change`,
  across: say`Sessions attended (%)`,
  upwards: say`Mean change, in sizes of the noise`,
  noise: say`Within noise`,
} as const;

const shown = (score: number): string => String(Number(score.toPrecision(4)));

/** A chance from 0 to 100, never told as certain. */
const chance = (percent: number): string =>
  percent > 99 ? say`over 99 %` : percent < 1 ? say`under 1 %` : `${percent.toFixed(0)} %`;
