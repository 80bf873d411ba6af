import type { qualities } from "../store/readyBatteries";

type Quality = (typeof qualities)[keyof typeof qualities];

/** What a sport asks of a role: how much each quality counts, 1 as any, 2 twice as much, 0 not at all. */
export type DemandTemplate = {
  readonly sport: string;
  readonly roles: Readonly<Record<string, Readonly<Record<Quality, number>>>>;
};

const weights = (
  speed: number,
  changeOfDirection: number,
  lowerBodyPower: number,
  upperBodyPower: number,
  strength: number,
  muscleCapacity: number,
  endurance: number,
): Readonly<Record<Quality, number>> => ({
  Speed: speed,
  "Change of direction": changeOfDirection,
  "Lower-body power": lowerBodyPower,
  "Upper-body power": upperBodyPower,
  Strength: strength,
  "Muscle capacity": muscleCapacity,
  Endurance: endurance,
});

/**
 * Starting points, every number to be changed by the coach who knows the level played at. All of it common practice, no
 * source: no study gives such weights.
 */
export const demandTemplates: readonly DemandTemplate[] = [
  {
    sport: "Handball",
    roles: {
      Goalkeeper: weights(0.5, 1.5, 1.5, 1, 1, 1, 0.5),
      Wing: weights(2, 1.5, 1.5, 1, 1, 1, 1.5),
      Back: weights(1, 1.5, 1.5, 2, 1.5, 1, 1),
      Pivot: weights(0.5, 1, 1, 1.5, 2, 1.5, 1),
    },
  },
  {
    sport: "Football",
    roles: {
      Goalkeeper: weights(0.5, 1.5, 2, 1, 1.5, 1, 0.5),
      Defender: weights(1.5, 1.5, 1.5, 0.5, 1.5, 1, 1.5),
      Midfielder: weights(1, 1.5, 1, 0.5, 1, 1, 2),
      Forward: weights(2, 1.5, 1.5, 0.5, 1, 1, 1),
    },
  },
  {
    sport: "Rugby",
    roles: {
      "Front five": weights(0.5, 0.5, 1, 1.5, 2, 1.5, 1),
      "Back row": weights(1, 1, 1.5, 1.5, 1.5, 1.5, 1.5),
      "Half back": weights(1.5, 1.5, 1, 1, 1, 1, 1.5),
      "Outside back": weights(2, 1.5, 1.5, 1, 1, 1, 1),
    },
  },
  {
    sport: "Netball",
    roles: {
      Shooter: weights(1, 1, 1.5, 1, 1, 1, 0.5),
      "Centre court": weights(1.5, 1.5, 1.5, 1, 1, 1, 2),
      Defender: weights(1, 1.5, 2, 1, 1, 1, 1),
    },
  },
  {
    sport: "Hockey",
    roles: {
      Goalkeeper: weights(0.5, 1.5, 1.5, 1, 1.5, 1, 0.5),
      Defender: weights(1.5, 1.5, 1, 1, 1.5, 1, 1.5),
      Midfielder: weights(1.5, 1.5, 1, 1, 1, 1, 2),
      Forward: weights(2, 1.5, 1, 1, 1, 1, 1.5),
    },
  },
  {
    sport: "Cricket",
    roles: {
      "Fast bowler": weights(1.5, 0.5, 1.5, 1.5, 1.5, 2, 1),
      "Spin bowler": weights(1, 1, 1, 1, 1, 1.5, 1),
      Batter: weights(1.5, 1.5, 1, 1.5, 1, 1, 1),
      Keeper: weights(1, 1.5, 1.5, 0.5, 1, 2, 1),
    },
  },
];
