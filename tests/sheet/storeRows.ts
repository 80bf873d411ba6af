import type { BatteryTest } from "../../src/store/battery";
import type { KeptResult } from "../../src/store/keptResults";
import type { SquadMember } from "../../src/store/squad";

/** Rows of the workbook's tables of which only what matters is said. */
export const squadMember = (athlete: string, said: Partial<SquadMember> = {}): SquadMember => ({
  ...{ athlete, role: null, group: null, dominantSide: null, birthYear: null, bodyMass: null, stature: null },
  notes: null,
  ...said,
});

export const batteryTest = (test: string, said: Partial<BatteryTest> = {}): BatteryTest => ({
  ...{ test, measure: null, quality: null, unit: null, direction: "higher", sides: 1, trials: 1, reduction: "best" },
  ...{ lowest: null, highest: null, retestAfterWeeks: null, protocol: null, caution: null },
  ...said,
});

export const keptResult = (said: Partial<KeptResult> = {}): KeptResult => ({
  ...{ date: "2026-08-11", athlete: "Ane Berg", test: "Single-leg hop", measure: null, side: "left", trial: 1 },
  ...{ value: 171.5, unit: "cm", source: "Hops!C4" },
  ...said,
});
