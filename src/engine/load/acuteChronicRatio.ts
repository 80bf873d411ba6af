import { say } from "../../language/say";
import type { Caution } from "../caution";
import { mean } from "../moments";
import { presentValues } from "../presentValues";
import { tooFew } from "../refusals";
import { ok, type Refusal, type Result, refuse, unwrap } from "../result";
import { type DailyValues, dailyValueRefusals } from "./dailyValues";
import { exponentiallyWeightedAverage } from "./exponentiallyWeightedAverage";

/**
 * "coupled": mean of 7 days over mean of 28, the 7 among them. "uncoupled": over the mean of the 21 days before them.
 * "exponential": exponentially weighted averages with spans of 7 and 28 days, started with the first load.
 */
export type AcuteChronicForm = "coupled" | "uncoupled" | "exponential";

export type AcuteChronicRatio = {
  readonly acute: number;
  readonly chronic: number;
  readonly ratio: number;
  /** Always carries the criticism of the ratio. */
  readonly cautions: readonly Caution[];
};

const acuteDays = 7;
const chronicDays = 28;
/** Below this share of the acute load the three weeks before are a break, and the ratio explodes: common practice, no source. */
const leastEarlierShare = 0.25;

/**
 * Acute:chronic load ratio on the last of the given days. A description of how the load moved, not a risk: its criticism is part of
 * the answer, and there is no safe zone. Refuses fewer than 28 days, a missing day among the last 28, negative loads, and a
 * mean of the three weeks before the last one below a quarter of the last week's (or zero).
 *
 * Source: Williams et al. 2017, Br J Sports Med 51:209-210 (from memory) for the exponential form.
 */
export function acuteChronicRatio(
  days: DailyValues,
  { form }: { readonly form: AcuteChronicForm },
): Result<AcuteChronicRatio> {
  const refusals = dailyValueRefusals(days, say`day total`);
  const recent = presentValues(days.slice(-chronicDays));
  if (recent.length < chronicDays) refusals.push(tooFew(say`reported days in a row`, chronicDays, recent.length));
  if (refusals.length > 0) return refuse(...refusals);

  const lastWeek = mean(recent.slice(-acuteDays));
  const before = mean(recent.slice(0, -acuteDays));
  if (before === 0 || before < leastEarlierShare * lastWeek) return refuse(notEnoughChronicLoad(before, lastWeek));

  const { acute, chronic } = averagesOf(form, days, { lastWeek, before, month: mean(recent) });
  return ok({ acute, chronic, ratio: acute / chronic, cautions: [criticism] });
}

function averagesOf(
  form: AcuteChronicForm,
  days: DailyValues,
  { lastWeek, before, month }: { readonly lastWeek: number; readonly before: number; readonly month: number },
): { readonly acute: number; readonly chronic: number } {
  if (form === "coupled") return { acute: lastWeek, chronic: month };
  if (form === "uncoupled") return { acute: lastWeek, chronic: before };
  return { acute: lastAverage(days, acuteDays), chronic: lastAverage(days, chronicDays) };
}

/** The exponentially weighted average on the last day, which was reported. */
const lastAverage = (days: DailyValues, span: number): number =>
  unwrap(exponentiallyWeightedAverage(days, { span })).at(-1)!;

/**
 * Lolli et al. 2019, Br J Sports Med 53:921-922 (r 0.52 as quoted by Windt & Gabbett 2019, read); Impellizzeri et al. 2021,
 * Sports Med 51:581-592 (abstract read).
 */
const criticism: Caution = {
  code: "ratioCriticised",
  get message() {
    return say`This ratio describes how the load moved; it does not predict injury and has no safe zone. Acute and chronic load correlate by construction (about 0.5 in random data), and findings stay when the chronic load is replaced by random numbers.`;
  },
  facts: {},
};

const notEnoughChronicLoad = (before: number, lastWeek: number): Refusal => ({
  code: "notEnoughChronicLoad",
  message: say`The three weeks before the last one hold too little load to compare with, as after a break; read the loads themselves.`,
  facts: { before, lastWeek },
});
