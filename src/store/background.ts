import type { MeasureKey } from "../reading/measures";
import type { BatteryTest } from "./battery";
import type { Comparison } from "./comparison";
import type { QualityWeight } from "./qualityWeights";
import { isSameName, isSameWording } from "./sameName";
import type { SquadMember } from "./squad";

/** What the workbook says about athletes and tests, beside the results themselves. Empty where nothing was set up. */
export type Background = {
  readonly squad: readonly SquadMember[];
  readonly battery: readonly BatteryTest[];
  readonly weights: readonly QualityWeight[];
  /** Whom athletes are compared with; the whole squad where nothing is said. */
  readonly comparedWith?: Comparison;
};

export const noBackground: Background = { squad: [], battery: [], weights: [] };

export const memberCalled = ({ squad }: Background, athlete: string): SquadMember | null =>
  squad.find((member) => isSameName(member.athlete, athlete)) ?? null;

export const testCalled = ({ battery }: Background, test: string, measure: MeasureKey | null): BatteryTest | null =>
  battery.find((one) => isSameName(one.test, test) && one.measure === measure) ?? null;

/** The weight of a quality for a role: as the coach set it, else 1. */
export const weightFor = ({ weights }: Background, quality: string, role: string | null): number =>
  weights.find((one) => isSameWording(one.quality, quality) && isSameWording(one.role, role ?? ""))?.weight ?? 1;
