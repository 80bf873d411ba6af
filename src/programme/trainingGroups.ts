import { groupsByLowestQualities, type QualityGroups } from "../engine/grouping/groupsByLowestQualities";
import type { QualityProfile } from "./qualityProfile";

/** Athletes of like needs: those with the same two lowest qualities train together. */
export function trainingGroups(profiles: readonly QualityProfile[]): QualityGroups {
  const names = profiles[0]?.qualities.map(({ quality }) => quality) ?? [];
  return groupsByLowestQualities(
    names,
    profiles.map(({ athlete, qualities }) => ({ athlete, z: qualities.map(({ z }) => z) })),
  );
}
