import { say } from "../../language/say";
import { rangeRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Rating of perceived exertion of a lifting set from repetitions in reserve: 10 - reserve, the inverse of `repetitionsInReserve`.
 * Refuses a reserve outside 0 to 9.
 *
 * Source: Zourdos et al. 2016, J Strength Cond Res 30:267-275 (from memory).
 */
export function perceivedExertion(repetitionsInReserve: number): Result<number> {
  const refusals = rangeRefusals(say`repetitions in reserve`, 0, 9, repetitionsInReserve);
  return refusals.length > 0 ? refuse(...refusals) : ok(10 - repetitionsInReserve);
}
