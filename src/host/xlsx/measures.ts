/**
 * The file keeps widths in characters of the default typeface and heights in points; the grid wants pixels. The widest
 * digit of the usual default typeface (11 point) is 7 pixels (ECMA-376 part 1, 18.3.1.13 and its worked example).
 */
const digitWidth = 7;

export const pixelsOfWidth = (characters: number): number =>
  Math.trunc(((256 * characters + Math.trunc(128 / digitWidth)) / 256) * digitWidth);

export const widthOfPixels = (pixels: number): number => Math.trunc((pixels / digitWidth) * 256) / 256;

export const pixelsOfHeight = (points: number): number => (points * 96) / 72;

export const heightOfPixels = (pixels: number): number => (pixels * 72) / 96;

/** Drawings measure in English metric units: 12,700 to a point. */
export const perPoint = 12700;
