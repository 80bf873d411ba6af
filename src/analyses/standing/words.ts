import type { StandingJudgement } from "../../engine/grouping/standingJudgement";
import { atStart, inSentence, say } from "../../language/say";
import type { ScoreNoise } from "../scoreNoise";
import { assumedDirection, reductionWords, type TestFacts } from "../testFacts";
import type { StandingRow, StandingSettings } from "./standing";

const judgementWords: Readonly<Record<StandingJudgement["judgement"], string>> = {
  strength: say`Clearly above the middle`,
  weakness: say`Clearly below the middle`,
  "in between": say`Near the middle`,
  "too noisy to say": say`Too noisy to say`,
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
  if (why !== "") return say`No score: ${inSentence(why)}`;
  if (!isCompared) return say`No role known`;
  if (z === null) return say`Too few to compare`;
  if (judgement !== null) return judgementWords[judgement];
  if (Math.abs(z) < 0.5) return say`Near the middle`;
  return z > 0 ? say`Above the middle; noise not known` : say`Below the middle; noise not known`;
}

const athletes = (count: number): string => (count === 1 ? say`1 athlete` : say`${count} athletes`);

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
      ? say`${athletes(ranked.length)} ranked.`
      : say`Of ${athletes(ranked.length)}, ${counted(judgementWords.strength)} stand clearly above the middle and ${counted(judgementWords.weakness)} clearly below.`,
  ];
  const unsure = counted(judgementWords["too noisy to say"]);
  if (unsure > 0) sentences.push(say`${unsure} may, but the trials are too noisy to say.`);
  if (settings.among === "everybody" && ranked.length > 3) {
    const leading = ranked.filter(({ rank }) => rank! <= 3).map(({ athlete }) => athlete);
    if (leading.length <= 4) sentences.push(say`At the front: ${leading.join(", ")}.`);
  }
  if (gap !== null) {
    const size = `${Number(gap.toPrecision(2))}${unit === null ? "" : ` ${unit}`}`;
    sentences.push(say`Two athletes less than ${size} apart cannot be told apart by these trials.`);
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
    notes.push(say`Below 8 athletes there is no percentile rank: the rank says as much. Below 3 there is no z score.`);
  } else if (sizes.some((size) => size < 20)) {
    notes.push(say`Percentile ranks are rounded to 5: with so few athletes one place is several points.`);
  }
  notes.push(
    noise === null
      ? say`No trials were repeated, so nobody knows how much of a gap between two athletes is noise.`
      : say`The noise is that of trials on one day; another day adds to it, so ranks are less sure than shown.`,
  );
  if (noise !== null && noise.degreesOfFreedom < 10) notes.push(say`The noise rests on few trials and is rough.`);
  if (hasDays) notes.push(say`Not everybody's score is from the same day: see the column Day.`);
  const assumed = assumedDirection(facts);
  if (assumed !== null) notes.push(assumed);
  return notes;
}

function comparedSizes(rows: readonly StandingRow[], { among }: StandingSettings): number[] {
  const ranked = rows.filter(({ rank }) => rank !== null);
  const groups = among === "everybody" ? [""] : [...new Set(ranked.map(({ group }) => group))];
  return groups.map((group) => ranked.filter((row) => among === "everybody" || row.group === group).length);
}

const sidesWords = { mean: say`mean of both sides`, better: say`better side`, weaker: say`weaker side` } as const;
const percentileWords = {
  midrank: say`percentile rank by midranks`,
  inclusive: say`percentile rank inclusive`,
  exclusive: say`percentile rank exclusive`,
} as const;

export function method({ sides, day, among, percentile }: StandingSettings, facts: TestFacts): string {
  const parts = [
    say`${reductionWords[facts.reduction]} (${facts.direction} is better)`,
    say`${sidesWords[sides]} where there are two`,
    day === "latest" ? say`latest day` : say`best day`,
    among === "everybody" ? say`compared with everybody` : say`compared within each role`,
    percentileWords[percentile],
  ];
  return `${atStart(parts.join(", "))}.`;
}
