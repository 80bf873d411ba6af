import { beyondNoiseCounts } from "../engine/change/beyondNoiseCounts";
import { groupChange as groupChangeOf } from "../engine/change/groupChange";
import { individualChange } from "../engine/change/individualChange";
import { changeVerdicts } from "../engine/change/judgeChange";
import { regressionToTheMean } from "../engine/change/regressionToTheMean";
import { twoGroups as twoGroupsOf } from "../engine/change/twoGroups";
import { mean } from "../engine/moments";
import { tooFew } from "../engine/refusals";
import { refuse } from "../engine/result";
import { say } from "../language/say";
import {
  answer,
  confidenceOf,
  directionOf,
  invalid,
  notAvailable,
  numberOf,
  paired,
  positiveOf,
  scored,
  values,
} from "./border";
import { cellByCell, labelled, limitHeadings, part, rowByRow, withLimits } from "./spill";

/** A typical error, or another size above zero, that a change is read beside. */
function sizeOf(argument: unknown, what: string): number {
  const size = positiveOf(argument, what);
  if (size === undefined) throw invalid(say`The ${what} is missing.`);
  return size;
}

/** What every reading of an athlete's change asks for beside the two results. */
function noiseOf(typicalError: unknown, confidence: unknown, degreesOfFreedom: unknown) {
  const freedom = positiveOf(degreesOfFreedom, say`degrees of freedom`);
  return {
    typicalError: sizeOf(typicalError, say`typical error`),
    confidence: confidenceOf(confidence),
    ...(freedom === undefined ? {} : { degreesOfFreedom: freedom }),
  };
}

/**
 * Each athlete's change, later less earlier, with the limits of the true change: change plus or minus multiplier times root of 2
 * times typical error. Limits that both lie above or below 0 are beyond the test's noise. Empty rows stay empty.
 * @customfunction CHANGELIMITS
 * @param earlier Earlier results, one for each athlete, e.g. C4:C29.
 * @param later Later results in the same rows and unit, e.g. D4:D29.
 * @param typicalError Typical error between sessions in the unit of the test, e.g. 1.5 (see TYPICALERROR).
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @param [degreesOfFreedom] Of the typical error, e.g. 19: then Student's t in place of 1.96; none when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns Change, lower and upper limit in the unit of the test, side by side.
 * @example =TAPELINE.CHANGELIMITS({31.2;28.4;35},{33.9;28.1;35.8},0.6)
 * @source Hopkins 2000, Sports Med 30:1-15 (from memory).
 */
export function changeLimits(
  earlier: any[][],
  later: any[][],
  typicalError: any,
  confidence?: any,
  degreesOfFreedom?: any,
  zeros?: string,
): any[][] {
  const noise = noiseOf(typicalError, confidence, degreesOfFreedom);
  return rowByRow({ earlier: scored(earlier, zeros), later: scored(later, zeros) }, 3, (athlete) =>
    part(
      individualChange({
        ...noise,
        earlier: athlete.earlier[0] ?? null,
        later: athlete.later[0] ?? null,
        // Plays no part in the limits.
        smallestWorthwhileChange: noise.typicalError,
        direction: "higher",
      }),
      ({ change }) => withLimits(change),
    ),
  );
}

/**
 * What each athlete's change means beside the test's noise and the smallest worthwhile change, in words: clear improvement,
 * improvement likely beyond measurement noise, change within measurement noise, unclear, and the same for a decline. Empty rows
 * stay empty.
 * @customfunction CHANGEVERDICT
 * @param earlier Earlier results, one for each athlete, e.g. C4:C29.
 * @param later Later results in the same rows and unit, e.g. D4:D29.
 * @param typicalError Typical error between sessions in the unit of the test, e.g. 1.5 (see TYPICALERROR).
 * @param worthwhile Smallest worthwhile change in the unit of the test, e.g. 1.1 (see WORTHWHILECHANGE).
 * @param [better] Which results are better: higher (when left out) or lower.
 * @param [confidence] Share of certainty, e.g. 0.9; 0.95 when left out.
 * @param [degreesOfFreedom] Of the typical error, e.g. 19: then Student's t in place of 1.96; none when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns One verdict in words beside each athlete.
 * @example =TAPELINE.CHANGEVERDICT({31.2;28.4;35},{33.9;28.1;35.8},0.6,0.5)
 * @source Hopkins 2000, Sports Med 30:1-15 (from memory); Swinton et al. 2018, Front Nutr 5:41 (abstract read).
 */
