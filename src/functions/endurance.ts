import { capacityDifference as capacityDifferenceOf } from "../engine/endurance/capacityDifference";
import { type CapacityQuantile, type CapacityScore, capacityScores } from "../engine/endurance/capacityScores";
import { intermittentFitnessTest } from "../engine/endurance/intermittentFitnessTest";
import { intermittentRecoveryTest } from "../engine/endurance/intermittentRecoveryTest";
import { intervalRunLength } from "../engine/endurance/intervalRunLength";
import { maximalAerobicSpeed } from "../engine/endurance/maximalAerobicSpeed";
import { shuttleRun } from "../engine/endurance/shuttleRun";
import { shuttleRunOfAdults } from "../engine/endurance/shuttleRunOfAdults";
import { shuttleSpeed as shuttleSpeedOf } from "../engine/endurance/shuttleSpeed";
import { say } from "../language/say";
import { answer, counted, invalid, measured, numberOf, positiveOf, scored, values, worded } from "./border";
import { cautionLines, cellByCell, labelled, part } from "./spill";

const sexes = ["female", "male"] as const;

/**
 * Maximal aerobic speed as the mean speed of an all-out run, distance divided by time, one for each cell. Meant for runs of 5 to 6
 * minutes or 1200 to 2000 m; shorter ones overestimate. Empty cells and zeros are missing.
 * @customfunction AEROBICSPEED
 * @param distances Distances run in m, e.g. C4:C29 or 1500.
 * @param times Times in s, e.g. D4:D29 with 342.
 * @returns Speed in km/h, e.g. 15.8.
 * @example =TAPELINE.AEROBICSPEED(1500,342)
 * @source Common practice, no source.
 */
export function aerobicSpeed(distances: any[][], times: any[][]): any[][] {
  return cellByCell({ "distance run": measured(distances), "running time": measured(times) }, (run) =>
    part(maximalAerobicSpeed(run["distance run"], run["running time"]), ({ kilometresPerHour }) => kilometresPerHour),
  );
}

/**
 * Metres to run in an interval at a percentage of an athlete's speed, one for each cell. Final speeds of an intermittent test and
 * aerobic speeds differ by 2 to 5 km/h: keep to one kind. Empty cells and zeros are missing.
 * @customfunction INTERVALDISTANCE
 * @param speeds Speeds in km/h, e.g. C4:C29.
 * @param percents Percent of the speed to run at, e.g. 95.
 * @param seconds Duration of the interval in s, e.g. 15.
 * @returns Distance in m, e.g. 71.3.
 * @example =TAPELINE.INTERVALDISTANCE({15.8;16.6},95,15)
 * @source Kinematics.
 */
export function intervalDistance(speeds: any[][], percents: any[][], seconds: any[][]): any[][] {
  return cellByCell({ speed: measured(speeds), percent: measured(percents), seconds: measured(seconds) }, (run) =>
    intervalRunLength(run.speed, run.percent, run.seconds),
  );
}

/**
 * Speed of a stage of the 20 m shuttle run with one-minute stages, first speed plus 0.5 km/h a stage, one for each cell. Empty cells
 * and zeros are missing.
 * @customfunction SHUTTLESPEED
 * @param stages Last stage completed, 1 to 23, e.g. C4:C29.
 * @param [firstSpeed] Speed of the first stage in km/h, e.g. 8.5 (when left out) or 8, by the version of the test.
 * @returns Speed in km/h, e.g. 12.5.
 * @example =TAPELINE.SHUTTLESPEED({8;9;11})
 * @source Leger et al. 1988, J Sports Sci 6:93-101 (from memory).
 */
export function shuttleSpeed(stages: any[][], firstSpeed?: any): any[][] {
  const firstStageSpeed = numberOf(firstSpeed, say`speed of the first stage`, 8.5);
  return cellByCell({ stage: measured(stages) }, (run) => shuttleSpeedOf(run.stage, { firstStageSpeed }));
}

