import { jumpPower } from "../engine/jumps/jumpPower";
import { powerEquations } from "../engine/jumps/powerEquations";
import { valueOr } from "../engine/result";
import { strengthEquations } from "../engine/strength/equations";
import { relativeStrength } from "../engine/strength/relativeStrength";
import { type MeasureKey, measureOf } from "../reading/measures";
import type { TestResult } from "../reading/testResult";
import type { Background } from "../store/background";
import { type Body, bodiesOf } from "./bodies";
import { jumpAttempts } from "./jumps/jumpAttempts";
import { firstCell, type MeasuredAttempt } from "./measuredAttempts";
import { modelOf } from "./sprints/modelOf";
import { sprintRuns } from "./sprints/sprintRuns";
import { deficitOf, turnsOf } from "./sprints/turns";
import { liftedSets } from "./strength/sets";

type BodyOf = (athlete: string, date: string | null) => Body;

/**
 * Results that follow from the measured ones, one for each attempt, so that they can be taken as any other series (which
 * analysis gets them says `seriesOf`): estimated maximum and strength per body mass of a set, height of a jump by its time
 * in the air, reactive strength index and peak power, maximal speed of a sprint, deficit of a 505. Each keeps athlete,
 * test, side, day and attempt of its source and stands at its first cell. By the first equation that is offered for each,
 * times as by gates, and the first 10 m: choices belong to the analyses. What cannot be computed is not there; the
 * analyses say why.
 */
export function derivedResults(results: readonly TestResult[], background: Background): TestResult[] {
  const bodyOf = bodiesOf(results, background);
  return [...ofSets(results, bodyOf), ...ofJumps(results, bodyOf), ...ofSprints(results)];
}

function ofSets(results: readonly TestResult[], bodyOf: BodyOf): TestResult[] {
  return liftedSets(results, strengthEquations[0]!.name).sets.flatMap(({ attempt, estimate: { maximum } }) => {
    const { mass } = bodyOf(attempt.athlete, attempt.date);
    return [
      ...derived(attempt, "estimatedMaximum", maximum),
      ...derived(attempt, "relativeStrength", mass === null ? null : valueOr(relativeStrength(maximum, mass), null)),
    ];
  });
}

function ofJumps(results: readonly TestResult[], bodyOf: BodyOf): TestResult[] {
  const equation = powerEquations[0]!.name;
  const { jumps } = jumpAttempts(results, null);
  // Heights by another instrument do not compare: where a test has measured ones, none is added to them.
  const measured = new Set(jumps.filter(({ isFromFlight }) => !isFromFlight).map(({ attempt }) => attempt.test));
  return jumps.flatMap(({ attempt, kind, height, reactive }) => {
    const ofFlight = derived(attempt, "jumpHeight", measured.has(attempt.test) ? null : height);
    if (kind === "drop") return [...ofFlight, ...derived(attempt, "reactiveStrengthIndex", reactive)];
    const { mass } = bodyOf(attempt.athlete, attempt.date);
    const power = mass === null ? null : valueOr(jumpPower(height, mass, { equation }), null);
    return [...ofFlight, ...derived(attempt, "peakPower", power?.watts ?? null)];
  });
}

function ofSprints(results: readonly TestResult[]): TestResult[] {
  const { runs } = sprintRuns(results, "gates");
  const speeds = runs.flatMap((run) =>
    derived(run.attempt, "maximalSpeed", valueOr(modelOf(run), null)?.maximalVelocity.value ?? null),
  );
  const deficits = turnsOf(results).turns.flatMap((turn): TestResult[] => {
    const deficit = deficitOf(turn, runs, "first 10 m");
    // A turn no slower than the straight run: one of the times must be wrong.
    return deficit?.ok && deficit.value.seconds > 0
      ? [{ ...turn.result, measure: "deficit", value: deficit.value.seconds, unit: measureOf("deficit").unit }]
      : [];
  });
  return [...speeds, ...deficits];
}

function derived(attempt: MeasuredAttempt, measure: MeasureKey, value: number | null): TestResult[] {
  if (value === null) return [];
  const { athlete, test, side, date, group, attempt: number } = attempt;
  const { unit } = measureOf(measure);
  return [{ athlete, test, measure, side, date, group, attempt: number, value, unit, cell: firstCell(attempt) }];
}