export function changeVerdict(
  earlier: any[][],
  later: any[][],
  typicalError: any,
  worthwhile: any,
  better?: string,
  confidence?: any,
  degreesOfFreedom?: any,
  zeros?: string,
): any[][] {
  const test = {
    ...noiseOf(typicalError, confidence, degreesOfFreedom),
    smallestWorthwhileChange: sizeOf(worthwhile, say`smallest worthwhile change`),
    direction: directionOf(better),
  };
  return cellByCell({ "earlier result": scored(earlier, zeros), "later result": scored(later, zeros) }, (athlete) =>
    part(
      individualChange({ ...test, earlier: athlete["earlier result"], later: athlete["later result"] }),
      ({ verdict }) => changeVerdicts[verdict],
    ),
  );
}

/**
 * How many athletes changed by more than the minimal detectable change, beside the false alarms that noise alone would raise, as a table.
 * The count is no success rate. Athletes with a missing result are left out.
 * @customfunction BEYONDNOISE
 * @param earlier Earlier results, one for each athlete, e.g. C4:C29.
 * @param later Later results in the same rows and unit, e.g. D4:D29.
 * @param detectable Minimal detectable change in the unit of the test, e.g. 4.2 (see DETECTABLECHANGE).
 * @param [better] Which results are better: higher (when left out) or lower.
 * @param [confidence] Share of certainty of the minimal detectable change, e.g. 0.9; 0.95 when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns A table of labels and numbers of athletes.
 * @example =TAPELINE.BEYONDNOISE({31.2;28.4;35;30.3},{33.9;28.1;35.8;28},1.7)
 * @source The definition of confidence.
 */
export function beyondNoise(
  earlier: any[][],
  later: any[][],
  detectable: any,
  better?: string,
  confidence?: any,
  zeros?: string,
): any[][] {
  const sign = directionOf(better) === "higher" ? 1 : -1;
  const counts = answer(
    beyondNoiseCounts(
      pairsOf(earlier, later, zeros).map(([before, after]) =>
        before === null || after === null ? null : sign * (after - before),
      ),
      {
        minimalDetectableChange: sizeOf(detectable, say`minimal detectable change`),
        confidence: confidenceOf(confidence),
      },
    ),
  );
  return labelled([
    [say`Athletes`, counts.count],
    [say`Improved beyond noise`, counts.improved],
    [say`Declined beyond noise`, counts.declined],
    [say`Within noise`, counts.within],
    [say`False alarms expected each way`, counts.expectedFalseEachWay],
    [say`Chance of any false alarm`, counts.chanceOfAnyFalse],
  ]);
}

/**
 * Mean change of a group as a table, later less earlier, with limits, paired t test, and the change in standard deviations corrected
 * for small samples (of the average spread, and of the earlier one). Needs five athletes with both results. Without a control
 * group it says changed, not that the training worked.
 * @customfunction GROUPCHANGE
 * @param earlier Earlier results, one for each athlete, e.g. C4:C29.
 * @param later Later results in the same rows and unit, e.g. D4:D29.
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns A table of labels, values and limits; the change in the unit of the test.
 * @example =TAPELINE.GROUPCHANGE({31.2;28.4;35;30.3;33.1},{33.9;28.1;36.8;31;34.6})
 * @source Cumming 2012, Understanding the New Statistics; Lakens 2013, Front Psychol 4:863 (from memory).
 */
