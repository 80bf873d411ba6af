import { say } from "../../language/say";
import type { Caution } from "../caution";
import { negativeRefusals, rangeRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";
import { repetitionRange } from "./equations";

export type RepetitionsToFailure = { readonly repetitions: number; readonly cautions: readonly Caution[] };

/**
 * Repetitions the set would have had at failure: complete repetitions done plus repetitions in reserve.
 * A begun repetition does not count; half a repetition in reserve does. Refuses less than one repetition done, a negative
 * reserve, and more than 15 in all.
 *
 * Source: Zourdos et al. 2016, J Strength Cond Res 30:267-275; Helms et al. 2016, Strength Cond J 38(4):42-49 (from memory).
 * A guess of more than three in reserve is unreliable: common practice, no source.
 */
export function repetitionsToFailure(
  repetitionsDone: number,
  repetitionsInReserve: number,
): Result<RepetitionsToFailure> {
  const { most, trusted } = repetitionRange;
  const refusals = [
    ...rangeRefusals(say`repetitions done`, 1, most, repetitionsDone),
    ...negativeRefusals({ "repetitions in reserve": repetitionsInReserve }),
  ];
  if (refusals.length > 0) return refuse(...refusals);
  const complete = Math.floor(repetitionsDone);
  const repetitions = complete + repetitionsInReserve;
  const tooMany = rangeRefusals(say`repetitions with those in reserve`, 1, most, repetitions);
  if (tooMany.length > 0) return refuse(...tooMany);

  const cautions: Caution[] = [];
  if (complete < repetitionsDone) cautions.push(incompleteRepetition(repetitionsDone, complete));
  if (repetitionsInReserve > 0) cautions.push(estimatedFromReserve(repetitionsInReserve));
  if (repetitionsInReserve > 3) cautions.push(reserveIsAGuess(repetitionsInReserve));
  if (repetitions > trusted[1]) cautions.push(rough(repetitions));
  return ok({ repetitions, cautions });
}

const incompleteRepetition = (done: number, counted: number): Caution => ({
  code: "incompleteRepetition",
  message: say`Only complete repetitions count: ${done} is taken as ${counted}.`,
  facts: { done, counted },
});

const estimatedFromReserve = (reserve: number): Caution => ({
  code: "estimatedFromReserve",
  message: say`The set was not taken to failure: ${reserve} in reserve is the lifter's own estimate.`,
  facts: { reserve },
});

const reserveIsAGuess = (reserve: number): Caution => ({
  code: "reserveIsAGuess",
  message: say`More than 3 repetitions in reserve (${reserve}) can hardly be judged; take the set closer to failure.`,
  facts: { reserve },
});

const rough = (repetitions: number): Caution => ({
  code: "rough",
  message: say`${repetitions} repetitions say little about a single one: a rough estimate. Use 2 to 10.`,
  facts: { repetitions },
});
