import type { MeasureKey } from "../reading/measures";
import type { Side } from "../reading/vocabulary";

/** One row of the workbook's own table of results. */
export type KeptResult = {
  /** ISO day. */
  readonly date: string;
  readonly athlete: string;
  readonly test: string;
  readonly measure: MeasureKey | null;
  readonly side: Side | null;
  readonly trial: number;
  readonly value: number;
  readonly unit: string | null;
  /** Full address of the cell it was read from, e.g. "'Hop test'!C7"; null where it was typed into the table itself. */
  readonly source: string | null;
};
