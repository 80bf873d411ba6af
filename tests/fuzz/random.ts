/** Chance that comes again: the same seed draws the same. */
export type Random = {
  /** From 0 up to, but not including, 1. */
  readonly share: () => number;
  /** A whole number from 0 up to, but not including, `below`. */
  readonly below: (below: number) => number;
  readonly happens: (probability: number) => boolean;
  readonly oneOf: <T>(list: readonly T[]) => T;
};

/** mulberry32, a 32-bit generator in the public domain (Tommy Ettinger, from memory); good enough to make a mess. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const share = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (limit: number) => Math.floor(share() * limit);
  return { share, below, happens: (probability) => share() < probability, oneOf: (list) => list[below(list.length)]! };
}
