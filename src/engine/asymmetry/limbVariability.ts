import { say } from "../../language/say";
import { mean, standardDeviation } from "../moments";
import { presentValues } from "../presentValues";
import { notPositive, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";

export type LimbVariability = {
  /** Coefficients of variation of the trials of each side, in percent. */
  readonly left: number;
  readonly right: number;
  /** The larger of the two: the limit of the published rule. */
  readonly limit: number;
};

/**
 * The published simple rule: an asymmetry counts only when it is larger than the variability of the limbs, here the
 * larger of the two coefficients of variation, 100 * SD / mean of the trials of one side.
 *
 * The rule is lenient. A coefficient of variation is the noise of one trial of one limb, while a difference has the
 * noise of two. With truly equal legs and a known coefficient of variation, P(|z| > 1 / sqrt(2 v)) of the athletes
 * are called asymmetric: 48 % for single trials (v = 1), 34 % for the best of three (v = 0.559), 22 % for the mean of
 * three (v = 1/3). Taking the larger of two coefficients estimated from three trials each leaves 29 % and 20 %
 * (simulation, 2 million athletes). `noiseLimit` holds the rate it promises.
 *
 * Refuses fewer than two trials on a side and values that are not above zero.
 * Source: Exell, Irwin, Gittoes & Kerwin 2012, J Sports Sci 30:403-409 (from memory; their own test compares the
 * limbs' trials statistically, the comparison of percentages is how later papers apply it).
 */
export function limbVariability(
  leftTrials: readonly (number | null)[],
  rightTrials: readonly (number | null)[],
): Result<LimbVariability> {
  const left = presentValues(leftTrials);
  const right = presentValues(rightTrials);
  const reasons = [];
  if (left.length < 2) reasons.push(tooFew(say`left trials`, 2, left.length));
  if (right.length < 2) reasons.push(tooFew(say`right trials`, 2, right.length));
  const badValue = [...left, ...right].find((value) => value <= 0);
  if (badValue !== undefined) reasons.push(notPositive(say`every trial`, badValue));
  if (reasons.length > 0) return refuse(...reasons);

  const leftVariation = (100 * standardDeviation(left)) / mean(left);
  const rightVariation = (100 * standardDeviation(right)) / mean(right);
  return ok({ left: leftVariation, right: rightVariation, limit: Math.max(leftVariation, rightVariation) });
}
