import { type Athlete, seniors } from "./athletes";
import { type HopTrials, largestUnplantedDifference, plantedAsymmetries, trialVariation } from "./plantedTruths";
import { type Chance, chanceFrom } from "./random";

export type HopResult = HopTrials & { readonly athlete: Athlete };

/** Day of the test: the first week of pre-season. */
export const hopTestDay = new Date(Date.UTC(2026, 7, 11));

/** The squad's true distances: about 132 to 184 cm. */
const squadMean = 158;
const squadSpread = 10;

/** Three trials of each leg of every senior, in whole centimetres. */
export function hopTest(seed = 20260811): readonly HopResult[] {
  const chance = chanceFrom(seed);
  return seniors.map((athlete) => {
    const drawn = drawTrials(chance);
    const planted = plantedAsymmetries.find((each) => each.athlete === athlete.name);
    return { athlete, left: (planted ?? drawn).left, right: (planted ?? drawn).right };
  });
}

function drawTrials({ share, deviation }: Chance): HopTrials {
  const distance = squadMean + squadSpread * Math.max(-2.6, Math.min(2.6, deviation()));
  const difference = ((2 * share() - 1) * largestUnplantedDifference) / 100;
  const trialsOf = (trueDistance: number) =>
    Array.from({ length: 3 }, () => Math.round(trueDistance * (1 + (trialVariation / 100) * deviation())));
  return { left: trialsOf(distance * (1 - difference / 2)), right: trialsOf(distance * (1 + difference / 2)) };
}
