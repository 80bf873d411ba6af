import { plausibleRanges } from "../engine/flags/plausibleRanges";
import { say } from "../language/say";
import type { BatteryTest } from "./battery";

/** The qualities that the ready-made batteries speak of; a coach may use words of their own. */
export const qualities = {
  speed: say`Speed`,
  changeOfDirection: say`Change of direction`,
  lowerBodyPower: say`Lower-body power`,
  upperBodyPower: say`Upper-body power`,
  strength: say`Strength`,
  muscleCapacity: say`Muscle capacity`,
  endurance: say`Endurance`,
} as const;

/** Tests that are often done together, ready to be set up and then changed by the coach. */
export type ReadyBattery = {
  readonly id: string;
  readonly name: string;
  /** What it is for, in one sentence. */
  readonly about: string;
  readonly tests: readonly BatteryTest[];
};

const maximal = say`Maximal effort: warm up fully first; minors only with a qualified person beside them. Pain stops the test.`;
const landing = say`Loads knee and ankle on landing: warm up with easy jumps first; minors only with a qualified person beside them. Pain stops the test.`;
const heavy = say`Heavy load: practised technique, warm-up sets and spotters or safety bars; minors only with a qualified person beside them. Pain stops the set.`;
const exhausting = say`Runs to exhaustion: only athletes who are well and used to hard running; minors only with a qualified person beside them. Pain, dizziness or illness stops the test.`;
const localFatigue = say`Ends in local fatigue: stop when form is lost; minors only with a qualified person beside them. Pain stops the test.`;

/**
 * A test as it stands in a ready-made battery. Numbers of trials, retest weeks, and those plausible ranges that stand
 * here as numbers: common practice, no source. The best trial is the score of maximal tests, because effort cannot
 * exceed what the athlete can do; where trials are noisy, a coach may choose the mean.
 */
const ready = (
  said: Pick<BatteryTest, "test" | "unit" | "direction"> & Partial<BatteryTest> & { readonly range?: Range },
): BatteryTest => {
  const { range, ...test } = said;
  return {
    ...{ measure: null, quality: null, sides: 1, trials: 1, reduction: "best", retestAfterWeeks: 6 },
    ...{ lowest: range?.[0] ?? null, highest: range?.[1] ?? null, protocol: null, caution: null },
    ...test,
  };
};

type Range = readonly [lowest: number, highest: number];

/** A range of the engine's, in its own unit times `factor` (1000: ms for s). */
const plausible = (key: keyof typeof plausibleRanges, factor = 1): Range => {
  const { low, high } = plausibleRanges[key];
  return [Math.round(low * factor * 100) / 100, Math.round(high * factor * 100) / 100];
};

const sprint = (measure: "time5" | "time10" | "time20" | "time30", range: Range, more: Partial<BatteryTest> = {}) =>
  ready({
    ...{ test: say`Sprint`, measure, unit: "s", direction: "lower", trials: 3, range },
    protocol: say`Standing start 0.5 m behind the first gate, start when ready, run through the last gate.\nThree runs with 3 min rest; same floor and shoes each time.`,
    caution: maximal,
    ...more,
  });

const sprintTests: readonly BatteryTest[] = [
  sprint("time5", plausible("sprint5")),
  sprint("time10", plausible("sprint10")),
  sprint("time20", plausible("sprint20")),
  sprint("time30", plausible("sprint30"), { quality: qualities.speed }),
  ready({
    ...{ test: say`Sprint`, measure: "maximalSpeed", unit: "m/s", direction: "higher", range: [4, 12] },
    protocol: say`Computed from the splits of one run.\nNothing to enter.`,
  }),
];

const jumpProtocol = say`Hands on the hips, dip and jump in one movement, legs straight until landing.\nThree jumps with 30 s rest; repeat one with bent legs or a free arm.`;
const dropProtocol = say`Step off a 30 cm box, touch the floor as briefly as you can and jump as high as you can.\nThree jumps with 60 s rest; same box each time.`;

