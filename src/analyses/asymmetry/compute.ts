import { judgeAsymmetry } from "../../engine/asymmetry/judgeAsymmetry";
import { limbVariability } from "../../engine/asymmetry/limbVariability";
import { noiseLimit } from "../../engine/asymmetry/noiseLimit";
import { percentDifference } from "../../engine/asymmetry/percentDifference";
import { tooFew } from "../../engine/refusals";
import { noiseOfAthletes } from "../../engine/reliability/noiseOfAthletes";
import { trialNoise } from "../../engine/reliability/trialNoise";
import { ok, type Result, refuse, valueOr } from "../../engine/result";
import { say } from "../../language/say";
import type { TestResult } from "../../reading/testResult";
import type { Background } from "../../store/background";
import type { Answer } from "../analysis";
import { latestDaysNote, ofLatestDays, usedOfLatestDays } from "../sessions";
import { assumedDirection, factsOf, type TestFacts } from "../testFacts";
import { trialScore } from "../trialScore";
import type { AsymmetryChoices, AsymmetryRow, AsymmetrySettings } from "./asymmetry";
import * as words from "./words";

const confidence = 0.95;

type Trials = { readonly athlete: string; readonly left: number[]; readonly right: number[] };

/** Each athlete's two scores, their difference, and the difference held against the noise and the coach's threshold. */
export function compute(
  results: readonly TestResult[],
  settings: AsymmetrySettings,
  background: Background,
): Result<Answer<AsymmetryRow>> {
  const squad = trialsByAthlete(ofLatestDays(results));
  if (squad.length === 0) return refuse(tooFew(say`athletes with a result`, 1, 0));
  const facts = factsOf(results[0]!, settings, background);
  const choices: AsymmetryChoices = { ...settings, direction: facts.direction, reduction: facts.reduction };
  const group = valueOr(trialNoise(squad.flatMap(bothSides), { confidence }), null);
  const limits = limitsFor(squad, choices);
  const used = usedOfLatestDays(results);
  const rows = squad.map((trials, index) => judge(trials, choices, limits[index]!)).sort(largestFirst);
  return ok({
    rows,
    summary: words.summary(rows, choices, group),
    cautions: [...words.cautions(rows, choices, group), ...notesOf(results, facts)],
    method: words.method(choices),
    ...(used ? { used } : {}),
    leftOut: [],
  });
}

const notesOf = (results: readonly TestResult[], facts: TestFacts): string[] =>
  [latestDaysNote(results), assumedDirection(facts)].filter((note) => note !== null);

const bothSides = ({ left, right }: Trials): readonly (readonly number[])[] => [left, right];

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

function judge(trials: Trials, settings: AsymmetryChoices, noise: number | null): AsymmetryRow {
  const left = trialScore(trials.left, settings);
  const right = trialScore(trials.right, settings);
  const row = {
    athlete: trials.athlete,
    left,
    right,
    variation: valueOr(limbVariability(trials.left, trials.right), null)?.limit ?? null,
    leftTrials: trials.left.length,
    rightTrials: trials.right.length,
  };
  if (left === null || right === null) {
    const verdict = words.sideMissing(trials, settings, left, right);
    return { ...row, asymmetry: null, stronger: "", noise: null, verdict, beyond: null, within: null };
  }
  const asymmetry = percentDifference(left, right);
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

function strongerSide(left: number, right: number, { direction }: AsymmetryChoices): string {
  if (left === right) return words.even;
  return right > left === (direction === "higher") ? words.right : words.left;
}

/** For each athlete the size that noise alone explains, in percent of the larger side; null where it is not known. */
function limitsFor(squad: readonly Trials[], { noise, reduction }: AsymmetryChoices): (number | null)[] {
  if (noise === "variability") {
    return squad.map(({ left, right }) => valueOr(limbVariability(left, right), null)?.limit ?? null);
  }
  const noises = noiseOfAthletes(squad.map(bothSides), noise);
  return squad.map(({ left, right }, index) => {
    const own = valueOr(noises[index]!, null);
    if (own === null) return null;
    const counts = { leftCount: left.length, rightCount: right.length };
    return valueOr(noiseLimit({ noise: own, ...counts, reduction, confidence }), null)?.percent ?? null;
  });
}

/** Athletes without an answer come last. */
const largestFirst = (a: AsymmetryRow, b: AsymmetryRow): number =>
  Math.abs(b.asymmetry ?? -1) - Math.abs(a.asymmetry ?? -1) ||
  (a.asymmetry === null ? 1 : 0) - (b.asymmetry === null ? 1 : 0);
