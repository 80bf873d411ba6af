import { say } from "../../language/say";
import type { Flag } from "./flag";

/** Flags an athlete with a result for one limb only; no asymmetry can be given, and none of 100 % is meant. */
export function sideMissing(left: number | null, right: number | null): Flag | null {
  if ((left === null) === (right === null)) return null;
  const side = left === null ? "left" : "right";
  return {
    code: "sideMissing",
    reason: say`There is no result for the ${side} side, so the sides cannot be compared.`,
    facts: { side },
  };
}