/**
 * Maximal oxygen uptake from the 20 m shuttle run with one-minute stages by speed and age (Leger et al. 1988, for 8 to 19 years; adults
 * count as 18), one for each cell. True to about 6 ml/kg/min: track the stage itself. Empty cells and zeros are missing.
 * @customfunction OXYGENUPTAKE.SHUTTLE
 * @param speeds Speed of the last stage completed in km/h, not the stage number, e.g. C4:C29.
 * @param ages Ages in years, e.g. D4:D29.
 * @returns Oxygen uptake in ml/kg/min, e.g. 47.7.
 * @example =TAPELINE.OXYGENUPTAKE.SHUTTLE({12;12.5},{16;17})
 * @source Leger et al. 1988, J Sports Sci 6:93-101 (from memory).
 */
export function oxygenUptakeOfShuttle(speeds: any[][], ages: any[][]): any[][] {
  return cellByCell({ "final speed": measured(speeds), age: measured(ages) }, (run) =>
    part(shuttleRun(run["final speed"], { age: run.age }), ({ oxygenUptake }) => oxygenUptake),
  );
}

/**
 * Maximal oxygen uptake of young adults from the last half-stage of the 20 m shuttle run (Stickland et al. 2003), one for each cell.
 * True to about 4 ml/kg/min: track the stage itself. Empty cells and zeros are missing.
 * @customfunction OXYGENUPTAKE.SHUTTLEADULTS
 * @param stages Last half-stage completed, e.g. C4:C29 with 9.5.
 * @param sexes The words female or male, e.g. D4:D29.
 * @returns Oxygen uptake in ml/kg/min, e.g. 52.2.
 * @example =TAPELINE.OXYGENUPTAKE.SHUTTLEADULTS({9.5;11},{"female";"male"})
 * @source Stickland et al. 2003 (abstract read).
 */
export function oxygenUptakeOfAdults(stages: any[][], sexes: any[][]): any[][] {
  return cellByCell({ "half-stage": measured(stages), sex: sexesIn(sexes) }, (run) =>
    part(shuttleRunOfAdults(run["half-stage"], { sex: run.sex }), ({ oxygenUptake }) => oxygenUptake),
  );
}

/**
 * Maximal oxygen uptake from the metres of the intermittent recovery test with 20 m shuttles (Bangsbo et al. 2008), one for each cell. A
 * group's regression: track the metres. Empty cells and zeros are missing.
 * @customfunction OXYGENUPTAKE.RECOVERY
 * @param distances Metres run in whole shuttles of 40 m, e.g. C4:C29.
 * @param [level] Level of the test, e.g. 1 (when left out) or 2.
 * @returns Oxygen uptake in ml/kg/min, e.g. 49.8.
 * @example =TAPELINE.OXYGENUPTAKE.RECOVERY({1600;1280},1)
 * @source Bangsbo, Iaia & Krustrup 2008, Sports Med 38:37-51 (as quoted by secondary pages).
 */
export function oxygenUptakeOfRecovery(distances: any[][], level?: any): any[][] {
  const chosen = numberOf(level, "level", 1);
  if (chosen !== 1 && chosen !== 2) throw invalid(say`The level must be 1 or 2; ${chosen} is not.`);
  return cellByCell({ "distance run": measured(distances) }, (run) =>
    part(intermittentRecoveryTest(run["distance run"], { level: chosen }), ({ oxygenUptake }) => oxygenUptake),
  );
}

/**
 * Maximal oxygen uptake from the final speed of the 30-15 intermittent fitness test (Buchheit 2008), one for each cell. A group's
 * regression: track the speed. Empty cells and zeros are missing.
 * @customfunction OXYGENUPTAKE.INTERMITTENT
 * @param speeds Final speeds in km/h, e.g. C4:C29.
 * @param sexes The words female or male, e.g. D4:D29 or female.
 * @param ages Ages in years, e.g. E4:E29.
 * @param masses Body masses in kg, e.g. F4:F29.
 * @returns Oxygen uptake in ml/kg/min, e.g. 49.2.
 * @example =TAPELINE.OXYGENUPTAKE.INTERMITTENT({19;18.5},"female",{22;24},{66;71})
 * @source Buchheit 2008, J Strength Cond Res 22:365-374 (as quoted by secondary pages).
 */
