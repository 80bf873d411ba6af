import logGamma from "@stdlib/math-base-special-gammaln";

/**
 * Hedges' factor J that takes the small-sample bias out of a standardised difference:
 *
 *     J = Gamma(df / 2) / (sqrt(df / 2) Gamma((df - 1) / 2)),   df > 1
 *
 * Source: Hedges 1981, J Educ Stat 6:107-128 (from memory).
 */
export const smallSampleCorrection = (degreesOfFreedom: number): number =>
  Math.exp(logGamma(degreesOfFreedom / 2) - logGamma((degreesOfFreedom - 1) / 2)) / Math.sqrt(degreesOfFreedom / 2);
