/**
 * Repeatable chance for the invented season: the "minimal standard" generator of Park and Miller (multiplier 48271,
 * modulus 2^31 - 1; from memory). Only sums and products are used, so every machine draws the same numbers.
 */
export type Chance = {
  /** A number from 0 to 1. */
  readonly share: () => number;
  /** A number from a bell curve of mean 0 and standard deviation 1 (sum of twelve shares less six). */
  readonly deviation: () => number;
};

export function chanceFrom(seed: number): Chance {
  let state = seed % 2147483647;
  const share = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  const deviation = () => Array.from({ length: 12 }, share).reduce((sum, each) => sum + each, -6);
  return { share, deviation };
}
