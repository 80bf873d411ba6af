import { say } from "../../language/say";
import { rangeRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Session load in arbitrary units: rating of perceived exertion (0 to 10) x minutes. The rating is asked about half an hour
 * after the session. Refuses a rating outside 0 to 10 and minutes outside 0 to 1440.
 *
 * Source: Foster et al. 2001, J Strength Cond Res 15:109-115 (abstract read).
 */
export function sessionLoad(perceivedExertion: number, minutes: number): Result<number> {
  const refusals = [
    ...rangeRefusals(say`perceived exertion`, 0, 10, perceivedExertion),
    ...rangeRefusals(say`minutes of the session`, 0, 1440, minutes),
  ];
  return refusals.length > 0 ? refuse(...refusals) : ok(perceivedExertion * minutes);
}
