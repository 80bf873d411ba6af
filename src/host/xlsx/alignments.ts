import { HorizontalAlign, VerticalAlign } from "@univerjs/core";

/** Alignments as the file names them, and as the grid numbers them. */
export const horizontalAlignments: { readonly [name: string]: HorizontalAlign } = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
  justify: HorizontalAlign.JUSTIFIED,
  distributed: HorizontalAlign.DISTRIBUTED,
  // These two have no counterpart in the grid, which shows its nearest; marks of the cell keep what they are.
  centerContinuous: HorizontalAlign.CENTER,
  fill: HorizontalAlign.UNSPECIFIED,
};

export const verticalAlignments: { readonly [name: string]: VerticalAlign } = {
  top: VerticalAlign.TOP,
  center: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
  justify: VerticalAlign.TOP,
  distributed: VerticalAlign.MIDDLE,
};

/** Those that a mark of the cell keeps, by the words of the API. */
export const markedHorizontal = { centerContinuous: "CenterAcrossSelection", fill: "Fill" } as const;
export const markedVertical = { justify: "Justify", distributed: "Distributed" } as const;

/** Directions of reading as the file numbers them. */
export const readingOrders = ["Context", "LeftToRight", "RightToLeft"] as const;
