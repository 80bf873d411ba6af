import { say } from "../language/say";
import type { Exercise } from "../store/exercises";
import { qualities } from "../store/readyBatteries";

const basic = (
  exercise: string,
  quality: string,
  region: string,
  more: Partial<Exercise> & Pick<Exercise, "dose">,
): Exercise => ({
  exercise,
  quality,
  region,
  limbs: "both",
  equipment: say`none`,
  level: "basic",
  loadFrom: null,
  percentOfMaximum: null,
  caution: null,
  ...more,
});

const trained = (...given: Parameters<typeof basic>): Exercise => ({ ...basic(...given), level: "trained" });

const spotted = say`Only with a rack or spotters, and with a technique that holds. Stop at pain.`;
const landings = say`Only on a floor that gives, with quiet landings. Stop at pain in knee, shin or Achilles tendon.`;

/**
 * Exercises to start from; a table of the workbook once set up, where the coach changes, adds and deletes. Shares of
 * another lift's maximum (a split squat of a back squat) are common practice, no source, and on the low side.
 */
export const exerciseLibrary: readonly Exercise[] = [
  // Strength
  basic(say`Goblet squat`, qualities.strength, say`Legs`, { dose: "repetitions", equipment: say`Dumbbell` }),
  basic(say`Split squat`, qualities.strength, say`Legs`, {
    dose: "repetitions",
    equipment: say`Dumbbells`,
    limbs: "one",
  }),
  basic(say`Press-up`, qualities.strength, say`Upper body`, { dose: "repetitions" }),
  basic(say`Inverted row`, qualities.strength, say`Upper body`, { dose: "repetitions", equipment: say`Bar in a rack` }),
  trained(say`Back squat`, qualities.strength, say`Legs`, {
    dose: "repetitions",
    equipment: say`Bar`,
    loadFrom: say`Back squat`,
    percentOfMaximum: 100,
    caution: spotted,
  }),
  trained(say`Rear-foot-raised split squat`, qualities.strength, say`Legs`, {
    dose: "repetitions",
    equipment: say`Bar`,
    limbs: "one",
    loadFrom: say`Back squat`,
    percentOfMaximum: 45,
    caution: spotted,
  }),
  trained(say`Bench press`, qualities.strength, say`Upper body`, {
    dose: "repetitions",
    equipment: say`Bar`,
    loadFrom: say`Bench press`,
    percentOfMaximum: 100,
    caution: spotted,
  }),

  // Lower-body power
  basic(say`Box jump, step down`, qualities.lowerBodyPower, say`Legs`, {
    dose: "contacts",
    equipment: say`Box`,
    caution: landings,
  }),
  basic(say`Single-leg hop and hold`, qualities.lowerBodyPower, say`Legs`, {
    dose: "contacts",
    limbs: "one",
    caution: landings,
  }),
  trained(say`Countermovement jump for height`, qualities.lowerBodyPower, say`Legs`, {
    dose: "contacts",
    caution: landings,
  }),
  trained(say`Drop jump from a low box`, qualities.lowerBodyPower, say`Legs`, {
    dose: "contacts",
    equipment: say`Box`,
    caution: landings,
  }),
  trained(say`Bounding`, qualities.lowerBodyPower, say`Legs`, { dose: "contacts", caution: landings }),

  // Upper-body power
  basic(say`Overhead ball throw`, qualities.upperBodyPower, say`Upper body`, {
    dose: "contacts",
    equipment: say`Medicine ball`,
  }),
  basic(say`Rotational ball throw`, qualities.upperBodyPower, say`Trunk`, {
    dose: "contacts",
    equipment: say`Medicine ball`,
    limbs: "one",
  }),
  trained(say`Bench press, fast`, qualities.upperBodyPower, say`Upper body`, {
    dose: "repetitions",
    equipment: say`Bar`,
    loadFrom: say`Bench press`,
    percentOfMaximum: 60,
    caution: spotted,
  }),

  // Speed
  basic(say`Acceleration from standing`, qualities.speed, say`Whole body`, { dose: "metres" }),
  basic(say`Falling start`, qualities.speed, say`Whole body`, { dose: "metres" }),
  trained(say`Flying sprint`, qualities.speed, say`Whole body`, {
    dose: "metres",
    caution: say`Only warm and fresh; full rest between runs. Stop at a pull in the thigh.`,
  }),

  // Change of direction
  basic(say`Run, brake and hold`, qualities.changeOfDirection, say`Legs`, { dose: "metres", caution: landings }),
  basic(say`Side cut and go`, qualities.changeOfDirection, say`Legs`, { dose: "metres", caution: landings }),
  trained(say`Half turn and back`, qualities.changeOfDirection, say`Legs`, { dose: "metres", caution: landings }),

  // Muscle capacity
  basic(say`Single-leg calf raise`, qualities.muscleCapacity, say`Lower leg`, { dose: "repetitions", limbs: "one" }),
  basic(say`Single-leg hamstring bridge`, qualities.muscleCapacity, say`Hamstrings`, {
    dose: "repetitions",
    limbs: "one",
  }),
  basic(say`Side plank`, qualities.muscleCapacity, say`Trunk`, { dose: "seconds", limbs: "one" }),
  basic(say`Side-lying adductor raise`, qualities.muscleCapacity, say`Groin`, { dose: "repetitions", limbs: "one" }),
  basic(say`Outward rotation with a band`, qualities.muscleCapacity, say`Shoulder`, {
    dose: "repetitions",
    equipment: say`Band`,
    limbs: "one",
  }),

  // Endurance
  basic(say`Runs of four minutes, three minutes easy`, qualities.endurance, say`Whole body`, { dose: "minutes" }),
  basic(say`Small-sided games`, qualities.endurance, say`Whole body`, { dose: "minutes", equipment: say`Ball` }),
];
