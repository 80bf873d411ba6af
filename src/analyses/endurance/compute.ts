import type { Caution } from "../../engine/caution";
import { intervalRunLength } from "../../engine/endurance/intervalRunLength";
import { tooFew } from "../../engine/refusals";
import { ok, type Result, refuse, valueOr } from "../../engine/result";
import { squadRanks } from "../../engine/standing/squadRanks";
import type { Direction } from "../../engine/trials/reduction";
import { say } from "../../language/say";
import type { TestResult } from "../../reading/testResult";
import { type Background, memberCalled } from "../../store/background";
import type { Answer, CellRemark, Occasion } from "../analysis";
import { bodiesOf } from "../bodies";
import { groupBy } from "../groupBy";
import { inUnit, ofLatestDay } from "../measuredAttempts";
import { factsOf } from "../testFacts";
import type { EnduranceRow, EnduranceSettings } from "./endurance";
import { type Endurance, type Protocol, protocols, type Runner } from "./protocols";
import * as words from "./words";

const asSetUp = { direction: "asSetUp", reduction: "asSetUp" } as const;

type Run = { readonly result: TestResult; readonly date: string | null; readonly endurance: Endurance };

/** One row for each athlete: the best result of the latest day, its speed, and what the protocol's equation makes of it. */
export function compute(
  results: readonly TestResult[],
  settings: EnduranceSettings,
  background: Background,
  occasion?: Occasion,
): Result<Answer<EnduranceRow>> {
  const protocol = protocols[settings.protocol];
  const leftOut: CellRemark[] = [];
  const bodyOf = bodiesOf(results, background);
  const runs = results.flatMap((result): Run[] => {
    const day = result.date ?? occasion?.today ?? null;
    const age = ageOn(day, memberCalled(background, result.athlete)?.birthYear ?? null);
    const runner = runnerOf(settings, age, bodyOf(result.athlete, result.date).mass);
    const read = readResult(result, protocol, runner);
    if (typeof read !== "string") return [{ result, date: result.date, endurance: read }];
    leftOut.push({ cell: result.cell, why: read });
    return [];
  });
  if (runs.length === 0)
    return refuse(tooFew(say`results that can be of this protocol`, 1, 0), ...words.firstReason(leftOut));
  const better = protocol.better ?? factsOf(runs[0]!.result, asSetUp, background).direction;
  const bests = [...groupBy(runs, ({ result }) => result.athlete).values()].map((own) => best(own, better));
  const scores = bests.map(({ result }) => result.value);
  const ranks = valueOr(squadRanks(scores, { direction: better }), null);
  const unordered = bests.map(({ result, endurance: { speed, uptake } }, index): EnduranceRow => {
    const run =
      protocol.setsIntervals && speed !== null
        ? valueOr(intervalRunLength(speed, settings.intensity, settings.intervalSeconds), null)
        : null;
    return {
      athlete: result.athlete,
      result: result.value,
      rank: ranks?.[index] ?? null,
      speed,
      uptake: uptake?.ok ? uptake.value.oxygenUptake : null,
      run,
      verdict: words.verdict(uptake),
    };
  });
  const rows = unordered.sort((a, b) => (a.rank ?? 0) - (b.rank ?? 0));
  const cautions = bests.flatMap(({ endurance: { uptake } }): readonly Caution[] =>
    uptake?.ok ? uptake.value.cautions : [],
  );
  return ok({
    rows,
    summary: words.summary(rows, settings, protocol),
    cautions: words.cautions(rows, cautions, protocol, results),
    method: words.method(settings, protocol),
    leftOut,
  });
}

const runnerOf = (settings: EnduranceSettings, age: number | null, bodyMass: number | null): Runner => ({
  sex: settings.sex,
  age,
  bodyMass,
  firstStageSpeed: settings.firstStage === "at80" ? 8 : 8.5,
  runMinutes: settings.runMinutes,
  runMetres: settings.runMetres,
});

/** What a result comes to in the protocol, or why it cannot be one of it. */
function readResult({ value, unit }: TestResult, protocol: Protocol, runner: Runner): Endurance | string {
  const inProtocol = valueIn(protocol.unit, value, unit);
  if (inProtocol === null) return words.otherUnit(protocol, unit);
  const read = protocol.read(inProtocol, runner);
  return read.ok ? read.value : read.reasons.map(({ message }) => message).join(" ");
}

function valueIn(wanted: Protocol["unit"], value: number, unit: string | null): number | null {
  if (wanted === "any") return value;
  return wanted === null ? (unit === null ? value : null) : inUnit(value, unit, wanted);
}

/** Years a person of that birth year completes in the year of the day: at most one more than the true age. */
const ageOn = (day: string | null, birthYear: number | null): number | null =>
  day === null || birthYear === null ? null : Number(day.slice(0, 4)) - birthYear;

function best(runs: readonly Run[], better: Direction): Run {
  const sign = better === "higher" ? -1 : 1;
  return ofLatestDay(runs).sort((a, b) => sign * (a.result.value - b.result.value))[0]!;
}
