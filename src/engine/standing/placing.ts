/** How a score stands among all: how many are below it, and how many are equal to it, itself included. */
export type Placing = { readonly below: number; readonly equal: number };

/** Placing of each score among all, higher being better; in time n log n. */
export function placings(scores: readonly number[]): Placing[] {
  const order = scores.map((_, index) => index).sort((a, b) => scores[a]! - scores[b]!);
  const placed = new Array<Placing>(scores.length);
  for (let start = 0; start < order.length; ) {
    let end = start;
    while (end < order.length && scores[order[end]!] === scores[order[start]!]) end++;
    for (let position = start; position < end; position++)
      placed[order[position]!] = { below: start, equal: end - start };
    start = end;
  }
  return placed;
}
