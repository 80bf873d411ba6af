import { say } from "../../language/say";
import { rangeRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Repetitions in reserve from the rating of perceived exertion of a lifting set: 10 - rating.
 * Refuses a rating outside 1 to 10. Below 7 (more than three in reserve) the rating says little.
 *
 * Source: Zourdos et al. 2016, J Strength Cond Res 30:267-275 (from memory).
 */
export function repetitionsInReserve(perceivedExertion: number): Result<number> {
  const refusals = rangeRefusals(say`perceived exertion of the set`, 1, 10, perceivedExertion);
  return refusals.length > 0 ? refuse(...refusals) : ok(10 - perceivedExertion);
}
