import type { Estimate } from "../engine/confidence";
import { standardDeviation } from "../engine/moments";
import { tooFew } from "../engine/refusals";
import { betweenAthleteSpread, type SpreadKind } from "../engine/reliability/betweenAthleteSpread";
import { type AgreementLimitsMethod, type BlandAltman, blandAltman } from "../engine/reliability/blandAltman";
import { coefficientOfVariationFromLogs } from "../engine/reliability/coefficientOfVariationFromLogs";
import { consecutiveSessions } from "../engine/reliability/consecutiveSessions";
import {
  type IntraclassForm,
  intraclassCorrelation,
  intraclassForms,
} from "../engine/reliability/intraclassCorrelation";
import { meanCoefficientOfVariation } from "../engine/reliability/meanCoefficientOfVariation";
import { minimalDetectableChange } from "../engine/reliability/minimalDetectableChange";
import { mixedModel } from "../engine/reliability/mixedModel";
import { ratioLimitsOfAgreement } from "../engine/reliability/ratioLimitsOfAgreement";
import { completeRows, type RepeatedResults } from "../engine/reliability/repeatedResults";
import { rootMeanSquareCoefficientOfVariation } from "../engine/reliability/rootMeanSquareCoefficientOfVariation";
import { smallestWorthwhileChange } from "../engine/reliability/smallestWorthwhileChange";
import { trialNoise as trialNoiseOf } from "../engine/reliability/trialNoise";
import { type SessionShift, typicalError as typicalErrorOf } from "../engine/reliability/typicalError";
import { ok, type Result, refuse } from "../engine/result";
import { atStart, say } from "../language/say";
import {
  answer,
  confidenceOf,
  measured,
  notAvailable,
  numberOf,
  paired,
  positiveOf,
  scored,
  trialRowsOf,
  values,
  type Words,
  wordOf,
} from "./border";
import { cell, cellByCell, labelled, limitHeadings, line, part, withLimits } from "./spill";

const resultsOf = (range: any[][], zeros: unknown): RepeatedResults => values(scored(range, zeros));

const shifts: Words<SessionShift> = ["removed", "kept"];
const shiftOf = (name: unknown): SessionShift => wordOf(name, shifts, say`treatment of a shared shift`);

/**
 * Reliability of a test as a table with confidence limits: mean change from the first to the second session, typical error in
 * the unit and in percent, intraclass correlation ICC(3,1), smallest worthwhile change (0.2 of the true spread between athletes)
 * and minimal detectable change (by Student's t). Athletes with a missing result are left out of all lines.
 * @customfunction RELIABILITY
 * @param results A row for each athlete, a column for each session (or trial), e.g. C4:D29.
 * @param [confidence] Share of certainty, e.g. 0.9; 0.95 when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns A table of labels, values and limits; errors in the unit of the results or in percent.
 * @example =TAPELINE.RELIABILITY({31.2,31.9;28.4,28.1;35,35.8;30.3,29.7;33.1,33.6})
 * @source Hopkins 2000, Sports Med 30:1-15 (from memory).
 */
export function reliability(results: any[][], confidence?: any, zeros?: string): any[][] {
  const all = resultsOf(results, zeros);
  const complete = completeRows(all);
  const certainty = confidenceOf(confidence);
  const typical = answer(typicalErrorOf(complete, { confidence: certainty }));
  const change = consecutiveSessions(complete, { confidence: certainty })[0]!.meanChange;
  const percent = coefficientOfVariationFromLogs(complete, { confidence: certainty });
  const correlation = intraclassCorrelation(complete, { form: "consistencySingle", confidence: certainty });
  const spread = betweenAthleteSpread(complete, "true");
  const worthwhile = spread.ok ? smallestWorthwhileChange({ standardDeviation: spread.value }) : spread;
  const detectable = minimalDetectableChange({
    typicalError: typical.error.value,
    degreesOfFreedom: typical.degreesOfFreedom,
    confidence: certainty,
  });
  return labelled([
    limitHeadings(),
    [say`Athletes`, typical.athletes],
    [say`Athletes left out`, all.length - typical.athletes],
    [atStart(say`sessions`), complete[0]!.length],
    line(
      say`Mean change, session 1 to 2`,
      part(change, (of) => of.change),
    ),
    [say`Typical error`, ...withLimits(typical.error)],
    line(
      say`Typical error in percent`,
      part(percent, ({ variation }) => variation),
    ),
    line(
      "ICC(3,1)",
      part(correlation, (of) => of.correlation),
    ),
    line(say`Smallest worthwhile change`, worthwhile),
    line(say`Minimal detectable change`, detectable),
  ]);
}

