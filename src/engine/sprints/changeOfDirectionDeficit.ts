import { say } from "../../language/say";
import type { Caution } from "../caution";
import { negativeRefusals, positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/** Which straight 10 m is taken off: the first 10 m of a sprint, or its second (from 10 to 20 m, run at speed). */
export type DeficitDefinition =
  | { readonly straight: "first 10 m"; readonly tenMetres: number }
  | { readonly straight: "10 to 20 m"; readonly tenMetres: number; readonly twentyMetres: number };

/** Typical errors of the times the deficit is made of, in s; those of the straight sprint are of the splits used. */
export type DeficitErrors = { readonly turn: number; readonly splits: number };

export type ChangeOfDirectionDeficit = {
  readonly seconds: number;
  /** Typical error of the deficit, s; `null` when the errors of the times are not known. */
  readonly typicalError: number | null;
  readonly cautions: readonly Caution[];
};

/**
 * Change-of-direction deficit: 505 time less the time of a straight 10 m, per turning limb, in seconds. Two definitions exist;
 * the first 10 m is the usual one. Same day, same start type, same surface.
 *
 * The noise of all times adds up: typical error = sqrt(turn^2 + split^2), with the split twice when two of them make the
 * straight. Refuses times that are not positive, a 20 m time not above the 10 m time, and negative errors.
 *
 * Source: Nimphius et al. 2016, J Strength Cond Res 30:3024-3032 (abstract read); the flying variant J Funct Morphol
 * Kinesiol 2021 6:41 (abstract read). The deficit magnifies asymmetry (Dos'Santos et al. 2019, abstract read).
 */
export function changeOfDirectionDeficit(
  turnTime: number,
  definition: DeficitDefinition,
  { typicalErrors = null }: { readonly typicalErrors?: DeficitErrors | null } = {},
): Result<ChangeOfDirectionDeficit> {
  const straight =
    definition.straight === "first 10 m" ? definition.tenMetres : definition.twentyMetres - definition.tenMetres;
  const refusals = positiveRefusals({
    "505 time": turnTime,
    "10 m time": definition.tenMetres,
    "time of the straight 10 m": straight,
  });
  if (typicalErrors) {
    refusals.push(
      ...negativeRefusals({
        "typical error of the 505": typicalErrors.turn,
        "typical error of the splits": typicalErrors.splits,
      }),
    );
  }
  if (refusals.length > 0) return refuse(...refusals);

  const splitsUsed = definition.straight === "first 10 m" ? 1 : 2;
  const seconds = turnTime - straight;
  return ok({
    seconds,
    typicalError: typicalErrors && Math.sqrt(typicalErrors.turn ** 2 + splitsUsed * typicalErrors.splits ** 2),
    cautions: seconds <= 0 ? [fasterThanStraight(seconds)] : [],
  });
}

const fasterThanStraight = (seconds: number): Caution => ({
  code: "fasterThanStraight",
  message: say`The 505 was no slower than the straight run; one of the times must be wrong.`,
  facts: { seconds },
});
