import { many } from "../words";

/** What the pane says of where the squad is in the cycle, what is due, and what to do next. */
export const nextStepWords = {
  label: "Next step",
  setUp: {
    text: "Ask a question of any results you select, or set up squad and tests to keep results over the season.",
    press: "Set up squad and tests",
  },
  test: (athletes: number, tests: number) => ({
    text: `${many(athletes, "athlete")} and ${many(tests, "test number")} are set up. Next come results.`,
    press: "Make a sheet for a test day",
  }),
  understand: {
    text: "There are results. Ask them anything below, then decide what to work on.",
    press: "See priorities",
  },
  plan: {
    text: "The priorities are written. Overrule them where you know better, then plan.",
    press: "Plan a block",
  },
  toCome: (days: number) => ({
    text: `The block is planned, and begins in ${many(days, "day")}.`,
    press: "Print sessions",
  }),
  deliver: (days: number) => ({
    text: `The block is under way: ${many(days, "day")} left.`,
    press: "Print sessions, keep the diary",
  }),
  retest: {
    text: "The block is over. Test again to see what has changed.",
    press: "Make a sheet for a test day",
  },
  review: {
    text: "The block is over and new results are in.",
    press: "See who changed, and what comes next",
  },
  planNext: {
    text: "The new priorities are written. Overrule them where you know better, then plan the next block.",
    press: "Plan the next block",
  },
  due: (series: string, athletes: number, never: boolean) =>
    `${series}: ${never ? "not tested yet" : "a retest is due"} for ${many(athletes, "athlete")}.`,
  moreDue: (count: number) => `And ${many(count, "more test")}.`,
  noDiary: (days: number) => `No diary entry for ${days} days.`,
  ending: (days: number) => `The block ends in ${many(days, "day")}: get the retest ready.`,
} as const;
