import { say } from "../../language/say";
import { customaryGravity, type Gravity } from "../gravity";
import { rangeRefusals } from "../quantities";
import { leastSquaresLine } from "../regression/leastSquaresLine";
import { ok, type Refusal, type Result, refuse, unwrap } from "../result";
import { accelerationAt, curveRefusals, type SprintCurve, velocityAt } from "./sprintCurve";

/** The air the athlete ran through, and the stature that meets it. */
export type Air = {
  readonly statureMetres: number;
  /** Degrees Celsius; 20 when not given. */
  readonly temperature?: number;
  /** Torr; 760 when not given. */
  readonly pressure?: number;
};

export type ForceVelocityProfile = {
  /** Horizontal force at no velocity, N and N/kg. */
  readonly force: number;
  readonly relativeForce: number;
  /** Velocity at no force, m/s. */
  readonly velocity: number;
  /** force x velocity / 4, W and W/kg. */
  readonly power: number;
  readonly relativePower: number;
  /** Slope of force on velocity, N s/m. */
  readonly slope: number;
  /** Highest share of the total force that points forward, from 0.3 s on, percent. */
  readonly ratioOfForces: number;
  /** Change of that share per m/s, percentage points. */
  readonly decreaseInRatioOfForces: number;
};

const samples = 1001;
const timeConstantsSampled = 5;
const ratioFromSeconds = 0.3;

/**
 * Horizontal force-velocity profile of a sprint from its mono-exponential curve.
 *
 * Force is mass x acceleration, plus air resistance k v^2 when `air` is given (still air):
 * k = 0.5 rho A 0.9, rho = 1.293 (pressure / 760) 273 / (273 + temperature), A = 0.2025 stature^0.725 mass^0.425 0.266.
 * With air the curve is sampled at 1001 equally spaced times from 0 to 5 time constants and force regressed on velocity (the answer
 * depends a little on that grid); without air the line is exact: force mass V / tau, velocity V. The ratio of forces is
 * forward force / total force, body weight being the vertical part, on the same grid from 0.3 s on.
 * Curve as from `sprintModel`. Refuses curves that are no human sprint, a mass outside 15 to 300 kg, a stature outside 1 to
 * 2.5 m and air outside -30 to 50 degrees or 400 to 820 Torr.
 *
 * Source: Samozino et al. 2016, Scand J Med Sci Sports 26:648-658 (abstract read); constants Arsac & Locatelli 2002 and the
 * 0.3 s threshold from memory. From four gates every quantity carries several percent of error: no training prescription.
 */
export function forceVelocityProfile(
  curve: SprintCurve,
  bodyMass: number,
  { air = null, gravity = customaryGravity }: { readonly air?: Air | null; readonly gravity?: Gravity } = {},
): Result<ForceVelocityProfile> {
  const refusals = [
    ...curveRefusals(curve),
    ...rangeRefusals(say`body mass`, 15, 300, bodyMass),
    ...(air ? airRefusals(air) : []),
  ];
  if (refusals.length > 0) return refuse(...refusals);

  const drag = air ? airDrag(air, bodyMass) : 0;
  const moments = Array.from({ length: samples }, (_, index) => {
    const time = (index * timeConstantsSampled * curve.timeConstant) / (samples - 1);
    const velocity = velocityAt(time, curve);
    const force = bodyMass * accelerationAt(time, curve) + drag * velocity ** 2;
    return { time, velocity, force, ratio: (100 * force) / Math.hypot(force, bodyMass * gravity) };
  });
  const velocities = moments.map(({ velocity }) => velocity);
  const forceLine = unwrap(
    leastSquaresLine(
      velocities,
      moments.map(({ force }) => force),
    ),
  );
  const running = moments.filter(({ time }) => time >= ratioFromSeconds - 1e-9);
  const ratioLine = unwrap(
    leastSquaresLine(
      running.map(({ velocity }) => velocity),
      running.map(({ ratio }) => ratio),
    ),
  );
  const force = forceLine.intercept;
  const velocity = -forceLine.intercept / forceLine.slope;
  const power = (force * velocity) / 4;
  return ok({
    force,
    relativeForce: force / bodyMass,
    velocity,
    power,
    relativePower: power / bodyMass,
    slope: forceLine.slope,
    ratioOfForces: Math.max(...running.map(({ ratio }) => ratio)),
    decreaseInRatioOfForces: ratioLine.slope,
  });
}

/** Air resistance per squared velocity, N s^2/m^2. */
function airDrag({ statureMetres, temperature = 20, pressure = 760 }: Air, bodyMass: number): number {
  const density = ((1.293 * pressure) / 760) * (273 / (273 + temperature));
  const frontalArea = 0.2025 * statureMetres ** 0.725 * bodyMass ** 0.425 * 0.266;
  return 0.5 * density * frontalArea * 0.9;
}

const airRefusals = ({ statureMetres, temperature = 20, pressure = 760 }: Air): Refusal[] => [
  ...rangeRefusals(say`stature in metres`, 1, 2.5, statureMetres),
  ...rangeRefusals(say`air temperature`, -30, 50, temperature),
  ...rangeRefusals(say`air pressure in Torr`, 400, 820, pressure),
];
