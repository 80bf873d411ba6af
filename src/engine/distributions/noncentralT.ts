import logGamma from "@stdlib/math-base-special-gammaln";
import { bisect } from "../bisect";
import { chiSquareQuantile } from "./chiSquare";
import { normalCumulative } from "./normal";

/**
 * P(T <= t) of the noncentral t distribution: T = (Z + noncentrality) / s with s = sqrt(chi-square / df), hence
 *
 *     P(T <= t) = integral over s of  P(Z <= t s - noncentrality) * density(s)
 *
 * by the trapezoid rule over ln s, whose integrand dies out at both ends, so the sum is exact to rounding.
 */
export function noncentralTCumulative(t: number, degreesOfFreedom: number, noncentrality: number): number {
  const step = 0.35 / (Math.sqrt(2 * degreesOfFreedom) + Math.abs(t) + Math.abs(noncentrality));
  const logScale =
    Math.log(2) + (degreesOfFreedom / 2) * Math.log(degreesOfFreedom / 2) - logGamma(degreesOfFreedom / 2);
  const weight = (logS: number): number =>
    Math.exp(logScale + degreesOfFreedom * logS - (degreesOfFreedom / 2) * Math.exp(2 * logS));

  const negligible = 1e-18 * weight(0);
  let total = 0;
  for (const towards of [1, -1]) {
    for (let index = towards === 1 ? 0 : 1; ; index++) {
      const logS = towards * index * step;
      const density = weight(logS);
      if (density < negligible) break;
      total += density * normalCumulative(t * Math.exp(logS) - noncentrality);
    }
  }
  return Math.min(1, total * step);
}

/** The t below which a share `p` (0 to 1) of the noncentral t distribution lies. */
export function noncentralTQuantile(p: number, degreesOfFreedom: number, noncentrality: number): number {
  return solve((t) => noncentralTCumulative(t, degreesOfFreedom, noncentrality) - p, noncentrality);
}

/**
 * The noncentrality for which an observed `t` lies at the share `p` (0 to 1): the limits of a standardised effect.
 * Beyond |t| = 200, where data are all but copies, s decides and Z is a small correction (good to 1e-7).
 */
export function noncentralityOf(t: number, degreesOfFreedom: number, p: number): number {
  if (Math.abs(t) > 200) {
    const s = Math.sqrt(chiSquareQuantile(t > 0 ? 1 - p : p, degreesOfFreedom) / degreesOfFreedom);
    const logDensitySlope = (degreesOfFreedom - 1) / s - degreesOfFreedom * s;
    return t * (s - logDensitySlope / (2 * t ** 2));
  }
  return solve((noncentrality) => noncentralTCumulative(t, degreesOfFreedom, noncentrality) - p, t);
}

/** The root of a monotone function, searched ever further around `start`. */
function solve(compute: (x: number) => number, start: number): number {
  let reach = 4 + Math.abs(start) / 4;
  while (Math.sign(compute(start - reach)) === Math.sign(compute(start + reach))) reach *= 2;
  return bisect(compute, start - reach, start + reach);
}
