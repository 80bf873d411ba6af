import { missing } from "../engine/refusals";
import { type Result, refuse } from "../engine/result";
import { type Air, forceVelocityProfile } from "../engine/sprints/forceVelocityProfile";
import { sprintModel } from "../engine/sprints/sprintModel";
import { say } from "../language/say";
import { measured, type Words, wordOf } from "./border";
import { part, rowByRow } from "./spill";

const residuals: Words<"distance" | "time"> = ["distance", "time"];

/**
 * Curve of a sprint, v = V (1 - exp(-t / tau)), fitted to split times, one row for each athlete. Needs three splits counted from the
 * start of the movement, and a run of 30 m or more to come near maximal velocity. Empty cells and zeros are missing splits.
 * @customfunction SPRINTCURVE
 * @param distances Distances of the gates from the start in m: one row for all athletes, e.g. C3:H3.
 * @param times Times at the gates since the start in s, a row for each athlete, e.g. C4:H29.
 * @param [residualsIn] What the fit brings nearest: distance (when left out, the usual choice) or time.
 * @returns Maximal velocity V in m/s, time constant tau in s and initial acceleration in m/s^2, side by side.
 * @example =TAPELINE.SPRINTCURVE({5,10,20,30},{1.35,2.08,3.4,4.66})
 * @source Furusawa, Hill & Parkinson 1927; Samozino et al. 2016, Scand J Med Sci Sports 26:648-658 (abstract read).
 */
export function sprintCurve(distances: any[][], times: any[][], residualsIn?: string): any[][] {
  const fitted = wordOf(residualsIn, residuals, say`kind of residuals`);
  return rowByRow({ times: measured(times), distances: measured(distances) }, 3, (athlete) =>
    part(
      sprintModel(athlete.distances, athlete.times, { residualsIn: fitted }),
      ({ maximalVelocity, timeConstant, initialAcceleration }) => [
        maximalVelocity.value,
        timeConstant.value,
        initialAcceleration,
      ],
    ),
  );
}

/**
 * Horizontal force-velocity profile of a sprint from its split times, one row for each athlete. With the body height, air
 * resistance is taken into account (20 degrees, 760 Torr). Several percent of error: no training prescription from it. Empty
 * cells and zeros are missing.
 * @customfunction FORCEVELOCITY
 * @param distances Distances of the gates from the start in m: one row for all athletes, e.g. C3:H3.
 * @param times Times at the gates since the start in s, a row for each athlete, e.g. C4:H29.
 * @param masses Body masses in kg, e.g. B4:B29.
 * @param [statures] Body heights in m, e.g. 1.78 or A4:A29; without them air resistance is left out.
 * @returns Force F0 in N/kg, velocity V0 in m/s, power in W/kg, highest ratio of forces in percent and its decrease in percentage points per m/s, side by side.
 * @example =TAPELINE.FORCEVELOCITY({5,10,20,30},{1.35,2.08,3.4,4.66},66,1.75)
 * @source Samozino et al. 2016, Scand J Med Sci Sports 26:648-658 (abstract read).
 */
export function forceVelocity(distances: any[][], times: any[][], masses: any[][], statures?: any[][]): any[][] {
  const athletes = { times: measured(times), distances: measured(distances), masses: measured(masses) };
  if (!statures) return rowByRow(athletes, 5, (athlete) => profileOf(athlete, null));
  return rowByRow({ ...athletes, statures: measured(statures) }, 5, ({ statures: [statureMetres], ...athlete }) =>
    statureMetres == null ? refuse(missing(say`the body height`)) : profileOf(athlete, { statureMetres }),
  );
}

type Row = readonly (number | null)[];

function profileOf(
  { times, distances, masses: [mass] }: { readonly times: Row; readonly distances: Row; readonly masses: Row },
  air: Air | null,
): Result<number[]> {
  if (mass == null) return refuse(missing(say`the body mass`));
  const curve = sprintModel(distances, times);
  if (!curve.ok) return curve;
  const { maximalVelocity, timeConstant } = curve.value;
  const profile = forceVelocityProfile(
    { maximalVelocity: maximalVelocity.value, timeConstant: timeConstant.value },
    mass,
    { air },
  );
  return part(profile, (of) => [
    of.relativeForce,
    of.velocity,
    of.relativePower,
    of.ratioOfForces,
    of.decreaseInRatioOfForces,
  ]);
}
