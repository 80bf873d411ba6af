import type { CapacityDifference } from "../../engine/endurance/capacityDifference";
import type { CapacityQuantile, CapacityScore, CapacityScores } from "../../engine/endurance/capacityScores";
import type { Result } from "../../engine/result";
import { inSentence, say } from "../../language/say";
import type { Side } from "../../reading/vocabulary";
import type { CapacityRow, CapacitySettings } from "./capacity";

export const noSide = say`No side is given; left or right is needed.`;
export const belowZero = say`A result to failure cannot be below zero.`;
export const sideMissing = (side: Side): string => say`No answer: the ${side} side has no result.`;

export function verdict(compared: Result<CapacityDifference>, retest: number | null): string {
  if (!compared.ok) return say`No answer: ${compared.reasons.map(({ message }) => message).join(" ")}`;
  const { difference, atLeast } = compared.value;
  if (retest === null) return say`Not judged: say what a retest of this test brings.`;
  const longer: Side = difference > 0 ? "right" : "left";
  const isBeyond = Math.abs(difference) > retest;
  if (isBeyond)
    return say`The ${longer} lasts longer by more than a retest brings.${atLeast ? ` ${stopped(longer)}` : ""}`;
  return atLeast ? say`Cannot tell: ${inSentence(stopped(longer))}` : say`Within what a retest brings.`;
}

const stopped = (side: Side): string => say`The ${side} was stopped, so the difference is at least this.`;

export function summary(
  rows: readonly CapacityRow[],
  sides: Readonly<Record<Side, CapacityScores | null>>,
  retest: number | null,
): string[] {
  const compared = rows.flatMap(({ difference }) => (difference === null ? [] : [difference]));
  const beyond = compared.filter((difference) => retest !== null && Math.abs(difference) > retest).length;
  return [
    retest === null
      ? say`What a retest brings is not known for this test, so no difference is judged.`
      : say`${beyond} of ${compared.length === 1 ? say`1 athlete differs` : say`${compared.length} athletes differ`} between the sides by more than ${retest}.`,
    ofSquad(say`Left`, sides.left),
    ofSquad(say`Right`, sides.right),
  ].filter((sentence) => sentence !== "");
}

function ofSquad(side: string, scores: CapacityScores | null): string {
  if (scores === null) return "";
  const { count, lowerQuartile, median, upperQuartile } = scores;
  return say`${side}: the middle of ${count} is ${shown(median)}, the middle half from ${shown(lowerQuartile)} to ${shown(upperQuartile)}.`;
}

const shown = ({ value, atLeast }: CapacityQuantile): string =>
  `${atLeast ? say`at least ` : ""}${Number(value.toFixed(1))}`;

/** Below this score one repetition is more than five percent: common practice, no source. */
const smallScore = 20;

export function cautions(scores: readonly (CapacityScore | null)[]): string[] {
  const present = scores.filter((score) => score !== null);
  const capped = present.filter(({ stoppedAtCap }) => stoppedAtCap).length;
  const notes: string[] = [];
  if (present.some(({ value }) => value < smallScore)) {
    notes.push(say`With small numbers one repetition is a large percentage: read the difference, not the percentage.`);
  }
  if (capped > 0) notes.push(say`${capped} of ${present.length} results were stopped: their true size is not known.`);
  return notes;
}

export const method = (retest: number | null, { stop }: CapacitySettings): string =>
  say`Best result of each side on the athlete's latest day${retest === null ? "" : say`; a difference counts beyond ${retest}`}${stop > 0 ? say`; stopped at ${stop}` : ""}.`;
