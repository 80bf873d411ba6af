import { say } from "../../language/say";
import { confidenceRefusals, type Estimate } from "../confidence";
import { normalQuantile } from "../distributions/normal";
import { agreementUndefined, tooFew, unequalLengths } from "../refusals";
import { ok, type Result, refuse } from "../result";

/** Which limb has the larger value. */
export type LargerSide = "left" | "right" | "equal";

export type AgreementWords = "poor" | "slight" | "fair" | "moderate" | "substantial" | "almost perfect";

export type DirectionAgreement = {
  /** Athletes with a direction in both sessions. */
  readonly count: number;
  /** Shares (0 to 1) of athletes with the same direction twice: observed, and expected by chance alone. */
  readonly observed: number;
  readonly expected: number;
  /** Cohen's kappa, or why there is none: everybody on the same side both times. */
  readonly kappa: Result<Estimate & { readonly words: AgreementWords }>;
};

/**
 * Whether the same limb is the larger one in two sessions, beyond chance, by Cohen's kappa:
 *
 *     kappa = (observed - expected) / (1 - expected)
 *
 * Limits by the large-sample variance of Fleiss, Cohen & Everitt 1969 (as psych::cohen.kappa), rough below 20 athletes and
 * kept within -1 to 1. Equal limbs are a direction of their own. `first` and `second` list the same athletes in the same
 * order; an athlete missing in either session is left out.
 *
 * Refuses lists of different length and fewer than two athletes.
 * Sources: Cohen 1960, Educ Psychol Meas 20:37-46; Fleiss, Cohen & Everitt 1969, Psychol Bull 72:323-327; words of Landis &
 * Koch 1977, Biometrics 33:159-174 (all from memory); used for asymmetry by Bishop et al. 2019, Sports 7:58 (abstract read).
 */
export function directionAgreement(
  first: readonly (LargerSide | null)[],
  second: readonly (LargerSide | null)[],
  { confidence }: { readonly confidence: number },
): Result<DirectionAgreement> {
  const reasons = confidenceRefusals(confidence);
  if (first.length !== second.length) {
    reasons.push(unequalLengths(say`first directions`, say`second directions`, [first.length, second.length]));
  }
  const pairs = first.flatMap((side, index) => {
    const other = second[index];
    return side && other ? [[side, other] as const] : [];
  });
  if (pairs.length < 2) reasons.push(tooFew(say`athletes with a direction in both sessions`, 2, pairs.length));
  if (reasons.length > 0) return refuse(...reasons);

  const count = pairs.length;
  const timesOf = (matches: (pair: readonly [LargerSide, LargerSide]) => boolean): number =>
    pairs.filter(matches).length;
  const firstTimes = (side: LargerSide): number => timesOf(([one]) => one === side);
  const secondTimes = (side: LargerSide): number => timesOf(([, two]) => two === side);

  const alike = timesOf(([one, two]) => one === two);
  const alikeByChance = sides.reduce((sum, side) => sum + firstTimes(side) * secondTimes(side), 0);
  const observed = alike / count;
  const expected = alikeByChance / count ** 2;
  const distinct = new Set(pairs.flat());
  if (distinct.size === 1) return ok({ count, observed, expected, kappa: refuse(agreementUndefined()) });

  // From whole numbers: a kappa of 0.6 out of shares comes out a hair above, in the next band.
  const value = (alike * count - alikeByChance) / (count ** 2 - alikeByChance);
  let variability = -((observed * expected - 2 * expected + observed) ** 2);
  for (const one of sides) {
    for (const two of sides) {
      const share = timesOf(([a, b]) => a === one && b === two) / count;
      variability +=
        one === two
          ? share * (1 - expected - ((firstTimes(one) + secondTimes(one)) / count) * (1 - observed)) ** 2
          : share * (1 - observed) ** 2 * ((secondTimes(one) + firstTimes(two)) / count) ** 2;
    }
  }
  const standardError = Math.sqrt(Math.max(0, variability) / count) / (1 - expected) ** 2;
  const margin = normalQuantile((1 + confidence) / 2) * standardError;
  return ok({
    count,
    observed,
    expected,
    kappa: ok({
      value,
      low: Math.max(-1, value - margin),
      high: Math.min(1, value + margin),
      words: agreementWords(value),
    }),
  });
}

const sides: readonly LargerSide[] = ["left", "right", "equal"];

/** Landis & Koch 1977; their bands end at .20, .40, .60 and .80. */
function agreementWords(kappa: number): AgreementWords {
  if (kappa <= 0) return "poor";
  if (kappa <= 0.2) return "slight";
  if (kappa <= 0.4) return "fair";
  if (kappa <= 0.6) return "moderate";
  if (kappa <= 0.8) return "substantial";
  return "almost perfect";
}
