import quantile from "@stdlib/stats-base-dists-chisquare-quantile";

/** The value below which a share `p` (0 to 1) of the chi-square distribution with `degreesOfFreedom` > 0 lies. */
export const chiSquareQuantile = (p: number, degreesOfFreedom: number): number => quantile(p, degreesOfFreedom);
