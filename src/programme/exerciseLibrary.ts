import { say } from "../language/say";
import type { Exercise } from "../store/exercises";

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
  equipment: "none",
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
  basic(say`Goblet squat`, "Strength", "Legs", { dose: "repetitions", equipment: say`Dumbbell` }),
  basic(say`Split squat`, "Strength", "Legs", { dose: "repetitions", equipment: say`Dumbbells`, limbs: "one" }),
  basic("Press-up", "Strength", say`Upper body`, { dose: "repetitions" }),
  basic(say`Inverted row`, "Strength", say`Upper body`, { dose: "repetitions", equipment: say`Bar in a rack` }),
  trained(say`Back squat`, "Strength", "Legs", {
    dose: "repetitions",
    equipment: say`Bar`,
    loadFrom: say`Back squat`,
    percentOfMaximum: 100,
    caution: spotted,
  }),
  trained(say`Rear-foot-raised split squat`, "Strength", "Legs", {
    dose: "repetitions",
    equipment: say`Bar`,
    limbs: "one",
    loadFrom: say`Back squat`,
    percentOfMaximum: 45,
    caution: spotted,
  }),
  trained(say`Bench press`, "Strength", say`Upper body`, {
    dose: "repetitions",
    equipment: say`Bar`,
    loadFrom: say`Bench press`,
    percentOfMaximum: 100,
    caution: spotted,
  }),

  // Lower-body power
  basic(say`Box jump, step down`, say`Lower-body power`, "Legs", {
    dose: "contacts",
    equipment: say`Box`,
    caution: landings,
  }),
  basic(say`Single-leg hop and hold`, say`Lower-body power`, "Legs", {
    dose: "contacts",
    limbs: "one",
    caution: landings,
  }),
  trained(say`Countermovement jump for height`, say`Lower-body power`, "Legs", { dose: "contacts", caution: landings }),
  trained(say`Drop jump from a low box`, say`Lower-body power`, "Legs", {
    dose: "contacts",
    equipment: say`Box`,
    caution: landings,
  }),
  trained("Bounding", say`Lower-body power`, "Legs", { dose: "contacts", caution: landings }),

  // Upper-body power
  basic(say`Overhead ball throw`, say`Upper-body power`, say`Upper body`, {
    dose: "contacts",
    equipment: say`Medicine ball`,
  }),
  basic(say`Rotational ball throw`, say`Upper-body power`, "Trunk", {
    dose: "contacts",
    equipment: say`Medicine ball`,
    limbs: "one",
  }),
  trained(say`Bench press, fast`, say`Upper-body power`, say`Upper body`, {
    dose: "repetitions",
    equipment: say`Bar`,
    loadFrom: say`Bench press`,
    percentOfMaximum: 60,
    caution: spotted,
  }),

  // Speed
  basic(say`Acceleration from standing`, "Speed", say`Whole body`, { dose: "metres" }),
  basic(say`Falling start`, "Speed", say`Whole body`, { dose: "metres" }),
  trained(say`Flying sprint`, "Speed", say`Whole body`, {
    dose: "metres",
    caution: say`Only warm and fresh; full rest between runs. Stop at a pull in the thigh.`,
  }),

  // Change of direction
  basic(say`Run, brake and hold`, say`Change of direction`, "Legs", { dose: "metres", caution: landings }),
  basic(say`Side cut and go`, say`Change of direction`, "Legs", { dose: "metres", caution: landings }),
  trained(say`Half turn and back`, say`Change of direction`, "Legs", { dose: "metres", caution: landings }),

  // Muscle capacity
  basic(say`Single-leg calf raise`, say`Muscle capacity`, say`Lower leg`, { dose: "repetitions", limbs: "one" }),
  basic(say`Single-leg hamstring bridge`, say`Muscle capacity`, "Hamstrings", { dose: "repetitions", limbs: "one" }),
  basic(say`Side plank`, say`Muscle capacity`, "Trunk", { dose: "seconds", limbs: "one" }),
  basic(say`Side-lying adductor raise`, say`Muscle capacity`, "Groin", { dose: "repetitions", limbs: "one" }),
  basic(say`Outward rotation with a band`, say`Muscle capacity`, "Shoulder", {
    dose: "repetitions",
    equipment: say`Band`,
    limbs: "one",
  }),

  // Endurance
  basic(say`Runs of four minutes, three minutes easy`, "Endurance", say`Whole body`, { dose: "minutes" }),
  basic(say`Small-sided games`, "Endurance", say`Whole body`, { dose: "minutes", equipment: say`Ball` }),
];
