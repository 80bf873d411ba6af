import type { LiveContext, LiveFields } from "../liveFormulas";
import { ofLatestDays } from "../sessions";
import { factsOf } from "../testFacts";
import type { AsymmetryRow, AsymmetrySettings } from "./asymmetry";

/** Scores, difference and scatter follow the trials; the noise limit rests on the whole squad and stays a value. */
export function live(
  { athlete }: AsymmetryRow,
  { results, settings, background, cells }: LiveContext<AsymmetrySettings>,
): LiveFields<AsymmetryRow> {
  const own = ofLatestDays(results.filter((result) => result.athlete === athlete));
  const [left, right] = (["left", "right"] as const).map((side) => cells(own.filter((result) => result.side === side)));
  const { reduction, direction } = factsOf(results[0]!, settings, background);
  const how = `"${reduction}","${direction}"`;
  const score = (trials: string | null | undefined) => trials && `TAPELINE.TRIALSCORE(${trials},${how})`;
  const both = left && right ? `${left},${right}` : null;
  return {
    left: score(left) ?? null,
    right: score(right) ?? null,
    asymmetry: both && `TAPELINE.ASYMMETRY(${both},${how})`,
    stronger: both && `TAPELINE.STRONGERSIDE(${both},${how})`,
    variation: both && `TAPELINE.TRIALCV(${both})`,
  };
}
