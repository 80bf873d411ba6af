import type { TestKey } from "../../sample-workbooks/battery";
import { type AsymmetryVerdict, judgeAsymmetry } from "../../src/engine/asymmetry/judgeAsymmetry";
import { noiseLimit } from "../../src/engine/asymmetry/noiseLimit";
import { percentDifference } from "../../src/engine/asymmetry/percentDifference";
import { presentValues } from "../../src/engine/presentValues";
import { pooledNoise } from "../../src/engine/reliability/pooledNoise";
import { unwrap } from "../../src/engine/result";
import { reduceTrials } from "../../src/engine/trials/reduceTrials";
import { dayOf, trialsOf } from "./scores";

/** Right above left in percent of the larger by the mean of the trials, and what noise alone stays below (95 %). */
export type DayAsymmetry = { readonly percent: number; readonly limit: number };

const threshold = 10;

/** An athlete's asymmetry on one day against the club's own noise of that day; null where she has no trials. */
export function asymmetryOf(key: TestKey, occasion: number, athlete: string): DayAsymmetry | null {
  const [left, right] = [trialsOf(key, occasion, athlete, "left"), trialsOf(key, occasion, athlete, "right")];
  const [leftCount, rightCount] = [presentValues(left).length, presentValues(right).length];
  if (leftCount === 0 || rightCount === 0) return null;
  const noise = noiseOfDay(key, occasion);
  const score = (trials: readonly (number | null)[]) =>
    unwrap(reduceTrials(trials, { reduction: "mean", direction: "higher" })).score;
  return {
    percent: percentDifference(score(left), score(right)),
    limit: unwrap(noiseLimit({ noise, leftCount, rightCount, reduction: "mean", confidence: 0.95 })).percent,
  };
}

/** The engine's verdict at a threshold of 10 %; null where she has no trials. */
export function judgedAsymmetry(key: TestKey, occasion: number, athlete: string): AsymmetryVerdict | null {
  const found = asymmetryOf(key, occasion, athlete);
  if (found === null) return null;
  return judgeAsymmetry({ asymmetry: found.percent, noiseLimit: found.limit, threshold });
}

const noiseOfDay = (key: TestKey, occasion: number) =>
  unwrap(
    pooledNoise(
      dayOf(key, occasion).rows.flatMap(({ athlete }) =>
        (["left", "right"] as const).map((side) => trialsOf(key, occasion, athlete.name, side)),
      ),
    ),
  );
