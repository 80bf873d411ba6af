import { loadVelocityProfile } from "../engine/strength/loadVelocityProfile";
import { minimumVelocityThresholds } from "../engine/strength/minimumVelocityThresholds";
import { say } from "../language/say";
import { answer, confidenceOf, measured, numberOf, trialsOf, type Words, wordOf } from "./border";
import { cautionLines, labelled, limitHeadings, part, rowByRow, withLimits } from "./spill";

/**
 * One-repetition maximum from bar speeds at lighter loads, one row for each athlete: the line of velocity on load, read at the
 * speed of a maximal lift, with its confidence limits. Needs three different loads; for free-weight squats not accurate
 * enough to prescribe from. Empty cells and zeros are missing lifts.
 * @customfunction VELOCITYMAX
 * @param loads Loads in kg or lb: one row for all athletes, e.g. C3:F3, or one for each, e.g. C4:F29.
 * @param velocities Mean concentric velocities in m/s, a row for each athlete, e.g. H4:K29.
 * @param threshold Velocity of a maximal lift in m/s, e.g. 0.3, or bench press, back squat, deadlift or prone bench pull.
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @returns Maximum, lower and upper limit, in the unit of the loads, side by side.
 * @example =TAPELINE.VELOCITYMAX({40,60,80},{0.92,0.68,0.43},"back squat")
 * @source Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31:347-352 (from memory).
 */
export function velocityMax(loads: any[][], velocities: any[][], threshold: any, confidence?: any): any[][] {
  const options = { minimumVelocityThreshold: thresholdOf(threshold), confidence: confidenceOf(confidence) };
  return rowByRow({ velocities: measured(velocities), loads: measured(loads) }, 3, (athlete) =>
    part(loadVelocityProfile(athlete.loads, athlete.velocities, options), ({ maximum }) => withLimits(maximum)),
  );
}

/**
 * Load-velocity profile of one athlete as a table: maximum with limits, velocity without load, load without velocity, slope and
 * fit. Needs three different loads and a line that falls. Empty cells and zeros are missing lifts.
 * @customfunction LOADVELOCITY
 * @param loads Loads in kg or lb, e.g. C3:F3.
 * @param velocities Mean concentric velocities in m/s, e.g. C4:F4.
 * @param threshold Velocity of a maximal lift in m/s, e.g. 0.3, or bench press, back squat, deadlift or prone bench pull.
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @returns A table of labels and values; loads in the unit given, velocities in m/s.
 * @example =TAPELINE.LOADVELOCITY({40,60,70,80},{0.92,0.68,0.57,0.43},0.3)
 * @source Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31:347-352 (from memory).
 */
export function loadVelocity(loads: any[][], velocities: any[][], threshold: any, confidence?: any): any[][] {
  const profile = answer(
    loadVelocityProfile(trialsOf(loads), trialsOf(velocities), {
      minimumVelocityThreshold: thresholdOf(threshold),
      confidence: confidenceOf(confidence),
    }),
  );
  return labelled([
    limitHeadings(),
    [say`Estimated maximum`, ...withLimits(profile.maximum)],
    [say`Velocity without load (m/s)`, profile.velocityAtZeroLoad],
    [say`Load without velocity`, profile.loadAtZeroVelocity],
    [say`Slope (m/s per unit of load)`, profile.slope],
    [say`r squared`, profile.rSquared],
    ...cautionLines(profile.cautions),
  ]);
}

/** A velocity in m/s, or the exercise whose usual one is meant. */
function thresholdOf(threshold: unknown): number {
  const exercises = minimumVelocityThresholds.map(({ exercise }) => exercise) as unknown as Words<string>;
  if (typeof threshold !== "string" || threshold === "") return numberOf(threshold, say`velocity of a maximal lift`);
  const exercise = wordOf(threshold, exercises, say`exercise with a known velocity of a maximal lift`);
  return minimumVelocityThresholds.find((known) => known.exercise === exercise)!.metresPerSecond;
}
