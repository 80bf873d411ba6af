import { say } from "../../language/say";
import { mean, median, standardDeviation } from "../moments";
import { presentValues } from "../presentValues";
import { tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";

export type SquadAsymmetry = {
  readonly count: number;
  readonly meanSize: number;
  readonly standardDeviationOfSize: number;
  readonly medianSize: number;
  /** Mean of the signed values: shows a shared preference for a side, hides asymmetry. */
  readonly meanSigned: number;
  readonly rightLarger: number;
  readonly leftLarger: number;
  readonly equal: number;
  /** Athletes whose size is above the threshold. */
  readonly beyondThreshold: number;
};

/**
 * Asymmetry over a squad, from each athlete's signed asymmetry in percent (positive: right larger; deviations from
 * equal sides). Size is the magnitude: signed values cancel. The mean size is never zero, noise alone makes some.
 *
 * Missing athletes are left out. Refuses fewer than two.
 * Source: table form used by Bishop and others, e.g. Bishop et al. 2019, Sports 7:58 (abstract read).
 */
export function squadAsymmetry(
  signed: readonly (number | null)[],
  { threshold }: { readonly threshold: number },
): Result<SquadAsymmetry> {
  const present = presentValues(signed);
  if (present.length < 2) return refuse(tooFew(say`athletes with both sides`, 2, present.length));
  const sizes = present.map(Math.abs);
  return ok({
    count: present.length,
    meanSize: mean(sizes),
    standardDeviationOfSize: standardDeviation(sizes),
    medianSize: median(sizes),
    meanSigned: mean(present),
    rightLarger: present.filter((value) => value > 0).length,
    leftLarger: present.filter((value) => value < 0).length,
    equal: present.filter((value) => value === 0).length,
    beyondThreshold: sizes.filter((size) => size > threshold).length,
  });
}
