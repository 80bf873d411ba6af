import { eccentricUtilisationRatio } from "../../engine/jumps/eccentricUtilisationRatio";
import { type JumpPower, jumpPower } from "../../engine/jumps/jumpPower";
import { missing } from "../../engine/refusals";
import { ok, type Refusal, type Result, refuse, valueOr } from "../../engine/result";
import { squadRanks } from "../../engine/standing/squadRanks";
import type { Direction } from "../../engine/trials/reduction";
import { say } from "../../language/say";
import type { TestResult } from "../../reading/testResult";
import type { Background } from "../../store/background";
import type { Answer } from "../analysis";
import { type Body, bodiesOf } from "../bodies";
import { groupBy } from "../groupBy";
import { ofLatestDay } from "../measuredAttempts";
import { type JumpAttempt, jumpAttempts } from "./jumpAttempts";
import type { JumpKind } from "./jumpNames";
import type { JumpsRow, JumpsSettings } from "./jumps";
import * as words from "./words";

const millisecondsPerSecond = 1000;

/** One row for each athlete: the best jump of each kind on its latest day, and what follows from them. */
export function compute(
  results: readonly TestResult[],
  settings: JumpsSettings,
  background: Background,
): Result<Answer<JumpsRow>> {
  const { jumps, leftOut } = jumpAttempts(results, settings.others === "none" ? null : settings.others);
  if (jumps.length === 0) return refuse(noJump);
  const bodyOf = bodiesOf(results, background);
  const bests = [...groupBy(jumps, ({ attempt }) => attempt.athlete).values()].map(bestOfEach);
  const heightRanks = ranks(bests, ({ countermovement }) => countermovement?.height, "higher");
  const reactiveRanks = ranks(bests, ({ drop }) => drop?.reactive, "higher");
  const standings = dropStandings(bests);
  const rows = bests.map((best, index): JumpsRow => {
    const { athlete, countermovement, squat, drop } = best;
    const forPower = countermovement ?? squat;
    const power = forPower && powerOf(forPower, bodyOf(athlete, forPower.attempt.date), settings);
    const isOneDay = countermovement?.attempt.date === squat?.attempt.date;
    const utilisation =
      countermovement && squat && isOneDay
        ? valueOr(eccentricUtilisationRatio(countermovement.height, squat.height), null)
        : null;
    return {
      athlete,
      countermovement: countermovement?.height ?? null,
      heightRank: heightRanks[index]!,
      squat: squat?.height ?? null,
      utilisation: utilisation?.ratio ?? null,
      power: power?.ok ? power.value.watts : null,
      relativePower: power?.ok ? power.value.wattsPerKilogram : null,
      drop: drop?.height ?? null,
      contact: drop?.contact == null ? null : drop.contact * millisecondsPerSecond,
      reactive: drop?.reactive ?? null,
      reactiveRank: reactiveRanks[index]!,
      verdict: words.verdict({
        utilisation,
        areOnTwoDays: countermovement !== null && squat !== null && !isOneDay,
        power,
        drop,
        standing: standings[index]!,
      }),
    };
  });
  return ok({
    rows: rows.sort(bestFirst),
    summary: words.summary(rows),
    cautions: words.cautions(rows, jumps),
    method: words.method(settings),
    leftOut,
  });
}

const noJump: Refusal = {
  code: "noJump",
  message: say`There is no vertical jump with a height or a flight time. Name the tests after the jump, or say what other jumps are.`,
  facts: {},
};

type BestJumps = Readonly<Record<JumpKind, JumpAttempt | null>> & { readonly athlete: string };

function bestOfEach(own: readonly JumpAttempt[]): BestJumps {
  const best = (kind: JumpKind): JumpAttempt | null => {
    const latest = ofLatestDay(
      own.filter((jump) => jump.kind === kind).map((jump) => ({ jump, date: jump.attempt.date })),
    );
    const ordered = latest
      .map(({ jump }) => jump)
      .sort((a, b) => (b.reactive ?? 0) - (a.reactive ?? 0) || b.height - a.height);
    return ordered[0] ?? null;
  };
  return {
    athlete: own[0]!.attempt.athlete,
    countermovement: best("countermovement"),
    squat: best("squat"),
    drop: best("drop"),
  };
}

function powerOf({ height }: JumpAttempt, { mass, stature }: Body, { equation }: JumpsSettings): Result<JumpPower> {
  if (mass === null) return refuse(missing(say`body mass`));
  return jumpPower(height, mass, { equation, statureCentimetres: stature });
}

function ranks(
  bests: readonly BestJumps[],
  scoreOf: (best: BestJumps) => number | null | undefined,
  direction: Direction,
): (number | null)[] {
  const scores = bests.map((best) => scoreOf(best) ?? null);
  return valueOr(squadRanks(scores, { direction }), null) ?? scores.map(() => null);
}

/** Fewer drop jumps than this have no thirds worth a word. */
const fewestForThirds = 6;

/** Whether an athlete's drop jump is of the squad's highest or lowest third and of its shortest or longest contacts. */
export type DropStanding = { readonly height: Third; readonly contact: Third };
type Third = "first" | "middle" | "last";

function dropStandings(bests: readonly BestJumps[]): (DropStanding | null)[] {
  const reactive = bests.filter(({ drop }) => drop?.reactive != null);
  const heights = ranks(reactive, ({ drop }) => drop?.height, "higher");
  const contacts = ranks(reactive, ({ drop }) => drop?.contact, "lower");
  const third = (rank: number): Third =>
    rank <= reactive.length / 3 ? "first" : rank > (2 * reactive.length) / 3 ? "last" : "middle";
  return bests.map((best) => {
    const at = reactive.indexOf(best);
    if (at < 0 || reactive.length < fewestForThirds) return null;
    return { height: third(heights[at]!), contact: third(contacts[at]!) };
  });
}

const bestFirst = (a: JumpsRow, b: JumpsRow): number =>
  (b.countermovement ?? -1) - (a.countermovement ?? -1) || (b.reactive ?? -1) - (a.reactive ?? -1);
