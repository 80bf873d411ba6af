import { plausibleRanges } from "../engine/flags/plausibleRanges";
import type { BodyUse } from "./columns";
import { convert, type Unit, unitOf } from "./units";

/** What a sheet of results says of an athlete's body, beside the results. */
export type BodyFacts = {
  readonly athlete: string;
  /** kg */
  readonly bodyMass: number | null;
  /** cm */
  readonly stature: number | null;
};

export const bodyUnits = { bodyMass: "kg", stature: "cm" } as const satisfies Record<BodyUse, string>;

/** Units of a column of body facts that can be meant where its heading says none, the likelier first. */
const unitsTried = { bodyMass: ["kg"], stature: ["cm", "m"] } as const satisfies Record<BodyUse, readonly string[]>;

/** Whether a value can be a body's: common practice, no source (`engine/flags/plausibleRanges.ts`). */
export function isPlausibleBody(use: BodyUse, value: number, unit: Unit): boolean {
  const range = plausibleRanges[use];
  const inRange = convert(value, unit, unitOf(range.unit)!);
  return inRange !== null && inRange >= range.low && inRange <= range.high;
}

/** The unit a column of body facts must be in, by the middle of its numbers; null where none fits. */
export const unitOfBodies = (use: BodyUse, middle: number): Unit | null =>
  unitsTried[use].map((symbol) => unitOf(symbol)!).find((unit) => isPlausibleBody(use, middle, unit)) ?? null;
