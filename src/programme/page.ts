import type { ReportChart, ReportColumn, ReportValue } from "../analyses/report";

/** A page to print: plain data, laid out and set up for printing by the sheet layer. */
export type Page = {
  /** Name wished for its sheet. */
  readonly sheet: string;
  readonly title: string;
  readonly subtitle: string;
  readonly parts: readonly PagePart[];
};

export type PagePart =
  | { readonly kind: "heading"; readonly text: string }
  | { readonly kind: "text"; readonly text: string; readonly tone: "plain" | "quiet" | "strong" }
  | PageTable
  /**
   * A picture of the table that stands before it: above it over the whole width, or beside it on the right, for small
   * tables.
   */
  | {
      readonly kind: "picture";
      readonly chart: ReportChart;
      readonly place: "above" | "beside";
      /** Its bars lie over each other, the last in front: numbers at them, or a legend, would say nothing. */
      readonly isLayered?: true;
    };

export type PageTable = {
  readonly kind: "table";
  readonly columns: readonly ReportColumn[];
  readonly rows: readonly (readonly ReportValue[])[];
  /** Room for a pencil: rows are higher, and empty cells are ruled. */
  readonly toFillIn: boolean;
};

export const heading = (text: string): PagePart => ({ kind: "heading", text });
export const paragraph = (text: string): PagePart => ({ kind: "text", text, tone: "plain" });
export const quiet = (text: string): PagePart => ({ kind: "text", text, tone: "quiet" });
export const strong = (text: string): PagePart => ({ kind: "text", text, tone: "strong" });
