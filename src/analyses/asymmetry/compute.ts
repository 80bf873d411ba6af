import { judgeAsymmetry } from "../../engine/asymmetry/judgeAsymmetry";
import { limbVariability } from "../../engine/asymmetry/limbVariability";
import { noiseLimit } from "../../engine/asymmetry/noiseLimit";
import { percentDifference } from "../../engine/asymmetry/percentDifference";
import { tooFew } from "../../engine/refusals";
import { type TrialNoise, trialNoise } from "../../engine/reliability/trialNoise";
import { ok, type Result, refuse } from "../../engine/result";
import { reduceTrials } from "../../engine/trials/reduceTrials";
import type { TestResult } from "../../reading/readResults";
import type { Answer } from "../analysis";
import type { AsymmetryRow, AsymmetrySettings } from "./asymmetry";
import * as words from "./words";

const confidence = 0.95;

type Trials = { readonly athlete: string; readonly left: number[]; readonly right: number[] };

/** Each athlete's two scores, their difference, and the difference held against the noise and the coach's threshold. */
export function compute(results: readonly TestResult[], settings: AsymmetrySettings): Result<Answer<AsymmetryRow>> {
  const squad = trialsByAthlete(results);
  if (squad.length === 0) return refuse(tooFew("athletes with a result", 1, 0));
  const pooled = trialNoise(
    squad.flatMap(({ left, right }) => [left, right]),
    { confidence },
  );
  const group = pooled.ok ? pooled.value : null;
  const rows = squad.map((trials) => judge(trials, settings, group)).sort(largestFirst);
  return ok({
    rows,
    summary: words.summary(rows, settings, group),
    cautions: words.cautions(rows, settings, group),
    method: words.method(settings),
    leftOut: [],
  });
}

function trialsByAthlete(results: readonly TestResult[]): Trials[] {
  const squad = new Map<string, Trials>();
  for (const { athlete, side, value } of results) {
    if (side === null) continue;
    const trials = squad.get(athlete) ?? { athlete, left: [], right: [] };
    squad.set(athlete, trials);
    trials[side].push(value);
  }
  return [...squad.values()];
}

function judge(trials: Trials, settings: AsymmetrySettings, group: TrialNoise | null): AsymmetryRow {
  const left = scoreOf(trials.left, settings);
  const right = scoreOf(trials.right, settings);
  const variability = limbVariability(trials.left, trials.right);
  const row = {
    athlete: trials.athlete,
    left,
    right,
    variation: variability.ok ? variability.value.limit : null,
    leftTrials: trials.left.length,
    rightTrials: trials.right.length,
  };
  if (left === null || right === null) {
    const verdict = words.sideMissing(trials, settings, left, right);
    return { ...row, asymmetry: null, stronger: "", noise: null, verdict, beyond: null, within: null };
  }
  const asymmetry = percentDifference(left, right);
  const noise = limitFor(trials, settings, group);
  const code = judgeAsymmetry({ asymmetry, noiseLimit: noise, threshold: settings.threshold });
  const isBeyond = code === "beyondNoise" || code === "beyondNoiseAndThreshold";
  return {
    ...row,
    asymmetry,
    stronger: strongerSide(left, right, settings),
    noise,
    verdict: words.verdict(code, settings),
    beyond: isBeyond ? asymmetry : null,
    within: isBeyond ? null : asymmetry,
  };
}

function scoreOf(trials: readonly number[], { reduction, direction }: AsymmetrySettings): number | null {
  const reduced = reduceTrials(trials, { reduction, direction });
  return reduced.ok ? reduced.value.score : null;
}

function strongerSide(left: number, right: number, { direction }: AsymmetrySettings): string {
  if (left === right) return words.even;
  return right > left === (direction === "higher") ? words.right : words.left;
}

/** The size that noise alone explains, in percent of the larger side; null where there is nothing to learn it from. */
function limitFor(trials: Trials, settings: AsymmetrySettings, group: TrialNoise | null): number | null {
  if (settings.noise === "variability") {
    const variability = limbVariability(trials.left, trials.right);
    return variability.ok ? variability.value.limit : null;
  }
  const own = settings.noise === "athlete" ? trialNoise([trials.left, trials.right], { confidence }) : null;
  const noise = own === null ? group : own.ok ? own.value : null;
  if (noise === null) return null;
  const limit = noiseLimit({
    noise,
    leftCount: trials.left.length,
    rightCount: trials.right.length,
    reduction: settings.reduction,
    confidence,
  });
  return limit.ok ? limit.value.percent : null;
}

/** Athletes without an answer come last. */
const largestFirst = (a: AsymmetryRow, b: AsymmetryRow): number =>
  Math.abs(b.asymmetry ?? -1) - Math.abs(a.asymmetry ?? -1) ||
  (a.asymmetry === null ? 1 : 0) - (b.asymmetry === null ? 1 : 0);
