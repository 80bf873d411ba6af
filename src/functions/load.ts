import { actionCounts as actionCountsOf } from "../engine/load/actionCounts";
import { type AcuteChronicForm, acuteChronicRatio } from "../engine/load/acuteChronicRatio";
import type { DailyValues } from "../engine/load/dailyValues";
import { type DiaryEntry, dayTotals } from "../engine/load/dayTotals";
import { exponentiallyWeightedAverage } from "../engine/load/exponentiallyWeightedAverage";
import { rollingAverage } from "../engine/load/rollingAverage";
import { sessionLoad as sessionLoadOf } from "../engine/load/sessionLoad";
import { weekSummary } from "../engine/load/weekSummary";
import { say } from "../language/say";
import { answer, counted, dated, dayOf, paired, values, type Words, wholeNumberOf, wordOf } from "./border";
import { cautionLines, cell, cellByCell, inPlaces, labelled } from "./spill";

const daysOf = (range: any[][]): DailyValues => values(counted(range)).flat();

/**
 * Session load: rating of perceived exertion times minutes (Foster et al. 2001), one for each cell. A 0 is a value; write a dash
 * for a session nobody rated, since an empty cell may arrive as 0.
 * @customfunction SESSIONLOAD
 * @param ratings Ratings of the whole session, 0 to 10, e.g. C4:C29.
 * @param minutes Duration in minutes, e.g. D4:D29.
 * @returns Load in arbitrary units, e.g. 540.
 * @example =TAPELINE.SESSIONLOAD({6;4},{90;60})
 * @source Foster et al. 2001, J Strength Cond Res 15:109-115 (abstract read).
 */
export function sessionLoad(ratings: any[][], minutes: any[][]): any[][] {
  return cellByCell({ rating: counted(ratings), minutes: counted(minutes) }, (session) =>
    sessionLoadOf(session.rating, session.minutes),
  );
}

const unreportedDays: Words<"missing" | "rest"> = ["missing", "rest"];

/**
 * Load of each day from a diary of sessions, down the column with its date: sessions of a day add up. A session without a load
 * (a dash) leaves its day without a total.
 * @customfunction DAILYLOADS
 * @param dates Dates of the sessions, e.g. A4:A200.
 * @param loads Session loads, 0 or more, e.g. D4:D200.
 * @param firstDay First day of the answer, a date, e.g. A4.
 * @param lastDay Last day of the answer, a date, e.g. A200.
 * @param [unreported] What a day without any session is: missing (when left out) or rest, a load of 0.
 * @returns Dates (format them as dates) and loads in arbitrary units side by side; an empty cell for a missing day.
 * @example =TAPELINE.DAILYLOADS({46244;46244;46246},{540;240;360},46244,46247)
 * @source Foster et al. 2001, J Strength Cond Res 15:109-115 (abstract read).
 */
export function dailyLoads(dates: any[][], loads: any[][], firstDay: any, lastDay: any, unreported?: string): any[][] {
  const sessions = paired(["dates", values(dated(dates)).flat()], ["loads", daysOf(loads)]);
  const first = dayOf(firstDay, say`first day`);
  const totals = answer(
    dayTotals(
      sessions.flatMap(([day, load]): DiaryEntry[] => (day === null ? [] : [{ day, load }])),
      {
        firstDay: first,
        lastDay: dayOf(lastDay, say`last day`),
        unreported: wordOf(unreported, unreportedDays, say`meaning of a day without sessions`),
      },
    ),
  );
  return labelled(totals.map((total, index) => [first + index, total]));
}

const starts: Words<"firstLoad" | "meanOfSpan"> = ["firstLoad", "meanOfSpan"];

/**
 * Exponentially weighted average of daily loads on each day, weight 2 / (span + 1) (Williams et al. 2017). Start and weight differ
 * between publications: print both. A 0 is a rest day; write a dash for a day nobody reported, since an empty cell may arrive as 0.
 * @customfunction LOADEWMA
 * @param loads One load for each consecutive day, the oldest first, e.g. D4:D60.
 * @param span Days of the span, e.g. 7 or 28.
 * @param [start] Begins with the firstLoad (when left out) or with the meanOfSpan, the mean of the first days of the span.
 * @returns Averages in the unit of the loads, one beside each day; an empty cell where there is none.
 * @example =TAPELINE.LOADEWMA({420;0;360;300;0;480;240},7)
 * @source Williams et al. 2017, Br J Sports Med 51:209-210 (from memory).
 */
export function loadAverage(loads: any[][], span: any, start?: string): any[][] {
  const options = { span: wholeNumberOf(span, "span"), start: wordOf(start, starts, "start") };
  return inPlaces(loads, answer(exponentiallyWeightedAverage(daysOf(loads), options)));
}

