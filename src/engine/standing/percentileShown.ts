/**
 * A percentile rank with no more precision than the squad bears: null below 8 athletes (one place is more than 12 points:
 * say "3 of 6"), to the nearest 5 from 8 to 19, to the nearest 1 from 20 (common practice, no source).
 */
export function percentileShown(percentile: number, squadSize: number): number | null {
  if (squadSize < 8) return null;
  const step = squadSize < 20 ? 5 : 1;
  return step * Math.round(percentile / step);
}
