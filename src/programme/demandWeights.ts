import type { Background } from "../store/background";
import type { QualityWeight } from "../store/qualityWeights";
import { isSameName, isSameWording, nameKey } from "../store/sameName";
import {
  type CapacityRegion,
  capacityRegions,
  type Demanded,
  type DemandTemplate,
  demandNames,
  demandTemplates,
  type RoleDemands,
} from "./demandTemplates";

/** What a template says for a squad and its battery. */
export type DemandWeights = {
  /** Every quality and role, in the battery's own words. What the template does not know counts as any other: 1. */
  readonly weights: readonly QualityWeight[];
  /** Roles of the squad, and qualities of the battery, that the template does not know. */
  readonly unknownRoles: readonly string[];
  readonly unknownQualities: readonly string[];
  /** Qualities that the sport asks for and no test of the battery stands for. */
  readonly untested: readonly string[];
};

/** How a sport's template reads for this squad and battery: a column for each of its roles and of the squad's others. */
export function demandWeights({ roles }: DemandTemplate, background: Background): DemandWeights {
  const squadRoles = rolesOf(background);
  const isKnown = (role: string) => Object.keys(roles).some((one) => isSameWording(one, role));
  const unknownRoles = squadRoles.filter((role) => !isKnown(role));
  const tested = distinct(background.battery.flatMap(({ quality }) => quality ?? []));
  const meant = new Set(tested.map(qualityMeant));
  const untested = (Object.keys(demandNames) as Demanded[])
    .filter((demanded) => !meant.has(demanded))
    .map((demanded) => demandNames[demanded]);
  const weights = [...tested, ...untested].flatMap((quality) => [
    ...Object.entries(roles).map(([role, asked]) => ({
      ...{ quality, role: inTheirLanguage(role, squadRoles), weight: weightIn(asked, quality) },
    })),
    ...unknownRoles.map((role) => ({ quality, role, weight: 1 })),
  ]);
  return {
    ...{ weights, unknownRoles, untested },
    unknownQualities: tested.filter((quality) => qualityMeant(quality) === null),
  };
}

export type WeightsToWrite = {
  readonly weights: readonly QualityWeight[];
  /** Weights of the coach's that stay as they are, or are replaced, though the template says otherwise. */
  readonly coachs: number;
};

/**
 * Which weights are to be written so that a template stands in the workbook: those that differ from what stands. Numbers
 * of the coach's own stay, unless they are to be replaced; a table in which nothing but ones stands, or nothing but what
 * a template says, holds no judgement of anybody's yet.
 */
export function weightsToWrite(
  fresh: readonly QualityWeight[],
  background: Background,
  { replaces }: { readonly replaces: boolean },
): WeightsToWrite {
  const isKept = !isUntouched(background);
  const differing = fresh.flatMap((one) => {
    const standing = standingWeight(background.weights, one);
    return standing === one.weight ? [] : [{ one, isCoachs: standing !== null && isKept }];
  });
  return {
    weights: differing.filter(({ isCoachs }) => replaces || !isCoachs).map(({ one }) => one),
    coachs: differing.filter(({ isCoachs }) => isCoachs).length,
  };
}

const standingWeight = (weights: readonly QualityWeight[], { quality, role }: QualityWeight): number | null =>
  weights.find((one) => isSameWording(one.quality, quality) && isSameWording(one.role, role))?.weight ?? null;

function isUntouched(background: Background): boolean {
  const { weights } = background;
  if (weights.every(({ weight }) => weight === 1)) return true;
  return demandTemplates.some((template) => {
    const said = demandWeights(template, background).weights;
    return weights.every((one) => one.weight === (standingWeight(said, one) ?? 1));
  });
}

function weightIn(role: RoleDemands, quality: string): number {
  const meant = qualityMeant(quality);
  if (meant === null) return 1;
  if (meant !== "muscleCapacity") return role[meant];
  return Math.max(...regionsIn(quality).map((region) => role[meant][region]));
}

/** By the first of these that fits, English and German; coaches call their qualities as they like. */
const spellings: readonly (readonly [RegExp, Demanded])[] = [
  [/robust|resilien|availab|belastbar/, "robustness"],
  [/capacity|kraftausdauer/, "muscleCapacity"],
  [/change of direction|agility|richtungswechsel|wendig/, "changeOfDirection"],
  [
    /(jump|leg|lower).*power|reactive|^jump|sprungkraft|reaktiv|(bein|unterkörper).*(schnell|explosiv)kraft|(schnell|explosiv)kraft.*(bein|unterkörper)/,
    "lowerBodyPower",
  ],
  [
    /(throw|arm|upper).*power|^throw|wurfkraft|(arm|oberkörper).*(schnell|explosiv)kraft|(schnell|explosiv)kraft.*(arm|oberkörper)/,
    "upperBodyPower",
  ],
  [/strength|kraft/, "strength"],
  [/endurance|aerobic|fitness|ausdauer/, "endurance"],
  [/speed|sprint|acceleration|schnelligkeit|geschwindigkeit|beschleunigung/, "speed"],
];

/** The quality of the templates that a coach's word means; null where that cannot be told. */
const qualityMeant = (quality: string): Demanded | null =>
  spellings.find(([pattern]) => pattern.test(nameKey(quality)))?.[1] ?? null;

const regionWords: Readonly<Record<CapacityRegion, RegExp>> = {
  ...{
    legs: /leg|calf|hamstring|groin|knee|hip|bein|wade|leiste|knie|hüft/,
    trunk: /trunk|core|back|rumpf|rücken/,
    shoulders: /shoulder|arm|upper|schulter|oberkörper/,
  },
};

/** The regions that a capacity names ("Muscle capacity, legs"); all of them where it names none. */
function regionsIn(quality: string): readonly CapacityRegion[] {
  const named = capacityRegions.filter((region) => regionWords[region].test(nameKey(quality)));
  return named.length > 0 ? named : capacityRegions;
}

/** A role of the template as the squad has it, where the squad was made in another of our languages. */
const inTheirLanguage = (role: string, squadRoles: readonly string[]): string =>
  squadRoles.find((one) => isSameWording(one, role) && !isSameName(one, role)) ?? role;

const rolesOf = ({ squad }: Background): string[] => distinct(squad.flatMap(({ role }) => role ?? []));

const distinct = (names: readonly string[]): string[] =>
  [...new Map([...names].reverse().map((name) => [nameKey(name), name])).values()].reverse();
