import { say } from "../../language/say";
import type { Caution } from "../caution";
import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

export type DynamicStrengthIndex = { readonly index: number; readonly cautions: readonly Caution[] };

/**
 * Dynamic strength index: peak force of a jump / peak force of the isometric mid-thigh pull, both in newtons and both with or
 * both without body weight. Print both parts beside it: the index also rises when the pull gets worse.
 * Refuses values that are not positive.
 *
 * Source: Sheppard et al. 2011 (from memory). The countermovement version is the more reliable one (Comfort et al. 2018,
 * IJSPP 13:320-325, abstract read); its use is disputed (Brearley et al. 2024, abstract read).
 */
export function dynamicStrengthIndex(jumpPeakForce: number, isometricPeakForce: number): Result<DynamicStrengthIndex> {
  const refusals = positiveRefusals({
    "peak force of the jump": jumpPeakForce,
    "peak force of the pull": isometricPeakForce,
  });
  if (refusals.length > 0) return refuse(...refusals);
  const index = jumpPeakForce / isometricPeakForce;
  return ok({ index, cautions: index > 1 ? [pullBelowJump(index)] : [] });
}

const pullBelowJump = (index: number): Caution => ({
  code: "pullBelowJump",
  message: say`The jump gave more force than the isometric pull: the pull was probably not maximal, or body weight is counted in one only.`,
  facts: { index },
});