/**
 * Typical error, the standard deviation of an athlete's results from session to session, with limits. From trials of one day it is
 * noise within a day, from several days noise between days: only the latter judges a retest. Athletes with a missing result are
 * left out.
 * @customfunction TYPICALERROR
 * @param results A row for each athlete, a column for each session (or trial), e.g. C4:D29.
 * @param [shift] What becomes of a shift all athletes share: removed (when left out) or kept in the error.
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns Typical error, lower and upper limit in the unit of the results, side by side.
 * @example =TAPELINE.TYPICALERROR({31.2,31.9;28.4,28.1;35,35.8;30.3,29.7;33.1,33.6})
 * @source Hopkins 2000, Sports Med 30:1-15 (from memory).
 */
export function typicalError(results: any[][], shift?: string, confidence?: any, zeros?: string): any[][] {
  const options = { confidence: confidenceOf(confidence), sessionShift: shiftOf(shift) };
  return [withLimits(answer(typicalErrorOf(resultsOf(results, zeros), options)).error)];
}

/**
 * Typical error in percent, from logarithms (100 (exp(s) - 1)), with limits: the one to use where error grows with the result.
 * Athletes with a missing result are left out. Zeros are missing results.
 * @customfunction TYPICALERROR.PERCENT
 * @param results A row for each athlete, a column for each session (or trial), e.g. C4:D29.
 * @param [shift] What becomes of a shift all athletes share: removed (when left out) or kept in the error.
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @returns Typical error, lower and upper limit in percent, side by side.
 * @example =TAPELINE.TYPICALERROR.PERCENT({31.2,31.9;28.4,28.1;35,35.8;30.3,29.7;33.1,33.6})
 * @source Hopkins 2000, Sports Med 30:1-15 (from memory).
 */
export function typicalErrorPercent(results: any[][], shift?: string, confidence?: any): any[][] {
  const options = { confidence: confidenceOf(confidence), sessionShift: shiftOf(shift) };
  return [withLimits(answer(coefficientOfVariationFromLogs(trialRowsOf(results), options)).variation)];
}

/**
 * Typical error from all results when some are missing, with limits: sessions fixed, athletes random, restricted maximum likelihood.
 * @customfunction TYPICALERROR.GAPS
 * @param results A row for each athlete, a column for each session, empty cells where a result is missing, e.g. C4:F29.
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns Typical error, lower and upper limit in the unit of the results, side by side.
 * @example =TAPELINE.TYPICALERROR.GAPS({31.2,31.9,32.2;28.4,28.1,28.9;35,35.8,35.5;30.3,29.7,30.6;33.1,33.6,33.2})
 * @source Patterson & Thompson 1971, Biometrika 58:545-554 (from memory); same numbers as lmer in R.
 */
export function typicalErrorWithGaps(results: any[][], confidence?: any, zeros?: string): any[][] {
  return [
    withLimits(answer(mixedModel(resultsOf(results, zeros), { confidence: confidenceOf(confidence) })).typicalError),
  ];
}

const icc: Readonly<Record<string, IntraclassForm>> = Object.fromEntries(
  Object.entries(intraclassForms).map(([form, { label }]) => [label.slice("ICC(".length, -1), form as IntraclassForm]),
);
const iccForms: Words<string> = ["3,1", ...Object.keys(icc).filter((form) => form !== "3,1")];

/**
 * Intraclass correlation with limits, the share of the spread that is between athletes. It falls in an even squad although the error
 * is the same: print the typical error beside it. Athletes with a missing result are left out.
 * @customfunction ICC
 * @param results A row for each athlete, a column for each session (or tester), e.g. C4:D29.
 * @param [form] By Shrout and Fleiss: "3,1" (consistency, when left out), "1,1", "2,1" (agreement), "1,k", "2,k" or "3,k".
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns Correlation (up to 1), lower and upper limit, side by side.
 * @example =TAPELINE.ICC({31.2,31.9;28.4,28.1;35,35.8;30.3,29.7;33.1,33.6})
 * @source Shrout & Fleiss 1979, Psychol Bull 86:420-428; McGraw & Wong 1996, Psychol Methods 1:30-46.
 */
export function intraclass(results: any[][], form?: string, confidence?: any, zeros?: string): any[][] {
  const options = {
    form: icc[wordOf(form, iccForms, say`form of the intraclass correlation`)]!,
    confidence: confidenceOf(confidence),
  };
  return [withLimits(answer(intraclassCorrelation(resultsOf(results, zeros), options)).correlation)];
}

