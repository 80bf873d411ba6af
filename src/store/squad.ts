import type { Side } from "../reading/vocabulary";

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
