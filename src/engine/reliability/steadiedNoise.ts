import digamma from "@stdlib/math-base-special-digamma";
import trigamma from "@stdlib/math-base-special-trigamma";
import { say } from "../../language/say";
import { bisect } from "../bisect";
import { mean, median, sumOfSquares, variance } from "../moments";
import { presentValues } from "../presentValues";
import { noSpread, notPositive, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import type { Noise } from "./pooledNoise";

/**
 * Each athlete's own trial-to-trial noise, steadied by the group's. An athlete's few trials tell little about how much
 * they scatter, and the group's pooled noise is wrong for one who scatters far more or less than the others. In between:
 *
 *     s_i^2 = (d_0 s_0^2 + d_i s_i^2) / (d_0 + d_i),   degrees of freedom d_0 + d_i, at most those of the whole group
 *
 * with s_i, d_i the athlete's own noise on logarithms, and s_0, d_0 the noise and the weight the group lends: d_0 is
 * large when athletes scatter alike and small when they do not. s_0 and d_0 are estimated from the spread of ln s_i^2
 * between athletes. When that is no more than chance gives, everybody gets the group's pooled noise.
 *
 * @param athletes for each athlete their sets of trials: one for each side and session. `null` is a missing trial.
 * @returns one noise per athlete, in their order; an athlete without two trials in any set gets the group's.
 *
 * Refuses values that are not above zero, fewer than three athletes with repeated trials, and trials that are all
 * equal. Source: Smyth 2004, Stat Appl Genet Mol Biol 3(1):3 (moderated variances; formulas from memory, checked
 * against another implementation in the test).
 */
export function steadiedNoise(
  athletes: readonly (readonly (readonly (number | null)[])[])[],
): Result<readonly Noise[]> {
  const present = athletes.map((sets) => sets.map(presentValues));
  const badValue = present.flat(2).find((value) => value <= 0);
  if (badValue !== undefined) return refuse(notPositive(say`every trial`, badValue));
  const own = present.map(ownNoise);
  const repeated = own.filter(({ degreesOfFreedom }) => degreesOfFreedom > 0);
  if (repeated.length < 3) return refuse(tooFew(say`athletes with two trials of a side`, 3, repeated.length));
  const group = pool(repeated);
  if (group.squares === 0) return refuse(noSpread(say`trials of each set`));

  const prior = lentByGroup(repeated, group);
  return ok(
    own.map(({ squares, degreesOfFreedom }) => {
      if (prior === null) return noiseOf(group);
      const total = prior.degreesOfFreedom + degreesOfFreedom;
      const steadied = (prior.degreesOfFreedom * prior.variance + squares) / total;
      return {
        logStandardDeviation: Math.sqrt(steadied),
        degreesOfFreedom: Math.min(total, group.degreesOfFreedom),
      };
    }),
  );
}

type Squares = { readonly squares: number; readonly degreesOfFreedom: number };

function ownNoise(sets: readonly (readonly number[])[]): Squares {
  return pool(
    sets
      .filter((set) => set.length >= 2)
      .map((set) => ({ squares: sumOfSquares(set.map(Math.log)), degreesOfFreedom: set.length - 1 })),
  );
}

const pool = (parts: readonly Squares[]): Squares => ({
  squares: parts.reduce((sum, part) => sum + part.squares, 0),
  degreesOfFreedom: parts.reduce((sum, part) => sum + part.degreesOfFreedom, 0),
});

const noiseOf = ({ squares, degreesOfFreedom }: Squares): Noise => ({
  logStandardDeviation: Math.sqrt(squares / degreesOfFreedom),
  degreesOfFreedom,
});

/**
 * The variance the group lends to each athlete and its weight in degrees of freedom; null where the athletes' variances
 * differ no more than by chance, so that one pooled variance serves all.
 *
 * With e_i = ln s_i^2 - psi(d_i / 2) + ln(d_i / 2): the mean of e is ln s_0^2 - psi(d_0 / 2) + ln(d_0 / 2), and its variance
 * psi'(d_i / 2) + psi'(d_0 / 2), where psi and psi' are digamma and trigamma.
 */
function lentByGroup(
  athletes: readonly Squares[],
  group: Squares,
): { readonly variance: number; readonly degreesOfFreedom: number } | null {
  const variances = athletes.map(({ squares, degreesOfFreedom }) => squares / degreesOfFreedom);
  // Trials that agree to a tenth of the usual scatter agree by the tape's rounding: their logarithm would weigh too much.
  const floor = 0.01 * (median(variances) || group.squares / group.degreesOfFreedom);
  const logs = athletes.map(({ degreesOfFreedom }, index) => {
    const half = degreesOfFreedom / 2;
    return Math.log(Math.max(variances[index]!, floor)) - digamma(half) + Math.log(half);
  });
  const beyondChance = variance(logs) - mean(athletes.map(({ degreesOfFreedom }) => trigamma(degreesOfFreedom / 2)));
  if (beyondChance <= trigamma(largestWeight / 2)) return null;
  const half = inverseTrigamma(beyondChance);
  return { variance: Math.exp(mean(logs) + digamma(half) - Math.log(half)), degreesOfFreedom: 2 * half };
}

/** Beyond this many degrees of freedom the group's noise is everybody's. */
const largestWeight = 1e6;

/** The x with psi'(x) = value; psi' falls from infinity to zero, like 1/x for large and 1/x^2 for small x. */
function inverseTrigamma(value: number): number {
  const logX = bisect((log) => value - trigamma(Math.exp(log)), -20, 20);
  return Math.exp(logX);
}
