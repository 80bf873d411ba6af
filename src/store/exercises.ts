import { say } from "../language/say";
import { choice, name, number, text } from "./columnKinds";
import { nameKey } from "./sameName";
import { readStoreTable, type StoreRemark, type StoreTable, type TableCells } from "./storeTable";

/** How much of an exercise is done is counted in this. */
export type Dose = "repetitions" | "seconds" | "contacts" | "metres" | "minutes";

export type Level = "basic" | "trained";

/** One exercise a coach can plan with. */
export type Exercise = {
  readonly exercise: string;
  /** Physical quality it trains, as the battery and the weights call it. */
  readonly quality: string;
  readonly region: string | null;
  /** Done with both limbs together, or with one at a time. */
  readonly limbs: "both" | "one";
  readonly equipment: string | null;
  readonly level: Level;
  readonly dose: Dose;
  /** Test of the battery whose estimated maximum sets the load; null where the load is not reckoned. */
  readonly loadFrom: string | null;
  /** Share of that maximum that counts as this exercise's own, in percent. */
  readonly percentOfMaximum: number | null;
  readonly caution: string | null;
};

const doseWords: Readonly<Record<Dose, string>> = {
  repetitions: say`repetitions`,
  seconds: say`seconds`,
  contacts: say`contacts`,
  metres: say`metres`,
  minutes: say`minutes`,
};

export const exercisesTable: StoreTable<Exercise> = {
  id: "exercises",
  name: "Tapeline_Exercises",
  sheet: say`Exercises`,
  title: say`Exercises`,
  use: say`What plans are made of. Change, add and delete as you like; a quality is spelled as in the battery.`,
  columns: {
    exercise: { ...name, heading: say`Exercise`, meaning: say`Name of the exercise.`, width: 30 },
    quality: { ...name, heading: say`Quality`, meaning: say`The physical quality it trains.`, width: 20 },
    region: { ...text, heading: say`Region`, meaning: say`Part of the body it works on.`, width: 14 },
    limbs: {
      heading: say`Limbs`,
      meaning: say`Both together, or one at a time: one-limb exercises get a set more on a weaker side.`,
      ...choice({ both: say`both`, one: say`one` }, say`neither both nor one`),
      width: 9,
      absent: () => "both",
    },
    equipment: { ...text, heading: say`Equipment`, meaning: say`What is needed for it.`, width: 16 },
    level: {
      heading: say`Level`,
      meaning: say`Basic: for everybody who has been shown it. Trained: for those who have the technique; never planned for minors.`,
      ...choice({ basic: say`basic`, trained: say`trained` }, say`neither basic nor trained`),
      width: 9,
      absent: () => "trained",
    },
    dose: {
      heading: say`Counted in`,
      meaning: say`Repetitions, seconds, contacts, metres or minutes.`,
      ...choice(doseWords, say`none of ${Object.values(doseWords).join(", ")}`),
      width: 12,
      absent: () => "repetitions",
    },
    loadFrom: {
      ...text,
      heading: say`Load from`,
      meaning: say`Test of the battery whose estimated maximum sets the load in kg; empty where no load is reckoned.`,
      width: 16,
    },
    percentOfMaximum: {
      ...number("0", 5, 200),
      heading: say`Share of it (%)`,
      meaning: say`How much of that maximum counts as the maximum of this exercise: 100 for the lift itself.`,
      width: 10,
    },
    caution: { ...text, heading: say`Caution`, meaning: say`What to mind.`, width: 44 },
  },
  once: ({ exercise }) => ({ key: nameKey(exercise), called: `“${exercise}”` }),
};

export function readExercises(cells: TableCells): {
  exercises: readonly Exercise[];
  remarks: readonly StoreRemark[];
} {
  const { rows, remarks } = readStoreTable(exercisesTable, cells);
  return { exercises: rows.map(({ row }) => row), remarks };
}