const jumpTests: readonly BatteryTest[] = [
  ready({
    ...{ test: say`Countermovement jump`, measure: "flightTime", unit: "ms", direction: "higher", trials: 3 },
    ...{ range: plausible("flightTime", 1000), quality: qualities.lowerBodyPower, retestAfterWeeks: 4 },
    ...{ protocol: jumpProtocol, caution: landing },
  }),
  ready({
    ...{ test: say`Drop jump`, measure: "contactTime", unit: "ms", direction: "lower", trials: 3 },
    ...{ range: plausible("contactTime", 1000), protocol: dropProtocol, caution: landing },
  }),
  ready({
    ...{ test: say`Drop jump`, measure: "flightTime", unit: "ms", direction: "higher", trials: 3 },
    ...{ range: plausible("flightTime", 1000), protocol: dropProtocol, caution: landing },
  }),
  ready({
    ...{ test: say`Drop jump`, measure: "reactiveStrengthIndex", unit: "m/s", direction: "higher", trials: 3 },
    ...{ range: [0.2, 4.5], quality: qualities.lowerBodyPower },
    protocol: say`Computed: jump height over contact time of one jump.\nNothing to enter.`,
  }),
];

const hopTests: readonly BatteryTest[] = [
  ready({
    ...{ test: say`Single-leg hop`, unit: "cm", direction: "higher", sides: 2, trials: 3 },
    ...{ range: plausible("singleHop"), quality: qualities.lowerBodyPower },
    protocol: say`Stand on one leg, hop forward, land on the same leg and hold for 2 s; toe to heel is measured.\nTwo practice hops, then three for each leg, legs in turn; arms free.`,
    caution: say`${landing}\nAfter an injury of the leg only as the treating practitioner allows.`,
  }),
  ready({
    ...{ test: say`Triple hop`, unit: "cm", direction: "higher", sides: 2, trials: 3 },
    ...{ range: [150, 950], quality: qualities.lowerBodyPower },
    protocol: say`Three hops on one leg without a stop, last landing held for 2 s; toe to heel is measured.\nTwo practice runs, then three for each leg, legs in turn; arms free.`,
    caution: say`${landing}\nAfter an injury of the leg only as the treating practitioner allows.`,
  }),
];

const throwTests: readonly BatteryTest[] = [
  ready({
    ...{ test: say`Overhead medicine-ball throw`, unit: "m", direction: "higher", trials: 3 },
    ...{ range: [2, 20], quality: qualities.upperBodyPower },
    protocol: say`Both feet behind the line, ball (3 kg) from behind the head with both hands, feet stay down.\nThree throws with 60 s rest; first touch of the ball is measured.`,
    caution: maximal,
  }),
  ready({
    ...{ test: say`Seated medicine-ball push`, unit: "m", direction: "higher", trials: 3 },
    ...{ range: [1.5, 10], quality: qualities.upperBodyPower },
    protocol: say`Back against the wall, ball (3 kg) at the chest, push with both hands without leaving the wall.\nThree pushes with 60 s rest; measured from the wall to the first touch of the ball.`,
    caution: maximal,
  }),
];

const lift = (test: string, protocol: string): readonly BatteryTest[] => [
  ready({
    ...{ test, measure: "load", unit: "kg", direction: "higher", range: plausible("load"), retestAfterWeeks: 8 },
    ...{ protocol, caution: heavy },
  }),
  ready({
    ...{ test, measure: "repetitions", unit: "reps", direction: "higher", range: [1, 15], retestAfterWeeks: 8 },
    ...{ protocol, caution: heavy },
  }),
  ready({
    ...{ test, measure: "estimatedMaximum", unit: "kg", direction: "higher", range: [10, 500], retestAfterWeeks: 8 },
    quality: qualities.strength,
    protocol: say`Computed from load and repetitions of one set.\nNothing to enter.`,
  }),
  ready({
    ...{ test, measure: "relativeStrength", unit: null, direction: "higher", range: [0.2, 4], retestAfterWeeks: 8 },
    protocol: say`Computed: estimated maximum over body mass.\nNothing to enter.`,
  }),
];

const strengthTests: readonly BatteryTest[] = [
  ...lift(
    say`Back squat`,
    say`One set with a load that allows 3 to 8 full repetitions; stop when the next would fail.\nSame depth, bar place and shoes each time.`,
  ),
  ...lift(
    say`Bench press`,
    say`One set with a load that allows 3 to 8 full repetitions; stop when the next would fail.\nBar touches the chest, seat and feet stay down.`,
  ),
];

