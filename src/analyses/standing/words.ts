import type { StandingJudgement } from "../../engine/grouping/standingJudgement";
import type { ScoreNoise } from "../scoreNoise";
import { assumedDirection, reductionWords, type TestFacts } from "../testFacts";
import type { StandingRow, StandingSettings } from "./standing";

const judgementWords: Readonly<Record<StandingJudgement["judgement"], string>> = {
  strength: "Clearly above the middle",
  weakness: "Clearly below the middle",
  "in between": "Near the middle",
  "too noisy to say": "Too noisy to say",
};

export function verdict({
  z,
  judgement,
  why,
  isCompared,
}: {
  readonly z: number | null;
  readonly judgement: StandingJudgement["judgement"] | null;
  readonly why: string;
  readonly isCompared: boolean;
}): string {
  if (why !== "") return `No score: ${why.charAt(0).toLowerCase()}${why.slice(1)}`;
  if (!isCompared) return "No role known";
  if (z === null) return "Too few to compare";
  if (judgement !== null) return judgementWords[judgement];
  if (Math.abs(z) < 0.5) return "Near the middle";
  return `${z > 0 ? "Above" : "Below"} the middle; noise not known`;
}

const athletes = (count: number): string => (count === 1 ? "1 athlete" : `${count} athletes`);

export function summary(
  rows: readonly StandingRow[],
  settings: StandingSettings,
  gap: number | null,
  unit: string | null,
): string[] {
  const ranked = rows.filter(({ rank }) => rank !== null);
  const counted = (words: string) => ranked.filter((row) => row.verdict === words).length;
  const sentences = [
    gap === null
      ? `${athletes(ranked.length)} ranked.`
      : `Of ${athletes(ranked.length)}, ${counted(judgementWords.strength)} stand clearly above the middle and ${counted(judgementWords.weakness)} clearly below.`,
  ];
  const unsure = counted(judgementWords["too noisy to say"]);
  if (unsure > 0) sentences.push(`${unsure} may, but the trials are too noisy to say.`);
  if (settings.among === "everybody" && ranked.length > 3) {
    const leading = ranked.filter(({ rank }) => rank! <= 3).map(({ athlete }) => athlete);
    if (leading.length <= 4) sentences.push(`At the front: ${leading.join(", ")}.`);
  }
  if (gap !== null) {
    const size = `${Number(gap.toPrecision(2))}${unit === null ? "" : ` ${unit}`}`;
    sentences.push(`Two athletes less than ${size} apart cannot be told apart by these trials.`);
  }
  return sentences;
}

export function cautions({
  rows,
  settings,
  facts,
  noise,
  hasDays,
}: {
  readonly rows: readonly StandingRow[];
  readonly settings: StandingSettings;
  readonly facts: TestFacts;
  readonly noise: ScoreNoise | null;
  readonly hasDays: boolean;
}): string[] {
  const notes: string[] = [];
  const sizes = comparedSizes(rows, settings);
  if (sizes.some((size) => size < 8)) {
    notes.push("Below 8 athletes there is no percentile rank: the rank says as much. Below 3 there is no z score.");
  } else if (sizes.some((size) => size < 20)) {
    notes.push("Percentile ranks are rounded to 5: with so few athletes one place is several points.");
  }
  notes.push(
    noise === null
      ? "No trials were repeated, so nobody knows how much of a gap between two athletes is noise."
      : "The noise is that of trials on one day; another day adds to it, so ranks are less sure than shown.",
  );
  if (noise !== null && noise.degreesOfFreedom < 10) notes.push("The noise rests on few trials and is rough.");
  if (hasDays) notes.push("Not everybody's score is from the same day: see the column Day.");
  const assumed = assumedDirection(facts);
  if (assumed !== null) notes.push(assumed);
  return notes;
}

function comparedSizes(rows: readonly StandingRow[], { among }: StandingSettings): number[] {
  const ranked = rows.filter(({ rank }) => rank !== null);
  const groups = among === "everybody" ? [""] : [...new Set(ranked.map(({ group }) => group))];
  return groups.map((group) => ranked.filter((row) => among === "everybody" || row.group === group).length);
}

const sidesWords = { mean: "mean of both sides", better: "better side", weaker: "weaker side" } as const;
const percentileWords = {
  midrank: "percentile rank by midranks",
  inclusive: "percentile rank inclusive",
  exclusive: "percentile rank exclusive",
} as const;

export function method({ sides, day, among, percentile }: StandingSettings, facts: TestFacts): string {
  const parts = [
    `${reductionWords[facts.reduction]} (${facts.direction} is better)`,
    `${sidesWords[sides]} where there are two`,
    `${day === "latest" ? "latest" : "best"} day`,
    among === "everybody" ? "compared with everybody" : "compared within each role",
    percentileWords[percentile],
  ];
  const said = parts.join(", ");
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}
