import { normalQuantile } from "./normal";
import { studentTQuantile } from "./studentT";

/**
 * How many standard errors a two-sided interval reaches to each side. From the normal distribution with the rounded
 * figures that publications use, 1.96 at 95 % and 1.645 at 90 %, so that numbers agree with theirs; from Student's t when
 * the standard error comes from a few degrees of freedom.
 */
export function errorMultiplier(confidence: number, degreesOfFreedom?: number): number {
  const share = (1 + confidence) / 2;
  if (degreesOfFreedom !== undefined) return studentTQuantile(share, degreesOfFreedom);
  return published.get(confidence) ?? normalQuantile(share);
}

const published = new Map([
  [0.9, 1.645],
  [0.95, 1.96],
]);