const capacityTests: readonly BatteryTest[] = [
  ready({
    ...{
      test: say`Single-leg calf raise`,
      unit: "reps",
      direction: "higher",
      sides: 2,
      range: plausible("repetitions"),
    },
    ...{ quality: qualities.muscleCapacity, retestAfterWeeks: 8 },
    protocol: say`On a step, knee straight, full height in the beat of one raise per 2 s, fingertips on the wall.\nCount until the height or the beat is lost.`,
    caution: localFatigue,
  }),
  ready({
    ...{ test: say`Single-leg hamstring bridge`, unit: "reps", direction: "higher", sides: 2 },
    ...{ range: plausible("repetitions"), quality: qualities.muscleCapacity, retestAfterWeeks: 8 },
    protocol: say`On the back, heel on a 60 cm box, knee slightly bent, other leg up; lift the hips to a straight line.\nCount until the line or the beat of one lift per 2 s is lost.`,
    caution: localFatigue,
  }),
  ready({
    ...{ test: say`Side plank`, unit: "s", direction: "higher", sides: 2, range: [5, 300] },
    ...{ quality: qualities.muscleCapacity, retestAfterWeeks: 8 },
    protocol: say`On forearm and foot, body in one line, upper hand on the hip.\nTime until the hips sink for the second time.`,
    caution: localFatigue,
  }),
];

const changeOfDirectionTests: readonly BatteryTest[] = [
  ready({
    ...{ test: say`505 change of direction`, unit: "s", direction: "lower", sides: 2, trials: 3 },
    ...{ range: plausible("changeOfDirection505"), quality: qualities.changeOfDirection },
    protocol: say`Run 15 m, turn on the named leg on the line, run back 5 m; timed from the gate 5 m before the line and back.\nThree runs for each leg with 2 min rest.`,
    caution: say`${maximal}\nA dry, even floor; sharp turns load knee and ankle.`,
  }),
  ready({
    ...{ test: say`505 change of direction`, measure: "deficit", unit: "s", direction: "lower", sides: 2 },
    range: [0, 2],
    protocol: say`Computed: the turn's time less the 10 m sprint.\nNothing to enter.`,
  }),
];

const enduranceTests: readonly BatteryTest[] = [
  ready({
    ...{ test: say`Intermittent shuttle run`, unit: "m", direction: "higher", range: [40, 4000], retestAfterWeeks: 8 },
    quality: qualities.endurance,
    protocol: say`Shuttles of 20 m there and back at rising speed by the signal, short rest after each; two misses end it.\nThe metres of the last full shuttle count; same recording and floor each time.`,
    caution: exhausting,
  }),
];

/** Each for one kind of test day; a coach takes one or several and changes what does not fit. */
export const readyBatteries: readonly ReadyBattery[] = [
  {
    id: "sprint",
    name: say`Sprint`,
    about: say`Splits of a 30 m sprint: how an athlete starts and how fast they become.`,
    tests: sprintTests,
  },
  {
    id: "jump",
    name: say`Jumps`,
    about: say`Countermovement and drop jumps by flight and contact time: power of the legs.`,
    tests: jumpTests,
  },
  {
    id: "hop",
    name: say`Hops`,
    about: say`Hops for distance on each leg: power and its difference between sides.`,
    tests: hopTests,
  },
  {
    id: "throw",
    name: say`Throws`,
    about: say`Medicine-ball throws: power of the upper body.`,
    tests: throwTests,
  },
  {
    id: "strength",
    name: say`Strength`,
    about: say`Sets to near failure with a known load: an estimated maximum without lifting it.`,
    tests: strengthTests,
  },
  {
    id: "capacity",
    name: say`Muscle capacity`,
    about: say`Repetitions or time until form is lost, on each side.`,
    tests: capacityTests,
  },
  {
    id: "changeOfDirection",
    name: say`Change of direction`,
    about: say`A timed turn on each leg, and what it costs over a straight run.`,
    tests: changeOfDirectionTests,
  },
  {
    id: "endurance",
    name: say`Endurance`,
    about: say`An intermittent run to exhaustion.`,
    tests: enduranceTests,
  },
];
