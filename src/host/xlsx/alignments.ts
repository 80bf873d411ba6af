import { HorizontalAlign, VerticalAlign } from "@univerjs/core";

/** Alignments as the file names them, and as the grid numbers them. */
export const horizontalAlignments: { readonly [name: string]: HorizontalAlign } = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
  justify: HorizontalAlign.JUSTIFIED,
  distributed: HorizontalAlign.DISTRIBUTED,
  // A heading centred over several columns has no counterpart in the grid; centred in its own cell comes nearest.
  centerContinuous: HorizontalAlign.CENTER,
};

export const verticalAlignments: { readonly [name: string]: VerticalAlign } = {
  top: VerticalAlign.TOP,
  center: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
};
