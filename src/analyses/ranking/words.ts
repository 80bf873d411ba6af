import { numeral, say } from "../../language/say";
import type { Background } from "../../store/background";
import { reductionWords } from "../testFacts";
import type { Qualities } from "./qualities";
import type { RankingRow, RankingSettings } from "./ranking";

export function summary(rows: readonly RankingRow[], { qualities }: Qualities): string[] {
  const ranked = rows.filter(({ rank }) => rank !== null);
  const unranked = rows.length - ranked.length;
  const athletes = ranked.length === 1 ? say`1 athlete` : say`${ranked.length} athletes`;
  const over = qualities.length === 1 ? say`1 quality` : say`${qualities.length} qualities`;
  const sentences = [say`${athletes} ranked over ${over}: ${qualities.map(({ quality }) => quality).join(", ")}.`];
  if (ranked.length > 3) {
    const front = ranked.filter(({ rank }) => rank! <= 3).map(({ athlete }) => athlete);
    sentences.push(say`At the front: ${front.join(", ")}.`);
  }
  if (unranked > 0) {
    sentences.push(
      unranked === 1
        ? say`1 athlete has no rank: less than 70 % of what counts for them was tested.`
        : say`${unranked} athletes have no rank: less than 70 % of what counts for them was tested.`,
    );
  }
  return sentences;
}

export function cautions({
  rows,
  qualities: { qualities, unused },
  settings,
  background,
}: {
  readonly rows: readonly RankingRow[];
  readonly qualities: Qualities;
  readonly settings: RankingSettings;
  readonly background: Background;
}): string[] {
  const notes = unused.map(({ test, why }) => say`${test || say`The test`} is not in the ranking: ${why}.`);
  if (qualities.every(({ tests }) => tests.length === 1) && background.battery.length === 0) {
    notes.push(say`No battery is set up, so each test counts as a quality of its own and related tests count double.`);
  }
  const isByRole = settings.weighting === "asSetUp" && background.weights.length > 0;
  if (isByRole)
    notes.push(say`Each athlete is judged by the weights of their own role: compare overall scores within a role.`);
  if (isByRole && rows.some(({ group }) => group === "")) {
    notes.push(say`Where no role is known, all qualities count alike.`);
  }
  if (rows.length < 8) notes.push(say`Among so few athletes one result moves everybody's score.`);
  return notes;
}

export function method(
  { qualities }: Qualities,
  { reduction, weighting }: RankingSettings,
  roles: readonly (string | null)[],
  weight: (quality: string, role: string | null) => number,
): string {
  const score = reduction === "asSetUp" ? say`score as set up, else the best trial` : reductionWords[reduction];
  const weights = weighting === "alike" ? say`all qualities alike` : weightsSaid(qualities, roles, weight);
  return say`Z scores among all these athletes of each test's ${score}; weights: ${weights}.`;
}

/** The weights of every role, so that the opinion behind a ranking stands beside it. */
function weightsSaid(
  qualities: Qualities["qualities"],
  roles: readonly (string | null)[],
  weight: (quality: string, role: string | null) => number,
): string {
  const said = [...new Set(roles)].sort().map((role) => {
    const weights = qualities.map(({ quality }) => ({ quality, weight: weight(quality, role) }));
    if (weights.every((one) => one.weight === 1)) return { role, weights: null };
    return { role, weights: weights.map((one) => `${one.quality} ${numeral(one.weight)}`).join(", ") };
  });
  if (said.every(({ weights }) => weights === null)) return say`all qualities alike`;
  return said.map(({ role, weights }) => `${role ?? say`without a role`}: ${weights ?? say`all alike`}`).join("; ");
}
