import { say } from "../language/say";
import type { Side } from "../reading/vocabulary";
import { numberFrom } from "./cellSchemas";
import { name, number, open, side, text } from "./columnKinds";
import { nameKey } from "./sameName";
import { readStoreTable, type StoreRemark, type StoreTable, type TableCells } from "./storeTable";

/** One athlete of the squad, as the coach keeps them. Everything but the name may be left open. */
export type SquadMember = {
  readonly athlete: string;
  readonly role: string | null;
  readonly group: string | null;
  readonly dominantSide: Side | null;
  /** The year alone: a date of birth is more than any of our formulas need. */
  readonly birthYear: number | null;
  /** kg */
  readonly bodyMass: number | null;
  /** cm */
  readonly stature: number | null;
  readonly notes: string | null;
};

export const squadTable: StoreTable<SquadMember> = {
  id: "squad",
  name: "Tapeline_Squad",
  sheet: say`Squad`,
  title: say`Squad`,
  use: say`One row per athlete; everything but the name may stay empty. Add columns of your own, sort and filter as you like.`,
  columns: {
    athlete: {
      ...name,
      heading: say`Athlete`,
      meaning: say`Name as it stands on your test sheets. Each athlete stands here once.`,
      width: 24,
    },
    role: {
      ...text,
      heading: say`Role`,
      meaning: say`Playing position, or any other role by which athletes are compared and qualities are weighted.`,
      width: 16,
    },
    group: { ...text, heading: say`Group`, meaning: say`Team, age group or training group.`, width: 14 },
    dominantSide: {
      ...side,
      heading: say`Dominant side`,
      meaning: say`Left or right: the throwing arm or the leg of choice, as it matters in your sport.`,
      width: 14,
    },
    birthYear: {
      ...number("0", 1900, 2100, { whole: true }),
      heading: say`Birth year`,
      meaning: say`The year alone; no formula here needs the day.`,
      width: 9,
    },
    bodyMass: {
      ...open,
      heading: say`Body mass (kg)`,
      meaning: say`Latest body mass in kg: for strength per body mass, and for power from jump heights.`,
      format: "0.0",
      width: 11,
      cell: numberFrom(20, 250, { unit: "kg" }),
    },
    stature: {
      ...open,
      heading: say`Stature (cm)`,
      meaning: say`Standing height in cm: for hops by stature.`,
      format: "0",
      width: 11,
      cell: numberFrom(100, 250, { unit: "cm" }),
    },
    notes: { ...text, heading: say`Notes`, meaning: say`Yours. Nothing here is read into any result.`, width: 36 },
  },
  once: ({ athlete }) => ({ key: nameKey(athlete), called: `“${athlete}”` }),
};

export function readSquad(cells: TableCells): { squad: readonly SquadMember[]; remarks: readonly StoreRemark[] } {
  const { rows, remarks } = readStoreTable(squadTable, cells);
  return { squad: rows.map(({ row }) => row), remarks };
}
