import { mean, withoutRounding } from "../engine/moments";
import type { Direction } from "../engine/trials/reduction";
import { say } from "../language/say";
import type { TestResult } from "../reading/testResult";
import { choice } from "./fields";
import { groupBy } from "./groupBy";
import { daysOf } from "./sessions";
import type { TestFacts } from "./testFacts";
import { trialScore } from "./trialScore";

/** One athlete's score in one test: of both sides together where the test has two. */
export type AthleteScore = {
  readonly athlete: string;
  /** Role, or group; null where nothing says it. */
  readonly group: string | null;
  /** In the unit of the results; null where there is none, and then `why` says so. */
  readonly score: number | null;
  readonly why: string;
  /** Day of the session the score is from, ISO; null where the sheet does not say. */
  readonly date: string | null;
  /** The results of that session. */
  readonly results: readonly TestResult[];
};

/** How the two sides of a test become one score, and which of several days counts. */
export type ScoreChoices = {
  readonly sides: "mean" | "better" | "weaker";
  readonly day: "latest" | "best";
};

export const sidesAs = () =>
  choice(
    say`Two sides`,
    say`What counts where a test is done left and right. An athlete with one side alone has no score: it would not compare.`,
    { mean: say`Mean of both sides`, better: say`The better side`, weaker: say`The weaker side` },
  );

export const dayCounted = () =>
  choice(say`Day`, say`Which day counts where an athlete was tested on several.`, {
    latest: say`Each athlete's latest`,
    best: say`Each athlete's best`,
  });

/** Every athlete's score in the series of results given, in the order in which they appear. */
export function athleteScores(results: readonly TestResult[], facts: TestFacts, choices: ScoreChoices): AthleteScore[] {
  const isTwoSided = results.some(({ side }) => side !== null);
  return [...groupBy(results, ({ athlete }) => athlete)].map(([athlete, own]) => {
    const group = own.find((result) => result.group !== null)?.group ?? null;
    const sessions = sessionsOf(own).map((session) => ({
      athlete,
      group,
      ...scoreOf(session, isTwoSided, facts, choices),
      date: session[0]!.date,
      results: session,
    }));
    return choices.day === "latest" ? sessions.at(-1)! : bestOf(sessions, facts.direction);
  });
}

/** An athlete's results by day, the latest last; those without a day come before all that have one. */
const sessionsOf = (own: readonly TestResult[]): TestResult[][] =>
  [null, ...daysOf(own)].map((day) => own.filter(({ date }) => date === day)).filter(({ length }) => length > 0);

function bestOf(sessions: readonly AthleteScore[], direction: Direction): AthleteScore {
  const isBetter = (a: number, b: number) => (direction === "higher" ? a > b : a < b);
  return sessions.reduce((best, session) =>
    session.score !== null && (best.score === null || isBetter(session.score, best.score)) ? session : best,
  );
}

function scoreOf(
  session: readonly TestResult[],
  isTwoSided: boolean,
  facts: TestFacts,
  { sides }: ScoreChoices,
): Pick<AthleteScore, "score" | "why"> {
  const reduced = (trials: readonly TestResult[]) =>
    trialScore(
      trials.map(({ value }) => value),
      facts,
    );
  if (!isTwoSided) {
    const score = reduced(session);
    return { score, why: score === null ? say`Too few trials` : "" };
  }
  const [left, right] = (["left", "right"] as const).map((wanted) =>
    reduced(session.filter(({ side }) => side === wanted)),
  ) as [number | null, number | null];
  if (left === null && right === null) return { score: null, why: say`Too few trials of both sides` };
  if (left === null || right === null) return { score: null, why: say`No ${left === null ? "left" : "right"} side` };
  if (sides === "mean") return { score: withoutRounding(mean([left, right])), why: "" };
  const larger = (sides === "better") === (facts.direction === "higher");
  return { score: larger ? Math.max(left, right) : Math.min(left, right), why: "" };
}
