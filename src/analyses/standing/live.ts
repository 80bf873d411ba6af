import { athleteScores } from "../athleteScores";
import type { LiveContext, LiveFields } from "../liveFormulas";
import { factsOf } from "../testFacts";
import type { StandingRow, StandingSettings } from "./standing";

/** The score follows the athlete's trials; where it stands rests on the whole squad and stays a value. */
export function live(
  { athlete }: StandingRow,
  { results, settings, background, cells }: LiveContext<StandingSettings>,
): LiveFields<StandingRow> {
  const facts = factsOf(results[0]!, settings, background);
  const own = athleteScores(
    results.filter((result) => result.athlete === athlete),
    facts,
    settings,
  )[0];
  const scoreOf = (side: "left" | "right" | null) => {
    const trials = cells(own?.results.filter((result) => result.side === side) ?? []);
    return trials && `TAPELINE.TRIALSCORE(${trials},"${facts.reduction}","${facts.direction}")`;
  };
  const [left, right, whole] = [scoreOf("left"), scoreOf("right"), scoreOf(null)];
  if (whole) return { score: left || right ? null : whole };
  return { score: left && right ? `${ofBoth(settings.sides, facts.direction)}(${left},${right})` : null };
}

function ofBoth(sides: StandingSettings["sides"], direction: "higher" | "lower"): string {
  if (sides === "mean") return "AVERAGE";
  return (sides === "better") === (direction === "higher") ? "MAX" : "MIN";
}
