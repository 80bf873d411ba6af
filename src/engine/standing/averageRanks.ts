/**
 * Ranks from 1 for the smallest value; equal values share the mean of their ranks, the form statistics use.
 * Source: textbook; same as R rank(ties.method = "average").
 */
export function averageRanks(values: readonly number[]): number[] {
  const order = values.map((_, index) => index).sort((a, b) => values[a]! - values[b]!);
  const ranks = new Array<number>(values.length);
  for (let start = 0; start < order.length; ) {
    let end = start;
    while (end + 1 < order.length && values[order[end + 1]!] === values[order[start]!]) end++;
    for (let position = start; position <= end; position++) ranks[order[position]!] = (start + end) / 2 + 1;
    start = end + 1;
  }
  return ranks;
}
