import type { MeasureKey } from "./measures";
import type { Side } from "./vocabulary";

/** One result of one athlete, with the cell it came from. All sources of results give this one shape. */
export type TestResult = {
  readonly athlete: string;
  readonly test: string;
  /** What was measured, where a test gives several numbers (load and repetitions, the splits of a sprint); else null. */
  readonly measure: MeasureKey | null;
  readonly side: Side | null;
  /** Day of the test, ISO; null where the sheet does not say. */
  readonly date: string | null;
  /** Role or group of the athlete, where the sheet or the squad says it. */
  readonly group: string | null;
  /** Which trial it is, from 1 on: by its column, by the sheet's own numbers, or by its place among the rows. */
  readonly attempt: number;
  readonly value: number;
  /** Symbol of the value's unit, e.g. "cm"; null where nothing says it. */
  readonly unit: string | null;
  /** Address such as "C7" on the sheet that was read, or a full one such as "'Hop test'!C7" where several were. */
  readonly cell: string;
};

/** A result of which only what matters is said: for examples and tests. */
export const testResult = (said: Pick<TestResult, "athlete" | "value"> & Partial<TestResult>): TestResult => ({
  test: "",
  measure: null,
  side: null,
  date: null,
  group: null,
  attempt: 1,
  unit: null,
  cell: "A1",
  ...said,
});
