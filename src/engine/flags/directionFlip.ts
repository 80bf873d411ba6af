import { say } from "../../language/say";
import { rounded } from "../caution";
import type { Flag } from "./flag";

/**
 * Flags a limb difference that changed sides between two sessions: signed asymmetries, positive when the right value is larger, both
 * in the same unit. `noise` is the size below which a difference is not told from none (0 when unknown); a flip in which
 * either side stays within it is said to be possibly noise. An equal or missing (`null`) session flips nothing.
 *
 * Direction is itself unstable between sessions: Bishop et al. 2019, Sports 7:58 (abstract read).
 */
export function directionFlip(
  before: number | null,
  now: number | null,
  { noise = 0 }: { readonly noise?: number } = {},
): Flag | null {
  if (before === null || now === null || !(before * now < 0)) return null;
  const smaller = Math.min(Math.abs(before), Math.abs(now));
  const beyondNoise = noise > 0 && smaller > noise;
  const judgement = beyondNoise
    ? say`Both differences exceed the noise: check that left and right were not swapped.`
    : say`One of them may be no more than noise.`;
  return {
    code: "directionFlip",
    reason: say`The ${sideOf(before)} side was larger before (${rounded(Math.abs(before))}), the ${sideOf(now)} side is now (${rounded(Math.abs(now))}). ${judgement}`,
    facts: { before, now, noise, beyondNoise: beyondNoise ? "yes" : "no" },
  };
}

const sideOf = (asymmetry: number): string => (asymmetry > 0 ? "right" : "left");
