import { say } from "../../language/say";
import { many } from "./many";

/** What the pane says of where the squad is in the cycle, what is due, and what to do next. */
export const nextStepWords = {
  label: say`Next step`,
  setUp: {
    text: say`Ask a question of any results you select, or set up squad and tests to keep results over the season.`,
    press: say`Set up squad and tests`,
  },
  test: (athletes: number, tests: number) => ({
    text: say`${many(athletes, "athlete")} and ${many(tests, "test number")} are set up. Next come results.`,
    press: say`Make a sheet for a test day`,
  }),
  understand: {
    text: say`There are results. Ask them anything below, then decide what to work on.`,
    press: say`See priorities`,
  },
  plan: {
    text: say`The priorities are written. Overrule them where you know better, then plan.`,
    press: say`Plan a block`,
  },
  toCome: (days: number) => ({
    text: say`The block is planned, and begins in ${many(days, "day")}.`,
    press: say`Print sessions`,
  }),
  deliver: (days: number) => ({
    text: say`The block is under way: ${many(days, "day")} left.`,
    press: say`Print sessions, keep the diary`,
  }),
  retest: {
    text: say`The block is over. Test again to see what has changed.`,
    press: say`Make a sheet for a test day`,
  },
  review: {
    text: say`The block is over and new results are in.`,
    press: say`See who changed, and what comes next`,
  },
  planNext: {
    text: say`The new priorities are written. Overrule them where you know better, then plan the next block.`,
    press: say`Plan the next block`,
  },
  due: (series: string, athletes: number, never: boolean) =>
    say`${series}: ${never ? say`not tested yet` : say`a retest is due`} for ${many(athletes, "athlete")}.`,
  moreDue: (count: number) => say`And ${many(count, "more test")}.`,
  noDiary: (days: number) => say`No diary entry for ${days} days.`,
  ending: (days: number) => say`The block ends in ${many(days, "day")}: get the retest ready.`,
} as const;
