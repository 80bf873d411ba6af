import type { Result } from "../../engine/result";
import { repetitionRange, strengthEquation } from "../../engine/strength/equations";
import type { EstimatedMaximum } from "../../engine/strength/estimatedMaximum";
import type { LoadedBar } from "../../engine/strength/roundToPlates";
import { numeral, say } from "../../language/say";
import { wordOfSide } from "../../reading/vocabulary";
import { groupBy } from "../groupBy";
import type { MeasuredAttempt } from "../measuredAttempts";
import type { StrengthRow, StrengthSettings } from "./strength";

type Named = Pick<MeasuredAttempt, "athlete" | "test" | "side">;

export const liftName = ({ test, side }: Pick<Named, "test" | "side">): string => {
  const lift = test === "" ? say`Lift` : test;
  return side === null ? lift : `${lift}, ${wordOfSide(side)}`;
};

export const rowName = (attempt: Named): string =>
  attempt.test === "" && attempt.side === null ? attempt.athlete : `${attempt.athlete}: ${liftName(attempt)}`;

export const halfASet = ({ values }: MeasuredAttempt): string =>
  values.load === undefined
    ? say`Repetitions without a load: no maximum follows.`
    : say`A load without repetitions: no maximum follows.`;

export const setsUsed = (latest: readonly unknown[], all: readonly unknown[]) => ({
  count: latest.length,
  what: latest.length < all.length ? say`of ${all.length} sets, those of the latest day` : say`sets`,
});

export const noSet = say`No answer: no set with a load and 1 to 15 repetitions.`;

export const plates = (perSide: readonly number[]): string =>
  perSide.length === 0 ? say`none` : perSide.map(numeral).join(" + ");

export function verdict(
  { origin, repetitions, cautions }: EstimatedMaximum,
  relative: number | null,
  bar: Result<LoadedBar>,
): string {
  const codes = new Set(cautions.map(({ code }) => code));
  return [
    origin === "measured" ? say`Lifted once: measured, not estimated.` : "",
    codes.has("rough") ? say`Rough: ${repetitions} repetitions say little about one.` : "",
    codes.has("reserveIsAGuess")
      ? say`More than 3 in reserve can hardly be judged: go closer to failure.`
      : codes.has("estimatedFromReserve")
        ? say`Rests on the athlete's own count of repetitions in reserve.`
        : "",
    relative === null ? say`No body mass.` : "",
    bar.ok ? "" : bar.reasons.map(({ message }) => message).join(" "),
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

/** Names at most this many lifts in the summary; the table has them all. */
const liftsNamed = 3;

export function summary(rows: readonly StrengthRow[], { repetitions, reserve }: StrengthSettings): string[] {
  const sentences: string[] = [];
  for (const [lift, own] of [...groupBy(rows, (row) => row.lift)].slice(0, liftsNamed)) {
    const answered = own.filter((row) => row.maximum !== null);
    const [first, last] = [answered[0], answered.at(-1)];
    if (!first || !last) continue;
    const range = say`${kilograms(first.lowest!)} to ${kilograms(first.highest!)} kg by the choice of equation`;
    sentences.push(
      answered.length === 1
        ? say`${lift}: ${first.athlete} ${kilograms(first.maximum!)} kg (${range}).`
        : say`${lift}: ${answered.length} athletes from ${kilograms(last.maximum!)} to ${kilograms(first.maximum!)} kg; highest ${first.athlete} (${range}).`,
    );
    const loads = answered.flatMap(({ workingLoad }) => (workingLoad === null ? [] : [workingLoad]));
    if (loads.length > 0) {
      const [least, most] = [Math.min(...loads), Math.max(...loads)];
      sentences.push(
        say`${lift}, ${repetitions} repetitions with ${reserve} in reserve: ${least === most ? least : say`${least} to ${most}`} kg on the bar.`,
      );
    }
  }
  return sentences;
}

const kilograms = (value: number): string => value.toFixed(1);

export function cautions(rows: readonly StrengthRow[], { repetitions, reserve }: StrengthSettings): string[] {
  const answered = rows.filter((row) => row.maximum !== null);
  const massless = new Set(answered.filter((row) => row.relative === null).map(({ athlete }) => athlete)).size;
  const rough = answered.filter((row) => row.repetitions! > repetitionRange.trusted[1]).length;
  const notes: string[] = [];
  if (massless > 0) {
    notes.push(
      massless === 1
        ? say`1 athlete has no body mass: strength per body mass is blank there.`
        : say`${massless} athletes have no body mass: strength per body mass is blank there.`,
    );
  }
  if (rough > 0)
    notes.push(say`${rough} of the estimates rest on more than ${repetitionRange.trusted[1]} repetitions.`);
  if (repetitions + reserve > repetitionRange.trusted[1]) {
    notes.push(say`So many repetitions lie where the equations differ most: take the working loads as rough.`);
  }
  return notes;
}

export const method = ({ equation, rounding, bar, smallestPlate }: StrengthSettings): string => {
  const { label, formula } = strengthEquation(equation);
  return say`Highest estimate of each athlete's latest day by ${label}, ${formula}; sets of more than 10 repetitions only where there is no other, of more than 15 never. Loads rounded ${rounding === "down" ? say`down` : say`to the nearest`} for a bar of ${bar} kg and plates from ${smallestPlate} kg.`;
};
