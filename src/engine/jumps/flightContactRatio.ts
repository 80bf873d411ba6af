import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * The other form of the reactive strength index, without a unit: flight time / contact time, both in seconds.
 * Refuses values that are not positive.
 *
 * Source: Flanagan & Comyns 2008 (from memory).
 */
export function flightContactRatio(flightTimeSeconds: number, contactTimeSeconds: number): Result<number> {
  const refusals = positiveRefusals({ "flight time": flightTimeSeconds, "contact time": contactTimeSeconds });
  return refusals.length > 0 ? refuse(...refusals) : ok(flightTimeSeconds / contactTimeSeconds);
}
