/**
 * What a write of ours changed, as it stood before: enough to put it back. Plain data, carried out from first to last
 * by `takeBack`. Every function of this room that writes gives one.
 */
export type Deed = {
  /** What was done, in a coach's words, e.g. "Wrote Asymmetry!A1:K30". */
  readonly what: string;
  readonly steps: readonly Restoration[];
};

export type Restoration =
  /** A sheet of ours is removed with everything on it. */
  | {
      readonly kind: "removeSheet";
      readonly sheetId: string;
      /** What stood on it when we had written it: a cell that reads otherwise is the coach's. Unchecked without. */
      readonly written?: { readonly row: number; readonly column: number; readonly formulas: CellGrid };
    }
  /** Cells get back their formulas and number formats. */
  | (Cells & {
      readonly kind: "restoreCells";
      readonly formulas: CellGrid;
      readonly numberFormat: CellGrid;
      /** The formulas we left there: a cell that reads otherwise is the coach's. Unchecked without. */
      readonly written?: CellGrid;
    })
  /** Cells get back their look, one object each with the properties that we changed. */
  | (Cells & { readonly kind: "restoreLook"; readonly looks: readonly (readonly Excel.SettableCellProperties[])[] })
  /** A table gets back the rectangle it had. */
  | {
      readonly kind: "resizeTable";
      readonly tableId: string;
      readonly sheetId: string;
      readonly address: string;
      /** The rectangle we left it with: one of another size is the coach's doing. Unchecked without. */
      readonly written?: string;
    }
  /** The series of a chart, in their order, point again to the cells they pointed to; it moves back if it was moved. */
  | {
      readonly kind: "restoreChart";
      readonly sheetId: string;
      readonly chart: string;
      readonly series: readonly { readonly values: string; readonly categories: string }[];
      /** Points from the left edge of the sheet, where we moved it. */
      readonly left?: number;
      readonly anchor?: Anchor;
    }
  /** A cell gets back its note; null where it had none. */
  | {
      readonly kind: "restoreNote";
      readonly sheetId: string;
      readonly address: string;
      readonly note: string | null;
      /** The note we left there. */
      readonly written: string | null;
    }
  /** A setting of the workbook gets back its value; undefined where there was none. */
  | { readonly kind: "restoreSetting"; readonly key: string; readonly value: unknown }
  /** Entries of a record within a setting get back their values, whatever else has come into the record since. */
  | {
      readonly kind: "restoreEntries";
      readonly key: string;
      /** Name of the record in the setting's value. */
      readonly record: string;
      /** Undefined where there was no such entry. */
      readonly entries: readonly { readonly entry: string; readonly value: unknown }[];
      /** Whether the setting was there; one that was not goes when its record is empty again. */
      readonly existed: boolean;
      /** The setting's value without entries, for one that is gone in the meantime; without it, it stays gone. */
      readonly base?: Readonly<Record<string, unknown>>;
    };

type Cells = {
  readonly sheetId: string;
  readonly address: string;
  /** The table these cells go with, wherever the coach has moved it since. */
  readonly anchor?: Anchor;
};

/** A table, and where its first heading stood when the addresses beside it were taken; zero-based. */
export type Anchor = { readonly tableId: string; readonly row: number; readonly column: number };

/** Formulas, values or number formats of a rectangle, row by row. */
export type CellGrid = readonly (readonly unknown[])[];
