import cdf from "@stdlib/stats-base-dists-t-cdf";
import { bisect } from "../bisect";

/** P(T <= t) of Student's t distribution with `degreesOfFreedom` > 0. */
export const studentTCumulative = (t: number, degreesOfFreedom: number): number => cdf(t, degreesOfFreedom);

/**
 * The t below which a share `p` (above 0, below 1) of Student's t distribution lies.
 *
 * Found from the library's distribution function by bisection on ln t: its own quantile gives the same to the last
 * digits, but is 20 kB that a coach would wait for before the first custom function answers. A squad asks for the same
 * few quantiles over and over, so the last ones are kept.
 */
export function studentTQuantile(p: number, degreesOfFreedom: number): number {
  if (p === 0.5) return 0;
  if (p > 0.5) return -studentTQuantile(1 - p, degreesOfFreedom);
  const key = `${p} ${degreesOfFreedom}`;
  const known = found.get(key);
  if (known !== undefined) return known;
  const quantile = -Math.exp(bisect((log) => cdf(-Math.exp(log), degreesOfFreedom) - p, lowestLog, highestLog));
  if (found.size >= keptAtMost) found.clear();
  found.set(key, quantile);
  return quantile;
}

const found = new Map<string, number>();
const keptAtMost = 1000;
const lowestLog = -40;
const highestLog = 700;