/**
 * Mean load of the days up to each day. A 0 is a rest day; write a dash for a day nobody reported, since an empty cell may arrive
 * as 0.
 * @customfunction LOADMEAN
 * @param loads One load for each consecutive day, the oldest first, e.g. D4:D60.
 * @param days How many days the mean goes back, e.g. 7.
 * @param [reported] How many of them must be reported, e.g. 5; all when left out.
 * @returns Means in the unit of the loads, one beside each day; an empty cell where too few days are there.
 * @example =TAPELINE.LOADMEAN({420;0;360;300;0;480;240},3)
 * @source Arithmetic.
 */
export function loadMean(loads: any[][], days: any, reported?: any): any[][] {
  const window = wholeNumberOf(days, say`number of days`);
  const reportedDays = wholeNumberOf(reported, say`number of reported days`, window);
  return inPlaces(loads, answer(rollingAverage(daysOf(loads), { window, reportedDays })));
}

const divisors: Words<"n - 1" | "n"> = ["n - 1", "n"];

/**
 * Weekly summary of daily loads, one line for each seven days: total, days reported, mean, standard deviation, monotony (mean / standard
 * deviation) and strain (total times monotony, Foster 1998). A 0 is a rest day; a dash is a day nobody reported, and leaves its
 * week without monotony.
 * @customfunction WEEKLOADS
 * @param loads One load for each consecutive day from the first day of a week on, in a column or seven to a row, e.g. D4:D31.
 * @param [divisor] Of the standard deviation: n-1 (when left out, as in STDEV.S) or n; monotony differs by 8 %.
 * @returns A table with a line for each week; totals, means, deviations and strain in the unit of the loads.
 * @example =TAPELINE.WEEKLOADS({420;0;360;300;0;480;240})
 * @source Foster 1998, Med Sci Sports Exerc 30:1164-1168 (from memory).
 */
export function weekLoads(loads: any[][], divisor?: string): any[][] {
  const days = daysOf(loads);
  const options = { divisor: wordOf(divisor, divisors, "divisor") };
  const weeks = Array.from({ length: Math.ceil(days.length / 7) }, (_, week) => days.slice(7 * week, 7 * week + 7));
  return [
    [say`Week`, say`Total`, say`Days reported`, say`Mean`, say`Standard deviation`, say`Monotony`, say`Strain`],
    ...weeks.map((week, index) => {
      const summary = weekSummary(week, options);
      return [
        index + 1,
        cell(summary, ({ total }) => total),
        cell(summary, ({ daysReported }) => daysReported),
        cell(summary, ({ mean }) => mean),
        cell(summary, ({ standardDeviation }) => standardDeviation),
        cell(summary, ({ monotony }) => monotony),
        cell(summary, ({ strain }) => strain),
      ];
    }),
  ];
}

const forms: Words<AcuteChronicForm> = ["uncoupled", "coupled", "exponential"];

/**
 * Acute:chronic load ratio on the last day, from 28 reported days in a row. It describes how the load moved; it predicts no injury and
 * has no safe zone, and the two loads correlate by construction. A 0 is a rest day; a dash is a day nobody reported.
 * @customfunction ACUTECHRONIC
 * @param loads One load for each consecutive day, the oldest first, 28 or more, e.g. D4:D60.
 * @param [form] uncoupled (7 days over the 21 before, when left out), coupled (7 over 28) or exponential (weighted averages).
 * @returns Ratio without unit, e.g. 1.12.
 * @example =TAPELINE.ACUTECHRONIC({420;0;360;300;0;480;240;400;0;380;320;0;500;200;450;0;390;300;0;520;260;430;0;370;340;0;510;250})
 * @source Exponential form: Williams et al. 2017, Br J Sports Med 51:209-210 (from memory); criticism: Lolli et al. 2019, Br J Sports Med 53:921-922 (as quoted), Impellizzeri et al. 2021, Sports Med 51:581-592 (abstract read).
 */
export function acuteChronic(loads: any[][], form?: string): number {
  return answer(acuteChronicRatio(daysOf(loads), { form: wordOf(form, forms, say`form of the ratio`) })).ratio;
}

/**
 * Daily counts of one kind of action (throws, jumps) as a table: total, days reported, largest day and largest four days in a row. A
 * 0 is a count; write a dash for a day nobody counted, since an empty cell may arrive as 0.
 * @customfunction ACTIONCOUNTS
 * @param counts One whole number for each consecutive day, e.g. D4:D31.
 * @returns A table of labels and counts.
 * @example =TAPELINE.ACTIONCOUNTS({85;0;60;110;0;140;30})
 * @source Common practice, no source.
 */
export function actionCounts(counts: any[][]): any[][] {
  const summary = answer(actionCountsOf(daysOf(counts)));
  return labelled([
    [say`Total`, summary.total],
    [say`Days reported`, summary.daysReported],
    [say`Largest day`, summary.largestDay],
    [say`Largest four days in a row`, summary.largestFourDays],
    ...cautionLines(summary.cautions),
  ]);
}
