import { say } from "../../language/say";
import type { Refusal } from "../result";

/** "down" never exceeds the target, for safety; "nearest" may, and takes the lighter of two equally near loads. */
export type LoadRounding = "down" | "nearest";

/** The achievable load a rule picks, out of loads in any order; `null` when all are above the target. */
export function pickLoad(loads: Iterable<number>, target: number, rule: LoadRounding): number | null {
  let below: number | null = null;
  let above: number | null = null;
  for (const load of loads) {
    if (load <= target) below = Math.max(below ?? load, load);
    else above = Math.min(above ?? load, load);
  }
  if (below === null) return null;
  return rule === "nearest" && above !== null && above - target < target - below ? above : below;
}

/** The target is lighter than the lightest load there is. */
export const belowLightest = (what: string, lightest: number, target: number): Refusal => ({
  code: "belowLightest",
  message: say`${target} is below ${what} (${lightest}); use a lighter implement or another exercise.`,
  facts: { what, lightest, target },
});
