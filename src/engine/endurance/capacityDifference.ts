import { say } from "../../language/say";
import type { Caution } from "../caution";
import { negativeRefusals } from "../quantities";
import { ok, type Refusal, type Result, refuse } from "../result";
import type { CapacityScore } from "./capacityScores";

export type CapacityDifference = {
  /** Right less left, in repetitions or seconds. */
  readonly difference: number;
  /** The better side was stopped at the cap: the difference is at least this large. */
  readonly atLeast: boolean;
  /** The weaker side in percent of the better one; at most this when `atLeast`. `null` when the better side scored zero. */
  readonly percentOfBetter: number | null;
  readonly cautions: readonly Caution[];
};

/** Below this score one repetition is more than five percent: common practice, no source. */
const smallCount = 20;

/**
 * Side-to-side difference of two capacity scores of one athlete, in repetitions or seconds first: with small counts a percentage
 * misleads, and retests of calf raises differ by about 6 repetitions either way (Hebert-Losier et al. 2017, Physiotherapy
 * 103:446-452, abstract read). Refuses negative scores, and pairs in which a side stopped at its cap leaves the answer open.
 */
export function capacityDifference(left: CapacityScore, right: CapacityScore): Result<CapacityDifference> {
  const refusals = negativeRefusals({ "left score": left.value, "right score": right.value });
  const weaker = left.value <= right.value ? left : right;
  const better = weaker === left ? right : left;
  if (weaker.stoppedAtCap || (better.stoppedAtCap && weaker.value === better.value)) refusals.push(leftOpenByCap);
  if (refusals.length > 0) return refuse(...refusals);

  const cautions = better.value < smallCount ? [smallCounts(better.value)] : [];
  return ok({
    difference: right.value - left.value,
    atLeast: better.stoppedAtCap,
    percentOfBetter: better.value === 0 ? null : (100 * weaker.value) / better.value,
    cautions,
  });
}

const leftOpenByCap: Refusal = {
  code: "leftOpenByCap",
  get message() {
    return say`A side was stopped at the cap while the other scored as much or more, so their difference is not known.`;
  },
  facts: {},
};

const smallCounts = (better: number): Caution => ({
  code: "smallCounts",
  message: say`With scores this small (${better}) one repetition is a large percentage; read the difference in repetitions.`,
  facts: { better },
});
