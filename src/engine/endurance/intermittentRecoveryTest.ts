import { say } from "../../language/say";
import { type Caution, groupEstimate } from "../caution";
import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";
import type { OxygenUptake } from "./oxygenUptake";

const equations = {
  1: {
    perMetre: 0.0084,
    constant: 36.4,
    get error() {
      return say`correlation about 0.70`;
    },
  },
  2: {
    perMetre: 0.0136,
    constant: 45.3,
    get error() {
      return say`correlation about 0.58`;
    },
  },
} as const;

const metresPerShuttle = 40;

/**
 * Maximal oxygen uptake (ml/kg/min) from the metres of the Yo-Yo intermittent recovery test: level 1 0.0084 m + 36.4,
 * level 2 0.0136 m + 45.3. The metres themselves are the result to keep. Refuses a distance that is not positive.
 *
 * Source: Bangsbo, Iaia & Krustrup 2008, Sports Med 38:37-51 (as quoted by secondary pages); correlations from memory,
 * as is the authors' warning against its use for individuals.
 */
export function intermittentRecoveryTest(
  distanceMetres: number,
  { level }: { readonly level: 1 | 2 },
): Result<OxygenUptake> {
  const refusals = positiveRefusals({ "distance run": distanceMetres });
  if (refusals.length > 0) return refuse(...refusals);
  const { perMetre, constant, error } = equations[level];
  const cautions: Caution[] = [groupEstimate(say`maximal oxygen uptake`, error)];
  if (distanceMetres % metresPerShuttle !== 0) cautions.push(notWholeShuttles(distanceMetres));
  return ok({ oxygenUptake: perMetre * distanceMetres + constant, cautions });
}

const notWholeShuttles = (distance: number): Caution => ({
  code: "notWholeShuttles",
  message: say`The test counts whole shuttles of 40 m; ${distance} m is none.`,
  facts: { distance },
});
