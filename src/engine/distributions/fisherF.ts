import regularisedIncompleteBeta from "@stdlib/math-base-special-betainc";
import { bisect } from "../bisect";

/**
 * The f below which a share `p` (above 0, below 1) of the F distribution lies. With a denominator below 1 degree of freedom it
 * can lie beyond any number; 1e30 then stands for "as far as you like", and all that divides by it is at its limit.
 *
 * Found by bisection on ln f: the library's own quantile gives the same, but is several kB that a coach would wait for before
 * the first custom function answers. Far out the library's distribution function rounds to 1; the lower tail of the
 * inverse ratio, which is what is solved here, keeps its digits. Source: F(d1, d2) = 1 / F(d2, d1), textbook.
 */
export function fisherFQuantile(p: number, numerator: number, denominator: number): number {
  if (p > 0.5) return Math.min(1 / lowerQuantile(1 - p, denominator, numerator), farthest);
  return lowerQuantile(p, numerator, denominator);
}

function lowerQuantile(p: number, numerator: number, denominator: number): number {
  const excess = (log: number): number => {
    const part = numerator * Math.exp(log);
    return regularisedIncompleteBeta(part / (denominator + part), numerator / 2, denominator / 2) - p;
  };
  return excess(lowestLog) >= 0 ? 0 : Math.exp(bisect(excess, lowestLog, highestLog));
}

const farthest = 1e30;
const lowestLog = -Math.log(farthest) - 1;
const highestLog = -lowestLog;
