import { asymmetry } from "../analyses/asymmetry/asymmetry";
import * as words from "../analyses/asymmetry/words";
import { groupBy } from "../analyses/groupBy";
import { ofLatestDays } from "../analyses/sessions";
import { valueOr } from "../engine/result";
import { say } from "../language/say";
import { seriesName } from "../reading/measures";
import type { TestResult } from "../reading/testResult";
import { wordOfSide } from "../reading/vocabulary";
import { type Background, testCalled } from "../store/background";

/** A side that is weaker than the other by more than the test's noise. */
export type WeakerSide = {
  readonly athlete: string;
  readonly side: "left" | "right";
  /** Quality the test stands for; null where the battery does not say. */
  readonly quality: string | null;
  /** How far it is below the other side, percent of the larger. */
  readonly difference: number;
  readonly why: string;
};

/**
 * The sides that are weaker beyond noise in any two-sided test, the largest difference first. Where the day before said
 * the opposite, nobody can tell which side it is, and neither is named.
 */
export function weakerSides(results: readonly TestResult[], background: Background): WeakerSide[] {
  const twoSided = groupBy(ofLatestDays(results.filter(({ side }) => side !== null)), ({ test, measure }) =>
    seriesName(test, measure),
  );
  return [...twoSided]
    .flatMap(([series, own]) => {
      const rows = beyondNoise(own, background);
      const earlier = beyondNoise(earlierDays(results, series, own), background);
      const { test, measure } = own[0]!;
      const quality = testCalled(background, test, measure)?.quality ?? null;
      return rows.flatMap((row): WeakerSide[] => {
        // A side that was the stronger one last time, beyond noise too, is a slip until somebody has looked.
        if (earlier.some((other) => other.athlete === row.athlete && other.stronger !== row.stronger)) return [];
        const side = row.stronger === words.left ? "right" : "left";
        const difference = Math.abs(row.beyond!);
        const why = say`${series}: the ${wordOfSide(side)} is ${difference.toFixed(0)} % weaker, beyond the test's noise.`;
        return [{ athlete: row.athlete, side, quality, difference, why }];
      });
    })
    .sort((a, b) => b.difference - a.difference);
}

function beyondNoise(results: readonly TestResult[], background: Background) {
  const answer = asymmetry.compute(results, asymmetry.settings.parse({}), background);
  return (valueOr(answer, null)?.rows ?? []).filter(({ beyond }) => beyond !== null);
}

/** The results of a series of each athlete's day before the latest. */
function earlierDays(all: readonly TestResult[], series: string, latest: readonly TestResult[]): TestResult[] {
  const known = new Set(latest);
  const ofSeries = all.filter(({ side, test, measure }) => side !== null && seriesName(test, measure) === series);
  return ofLatestDays(ofSeries.filter((result) => !known.has(result)));
}
