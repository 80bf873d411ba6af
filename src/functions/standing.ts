import { compositeScores } from "../engine/standing/compositeScores";
import { modifiedZScores } from "../engine/standing/modifiedZScores";
import { percentileMethods, percentileRanks } from "../engine/standing/percentileRanks";
import { squadRanks, type TieRule } from "../engine/standing/squadRanks";
import { tScores } from "../engine/standing/tScores";
import { zScores } from "../engine/standing/zScores";
import { say } from "../language/say";
import {
  answer,
  directionOf,
  directions,
  invalid,
  measured,
  orElse,
  positiveOf,
  scored,
  values,
  type Words,
  worded,
  wordOf,
} from "./border";
import { inPlaces } from "./spill";

const scoresOf = (range: any[][], zeros: unknown) => values(scored(range, zeros)).flat();

/** How scores are read: which are better, and the step of the instrument when one is named. */
function readingOf(better: unknown, step: unknown) {
  const resolution = positiveOf(step, say`step of the instrument`);
  return { direction: directionOf(better), ...(resolution === undefined ? {} : { resolution }) };
}

const tieRules: Words<TieRule> = ["competition", "average"];

/**
 * Rank of each athlete in the squad, 1 for the best. Empty cells stay empty and take no place.
 * @customfunction SQUADRANK
 * @param scores One score for each athlete in one unit, e.g. C4:C29.
 * @param [better] Which scores are better: higher (when left out) or lower.
 * @param [ties] Equal scores share the better rank, competition (when left out), or the average of their ranks.
 * @param [step] Step of the instrument in the unit of the scores, e.g. 0.01; scores of the same step are equal. None when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns One rank beside each score, from 1.
 * @example =TAPELINE.SQUADRANK({31.2;28.4;35;30.3;33.1})
 * @source Textbook; same as rank in R.
 */
export function squadRank(scores: any[][], better?: string, ties?: string, step?: any, zeros?: string): any[][] {
  const options = { ...readingOf(better, step), ties: wordOf(ties, tieRules, say`rule for ties`) };
  return inPlaces(scores, answer(squadRanks(scoresOf(scores, zeros), options)));
}

/**
 * Percentile rank of each athlete in this squad, best highest. It describes the squad, not a population; below 20 athletes round it
 * to 5, below 8 say the rank. Empty cells stay empty.
 * @customfunction PERCENTILERANK
 * @param scores One score for each athlete in one unit, e.g. C4:C29.
 * @param [better] Which scores are better: higher (when left out) or lower.
 * @param [method] midrank (fair with ties, when left out), inclusive (as PERCENTRANK.INC), exclusive (as PERCENTRANK.EXC) or weak (at or below).
 * @param [step] Step of the instrument in the unit of the scores, e.g. 0.01; scores of the same step are equal. None when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns One percentile beside each score, 0 to 100.
 * @example =TAPELINE.PERCENTILERANK({31.2;28.4;35;30.3;33.1})
 * @source Textbook; midrank is Hazen's.
 */
export function percentileRank(scores: any[][], better?: string, method?: string, step?: any, zeros?: string): any[][] {
  const options = {
    ...readingOf(better, step),
    method: wordOf(method, percentileMethods, say`kind of percentile rank`),
  };
  return inPlaces(scores, answer(percentileRanks(scoresOf(scores, zeros), options)));
}

/**
 * The z score of each athlete, distance from the squad's mean in standard deviations (STDEV.S), best highest. Needs three scores; empty
 * cells stay empty.
 * @customfunction ZSCORE
 * @param scores One score for each athlete in one unit, e.g. C4:C29.
 * @param [better] Which scores are better: higher (when left out) or lower.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns One z score beside each score, without unit, e.g. -0.6.
 * @example =TAPELINE.ZSCORE({31.2;28.4;35;30.3;33.1})
 * @source Textbook.
 */
export function zScore(scores: any[][], better?: string, zeros?: string): any[][] {
  return inPlaces(scores, answer(zScores(scoresOf(scores, zeros), { direction: directionOf(better) })));
}