const averages: Words<"mean" | "rootMeanSquare"> = ["mean", "rootMeanSquare"];

/**
 * Coefficient of variation of athletes' own results, averaged over the squad. The plain mean, which most papers print, is low by its
 * making; rootMeanSquare is not. Needs three athletes with two results. Empty cells and zeros are missing.
 * @customfunction WITHINCV
 * @param results A row for each athlete, a column for each trial or session, e.g. C4:E29.
 * @param [average] mean (when left out) or rootMeanSquare.
 * @returns Coefficient of variation in percent, e.g. 2.4.
 * @example =TAPELINE.WITHINCV({31.2,31.9,32.2;28.4,28.1,28.9;35,35.8,35.5;30.3,29.7,30.6;33.1,33.6,33.2})
 * @source Mean: textbook; rootMeanSquare: Gluer et al. 1995, Osteoporos Int 5:262-270 (from memory).
 */
export function withinVariation(results: any[][], average?: string): number {
  const rows = trialRowsOf(results);
  return answer(
    wordOf(average, averages, "average") === "mean"
      ? meanCoefficientOfVariation(rows)
      : rootMeanSquareCoefficientOfVariation(rows),
  );
}

/**
 * Noise from trial to trial within sessions, pooled over sets of trials, with limits: it tells whether two sides of one day differ, not
 * whether an athlete changed. Empty cells and zeros are missing trials.
 * @customfunction TRIALNOISE
 * @param trials A row for each athlete (and side), a column for each trial of one day, e.g. C4:E29.
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @returns Noise, lower and upper limit in percent, side by side.
 * @example =TAPELINE.TRIALNOISE({171,174,168;150,152,151;160,163,161})
 * @source Hopkins 2000, Sports Med 30:1-15 (from memory).
 */
export function trialNoise(trials: any[][], confidence?: any): any[][] {
  const noise = answer(trialNoiseOf(trialRowsOf(trials), { confidence: confidenceOf(confidence) }));
  return [withLimits(noise.coefficientOfVariation)];
}

/**
 * Mean change and typical error from each session to the next, a line for each pair: a first pair with a clearly larger error or change
 * was a learning session. Athletes without both sessions are left out of that pair.
 * @customfunction SESSIONPAIRS
 * @param results A row for each athlete, a column for each session, e.g. C4:F29.
 * @param [confidence] Share of certainty of the limits, e.g. 0.9; 0.95 when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns A table: sessions, mean change and typical error with their limits, in the unit of the results.
 * @example =TAPELINE.SESSIONPAIRS({31.2,31.9,32.2;28.4,28.1,28.9;35,35.8,35.5;30.3,29.7,30.6;33.1,33.6,33.2})
 * @source Hopkins 2000, Sports Med 30:1-15 (from memory).
 */
export function sessionPairs(results: any[][], confidence?: any, zeros?: string): any[][] {
  const pairs = consecutiveSessions(resultsOf(results, zeros), { confidence: confidenceOf(confidence) });
  if (pairs.length === 0) throw notAvailable(refuse(tooFew(say`sessions`, 2, 1)));
  const limits = (result: Result<Estimate>) =>
    (["value", "low", "high"] as const).map((which) => cell(result, (estimate) => estimate[which]));
  return [
    [say`From`, say`To`, say`Mean change`, say`Lower`, say`Upper`, say`Typical error`, say`Lower`, say`Upper`],
    ...pairs.map(({ earlier, later, meanChange, typicalError }) => [
      earlier + 1,
      later + 1,
      ...limits(part(meanChange, ({ change }) => change)),
      ...limits(part(typicalError, ({ error }) => error)),
    ]),
  ];
}

const scales: Words<"difference" | "ratio"> = ["difference", "ratio"];
const agreementMethods: Words<AgreementLimitsMethod> = ["exact", "1999", "1986"];

/**
 * Agreement of two methods, testers or sessions as a table (Bland and Altman): mean difference and the limits between which 95 % of
 * differences lie, each with confidence limits. First less second; pairs with a missing value are left out.
 * @customfunction AGREEMENT
 * @param first Results of the first, e.g. C4:C29.
 * @param second Results of the second in the same rows, e.g. D4:D29.
 * @param [scale] difference (when left out) or ratio, first over second, for differences that grow with the result.
 * @param [method] Of the confidence limits: exact (when left out), 1999 or 1986, by the year of the paper.
 * @param [confidence] Share of certainty of the confidence limits, e.g. 0.9; 0.95 when left out.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns A table of labels, values and limits, in the unit of the results, or ratios without unit.
 * @example =TAPELINE.AGREEMENT({31.2;28.4;35;30.3;33.1},{31.9;28.1;35.8;29.7;33.6})
 * @source Bland & Altman 1986, Lancet 1:307-310; 1999, Stat Methods Med Res 8:135-160; exact: Carkeet 2015, Optom Vis Sci 92:e71-e80 (from memory).
 */
