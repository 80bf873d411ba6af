/**
 * Where a continuous function changes sign between `low` and `high`, to the last digits. The ends may have any order.
 * @throws RangeError when the function has the same sign at both ends.
 */
export function bisect(compute: (x: number) => number, low: number, high: number): number {
  let [below, above] = [low, high];
  const sign = Math.sign(compute(below));
  if (sign === 0) return below;
  if (sign === Math.sign(compute(above))) throw new RangeError(`No sign change between ${low} and ${high}.`);
  for (let round = 0; round < 200; round++) {
    const middle = (below + above) / 2;
    if (middle === below || middle === above) break;
    if (Math.sign(compute(middle)) === sign) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}