/**
 * T score of each athlete, 50 + 10 z, best highest. Needs three scores; empty cells stay empty.
 * @customfunction TSCORE
 * @param scores One score for each athlete in one unit, e.g. C4:C29.
 * @param [better] Which scores are better: higher (when left out) or lower.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns One T score beside each score, without unit, e.g. 44.
 * @example =TAPELINE.TSCORE({4.62;4.81;4.55;4.7;4.66},"lower")
 * @source Textbook.
 */
export function tScore(scores: any[][], better?: string, zeros?: string): any[][] {
  return inPlaces(scores, answer(tScores(scoresOf(scores, zeros), { direction: directionOf(better) })));
}

/**
 * Modified z score of each athlete, from median and median spread (Iglewicz and Hoaglin 1993), best highest: beyond 3.5 a value to look
 * into, not to delete. Needs three scores; empty cells stay empty.
 * @customfunction ZSCORE.MODIFIED
 * @param scores One score for each athlete in one unit, e.g. C4:C29.
 * @param [better] Which scores are better: higher (when left out) or lower.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns One modified z score beside each score, without unit, e.g. 1.2.
 * @example =TAPELINE.ZSCORE.MODIFIED({31.2;28.4;35;30.3;52.1})
 * @source Iglewicz & Hoaglin 1993, How to Detect and Handle Outliers (from memory).
 */
export function modifiedZScore(scores: any[][], better?: string, zeros?: string): any[][] {
  return inPlaces(scores, answer(modifiedZScores(scoresOf(scores, zeros), { direction: directionOf(better) })));
}

/**
 * Composite of several tests for each athlete: the weighted mean of the z scores, best highest. Weights are the coach's opinion: show
 * them. An athlete tested on less than 70 % of the weight gets none.
 * @customfunction COMPOSITE
 * @param scores A row for each athlete, a column for each test, e.g. C4:G29.
 * @param [weights] One weight for each test, e.g. C2:G2; 0 or an empty cell leaves a test out. All equal when left out or all empty.
 * @param [better] For each test higher or lower, e.g. C3:G3; higher where left out or empty.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns One composite beside each athlete's row, in standard deviations.
 * @example =TAPELINE.COMPOSITE({31.2,4.62;28.4,4.81;35,4.55;30.3,4.7},{2,1},{"higher","lower"})
 * @source Mean of z scores as a total score, Turner et al. 2019, Strength Cond J 41(6):91-101 (from memory).
 */
export function composite(scores: any[][], weights?: any[][], better?: any[][], zeros?: string): any[][] {
  const rows = values(scored(scores, zeros));
  const tests = rows[0]!.map((_, test) => rows.map((row) => row[test]!));
  const weightList = weights ? values(measured(weights)).flat() : [];
  const weightOf = oneForEach(
    weightList.some((weight) => weight !== null) ? weightList : [1],
    tests.length,
    say`weights`,
  );
  const directionFor = oneForEach(
    values(orElse(better, (range) => worded(range, directions, "direction"), "higher")).flat(),
    tests.length,
    say`directions`,
  );
  const { composites } = answer(
    compositeScores(
      tests.flatMap((ofSquad, index) => {
        const weight = weightOf(index);
        const test = say`test ${index + 1}`;
        const tested = { test, weight: 1, direction: directionFor(index)!, scores: ofSquad };
        return weight === null ? [] : [{ quality: test, weight, tests: [tested] }];
      }),
    ),
  );
  return composites.map((one) => [one ?? ""]);
}

/** One of a list for each test, or a single one for all. */
function oneForEach<T>(list: readonly (T | null)[], tests: number, what: string): (test: number) => T | null {
  if (list.length !== 1 && list.length !== tests) {
    throw invalid(say`There are ${tests} tests and ${list.length} ${what}; each test has one.`);
  }
  return (test) => list[list.length === 1 ? 0 : test]!;
}
