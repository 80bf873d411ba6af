import { groupBy } from "../analyses/groupBy";
import { qualityPriorities } from "../engine/grouping/qualityPriorities";
import { valueOr } from "../engine/result";
import { inSentence, say } from "../language/say";
import { type Background, weightFor } from "../store/background";
import type { Priority } from "../store/priorityTable";
import { isSameWording } from "../store/sameName";
import type { QualityProfile, QualityStanding } from "./qualityProfile";
import { type Ratio, ratioSentence } from "./ratios";
import type { WeakerSide } from "./weakerSides";

export type PrioritySettings = {
  /** At most so many for each athlete. */
  readonly most: number;
  /** Told with the priority of the quality they belong to. */
  readonly ratios?: readonly Ratio[];
};

export type Priorities = {
  readonly priorities: readonly Priority[];
  /** Athletes for whom nothing can be said, and what is missing. */
  readonly missing: readonly string[];
};

/**
 * What each athlete should work on first: the role's weight for a quality times how far it stands below those compared, the
 * largest first. An athlete below in nothing builds on what the role needs most. A side weaker beyond noise is named with
 * the quality its test belongs to.
 *
 * Source of the rule: common practice, no source (`engine/grouping/qualityPriorities`).
 */
export function priorities(
  profiles: readonly QualityProfile[],
  weakerSides: readonly WeakerSide[],
  background: Background,
  { most, ratios = [] }: PrioritySettings,
): Priorities {
  const sides = groupBy(weakerSides, ({ athlete }) => athlete);
  const ratiosOf = groupBy(ratios, ({ athlete }) => athlete);
  const found: Priority[] = [];
  const missing: string[] = [];
  for (const profile of profiles) {
    const tested = profile.qualities.filter(({ z }) => z !== null);
    if (tested.length === 0) {
      missing.push(say`${profile.athlete}: no test of the battery with enough others to compare with.`);
      continue;
    }
    const ranked = rankedQualities(profile, background, most);
    const own = sides.get(profile.athlete) ?? [];
    ranked.forEach(({ quality, reason }, index) => {
      const side = own.find((one) => one.quality !== null && isSameWording(one.quality, quality.quality));
      const told = (ratiosOf.get(profile.athlete) ?? []).filter(
        (ratio) => ratio.quality !== null && isSameWording(ratio.quality, quality.quality),
      );
      const why = [reason, testsOf(quality), ratioWords(told), side?.why ?? ""]
        .filter((sentence) => sentence !== "")
        .join(" ");
      found.push({ athlete: profile.athlete, rank: index + 1, quality: quality.quality, why });
    });
    // A one-sided weakness counts also where the quality as a whole is no weakness.
    own
      .filter(({ quality }) => quality !== null && !ranked.some((one) => isSameWording(one.quality.quality, quality)))
      .slice(0, Math.max(most - ranked.length, 0))
      .forEach(({ quality, why }, index) => {
        found.push({ athlete: profile.athlete, rank: ranked.length + index + 1, quality: quality!, why });
      });
  }
  return { priorities: found, missing };
}

type Ranked = { readonly quality: QualityStanding; readonly reason: string };

function rankedQualities(profile: QualityProfile, background: Background, most: number): Ranked[] {
  const { role, qualities, comparedWith } = profile;
  const weighted = qualities.map((quality) => ({
    name: quality.quality,
    z: quality.z,
    target: 0,
    weight: weightFor(background, quality.quality, role),
  }));
  const answer = valueOr(qualityPriorities(weighted, { top: most }), null);
  const ranked = (answer?.priorities ?? []).map(({ name, weight, shortfall }): Ranked => {
    const quality = qualities.find((one) => one.quality === name)!;
    const noisy = quality.judgement === "too noisy to say" ? say` The noise of the test could explain that.` : "";
    return {
      quality,
      reason: say`${shortfall.toFixed(1)} SD below ${comparedWith.name}${weightWords(weight, role)}.${noisy}`,
    };
  });
  return ranked.length > 0 ? ranked : buildOn(profile, background);
}

/** The tested quality that counts most for the role; of equal ones the best. */
function buildOn({ qualities, role, comparedWith }: QualityProfile, background: Background): Ranked[] {
  const [first] = qualities
    .filter(({ z }) => z !== null)
    .map((quality) => ({ quality, weight: weightFor(background, quality.quality, role) }))
    .sort((a, b) => b.weight - a.weight || b.quality.z! - a.quality.z!);
  return first
    ? [
        {
          quality: first.quality,
          reason: say`Below ${comparedWith.name} in nothing: build on it${weightWords(first.weight, role)}.`,
        },
      ]
    : [];
}

const weightWords = (weight: number, role: string | null): string =>
  weight === 1 ? "" : say`, and it counts ${weight} ${role === null ? say`here` : say`for a ${inSentence(role)}`}`;

/** The scores behind a standing, at most three. */
const testsOf = ({ tests }: QualityStanding): string =>
  `${tests
    .slice(0, 3)
    .map(({ series, score, unit, z }) => say`${series} ${shown(score)}${unit ? ` ${unit}` : ""} (${signed(z)} SD)`)
    .join(", ")}.`;

const ratioWords = (ratios: readonly Ratio[]): string => ratios.map((ratio) => `${ratioSentence(ratio)}.`).join(" ");

const shown = (score: number): string => String(Number(score.toPrecision(4)));
const signed = (z: number): string => {
  const size = Math.abs(z).toFixed(1);
  return size === "0.0" ? size : `${z < 0 ? "−" : "+"}${size}`;
};
