import { presentValues } from "../presentValues";

/** An athlete's z scores by quality (positive is better), in the same order for everybody; untested ones `null`. */
export type QualityProfile = { readonly athlete: string; readonly z: readonly (number | null)[] };

export type QualityGroup = {
  /** Names of the qualities lowest in this group, in the order of `qualities`. */
  readonly lowest: readonly string[];
  readonly athletes: readonly string[];
};

export type QualityGroups = {
  /** The largest group first; equal ones in the order of the qualities. */
  readonly groups: readonly QualityGroup[];
  /** Athletes with fewer tested qualities than are compared. */
  readonly ungrouped: readonly string[];
};

/**
 * Training groups by each athlete's lowest qualities (two by default, in no order): athletes with the same pair train together. Of
 * equally low qualities the one named first counts. An athlete needs one tested quality more than are compared.
 *
 * Chosen over cluster analysis: a squad is too small for stable clusters, and on 25 athletes both k-means and Ward's method made
 * the one outlier a cluster of its own (R 4.2.2 `kmeans`, `hclust` on HSAUR3::heptathlon).
 * Source: common practice, no source. A profile with other than one score per quality throws.
 */
export function groupsByLowestQualities(
  qualities: readonly string[],
  profiles: readonly QualityProfile[],
  { compared = 2 }: { readonly compared?: number } = {},
): QualityGroups {
  if (!Number.isInteger(compared) || compared < 1) throw new RangeError("At least one quality is compared.");
  const members = new Map<string, { readonly lowest: readonly number[]; readonly athletes: string[] }>();
  const ungrouped: string[] = [];
  for (const { athlete, z } of profiles) {
    if (z.length !== qualities.length) throw new RangeError("A profile needs one score (or null) for each quality.");
    if (presentValues(z).length <= compared) {
      ungrouped.push(athlete);
      continue;
    }
    const lowest = indicesOfLowest(z, compared);
    const key = lowest.join();
    const group = members.get(key) ?? { lowest, athletes: [] };
    group.athletes.push(athlete);
    members.set(key, group);
  }
  const groups = [...members.values()]
    .sort((a, b) => b.athletes.length - a.athletes.length || inOrder(a.lowest, b.lowest))
    .map(({ lowest, athletes }) => ({ lowest: lowest.map((index) => qualities[index]!), athletes }));
  return { groups, ungrouped };
}

function indicesOfLowest(z: readonly (number | null)[], count: number): number[] {
  return z
    .flatMap((score, index) => (score === null ? [] : [{ score, index }]))
    .sort((a, b) => a.score - b.score)
    .slice(0, count)
    .map(({ index }) => index)
    .sort((a, b) => a - b);
}

/** Lexicographic order of two equally long lists that differ. */
function inOrder(one: readonly number[], other: readonly number[]): number {
  const difference = one.findIndex((value, index) => value !== other[index]);
  return one[difference]! - other[difference]!;
}
