import { say } from "../language/say";
import { qualities } from "../store/readyBatteries";

/** What a sport can ask for, each with the name the workbook's tables get where no test of the coach's has one. */
export const demandNames = {
  ...qualities,
  /**
   * Ready to play and train week after week: no single test stands for it, so that it is asked for even where nothing in
   * the battery answers.
   */
  robustness: say`Robustness`,
} as const;

export type Demanded = keyof typeof demandNames;

/** Parts of the body whose muscles tire by themselves. */
export const capacityRegions = ["legs", "trunk", "shoulders"] as const;
export type CapacityRegion = (typeof capacityRegions)[number];

/** How much each quality counts for a role: 1 as any, 2 twice as much, 0 not at all. */
export type RoleDemands = Readonly<Record<Exclude<Demanded, "muscleCapacity">, number>> & {
  readonly muscleCapacity: Readonly<Record<CapacityRegion, number>>;
};

/** What a sport asks of its roles. */
export type DemandTemplate = { readonly sport: string; readonly roles: Readonly<Record<string, RoleDemands>> };

type SevenWeights = readonly [
  ...[speed: number, changeOfDirection: number, lowerBodyPower: number, upperBodyPower: number],
  ...[strength: number, endurance: number, robustness: number],
];

const demands = (
  [speed, changeOfDirection, lowerBodyPower, upperBodyPower, strength, endurance, robustness]: SevenWeights,
  [legs, trunk, shoulders]: readonly [legs: number, trunk: number, shoulders: number],
): RoleDemands => ({
  ...{ speed, changeOfDirection, lowerBodyPower, upperBodyPower, strength, endurance, robustness },
  muscleCapacity: { legs, trunk, shoulders },
});

/**
 * Starting points, every number to be changed by the coach who knows the level played at. All of it common practice, no
 * source: no study gives such weights.
 */
export const demandTemplates: readonly DemandTemplate[] = [
  {
    sport: say`Handball`,
    roles: Object.fromEntries([
      [say`Goalkeeper`, demands([0.5, 1.5, 1.5, 1, 1, 0.5, 1], [1, 1, 1])],
      [say`Wing`, demands([2, 1.5, 1.5, 1, 1, 1.5, 1], [1, 1, 1])],
      [say`Back`, demands([1, 1.5, 1.5, 2, 1.5, 1, 1.5], [1, 1, 1.5])],
      [say`Pivot`, demands([0.5, 1, 1, 1.5, 2, 1, 1.5], [1, 1.5, 1.5])],
    ]),
  },
  {
    sport: say`Football`,
    roles: Object.fromEntries([
      [say`Goalkeeper`, demands([0.5, 1.5, 2, 1, 1.5, 0.5, 1], [1, 1, 1])],
      [say`Defender`, demands([1.5, 1.5, 1.5, 0.5, 1.5, 1.5, 1], [1.5, 1, 0.5])],
      [say`Midfielder`, demands([1, 1.5, 1, 0.5, 1, 2, 1.5], [1.5, 1, 0.5])],
      [say`Forward`, demands([2, 1.5, 1.5, 0.5, 1, 1, 1], [1.5, 1, 0.5])],
    ]),
  },
  {
    sport: say`Rugby`,
    roles: Object.fromEntries([
      [say`Front five`, demands([0.5, 0.5, 1, 1.5, 2, 1, 2], [1, 1.5, 1.5])],
      [say`Back row`, demands([1, 1, 1.5, 1.5, 1.5, 1.5, 2], [1, 1.5, 1.5])],
      [say`Half back`, demands([1.5, 1.5, 1, 1, 1, 1.5, 1.5], [1, 1, 1])],
      [say`Outside back`, demands([2, 1.5, 1.5, 1, 1, 1, 1.5], [1.5, 1, 1])],
    ]),
  },
  {
    sport: say`Netball`,
    roles: Object.fromEntries([
      [say`Shooter`, demands([1, 1, 1.5, 1, 1, 0.5, 1], [1, 1, 1])],
      [say`Centre court`, demands([1.5, 1.5, 1.5, 1, 1, 2, 1.5], [1.5, 1, 0.5])],
      [say`Defender`, demands([1, 1.5, 2, 1, 1, 1, 1.5], [1.5, 1, 0.5])],
    ]),
  },
  {
    sport: say`Hockey`,
    roles: Object.fromEntries([
      [say`Goalkeeper`, demands([0.5, 1.5, 1.5, 1, 1.5, 0.5, 1], [1, 1, 1])],
      [say`Defender`, demands([1.5, 1.5, 1, 1, 1.5, 1.5, 1], [1, 1.5, 0.5])],
      [say`Midfielder`, demands([1.5, 1.5, 1, 1, 1, 2, 1.5], [1, 1.5, 0.5])],
      [say`Forward`, demands([2, 1.5, 1, 1, 1, 1.5, 1], [1.5, 1.5, 0.5])],
    ]),
  },
  {
    sport: say`Cricket`,
    roles: Object.fromEntries([
      [say`Fast bowler`, demands([1.5, 0.5, 1.5, 1.5, 1.5, 1, 2], [1.5, 2, 1.5])],
      [say`Spin bowler`, demands([1, 1, 1, 1, 1, 1, 1], [1, 1, 1.5])],
      [say`Batter`, demands([1.5, 1.5, 1, 1.5, 1, 1, 1], [1, 1, 1])],
      [say`Keeper`, demands([1, 1.5, 1.5, 0.5, 1, 1, 1.5], [2, 1.5, 0.5])],
    ]),
  },
];
