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
  | { readonly kind: "removeSheet"; readonly sheetId: string }
  /** Cells get back their formulas and number formats. */
  | {
      readonly kind: "restoreCells";
      readonly sheetId: string;
      readonly address: string;
      readonly formulas: readonly (readonly unknown[])[];
      readonly numberFormat: readonly (readonly unknown[])[];
    }
  /** A table gets back the rectangle it had. */
  | { readonly kind: "resizeTable"; readonly tableId: string; readonly sheetId: string; readonly address: string }
  /** A setting of the workbook gets back its value; undefined where there was none. */
  | { readonly kind: "restoreSetting"; readonly key: string; readonly value: unknown };
