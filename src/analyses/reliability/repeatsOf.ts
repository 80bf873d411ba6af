import type { RepeatedResults } from "../../engine/reliability/repeatedResults";
import type { TestResult } from "../../reading/testResult";
import { groupBy } from "../groupBy";
import { daysOf } from "../sessions";
import { trialScore } from "../trialScore";
import type { ReliabilityChoices } from "./reliability";

/**
 * The results of one test and side as rows of repeats. Between trials: a row for each athlete and day, a column for
 * each trial. Between sessions: a row for each athlete, a column for each day with its trials reduced to one score; or
 * a column for each result column, where the sheet has no days.
 */
export function repeatsOf(results: readonly TestResult[], choices: ReliabilityChoices): RepeatedResults {
  const days = daysOf(results);
  if (choices.compare === "sessions" && days.length >= 2) {
    return [...groupBy(results, ({ athlete }) => athlete).values()].map((own) =>
      days.map((day) => {
        const trials = own.filter(({ date }) => date === day).map(({ value }) => value);
        return trialScore(trials, choices);
      }),
    );
  }
  const rows = [...groupBy(results, ({ athlete, date }) => `${athlete}|${date}`).values()].map(byAttempt);
  const most = rows.reduce((longest, row) => Math.max(longest, row.length), 0);
  return rows.map((row) => [...row, ...Array<null>(most - row.length).fill(null)]);
}

/** Trials at their numbers; where a sheet gives one number twice, the later one comes after the last. */
function byAttempt(trials: readonly TestResult[]): (number | null)[] {
  const row: (number | null)[] = Array(Math.max(...trials.map(({ attempt }) => attempt))).fill(null);
  for (const { attempt, value } of trials) {
    if (row[attempt - 1] === null) row[attempt - 1] = value;
    else row.push(value);
  }
  return row;
}
