import { asymmetryInterval } from "../engine/asymmetry/asymmetryInterval";
import { type AgreementWords, directionAgreement, type LargerSide } from "../engine/asymmetry/directionAgreement";
import { noiseLimit as limitOf } from "../engine/asymmetry/noiseLimit";
import { type NoiseSource, noiseOfAthletes, noiseSources } from "../engine/reliability/noiseOfAthletes";
import { say } from "../language/say";
import {
  answer,
  confidenceOf,
  counted,
  invalid,
  measured,
  paired,
  reductionOf,
  trialRowsOf,
  values,
  wordOf,
} from "./border";
import { cell, part, rowByRow, withLimits } from "./spill";

const noiseSourceOf = (name: unknown): NoiseSource => wordOf(name, noiseSources, say`source of noise`);

/**
 * The left-right difference, in percent of the larger side, that equal sides stay below 95 times in 100 by the scatter
 * of the trials alone: one for each athlete, down the column. An asymmetry beyond it is more than the test's noise.
 * @customfunction NOISELIMIT
 * @param left All athletes' left trials, one row each, e.g. C4:E29.
 * @param right All athletes' right trials, one row each, e.g. F4:H29.
 * @param [reduction] How each side is scored: best (when left out), mean, median or meanOfBestTwo.
 * @param [noiseFrom] Whose scatter: steadied (own trials, steadied by the group's; when left out), group or athlete.
 * @returns One limit in percent per row; #N/A where there are too few trials to tell.
 * @example =TAPELINE.NOISELIMIT({171,174,168;150,152,151;160,163,161},{147,150,144;151,153,150;158,162,160})
 * @source T interval for a difference on logarithms, Hopkins 2000, Sports Med 30:1-15 (from memory); steadied as in Smyth 2004, Stat Appl Genet Mol Biol 3(1).
 */
export function noiseLimit(left: any[][], right: any[][], reduction?: string, noiseFrom?: string): any[][] {
  const squad = athletesOf(left, right);
  const scoredBy = reductionOf(reduction);
  const noises = noiseOfAthletes(squad, noiseSourceOf(noiseFrom));
  return squad.map((sides, index) => {
    const noise = noises[index]!;
    const [leftCount, rightCount] = sides.map((trials) => trials.filter((trial) => trial !== null).length);
    const counts = { leftCount: leftCount!, rightCount: rightCount! };
    const limit = noise.ok ? limitOf({ noise: noise.value, ...counts, reduction: scoredBy, confidence: 0.95 }) : noise;
    return [cell(limit, ({ percent }) => percent)];
  });
}

/**
 * Left-right difference of each athlete from all trials, with confidence limits, in percent of the larger side; plus where the right is
 * larger. Limits that leave out 0 are a difference beyond the test's noise. Empty cells, zeros and marks such as DNS count as
 * missing trials.
 * @customfunction ASYMMETRY.LIMITS
 * @param left All athletes' left trials, one row each, e.g. C4:E29.
 * @param right All athletes' right trials, one row each, e.g. F4:H29.
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @param [noiseFrom] Whose scatter: steadied (own trials, steadied by the group's; when left out), group or athlete.
 * @returns Difference, lower and upper limit in percent, side by side, a row for each athlete.
 * @example =TAPELINE.ASYMMETRY.LIMITS({171,174,168;150,152,151;160,163,161},{147,150,144;151,153,150;158,162,160})
 * @source Two-sample t interval on logarithms; same numbers as t.test in R.
 */
export function asymmetryLimits(left: any[][], right: any[][], confidence?: any, noiseFrom?: string): any[][] {
  const squad = athletesOf(left, right);
  const noises = noiseOfAthletes(squad, noiseSourceOf(noiseFrom));
  const certainty = confidenceOf(confidence);
  return rowByRow({ left: measured(left), right: measured(right) }, 3, (own, row) => {
    const noise = noises[row]!;
    if (!noise.ok) return noise;
    return part(
      asymmetryInterval(own.left, own.right, { confidence: certainty, noise: noise.value }),
      ({ percentDifference }) => withLimits(percentDifference),
    );
  });
}

/**
 * Whether the same side is the larger one in two sessions, beyond chance: Cohen's kappa with limits and in words. Reads the sign of the
 * differences; a 0 is equal sides, so write a dash where a difference is missing.
 * @customfunction SIDEAGREEMENT
 * @param first Left-right differences of the first session, plus where the right is larger, e.g. E4:E29.
 * @param second The same of the second session in the same rows, e.g. F4:F29.
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @returns Kappa (up to 1), lower and upper limit, and its word (poor to almost perfect), side by side.
 * @example =TAPELINE.SIDEAGREEMENT({4.2;-3.1;6;2.2;-5.5;1.8},{3;-2;4.4;-1.2;-6.1;2.5})
 * @source Cohen 1960, Educ Psychol Meas 20:37-46; words of Landis & Koch 1977, Biometrics 33:159-174 (from memory).
 */
export function sideAgreement(first: any[][], second: any[][], confidence?: any): any[][] {
  const pairs = paired([say`first differences`, largerSides(first)], [say`second differences`, largerSides(second)]);
  const agreement = answer(
    directionAgreement(
      pairs.map(([side]) => side),
      pairs.map(([, side]) => side),
      { confidence: confidenceOf(confidence) },
    ),
  );
  const kappa = answer(agreement.kappa);
  return [[...withLimits(kappa), wordsOfAgreement(kappa.words)]];
}

function wordsOfAgreement(code: AgreementWords): string {
  switch (code) {
    case "poor":
      return say`poor`;
    case "slight":
      return say`slight`;
    case "fair":
      return say`fair`;
    case "moderate":
      return say`moderate`;
    case "substantial":
      return say`substantial`;
    case "almost perfect":
      return say`almost perfect`;
  }
}

function largerSides(differences: any[][]): (LargerSide | null)[] {
  return values(counted(differences))
    .flat()
    .map((difference) => {
      if (difference === null) return null;
      if (difference === 0) return "equal";
      return difference > 0 ? "right" : "left";
    });
}

/** Left and right trials of each athlete, row by row. */
function athletesOf(left: any[][], right: any[][]): [(number | null)[], (number | null)[]][] {
  const lefts = trialRowsOf(left);
  const rights = trialRowsOf(right);
  if (lefts.length !== rights.length) {
    throw invalid(
      say`The left cells have ${lefts.length} rows, the right cells ${rights.length}; each row is one athlete.`,
    );
  }
  return lefts.map((trials, row) => [trials, rights[row]!]);
}
