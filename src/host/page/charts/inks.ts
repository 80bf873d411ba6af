/** Colours of charts. Neighbouring series differ in lightness, so that a grey print keeps them apart. */
export const ink = "#1d2b2a";
export const quietInk = "#55625f";
export const hairline = "#e2e1d8";
export const paper = "#ffffff";

const seriesColours = ["#0f6b5c", "#d9a441", "#3f4f73", "#9cc7bb", "#8c3b2a", "#b9bdb4"];

export const seriesColour = (given: string | null, index: number): string =>
  given ?? (seriesColours[index % seriesColours.length] as string);

/** Lines are told apart by their strokes too, and points by their shapes. */
export const strokes = ["", "7 4", "2 3", "10 3 2 3"];

export type Shape = "circle" | "square" | "diamond" | "triangle";
export const shapes: readonly Shape[] = ["circle", "square", "diamond", "triangle"];
