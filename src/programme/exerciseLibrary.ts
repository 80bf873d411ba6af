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

const spotted = "Only with a rack or spotters, and with a technique that holds. Stop at pain.";
const landings = "Only on a floor that gives, with quiet landings. Stop at pain in knee, shin or Achilles tendon.";

/**
 * Exercises to start from; a table of the workbook once set up, where the coach changes, adds and deletes. Shares of
 * another lift's maximum (a split squat of a back squat) are common practice, no source, and on the low side.
 */
export const exerciseLibrary: readonly Exercise[] = [
  // Strength
  basic("Goblet squat", "Strength", "Legs", { dose: "repetitions", equipment: "Dumbbell" }),
  basic("Split squat", "Strength", "Legs", { dose: "repetitions", equipment: "Dumbbells", limbs: "one" }),
  basic("Press-up", "Strength", "Upper body", { dose: "repetitions" }),
  basic("Inverted row", "Strength", "Upper body", { dose: "repetitions", equipment: "Bar in a rack" }),
  trained("Back squat", "Strength", "Legs", {
    dose: "repetitions",
    equipment: "Bar",
    loadFrom: "Back squat",
    percentOfMaximum: 100,
    caution: spotted,
  }),
  trained("Rear-foot-raised split squat", "Strength", "Legs", {
    dose: "repetitions",
    equipment: "Bar",
    limbs: "one",
    loadFrom: "Back squat",
    percentOfMaximum: 45,
    caution: spotted,
  }),
  trained("Bench press", "Strength", "Upper body", {
    dose: "repetitions",
    equipment: "Bar",
    loadFrom: "Bench press",
    percentOfMaximum: 100,
    caution: spotted,
  }),

  // Lower-body power
  basic("Box jump, step down", "Lower-body power", "Legs", { dose: "contacts", equipment: "Box", caution: landings }),
  basic("Single-leg hop and hold", "Lower-body power", "Legs", { dose: "contacts", limbs: "one", caution: landings }),
  trained("Countermovement jump for height", "Lower-body power", "Legs", { dose: "contacts", caution: landings }),
  trained("Drop jump from a low box", "Lower-body power", "Legs", {
    dose: "contacts",
    equipment: "Box",
    caution: landings,
  }),
  trained("Bounding", "Lower-body power", "Legs", { dose: "contacts", caution: landings }),

  // Upper-body power
  basic("Overhead ball throw", "Upper-body power", "Upper body", { dose: "contacts", equipment: "Medicine ball" }),
  basic("Rotational ball throw", "Upper-body power", "Trunk", {
    dose: "contacts",
    equipment: "Medicine ball",
    limbs: "one",
  }),
  trained("Bench press, fast", "Upper-body power", "Upper body", {
    dose: "repetitions",
    equipment: "Bar",
    loadFrom: "Bench press",
    percentOfMaximum: 60,
    caution: spotted,
  }),

  // Speed
  basic("Acceleration from standing", "Speed", "Whole body", { dose: "metres" }),
  basic("Falling start", "Speed", "Whole body", { dose: "metres" }),
  trained("Flying sprint", "Speed", "Whole body", {
    dose: "metres",
    caution: "Only warm and fresh; full rest between runs. Stop at a pull in the thigh.",
  }),

  // Change of direction
  basic("Run, brake and hold", "Change of direction", "Legs", { dose: "metres", caution: landings }),
  basic("Side cut and go", "Change of direction", "Legs", { dose: "metres", caution: landings }),
  trained("Half turn and back", "Change of direction", "Legs", { dose: "metres", caution: landings }),

  // Muscle capacity
  basic("Single-leg calf raise", "Muscle capacity", "Lower leg", { dose: "repetitions", limbs: "one" }),
  basic("Single-leg hamstring bridge", "Muscle capacity", "Hamstrings", { dose: "repetitions", limbs: "one" }),
  basic("Side plank", "Muscle capacity", "Trunk", { dose: "seconds", limbs: "one" }),
  basic("Side-lying adductor raise", "Muscle capacity", "Groin", { dose: "repetitions", limbs: "one" }),
  basic("Outward rotation with a band", "Muscle capacity", "Shoulder", {
    dose: "repetitions",
    equipment: "Band",
    limbs: "one",
  }),

  // Endurance
  basic("Runs of four minutes, three minutes easy", "Endurance", "Whole body", { dose: "minutes" }),
  basic("Small-sided games", "Endurance", "Whole body", { dose: "minutes", equipment: "Ball" }),
];
