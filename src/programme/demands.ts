import { normalQuantile } from "../engine/distributions/normal";
import { type Background, weightFor } from "../store/background";
import { wordingKey } from "../store/sameName";
import type { QualityProfile, QualityStanding } from "./qualityProfile";

/** What is asked for in a quality, and how an athlete stands in it. */
export type AskedStanding = {
  readonly quality: string;
  /** How much the quality counts for the role. */
  readonly weight: number;
  /** Mean z of its tests, positive is better; null where none was done. */
  readonly z: number | null;
  /** Limits of z at 95 % by the noise of the tests; null where the noise is not known. */
  readonly limits: { readonly low: number; readonly high: number } | null;
  readonly judgement: QualityStanding["judgement"];
};

const quantileAt95 = normalQuantile(0.975);

/** An athlete's qualities, what counts most for the role first. */
export function askedOf(profile: QualityProfile, background: Background): AskedStanding[] {
  return profile.qualities
    .map(({ quality, z, standardError, judgement }): AskedStanding => {
      const reach = z === null || standardError === null ? null : quantileAt95 * standardError;
      return {
        ...{ quality, z, judgement, weight: weightFor(background, quality, profile.role) },
        limits: reach === null ? null : { low: z! - reach, high: z! + reach },
      };
    })
    .sort((a, b) => b.weight - a.weight);
}

/**
 * A standing as three bars from zero, one over the other, that can be told apart without colour: as far as it is for
 * certain, and as far to either side as it may be by the noise of the tests.
 */
export type SureAndMaybe = { readonly sure: number; readonly maybeBelow: number; readonly maybeAbove: number };

/** Where the noise is not known nothing is for certain. */
export function sureAndMaybe(z: number, limits: AskedStanding["limits"]): SureAndMaybe {
  const { low, high } = limits ?? { low: Math.min(z, 0), high: Math.max(z, 0) };
  return {
    sure: low > 0 && limits ? low : high < 0 && limits ? high : 0,
    maybeBelow: Math.min(low, 0),
    maybeAbove: Math.max(high, 0),
  };
}

/** What is asked of the squad in a quality, and how many of it stand out. */
export type SquadDemand = {
  readonly quality: string;
  /** Mean weight over the athletes, each by role. */
  readonly weight: number;
  readonly tested: number;
  /** Athletes who stand out beyond the noise of the tests. */
  readonly weak: readonly string[];
  readonly strong: readonly string[];
  /** z of everybody tested, positive is better. */
  readonly z: readonly { readonly athlete: string; readonly z: number }[];
};

/**
 * What is asked of the squad, quality by quality, what counts most first; qualities that are asked for by the table of
 * weights alone stand in it, too, untested. A squad compared with itself has no level: what can be said is who of it stands
 * out.
 */
export function squadDemands(profiles: readonly QualityProfile[], background: Background): SquadDemand[] {
  const tested = profiles[0]?.qualities.map(({ quality }) => quality) ?? [];
  const asked = background.weights.map(({ quality }) => quality);
  const all = [...new Map([...asked, ...tested].map((quality) => [wordingKey(quality), quality])).values()];
  return all
    .map((quality): SquadDemand => {
      const standings = profiles.map((profile) => ({
        athlete: profile.athlete,
        weight: weightFor(background, quality, profile.role),
        standing: profile.qualities.find((one) => wordingKey(one.quality) === wordingKey(quality)),
      }));
      const judged = (judgement: QualityStanding["judgement"]) =>
        standings.flatMap(({ athlete, standing }) => (standing?.judgement === judgement ? athlete : []));
      const z = standings.flatMap(({ athlete, standing }) =>
        standing?.z === null || standing === undefined ? [] : { athlete, z: standing.z },
      );
      return {
        ...{ quality, z, tested: z.length, weak: judged("weakness"), strong: judged("strength") },
        weight: standings.reduce((sum, { weight }) => sum + weight, 0) / Math.max(standings.length, 1),
      };
    })
    .sort((a, b) => b.weight - a.weight);
}
