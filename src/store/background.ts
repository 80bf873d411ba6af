import type { MeasureKey } from "../reading/measures";
import type { BatteryTest } from "./battery";
import type { QualityWeight } from "./qualityWeights";
import type { SquadMember } from "./squad";

/** What the workbook says about athletes and tests, beside the results themselves. Empty where nothing was set up. */
export type Background = {
  readonly squad: readonly SquadMember[];
  readonly battery: readonly BatteryTest[];
  readonly weights: readonly QualityWeight[];
};

export const noBackground: Background = { squad: [], battery: [], weights: [] };

/** Names and tests are found whatever their case and the blanks around them. */
const like = (words: string): string => words.trim().replace(/\s+/g, " ").toLowerCase();

export const memberCalled = ({ squad }: Background, athlete: string): SquadMember | null =>
  squad.find((member) => like(member.athlete) === like(athlete)) ?? null;

export const testCalled = ({ battery }: Background, test: string, measure: MeasureKey | null): BatteryTest | null =>
  battery.find((one) => like(one.test) === like(test) && one.measure === measure) ?? null;

/** The weight of a quality for a role: as the coach set it, else 1. */
export const weightFor = ({ weights }: Background, quality: string, role: string | null): number =>
  weights.find((one) => like(one.quality) === like(quality) && like(one.role) === like(role ?? ""))?.weight ?? 1;
