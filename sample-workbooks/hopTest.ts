import { type Athlete, seniors } from "./athletes";
import {
  type HopTrials,
  largestUnplantedDifference,
  type PlantedAsymmetry,
  plantedAsymmetries,
  trialVariation,
} from "./plantedTruths";
import { type Chance, chanceFrom } from "./random";

export type HopResult = HopTrials & {
  readonly athlete: Athlete;
  /** What her trials vary about: the mean of both sides in cm, and right above left as a share of it. */
  readonly trueDistance: number;
  readonly trueDifference: number;
};

/** Day of the test: the first week of pre-season. */
export const hopTestDay = new Date(Date.UTC(2026, 7, 11));

/** The squad's true distances: about 132 to 184 cm. */
export const squadMean = 158;
export const squadSpread = 10;

/** Three trials of each leg of every senior, in whole centimetres. */
export function hopTest(seed = 20260811): readonly HopResult[] {
  const chance = chanceFrom(seed);
  return seniors.map((athlete) => {
    const drawn = drawTrials(chance);
    const planted = plantedAsymmetries.find((each) => each.athlete === athlete.name);
    return { athlete, ...(planted ? truthOf(planted) : drawn) };
  });
}

function drawTrials({ share, deviation }: Chance): Omit<HopResult, "athlete"> {
  const distance = squadMean + squadSpread * Math.max(-2.6, Math.min(2.6, deviation()));
  const difference = ((2 * share() - 1) * largestUnplantedDifference) / 100;
  const trialsOf = (trueDistance: number) =>
    Array.from({ length: 3 }, () => Math.round(trueDistance * (1 + (trialVariation / 100) * deviation())));
  return {
    left: trialsOf(distance * (1 - difference / 2)),
    right: trialsOf(distance * (1 + difference / 2)),
    trueDistance: distance,
    trueDifference: difference,
  };
}

/** Planted trials were chosen by hand; the truth behind them is their mean, and no difference where it is only noise. */
function truthOf({ left, right, strongerSide }: PlantedAsymmetry): Omit<HopResult, "athlete"> {
  const [meanLeft, meanRight] = [mean(left), mean(right)];
  const trueDistance = (meanLeft + meanRight) / 2;
  const trueDifference = strongerSide === "neither" ? 0 : (meanRight - meanLeft) / trueDistance;
  return { left, right, trueDistance, trueDifference };
}

const mean = (trials: readonly number[]): number => trials.reduce((sum, trial) => sum + trial, 0) / trials.length;