export function agreement(
  first: any[][],
  second: any[][],
  scale?: string,
  method?: any,
  confidence?: any,
  zeros?: string,
): any[][] {
  const pairs = paired(
    [say`first results`, values(scored(first, zeros)).flat()],
    [say`second results`, values(scored(second, zeros)).flat()],
  );
  const options = {
    method: wordOf(method, agreementMethods, say`kind of confidence limits`),
    confidence: confidenceOf(confidence),
  };
  const isRatio = wordOf(scale, scales, say`scale of agreement`) === "ratio";
  const limits = answer<Pick<BlandAltman, "count" | "bias" | "lower" | "upper">>(
    isRatio ? ratioLimitsOfAgreement(pairs, options) : blandAltman(pairs, options),
  );
  return labelled([
    limitHeadings(),
    [say`Pairs`, limits.count],
    [isRatio ? say`Mean ratio` : say`Mean difference`, ...withLimits(limits.bias)],
    [say`Lower limit of agreement`, ...withLimits(limits.lower)],
    [say`Upper limit of agreement`, ...withLimits(limits.upper)],
  ]);
}

const spreads: Words<SpreadKind> = ["true", "observed", "ofMeans"];

/**
 * Smallest worthwhile change: 0.2 of the spread between athletes. From two or more sessions the true spread, noise taken out; from one
 * column the spread observed. A mixed squad's spread says nothing: group first.
 * @customfunction WORTHWHILECHANGE
 * @param results A row for each athlete, a column for each session, or a single column, e.g. C4:D29.
 * @param [share] Share of the standard deviation, e.g. 0.2 (when left out).
 * @param [spread] With several sessions: true (when left out), observed (noise is in it) or ofMeans.
 * @param [zeros] What a 0 is: missing (when left out) or value.
 * @returns Change in the unit of the results, e.g. 1.1.
 * @example =TAPELINE.WORTHWHILECHANGE({31.2,31.9;28.4,28.1;35,35.8;30.3,29.7;33.1,33.6})
 * @source Hopkins 2004, Sportscience 8:1-7 (from memory).
 */
export function worthwhileChange(results: any[][], share?: any, spread?: any, zeros?: string): number {
  const rows = resultsOf(results, zeros);
  const kind = wordOf(spread, spreads, say`spread between athletes`);
  const deviation = answer(rows[0]!.length > 1 ? betweenAthleteSpread(rows, kind) : observedSpread(rows.flat()));
  return answer(
    smallestWorthwhileChange({ standardDeviation: deviation, share: numberOf(share, say`share of the spread`, 0.2) }),
  );
}

function observedSpread(scores: readonly (number | null)[]): Result<number> {
  const present = scores.filter((score) => score !== null);
  return present.length < 3 ? refuse(tooFew(say`scores`, 3, present.length)) : ok(standardDeviation(present));
}

/**
 * Minimal detectable change, the size a change must exceed to be more than noise: multiplier times root of 2 times typical error, one
 * for each cell. With degrees of freedom the multiplier is Student's t, the honest one for an error from a squad; else 1.96 at
 * 95 %. Empty cells and zeros are missing.
 * @customfunction DETECTABLECHANGE
 * @param errors Typical errors between sessions, in the unit of the test, e.g. C4 or C4:C12.
 * @param [confidence] Share of certainty, e.g. 0.9; 0.95 when left out.
 * @param [degreesOfFreedom] Of the typical error, (athletes - 1) (sessions - 1), e.g. 19; none when left out.
 * @returns Change in the unit of the test, e.g. 4.2.
 * @example =TAPELINE.DETECTABLECHANGE({0.6;1.5})
 * @source Weir 2005, J Strength Cond Res 19:231-240 (from memory).
 */
export function detectableChange(errors: any[][], confidence?: any, degreesOfFreedom?: any): any[][] {
  const certainty = confidenceOf(confidence);
  const freedom = positiveOf(degreesOfFreedom, say`degrees of freedom`);
  return cellByCell({ "typical error": measured(errors) }, (test) =>
    minimalDetectableChange({
      typicalError: test["typical error"],
      confidence: certainty,
      ...(freedom === undefined ? {} : { degreesOfFreedom: freedom }),
    }),
  );
}
