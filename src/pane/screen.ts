import type { MeasureKey } from "../reading/measures";

/** Where in the pane the coach is. */
export type Screen =
  | { readonly kind: "home" }
  | { readonly kind: "question"; readonly id: string }
  | { readonly kind: "setUp" }
  | { readonly kind: "testDay"; readonly wished?: WishedTests }
  | { readonly kind: "keep" }
  | { readonly kind: "priorities" }
  | { readonly kind: "plan" }
  | { readonly kind: "deliver" }
  | { readonly kind: "functions" };

/** Tests and athletes that an entry sheet is to be made for, where another screen has chosen them already. */
export type WishedTests = {
  readonly athletes: readonly string[];
  readonly tests: readonly { readonly test: string; readonly measure: MeasureKey | null }[];
};

export const home: Screen = { kind: "home" };
