import type { Side } from "../reading/vocabulary";
import { numberFrom, sideWord } from "./cellSchemas";
import { name, open, text } from "./columnKinds";
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
  sheet: "Squad",
  title: "Squad",
  use: "One row per athlete; everything but the name may stay empty. Add columns of your own, sort and filter as you like.",
  columns: {
    athlete: {
      ...name,
      heading: "Athlete",
      meaning: "Name as it stands on your test sheets. Each athlete stands here once.",
      width: 24,
    },
    role: {
      ...text,
      heading: "Role",
      meaning: "Playing position, or any other role by which athletes are compared and qualities are weighted.",
      width: 16,
    },
    group: { ...text, heading: "Group", meaning: "Team, age group or training group.", width: 14 },
    dominantSide: {
      ...open,
      heading: "Dominant side",
      meaning: "Left or right: the throwing arm or the leg of choice, as it matters in your sport.",
      format: "@",
      width: 14,
      choices: ["left", "right"],
      cell: sideWord(),
    },
    birthYear: {
      ...open,
      heading: "Birth year",
      meaning: "The year alone; no formula here needs the day.",
      format: "0",
      width: 9,
      cell: numberFrom(1900, 2100, { whole: true }),
    },
    bodyMass: {
      ...open,
      heading: "Body mass (kg)",
      meaning: "Latest body mass in kg: for strength per body mass, and for power from jump heights.",
      format: "0.0",
      width: 11,
      cell: numberFrom(20, 250, { unit: "kg" }),
    },
    stature: {
      ...open,
      heading: "Stature (cm)",
      meaning: "Standing height in cm: for hops by stature.",
      format: "0",
      width: 11,
      cell: numberFrom(100, 250, { unit: "cm" }),
    },
    notes: { ...text, heading: "Notes", meaning: "Yours. Nothing here is read into any result.", width: 36 },
  },
  once: ({ athlete }) => ({ key: nameKey(athlete), called: `“${athlete}”` }),
};

export function readSquad(cells: TableCells): { squad: readonly SquadMember[]; remarks: readonly StoreRemark[] } {
  const { rows, remarks } = readStoreTable(squadTable, cells);
  return { squad: rows.map(({ row }) => row), remarks };
}
