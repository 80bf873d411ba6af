import { say } from "../../language/say";
import type { Caution } from "../caution";
import { mean, standardDeviation } from "../moments";
import { presentValues } from "../presentValues";
import { tooFew } from "../refusals";
import { ok, type Refusal, type Result, refuse } from "../result";
import { type DailyValues, dailyValueRefusals } from "./dailyValues";

export type WeekSummary = {
  readonly total: number;
  readonly daysReported: number;
  /** The rest is `null` when a day is missing; monotony and strain also when all days are equal. */
  readonly mean: number | null;
  readonly standardDeviation: number | null;
  readonly monotony: number | null;
  readonly strain: number | null;
  readonly cautions: readonly Caution[];
};

const daysOfWeek = 7;

/**
 * Training load of one week from its seven day totals, rest days counting as 0: total, mean, standard deviation,
 * monotony = mean / standard deviation, strain = total x monotony. With a missing day there is a total of the reported days only.
 * `divisor` of the standard deviation: "n - 1" as in STDEV.S (the default) or "n"; sources do not say which, and monotony
 * differs by the factor 1.080. Refuses other than seven days, none reported, and negative loads.
 *
 * Source: Foster 1998, Med Sci Sports Exerc 30:1164-1168 (from memory). A monotony above 2 was an observation in endurance
 * athletes, no validated limit.
 */
export function weekSummary(
  days: DailyValues,
  { divisor = "n - 1" }: { readonly divisor?: "n - 1" | "n" } = {},
): Result<WeekSummary> {
  const refusals = dailyValueRefusals(days, say`day total`);
  if (days.length !== daysOfWeek) refusals.push(notAWeek(days.length));
  const reported = presentValues(days);
  if (reported.length === 0) refusals.push(tooFew(say`reported days`, 1, 0));
  if (refusals.length > 0) return refuse(...refusals);

  const total = reported.reduce((sum, load) => sum + load, 0);
  const summary = {
    total,
    daysReported: reported.length,
    mean: null,
    standardDeviation: null,
    monotony: null,
    strain: null,
  };
  if (reported.length < daysOfWeek) return ok({ ...summary, cautions: [daysMissing(daysOfWeek - reported.length)] });

  const average = mean(reported);
  const spread = standardDeviation(reported) * (divisor === "n" ? Math.sqrt((daysOfWeek - 1) / daysOfWeek) : 1);
  if (spread === 0) return ok({ ...summary, mean: average, standardDeviation: 0, cautions: [noVariation] });
  const monotony = average / spread;
  return ok({ ...summary, mean: average, standardDeviation: spread, monotony, strain: total * monotony, cautions: [] });
}

const notAWeek = (days: number): Refusal => ({
  code: "notAWeek",
  message: say`A week has seven days; ${days} were given. Leave days nobody reported blank and type 0 for rest.`,
  facts: { days },
});

const daysMissing = (missing: number): Caution => ({
  code: "daysMissing",
  message:
    missing === 1
      ? say`1 of the 7 days was not reported: the total counts the others only, and monotony is not given. Type 0 for a rest day.`
      : say`${missing} of the 7 days were not reported: the total counts the others only, and monotony is not given. Type 0 for a rest day.`,
  facts: { missing },
});

const noVariation: Caution = {
  code: "noVariation",
  get message() {
    return say`All seven days are equal; monotony is not defined without variation.`;
  },
  facts: {},
};
