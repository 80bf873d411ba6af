import { say } from "../../language/say";
import { groupEstimate } from "../caution";
import { rangeRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";
import type { OxygenUptake } from "./oxygenUptake";

const equations = {
  male: {
    perStage: 2.75,
    constant: 28.8,
    get error() {
      return say`standard error 4.07 ml/kg/min`;
    },
  },
  female: {
    perStage: 2.85,
    constant: 25.1,
    get error() {
      return say`standard error 3.64 ml/kg/min`;
    },
  },
} as const;

/**
 * Maximal oxygen uptake (ml/kg/min) of young adults from the last half-stage X completed in the 20 m shuttle run with
 * one-minute stages: men 2.75 X + 28.8, women 2.85 X + 25.1. X is a stage number (9.5), not a speed.
 * Refuses a stage outside 0.5 to 23.
 *
 * Source: Stickland et al. 2003 (abstract read).
 */
export function shuttleRunOfAdults(
  lastHalfStage: number,
  { sex }: { readonly sex: "male" | "female" },
): Result<OxygenUptake> {
  const refusals = rangeRefusals("last half-stage", 0.5, 23, lastHalfStage);
  if (refusals.length > 0) return refuse(...refusals);
  const { perStage, constant, error } = equations[sex];
  return ok({
    oxygenUptake: perStage * lastHalfStage + constant,
    cautions: [groupEstimate(say`maximal oxygen uptake`, error)],
  });
}
