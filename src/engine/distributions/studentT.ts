import cdf from "@stdlib/stats-base-dists-t-cdf";
import quantile from "@stdlib/stats-base-dists-t-quantile";

/** P(T <= t) of Student's t distribution with `degreesOfFreedom` > 0. */
export const studentTCumulative = (t: number, degreesOfFreedom: number): number => cdf(t, degreesOfFreedom);

/** The t below which a share `p` (0 to 1) of Student's t distribution lies. */
export const studentTQuantile = (p: number, degreesOfFreedom: number): number => quantile(p, degreesOfFreedom);
