import { say } from "../../language/say";
import { type Caution, outsideFittedRange } from "../caution";
import { positiveRefusals } from "../quantities";
import { notPositive } from "../refusals";
import { ok, type Refusal, type Result, refuse } from "../result";
import { type PowerEquation, type PowerEquationName, powerEquation } from "./powerEquations";

export type JumpPower = {
  readonly watts: number;
  readonly wattsPerKilogram: number;
  readonly power: "peak" | "average";
  readonly cautions: readonly Caution[];
};

/** Heights in cm the equations are trusted for: common practice, no source. */
const trustedHeights = [15, 65] as const;

/**
 * Estimated power of a vertical jump by one of the `powerEquations`: height in cm, mass in kg, stature in cm where needed.
 * An individual's error is hundreds of watts and heavier athletes score more: print W, W/kg and the height, and call no
 * change a change in power when only body mass changed. Refuses values that are not positive, a missing stature, and
 * inputs for which the equation gives no positive power.
 *
 * Source: powerEquations.ts. Sayers overestimated measured peak power by 20 % in women (Canavan & Vescovi 2004, abstract read).
 */
export function jumpPower(
  heightCentimetres: number,
  massKilograms: number,
  {
    equation: name = "sayersSquatJump",
    statureCentimetres = null,
  }: { readonly equation?: PowerEquationName; readonly statureCentimetres?: number | null } = {},
): Result<JumpPower> {
  const equation = powerEquation(name);
  const quantities: Record<string, number> = { "jump height": heightCentimetres, "body mass": massKilograms };
  if (statureCentimetres !== null) quantities.stature = statureCentimetres;
  const refusals = positiveRefusals(quantities);
  if (equation.needsStature && statureCentimetres === null) refusals.push(statureNeeded(equation));
  if (refusals.length > 0) return refuse(...refusals);

  const watts = equation.watts(heightCentimetres, massKilograms, statureCentimetres ?? 0);
  if (watts <= 0) return refuse(notPositive(say`estimated power`, watts));
  return ok({
    watts,
    wattsPerKilogram: watts / massKilograms,
    power: equation.power,
    cautions: cautionsOf(equation, heightCentimetres),
  });
}

function cautionsOf({ reservation, name }: PowerEquation, height: number): Caution[] {
  const cautions: Caution[] = [];
  const [low, high] = trustedHeights;
  if (height < low || height > high) cautions.push(outsideFittedRange(say`jump height`, low, high, height, "cm"));
  if (reservation !== null) cautions.push({ code: "reservation", message: reservation, facts: { equation: name } });
  return cautions;
}

const statureNeeded = ({ label }: PowerEquation): Refusal => ({
  code: "statureNeeded",
  message: say`The equation of ${label} needs the athlete's stature in centimetres.`,
  facts: { equation: label },
});