export function oxygenUptakeOfIntermittent(speeds: any[][], sexes: any[][], ages: any[][], masses: any[][]): any[][] {
  return cellByCell(
    { "final speed": measured(speeds), sex: sexesIn(sexes), age: measured(ages), "body mass": measured(masses) },
    (run) =>
      part(
        intermittentFitnessTest(run["final speed"], { sex: run.sex, age: run.age, bodyMass: run["body mass"] }),
        ({ oxygenUptake }) => oxygenUptake,
      ),
  );
}

const sexesIn = (range: any[][]) => worded(range, sexes, say`sex for the equation`);

/**
 * Side-to-side difference of repetitions or seconds to failure, right less left, one for each cell: with small counts a percentage
 * misleads. A 0 is a score; write a dash or DNS where nobody tested, since an empty cell may arrive as 0.
 * @customfunction CAPACITYDIFFERENCE
 * @param left Repetitions or seconds of the left side, e.g. C4:C29.
 * @param right Repetitions or seconds of the right side, e.g. D4:D29.
 * @param [cap] Score at which the tester stops the test, e.g. 40; none when left out.
 * @returns Difference in repetitions or seconds, e.g. -4; #N/A where the cap hides it.
 * @example =TAPELINE.CAPACITYDIFFERENCE({28;31},{24;33},40)
 * @source Retests differ by about 6 repetitions either way, Hebert-Losier et al. 2017, Physiotherapy 103:446-452 (abstract read).
 */
export function capacityDifference(left: any[][], right: any[][], cap?: any): any[][] {
  const stop = positiveOf(cap, "cap");
  return cellByCell({ "left score": counted(left), "right score": counted(right) }, (athlete) =>
    part(
      capacityDifferenceOf(scoreOf(athlete["left score"], stop), scoreOf(athlete["right score"], stop)),
      ({ difference }) => difference,
    ),
  );
}

/**
 * Median and quartiles of a squad's repetitions or seconds to failure as a table, as in PERCENTILE.INC; "at least" where scores
 * stopped at the cap leave open how much higher it is. Empty cells are missing; say what a 0 is.
 * @customfunction CAPACITYSUMMARY
 * @param scores Repetitions or seconds of one side, e.g. C4:C29.
 * @param [cap] Score at which the tester stops the test, e.g. 40; none when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns A table of labels and values in repetitions or seconds.
 * @example =TAPELINE.CAPACITYSUMMARY({24;28;40;31;26;40;22},40)
 * @source Right-censored scores; quantiles by Hyndman & Fan 1996, Am Stat 50:361-365, type 7 (from memory).
 */
export function capacitySummary(scores: any[][], cap?: any, zeros?: string): any[][] {
  const stop = positiveOf(cap, "cap");
  const summary = answer(
    capacityScores(
      values(scored(scores, zeros))
        .flat()
        .map((score) => (score === null ? null : scoreOf(score, stop))),
    ),
  );
  const line = (label: string, { value, atLeast }: CapacityQuantile) => [label, value, atLeast ? say`at least` : ""];
  return labelled([
    [say`Athletes`, summary.count],
    [say`Stopped at the cap`, summary.stoppedAtCap],
    line(say`Lower quartile`, summary.lowerQuartile),
    line(say`Median`, summary.median),
    line(say`Upper quartile`, summary.upperQuartile),
    ...cautionLines(summary.cautions),
  ]);
}

const scoreOf = (value: number, cap: number | undefined): CapacityScore => ({
  value,
  stoppedAtCap: cap !== undefined && value >= cap,
});
