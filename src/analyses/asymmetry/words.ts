import type { AsymmetryVerdict } from "../../engine/asymmetry/judgeAsymmetry";
import type { TrialNoise } from "../../engine/reliability/trialNoise";
import { fewestTrials } from "../../engine/trials/reduction";
import { say } from "../../language/say";
import { type Side, wordOfSide } from "../../reading/vocabulary";
import type { AsymmetryChoices, AsymmetryRow } from "./asymmetry";

export const left = say`Left`;
export const right = say`Right`;
export const even = say`Even`;

export function verdict(code: AsymmetryVerdict, { threshold }: AsymmetryChoices): string {
  switch (code) {
    case "beyondNoiseAndThreshold":
      return say`Beyond noise, above ${threshold} %`;
    case "beyondNoise":
      return say`Beyond noise, not above ${threshold} %`;
    case "overThresholdWithinNoise":
      return say`Above ${threshold} %, but could be noise: test again`;
    case "withinNoise":
      return say`Within noise`;
    case "cannotTell":
      return say`Cannot tell: too few trials to know the noise`;
  }
}

export function sideMissing(
  trials: { readonly left: readonly number[]; readonly right: readonly number[] },
  { reduction }: AsymmetryChoices,
  leftScore: number | null,
  rightScore: number | null,
): string {
  const needed = fewestTrials(reduction);
  const lacking: Side[] = [
    ...(leftScore === null ? (["left"] as const) : []),
    ...(rightScore === null ? (["right"] as const) : []),
  ];
  const fewest = Math.min(...lacking.map((side) => trials[side].length));
  const reason = fewest === 0 ? say`no trial` : say`${needed} trials needed`;
  const sides = lacking.length === 2 ? say`left and right` : wordOfSide(lacking[0]!);
  return say`No answer: ${sides} has ${reason}`;
}

/** Names at most this many athletes in a sentence; the table has them all. */
const namedAtMost = 4;

export function summary(rows: readonly AsymmetryRow[], settings: AsymmetryChoices, group: TrialNoise | null): string[] {
  const answered = rows.filter((row) => row.asymmetry !== null);
  const beyond = answered.filter((row) => row.beyond !== null);
  const large = beyond.filter((row) => Math.abs(row.asymmetry!) > settings.threshold);
  const unsure = answered.filter(
    (row) => row.noise !== null && row.within !== null && Math.abs(row.within) > settings.threshold,
  );
  const sentences = [
    say`${beyond.length} of ${athletes(answered.length)} differ between left and right beyond the noise${
      beyond.length === 0 ? "" : say`, ${large.length} of them by more than ${settings.threshold} %`
    }.`,
  ];
  if (large.length > 0) sentences.push(`${listed(large)}.`);
  if (unsure.length > 0) {
    sentences.push(say`${listed(unsure)}: above ${settings.threshold} %, but noise can do that. Test again.`);
  }
  if (group) {
    const { value, low, high } = group.coefficientOfVariation;
    sentences.push(
      say`Trials of one side scatter by ${value.toFixed(1)} % (CV, 95 % interval ${low.toFixed(1)} to ${high.toFixed(1)}).`,
    );
  }
  return sentences;
}

const athletes = (count: number): string => (count === 1 ? say`1 athlete` : say`${count} athletes`);

function listed(rows: readonly AsymmetryRow[]): string {
  const named = rows
    .slice(0, namedAtMost)
    .map(
      (row) => say`${row.athlete} (${row.stronger.toLowerCase()} stronger, ${Math.abs(row.asymmetry!).toFixed(1)} %)`,
    );
  const more = rows.length - named.length;
  return more > 0 ? say`${named.join(", ")} and ${more} more` : named.join(", ");
}

export function cautions(
  rows: readonly AsymmetryRow[],
  settings: AsymmetryChoices,
  group: TrialNoise | null,
): string[] {
  const notes: string[] = [];
  const counts = new Set(rows.flatMap((row) => [row.leftTrials, row.rightTrials]).filter((count) => count > 0));
  if (settings.reduction === "best" && counts.size > 1) {
    notes.push(
      say`Not everybody has the same number of trials; more trials give a better best, which the noise limit allows for.`,
    );
  }
  if (settings.noise === "variability") {
    notes.push(
      say`The CV rule is lenient: with truly equal legs it still calls about one athlete in three asymmetric.`,
    );
  } else if (settings.noise !== "athlete" && group && group.degreesOfFreedom < 10) {
    notes.push(say`The noise rests on few trials and is rough.`);
  }
  const compared = rows.filter((row) => row.noise !== null).length;
  if (settings.noise !== "variability" && compared >= 10) {
    const expected = Math.round(compared * 0.05);
    notes.push(say`With ${compared} athletes, noise alone is expected to put about ${expected} beyond the limit.`);
  }
  return notes;
}

const reductionWords = {
  best: say`Best trial of each side`,
  mean: say`Mean of each side's trials`,
  median: say`Middle trial of each side`,
  meanOfBestTwo: say`Mean of each side's best two trials`,
} as const;

const noiseWords = {
  steadied: say`noise from each athlete's own trials, steadied by the group's, 95 % limit`,
  group: say`noise from all athletes' trials pooled, 95 % limit`,
  athlete: say`noise from each athlete's own trials, 95 % limit`,
  variability: say`noise as the larger CV of the two sides (Exell et al. 2012)`,
} as const;

export const method = ({ reduction, direction, noise, threshold }: AsymmetryChoices): string =>
  say`${reductionWords[reduction]} (${direction} is better), percentage difference of the larger side; ${noiseWords[noise]}; threshold ${threshold} %.`;
