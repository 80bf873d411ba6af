import { rounded } from "../../engine/caution";
import { changeVerdicts } from "../../engine/change/judgeChange";
import type { Estimate } from "../../engine/confidence";
import { atStart, say } from "../../language/say";
import { reductionWords, type TestFacts } from "../testFacts";
import type { ChangeRow, ChangeSettings } from "./change";
import type { ChangeNoise } from "./compute";

export const verdict = (words: string): string => atStart(words);

export const noVerdict = say`Cannot tell: the noise, or the spread between athletes, is not known`;

export function summary(rows: readonly ChangeRow[], group: Estimate | null, unit: string | null): string[] {
  const counted = (...wanted: string[]) => rows.filter((row) => wanted.map(verdict).includes(row.verdict)).length;
  const up = counted(changeVerdicts.clearImprovement, changeVerdicts.improvementBeyondNoise);
  const down = counted(changeVerdicts.clearDecline, changeVerdicts.declineBeyondNoise);
  const sentences = [
    rows.length === 1
      ? say`Of 1 athlete, ${up} improved beyond the noise and ${down} declined.`
      : say`Of ${rows.length} athletes, ${up} improved beyond the noise and ${down} declined.`,
  ];
  if (group) {
    const symbol = unit === null ? "" : ` ${unit}`;
    sentences.push(
      say`The group changed by ${rounded(group.value)}${symbol} on average (95 % interval ${rounded(group.low)} to ${rounded(group.high)}).`,
    );
  }
  return sentences;
}

export function cautions(rows: readonly ChangeRow[], { from, degreesOfFreedom }: ChangeNoise): string[] {
  const notes: string[] = [];
  if (from === "trials") {
    notes.push(
      say`The noise is that of trials on one day, a lower bound: another day adds to it. Test twice within a fortnight to know it.`,
    );
  }
  if (from === "comparedSessions") {
    notes.push(
      say`The noise is taken from the very sessions that are compared: athletes who truly changed otherwise than the rest make it look larger. Test twice within a fortnight before the block, or give the error you know.`,
    );
  }
  if (degreesOfFreedom !== null && degreesOfFreedom < 10) notes.push(say`The noise rests on few results and is rough.`);
  if (new Set(rows.map(({ days }) => days)).size > 1) notes.push(say`Not everybody's change is between the same days.`);
  if (rows.length >= 10) {
    notes.push(
      say`With ${rows.length} athletes, noise alone puts about ${Math.round(rows.length * 0.05)} beyond the limits: a count of them is no success rate.`,
    );
  }
  return notes;
}

const noiseWords = {
  settings: say`typical error as you gave it`,
  sessions: say`typical error from two earlier sessions within a fortnight`,
  comparedSessions: say`typical error from the two sessions compared`,
  trials: say`typical error from the trials of all sessions`,
} as const;

export function method({ from, worthwhile }: ChangeSettings, facts: TestFacts, noise: ChangeNoise): string {
  const matters = worthwhile > 0 ? `${worthwhile} %` : say`a fifth of the spread between athletes`;
  const earlier = from === "first" ? say`first session` : say`session before`;
  return say`Latest session against the ${earlier}, ${reductionWords[facts.reduction]} (${facts.direction} is better); ${noiseWords[noise.from]}; a change that matters is ${matters}.`;
}
