import { say } from "../../language/say";
import type { Caution } from "../caution";
import { negativeRefusals } from "../quantities";
import { tooFew } from "../refusals";
import { ok, type Result, refuse, unwrap } from "../result";
import { quantile } from "../standing/quantile";

/** Repetitions or seconds to failure; `stoppedAtCap` when the tester ended the test, so that the true score is at least this. */
export type CapacityScore = { readonly value: number; readonly stoppedAtCap: boolean };

/** A summary value; `atLeast` when scores stopped at the cap leave open how much higher it is. */
export type CapacityQuantile = { readonly value: number; readonly atLeast: boolean };

export type CapacityScores = {
  readonly count: number;
  readonly stoppedAtCap: number;
  readonly lowerQuartile: CapacityQuantile;
  readonly median: CapacityQuantile;
  readonly upperQuartile: CapacityQuantile;
  readonly cautions: readonly Caution[];
};

/**
 * Median and quartiles of a squad's capacity scores of one limb (calf raises, bridges, planks), missing ones `null`.
 * Such scores are skewed and end at the cap, so there is no mean and no z score. Scores stopped at the cap keep their place
 * and make every quantile that reaches them "at least". Quartiles as in spreadsheets (PERCENTILE.INC).
 * Refuses fewer than three scores and negative ones.
 *
 * Source: quantiles Hyndman & Fan 1996, Am Stat 50:361-365, type 7 (from memory); treatment of caps: right-censored scores.
 */
export function capacityScores(scores: readonly (CapacityScore | null)[]): Result<CapacityScores> {
  const present = scores.filter((score) => score !== null);
  const refusals = present.flatMap(({ value }) => negativeRefusals({ "capacity score": value }));
  if (present.length < 3) refusals.push(tooFew(say`capacity scores`, 3, present.length));
  if (refusals.length > 0) return refuse(...refusals);

  // Among equal values those stopped at the cap are the higher ones.
  const sorted = [...present].sort((a, b) => a.value - b.value || Number(a.stoppedAtCap) - Number(b.stoppedAtCap));
  const values = sorted.map(({ value }) => value);
  const firstAtCap = sorted.findIndex(({ stoppedAtCap }) => stoppedAtCap);
  const at = (share: number): CapacityQuantile => ({
    value: unwrap(quantile(values, share)),
    atLeast: firstAtCap >= 0 && firstAtCap <= Math.ceil((sorted.length - 1) * share),
  });
  const stoppedAtCap = sorted.filter((score) => score.stoppedAtCap).length;
  return ok({
    count: sorted.length,
    stoppedAtCap,
    lowerQuartile: at(0.25),
    median: at(0.5),
    upperQuartile: at(0.75),
    cautions: stoppedAtCap > 0 ? [someStoppedAtCap(stoppedAtCap, sorted.length)] : [],
  });
}

const someStoppedAtCap = (stopped: number, count: number): Caution => ({
  code: "stoppedAtCap",
  message: say`${stopped} of ${count} were stopped at the cap; their true scores are at least what was recorded.`,
  facts: { stopped, count },
});
