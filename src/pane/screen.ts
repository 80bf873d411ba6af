import type { Report } from "../analyses/report";

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
  | { readonly kind: "load" }
  | { readonly kind: "outcome" }
  | { readonly kind: "pages" }
  | { readonly kind: "removeAthlete" }
  | { readonly kind: "functions"; readonly wished?: string };

/** Whom an entry sheet is to be made for in what, where another screen has found it already. */
export type WishedTests = Report["testAgain"];

export const home: Screen = { kind: "home" };
