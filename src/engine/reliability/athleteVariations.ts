import { say } from "../../language/say";
import { mean, standardDeviation } from "../moments";
import { presentValues } from "../presentValues";
import { tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { logarithms } from "./logarithms";
import { fewestAthletes, type RepeatedResults } from "./repeatedResults";

/**
 * Coefficient of variation of each athlete's own results, 100 * SD / mean in percent, over the athletes with at least two
 * results. Change that all athletes share is in it. Refuses values that are not above zero and fewer than three athletes.
 */
export function athleteVariations(results: RepeatedResults): Result<number[]> {
  const positive = logarithms(results);
  if (!positive.ok) return positive;
  const repeated = results.map(presentValues).filter((row) => row.length >= 2);
  if (repeated.length < fewestAthletes) {
    return refuse(tooFew(say`athletes with two results`, fewestAthletes, repeated.length));
  }
  return ok(repeated.map((row) => (100 * standardDeviation(row)) / mean(row)));
}
