import { choiceOf } from "./cellSchemas";
import { name, number, text } from "./columnKinds";
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

const same = <Value extends string>(...values: readonly Value[]) =>
  Object.fromEntries(values.map((value) => [value, value])) as Record<Value, Value>;

const doses = ["repetitions", "seconds", "contacts", "metres", "minutes"] as const;

export const exercisesTable: StoreTable<Exercise> = {
  id: "exercises",
  name: "Tapeline_Exercises",
  sheet: "Exercises",
  title: "Exercises",
  use: "What plans are made of. Change, add and delete as you like; a quality is spelled as in the battery.",
  columns: {
    exercise: { ...name, heading: "Exercise", meaning: "Name of the exercise.", width: 30 },
    quality: { ...name, heading: "Quality", meaning: "The physical quality it trains.", width: 20 },
    region: { ...text, heading: "Region", meaning: "Part of the body it works on.", width: 14 },
    limbs: {
      heading: "Limbs",
      meaning: "Both together, or one at a time: one-limb exercises get a set more on a weaker side.",
      format: "@",
      width: 9,
      choices: ["both", "one"],
      cell: choiceOf(same("both", "one"), "neither both nor one"),
      absent: () => "both",
      write: (limbs) => limbs,
    },
    equipment: { ...text, heading: "Equipment", meaning: "What is needed for it.", width: 16 },
    level: {
      heading: "Level",
      meaning:
        "Basic: for everybody who has been shown it. Trained: for those who have the technique; never planned for minors.",
      format: "@",
      width: 9,
      choices: ["basic", "trained"],
      cell: choiceOf<Level>(same("basic", "trained"), "neither basic nor trained"),
      absent: () => "trained",
      write: (level) => level,
    },
    dose: {
      heading: "Counted in",
      meaning: "Repetitions, seconds, contacts, metres or minutes.",
      format: "@",
      width: 12,
      choices: doses,
      cell: choiceOf<Dose>(same(...doses), `none of ${doses.join(", ")}`),
      absent: () => "repetitions",
      write: (dose) => dose,
    },
    loadFrom: {
      ...text,
      heading: "Load from",
      meaning: "Test of the battery whose estimated maximum sets the load in kg; empty where no load is reckoned.",
      width: 16,
    },
    percentOfMaximum: {
      ...number("0", 5, 200),
      heading: "Share of it (%)",
      meaning: "How much of that maximum counts as the maximum of this exercise: 100 for the lift itself.",
      width: 10,
    },
    caution: { ...text, heading: "Caution", meaning: "What to mind.", width: 44 },
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
