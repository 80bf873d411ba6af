/** Half a weight each. */
const square = "■";

/** "■■■■ 2": how much is asked for, to be seen at a glance and without colour. A long row is cut. */
export const askedFor = (weight: number): string => {
  const squares = square.repeat(Math.min(Math.round(2 * weight), 6));
  // A no-break space: the number stays beside its squares.
  return `${squares}${squares === "" ? "" : "\u00a0"}${Number(weight.toFixed(1))}`;
};
