import { tooFew } from "../../engine/refusals";
import { ok, type Result, refuse, valueOr } from "../../engine/result";
import { compositeScores } from "../../engine/standing/compositeScores";
import { squadRanks } from "../../engine/standing/squadRanks";
import { tScores } from "../../engine/standing/tScores";
import { zScores } from "../../engine/standing/zScores";
import { say } from "../../language/say";
import type { TestResult } from "../../reading/testResult";
import { type Background, weightFor } from "../../store/background";
import type { Answer, MoreColumn } from "../analysis";
import { groupBy } from "../groupBy";
import { missingOf, type Qualities, qualitiesOf } from "./qualities";
import type { RankingRow, RankingSettings } from "./ranking";
import * as words from "./words";

/** Every athlete's composite over the qualities, each weighted for the athlete's own role, and the ranks that follow. */
export function compute(
  results: readonly TestResult[],
  settings: RankingSettings,
  background: Background,
): Result<Answer<RankingRow>> {
  const byAthlete = groupBy(results, ({ athlete }) => athlete);
  const athletes = [...byAthlete.keys()];
  const roles = [...byAthlete.values()].map((own) => own.find(({ group }) => group !== null)?.group ?? null);
  const qualities = qualitiesOf(results, athletes, settings, background);
  if (qualities.qualities.length === 0) return refuse(tooFew(say`tests with three comparable scores`, 1, 0));

  const weight = (quality: string, role: string | null): number =>
    settings.weighting === "alike" ? 1 : weightFor(background, quality, role);
  const composites = ownComposites(qualities, roles, weight);
  const overall = composites.map(({ composite }) => composite);
  const nobody = athletes.map(() => null);
  const higher = { direction: "higher" } as const;
  const t = valueOr(tScores(overall, higher), nobody);
  const z = valueOr(zScores(overall, higher), nobody);
  const ranks = valueOr(squadRanks(overall, higher), nobody);
  const ranksInRole = ranksWithin(roles, overall);

  const rows = athletes.map((athlete, index) => ({
    athlete,
    group: roles[index] ?? "",
    rank: ranks[index] ?? null,
    rankInRole: ranksInRole[index] ?? null,
    overall: t[index] ?? null,
    tested: 100 * composites[index]!.coverage,
    missing: missingOf(qualities, index).join(", "),
    fromMiddle: z[index] ?? null,
  }));
  const order = athletes.map((_, index) => index).sort((a, b) => bestFirst(rows[a]!, rows[b]!));
  const sorted = order.map((index) => rows[index]!);
  return ok({
    rows: sorted,
    moreColumns: columnsOf(qualities, order),
    summary: words.summary(sorted, qualities),
    cautions: words.cautions({ rows: sorted, qualities, settings, background }),
    method: words.method(qualities, settings, roles, weight),
    leftOut: [],
  });
}

type Composite = { readonly composite: number | null; readonly coverage: number };

/** Each athlete's composite by the weights of the athlete's own role; z scores are among all athletes. */
function ownComposites(
  { qualities }: Qualities,
  roles: readonly (string | null)[],
  weight: (quality: string, role: string | null) => number,
): Composite[] {
  const byRole = new Map(
    [...new Set(roles)].map((role) => {
      const weighted = qualities
        .map(({ quality, tests }) => ({
          quality,
          weight: weight(quality, role),
          tests: tests.map((test) => ({ ...test, weight: 1 })),
        }))
        // A weight of 0 says that the quality does not count for the role.
        .filter(({ weight }) => weight > 0);
      return [role, valueOr(compositeScores(weighted), null)] as const;
    }),
  );
  return roles.map((role, athlete) => {
    const scores = byRole.get(role) ?? null;
    return { composite: scores?.composites[athlete] ?? null, coverage: scores?.coverage[athlete] ?? 0 };
  });
}

function ranksWithin(roles: readonly (string | null)[], overall: readonly (number | null)[]): (number | null)[] {
  const ranks: (number | null)[] = roles.map(() => null);
  for (const role of new Set(roles)) {
    if (role === null) continue;
    const members = roles.flatMap((own, index) => (own === role ? [index] : []));
    const own = squadRanks(
      members.map((index) => overall[index] ?? null),
      { direction: "higher" },
    );
    members.forEach((index, place) => {
      ranks[index] = own.ok ? (own.value[place] ?? null) : null;
    });
  }
  return ranks;
}

/** A T score for each quality. */
function columnsOf({ qualities }: Qualities, order: readonly number[]): MoreColumn[] {
  return qualities.map(({ quality, tests }) => {
    const weighted = [{ quality, weight: 1, tests: tests.map((test) => ({ ...test, weight: 1 })) }];
    const scores = valueOr(compositeScores(weighted), null)?.qualities[0]?.scores ?? [];
    const t = valueOr(tScores(scores, { direction: "higher" }), []);
    return {
      key: `quality ${quality.toLowerCase()}`,
      heading: `${quality} (T)`,
      meaning: say`T score of ${tests.map(({ test }) => test || quality).join(", ")}: 50 is the middle of these athletes, 10 a standard deviation, plus is better.`,
      format: "0",
      values: order.map((athlete) => t[athlete] ?? null),
    };
  });
}

const bestFirst = (a: RankingRow, b: RankingRow): number =>
  (a.rank === null ? 1 : 0) - (b.rank === null ? 1 : 0) || (a.rank ?? 0) - (b.rank ?? 0);
