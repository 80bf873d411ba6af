import { uniform } from "../engine/uniform";

/** Chance that comes again: the same seed draws the same. */
export type Random = {
  /** From 0 up to, but not including, 1. */
  readonly share: () => number;
  /** A whole number from 0 up to, but not including, `below`. */
  readonly below: (below: number) => number;
  readonly happens: (probability: number) => boolean;
  readonly oneOf: <T>(list: readonly T[]) => T;
};

export function randomFrom(seed: number): Random {
  const share = uniform(seed);
  const below = (limit: number) => Math.floor(share() * limit);
  return { share, below, happens: (probability) => share() < probability, oneOf: (list) => list[below(list.length)]! };
}
