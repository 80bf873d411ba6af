import { gates, isLift, type TestKey, testOf } from "../../sample-workbooks/battery";
import { implausible, slips } from "../../sample-workbooks/plantedTruths";
import { headingsOf, type TestDay, testDays } from "../../sample-workbooks/testDays";
import { unwrap } from "../../src/engine/result";
import { estimatedMaximum } from "../../src/engine/strength/estimatedMaximum";
import { reduceTrials } from "../../src/engine/trials/reduceTrials";
import type { Reduction } from "../../src/engine/trials/reduction";

export const days = testDays();

export const dayOf = (key: TestKey, occasion: number): TestDay =>
  days.find((day) => day.occasion === occasion && day.place === testOf(key).day)!;

export const dayCalled = (sheet: string): TestDay => days.find((day) => day.sheet === sheet)!;

/** What stands below a heading in an athlete's row; null where it is no number, or she has no row. */
export function cellOf(day: TestDay, athlete: string, heading: string): number | null {
  const cell = day.rows.find((row) => row.athlete.name === athlete)?.cells[day.headings.indexOf(heading)];
  return typeof cell === "number" ? cell : null;
}

/** An athlete's trials of one test and day, without the cells that a reading must refuse; of both sides where there are two. */
export function trialsOf(key: TestKey, occasion: number, athlete: string, side?: "left" | "right"): (number | null)[] {
  const day = dayOf(key, occasion);
  return headingsOf(key)
    .filter((heading) => side === undefined || heading.includes(` ${side}`))
    .filter((heading) => key !== "sprint" || heading.includes(` ${gates.at(-1)} m`))
    .map((heading) => {
      const isRefused = [...slips, implausible].some(
        (each) => each.athlete === athlete && each.sheet === day.sheet && each.heading === heading,
      );
      return isRefused ? null : cellOf(day, athlete, heading);
    });
}

/** One score of an athlete in a test: the estimated maximum of a lift (Epley), the 30 m time of the sprint. */
export function scoreOf(key: TestKey, occasion: number, athlete: string, reduction: Reduction = "mean"): number | null {
  const trials = trialsOf(key, occasion, athlete);
  if (trials.every((trial) => trial === null)) return null;
  if (isLift(key)) return unwrap(estimatedMaximum(trials[0]!, trials[1]!, { equation: "epley" })).maximum;
  return unwrap(reduceTrials(trials, { reduction, direction: testOf(key).better })).score;
}
