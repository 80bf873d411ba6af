import { say } from "../../language/say";
import { rangeRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Speed in km/h of a stage of the 20 m shuttle run with one-minute stages: first + 0.5 (stage - 1). The first stage is run at 8.5
 * or, in other versions, 8.0 km/h. Refuses a stage outside 1 to 23 and a first speed outside 8 to 8.5.
 *
 * Source: Leger et al. 1988, J Sports Sci 6:93-101 (from memory).
 */
export function shuttleSpeed(
  stage: number,
  { firstStageSpeed = 8.5 }: { readonly firstStageSpeed?: number } = {},
): Result<number> {
  const refusals = [
    ...rangeRefusals("stage", 1, 23, stage),
    ...rangeRefusals(say`speed of the first stage`, 8, 8.5, firstStageSpeed),
  ];
  return refusals.length > 0 ? refuse(...refusals) : ok(firstStageSpeed + 0.5 * (stage - 1));
}
