import type { Direction, Reduction } from "../engine/trials/reduction";
import type { MeasureKey } from "../reading/measures";

/** One number that the squad is tested on, as the coach has set it up: a test, or one measure of a test. */
export type BatteryTest = {
  readonly test: string;
  readonly measure: MeasureKey | null;
  /** Physical quality it stands for, in the coach's words, e.g. "Speed". */
  readonly quality: string | null;
  /** Symbol of the unit. */
  readonly unit: string | null;
  readonly direction: Direction;
  readonly sides: 1 | 2;
  readonly trials: number;
  readonly reduction: Reduction;
  /** Plausible range, in `unit`. Outside is a question, not an error. */
  readonly lowest: number | null;
  readonly highest: number | null;
  readonly retestAfterWeeks: number | null;
  readonly protocol: string | null;
  readonly caution: string | null;
};
