import { intermittentFitnessTest } from "../../engine/endurance/intermittentFitnessTest";
import { intermittentRecoveryTest } from "../../engine/endurance/intermittentRecoveryTest";
import { maximalAerobicSpeed } from "../../engine/endurance/maximalAerobicSpeed";
import type { OxygenUptake } from "../../engine/endurance/oxygenUptake";
import { shuttleRun } from "../../engine/endurance/shuttleRun";
import { shuttleRunOfAdults } from "../../engine/endurance/shuttleRunOfAdults";
import { shuttleSpeed } from "../../engine/endurance/shuttleSpeed";
import { twoMinuteShuttleRun } from "../../engine/endurance/twoMinuteShuttleRun";
import { missing } from "../../engine/refusals";
import { ok, type Refusal, type Result, refuse } from "../../engine/result";
import type { Direction } from "../../engine/trials/reduction";
import { say } from "../../language/say";

export type ProtocolName =
  | "unnamed"
  | "recovery1"
  | "recovery2"
  | "fitness3015"
  | "shuttleStage"
  | "shuttleSpeed"
  | "twoMinuteShuttle"
  | "timedRun"
  | "timeTrial";

/** Who ran, and how the run was set: what the equations need beside the result. */
export type Runner = {
  readonly sex: "female" | "male";
  /** Years; null where no birth year is known. */
  readonly age: number | null;
  /** kg */
  readonly bodyMass: number | null;
  readonly firstStageSpeed: 8 | 8.5;
  readonly runMinutes: number;
  readonly runMetres: number;
};

export type Endurance = {
  /** km/h; null where the protocol has none. */
  readonly speed: number | null;
  /** ml/kg/min with its cautions, or why there is none; null where the protocol gives no estimate. */
  readonly uptake: Result<OxygenUptake> | null;
};

export type Protocol = {
  readonly label: string;
  /** Unit its results are in; null for a number of stages, "any" where no protocol is named. */
  readonly unit: "m" | "km/h" | "s" | "any" | null;
  /** Null where it is left to what is known of the test. */
  readonly better: Direction | null;
  /** Whether its speed is one at which straight intervals can be set. */
  readonly setsIntervals: boolean;
  /** What a result comes to; refused where it cannot be one of this protocol. */
  readonly read: (result: number, runner: Runner) => Result<Endurance>;
};

const adultAge = 18;
const anyBodyMass = 70;
const secondsPerMinute = 60;

/** The protocols a coach can name. Equations and sources stand with each method in engine/endurance. */
export const protocols: Readonly<Record<ProtocolName, Protocol>> = {
  unnamed: {
    label: say`Not said: the result by itself`,
    unit: "any",
    better: null,
    setsIntervals: false,
    read: () => ok({ speed: null, uptake: null }),
  },
  recovery1: {
    label: say`Intermittent recovery shuttles, level 1: metres`,
    unit: "m",
    better: "higher",
    setsIntervals: false,
    read: (metres) => estimateOnly(intermittentRecoveryTest(metres, { level: 1 })),
  },
  recovery2: {
    label: say`Intermittent recovery shuttles, level 2: metres`,
    unit: "m",
    better: "higher",
    setsIntervals: false,
    read: (metres) => estimateOnly(intermittentRecoveryTest(metres, { level: 2 })),
  },
  fitness3015: {
    label: say`30-15 intermittent fitness test: final speed`,
    unit: "km/h",
    better: "higher",
    setsIntervals: true,
    read: (speed, { sex, age, bodyMass }) => {
      const lacking = [...(age === null ? [say`birth year`] : []), ...(bodyMass === null ? [say`body mass`] : [])];
      const runner = { sex, age: age ?? adultAge, bodyMass: bodyMass ?? anyBodyMass };
      return withSpeed(speed, intermittentFitnessTest(speed, runner), lacking);
    },
  },
  shuttleStage: {
    label: say`20 m shuttle run, one-minute stages: last half-stage completed`,
    unit: null,
    better: "higher",
    setsIntervals: false,
    read: (stage, { sex, age, firstStageSpeed }) => {
      if (stage % 0.5 !== 0) return refuse(noHalfStage(stage));
      const speed = shuttleSpeed(Math.floor(stage), { firstStageSpeed });
      if (!speed.ok) return speed;
      if (age === null) return ok({ speed: speed.value, uptake: refuse(missing(say`birth year`)) });
      const uptake = age < adultAge ? shuttleRun(speed.value, { age }) : shuttleRunOfAdults(stage, { sex });
      return ok({ speed: speed.value, uptake });
    },
  },
  shuttleSpeed: {
    label: say`20 m shuttle run, one-minute stages: final speed`,
    unit: "km/h",
    better: "higher",
    setsIntervals: false,
    read: (speed, { age }) =>
      withSpeed(speed, shuttleRun(speed, { age: age ?? adultAge }), age === null ? [say`birth year`] : []),
  },
  twoMinuteShuttle: {
    label: say`20 m shuttle run, two-minute stages: final speed`,
    unit: "km/h",
    better: "higher",
    setsIntervals: false,
    read: (speed) => withSpeed(speed, twoMinuteShuttleRun(speed), []),
  },
  timedRun: {
    label: say`All-out run for set minutes: metres`,
    unit: "m",
    better: "higher",
    setsIntervals: true,
    read: (metres, { runMinutes }) => speedOnly(metres, runMinutes * secondsPerMinute),
  },
  timeTrial: {
    label: say`All-out run over a set distance: time`,
    unit: "s",
    better: "lower",
    setsIntervals: true,
    read: (seconds, { runMetres }) => speedOnly(runMetres, seconds),
  },
};

const estimateOnly = (uptake: Result<OxygenUptake>): Result<Endurance> =>
  uptake.ok ? ok({ speed: null, uptake }) : uptake;

/**
 * Final speed with its estimate, which is withheld where a fact of the runner is `lacking` (anyone's then stood in, to
 * tell whether the speed is one of the test at all: where it is none, the whole result is refused).
 */
function withSpeed(speed: number, uptake: Result<OxygenUptake>, lacking: readonly string[]): Result<Endurance> {
  const ofSpeed = uptake.ok ? [] : uptake.reasons.filter(({ facts }) => facts.what === say`final speed in km/h`);
  if (ofSpeed.length > 0) return refuse(...ofSpeed);
  return ok({ speed, uptake: lacking.length > 0 ? refuse(...lacking.map(missing)) : uptake });
}

function speedOnly(metres: number, seconds: number): Result<Endurance> {
  const speed = maximalAerobicSpeed(metres, seconds);
  return speed.ok ? ok({ speed: speed.value.kilometresPerHour, uptake: null }) : speed;
}

const noHalfStage = (stage: number): Refusal => ({
  code: "noHalfStage",
  message: say`${stage} is no whole or half stage: stage 9 and the fifth shuttle is not 9.5. Give the last half-stage completed.`,
  facts: { stage },
});
