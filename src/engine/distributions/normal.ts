import cdf from "@stdlib/stats-base-dists-normal-cdf";
import quantile from "@stdlib/stats-base-dists-normal-quantile";

/** P(Z <= z) of the standard normal distribution. */
export const normalCumulative = (z: number): number => cdf(z, 0, 1);

/** The z below which a share `p` (0 to 1) of the standard normal distribution lies. */
export const normalQuantile = (p: number): number => quantile(p, 0, 1);

/** Height of the standard normal curve at z. */
export const normalDensity = (z: number): number => Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
