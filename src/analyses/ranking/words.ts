import type { Background } from "../../store/background";
import { reductionWords } from "../testFacts";
import type { Qualities } from "./qualities";
import type { RankingRow, RankingSettings } from "./ranking";

const many = (count: number, one: string, several: string): string => `${count} ${count === 1 ? one : several}`;

export function summary(rows: readonly RankingRow[], { qualities }: Qualities): string[] {
  const ranked = rows.filter(({ rank }) => rank !== null);
  const unranked = rows.length - ranked.length;
  const sentences = [
    `${many(ranked.length, "athlete", "athletes")} ranked over ${many(qualities.length, "quality", "qualities")}: ${qualities.map(({ quality }) => quality).join(", ")}.`,
  ];
  if (ranked.length > 3) {
    const front = ranked.filter(({ rank }) => rank! <= 3).map(({ athlete }) => athlete);
    sentences.push(`At the front: ${front.join(", ")}.`);
  }
  if (unranked > 0) {
    sentences.push(
      `${many(unranked, "athlete has", "athletes have")} no rank: less than 70 % of what counts for them was tested.`,
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
  const notes = unused.map(({ test, why }) => `${test || "The test"} is not in the ranking: ${why}.`);
  if (qualities.every(({ tests }) => tests.length === 1) && background.battery.length === 0) {
    notes.push("No battery is set up, so each test counts as a quality of its own and related tests count double.");
  }
  const isByRole = settings.weighting === "asSetUp" && background.weights.length > 0;
  if (isByRole)
    notes.push("Each athlete is judged by the weights of their own role: compare overall scores within a role.");
  if (isByRole && rows.some(({ group }) => group === "")) {
    notes.push("Where no role is known, all qualities count alike.");
  }
  if (rows.length < 8) notes.push("Among so few athletes one result moves everybody's score.");
  return notes;
}

export function method(
  { qualities }: Qualities,
  { reduction, weighting }: RankingSettings,
  roles: readonly (string | null)[],
  weight: (quality: string, role: string | null) => number,
): string {
  const score = reduction === "asSetUp" ? "score as set up, else the best trial" : reductionWords[reduction];
  const weights = weighting === "alike" ? "all qualities alike" : weightsSaid(qualities, roles, weight);
  return `Z scores among all these athletes of each test's ${score}; weights: ${weights}.`;
}

/** The weights of every role, so that the opinion behind a ranking stands beside it. */
function weightsSaid(
  qualities: Qualities["qualities"],
  roles: readonly (string | null)[],
  weight: (quality: string, role: string | null) => number,
): string {
  const said = [...new Set(roles)].sort().map((role) => {
    const weights = qualities.map(({ quality }) => ({ quality, weight: weight(quality, role) }));
    if (weights.every((one) => one.weight === 1)) return { role, weights: "all alike" };
    return { role, weights: weights.map((one) => `${one.quality} ${one.weight}`).join(", ") };
  });
  if (said.every(({ weights }) => weights === "all alike")) return "all qualities alike";
  return said.map(({ role, weights }) => `${role ?? "without a role"}: ${weights}`).join("; ");
}