export function groupChange(earlier: any[][], later: any[][], confidence?: any, zeros?: string): any[][] {
  const pairs = pairsOf(earlier, later, zeros);
  const change = answer(
    groupChangeOf(
      pairs.map(([before]) => before),
      pairs.map(([, after]) => after),
      { confidence: confidenceOf(confidence) },
    ),
  );
  return labelled([
    limitHeadings(),
    [say`Athletes`, change.athletes],
    [say`Mean change`, ...withLimits(change.change)],
    [say`Standard deviation of the changes`, change.standardDeviation],
    ["t", change.t],
    [say`Degrees of freedom`, change.degreesOfFreedom],
    [say`p (two-sided)`, change.p],
    [say`Hedges g, average spread`, ...withLimits(change.corrected.ofAverageSpread)],
    [say`Hedges g, earlier spread`, ...withLimits(change.corrected.ofEarlierSpread)],
  ]);
}

const pairsOf = (earlier: any[][], later: any[][], zeros: unknown) =>
  paired(
    [say`earlier results`, values(scored(earlier, zeros)).flat()],
    [say`later results`, values(scored(later, zeros)).flat()],
  );

/**
 * Difference of two groups of different athletes as a table, first less second: means, difference with limits, Welch's t test and
 * Hedges g. Needs three in each group; with five or fewer look at the values, not at p. Empty cells are missing.
 * @customfunction TWOGROUPS
 * @param first Results of the first group, e.g. C4:C15.
 * @param second Results of the second group in the same unit, e.g. C16:C29.
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns A table of labels, values and limits; means and difference in the unit of the test.
 * @example =TAPELINE.TWOGROUPS({31.2;28.4;35;30.3;33.1},{36;33.8;38.1;35.2})
 * @source Welch 1947, Biometrika 34:28-35; Hedges 1981, J Educ Stat 6:107-128 (from memory).
 */
export function twoGroups(first: any[][], second: any[][], confidence?: any, zeros?: string): any[][] {
  const groups = answer(
    twoGroupsOf(values(scored(first, zeros)).flat(), values(scored(second, zeros)).flat(), {
      confidence: confidenceOf(confidence),
    }),
  );
  return labelled([
    limitHeadings(),
    [say`Athletes in the first group`, groups.firstCount],
    [say`Athletes in the second group`, groups.secondCount],
    [say`Mean of the first group`, groups.firstMean],
    [say`Mean of the second group`, groups.secondMean],
    [say`Difference`, ...withLimits(groups.difference)],
    [say`t (Welch)`, groups.welch.t],
    [say`Degrees of freedom`, groups.welch.degreesOfFreedom],
    [say`p (two-sided)`, groups.welch.p],
    [say`Hedges g`, ...withLimits(groups.hedgesG)],
  ]);
}

/**
 * The retest to expect when nothing has changed: squad mean plus correlation times distance from the mean, one for each cell. Athletes
 * picked because they tested worst improve by this alone. Empty cells stay empty.
 * @customfunction EXPECTEDRETEST
 * @param scores Scores of the athletes, e.g. C4:C29.
 * @param correlation Intraclass correlation of the test in this squad, 0 to 1, e.g. 0.85 (see ICC).
 * @param [squadMean] Mean of the whole squad in the same unit, e.g. 34.2; the mean of the scores when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns Score to expect in the unit of the test, e.g. 31.5.
 * @example =TAPELINE.EXPECTEDRETEST({31.2;28.4;35},0.85)
 * @source Bland & Altman 1994, BMJ 308:1499 (from memory).
 */
export function expectedRetest(scores: any[][], correlation: any, squadMean?: any, zeros?: string): any[][] {
  const intraclassCorrelation = numberOf(correlation, say`intraclass correlation`);
  const readings = scored(scores, zeros);
  const present = values(readings)
    .flat()
    .filter((score) => score !== null);
  if (present.length === 0) throw notAvailable(refuse(tooFew(say`scores`, 1, 0)));
  const centre = numberOf(squadMean, say`squad mean`, mean(present));
  return cellByCell({ score: readings }, (athlete) =>
    regressionToTheMean(athlete.score, { squadMean: centre, intraclassCorrelation }),
  );
}
