import { type BodyUse, bodyUses, type ColumnUse } from "./columns";
import { measureAmong } from "./headingMeasure";
import { type HeadingWord, joined, sideAmong, wordsOf } from "./headingWords";
import { fitsMeasure, type MeasureKey } from "./measures";
import { mostTrials, splitHeading, type Unit, unitOf } from "./units";
import { bodyWords, headingWords, type Side } from "./vocabulary";

/** What a heading says by itself, whatever stands in the other columns. */
export type Heading = {
  /** As it stands on the sheet, its rows joined by a blank. */
  readonly text: string;
  /** The use it names by itself ("Athlete", "Leg", "Attempt" ..). */
  readonly named: ColumnUse | null;
  /** Body mass or stature, where it can mean that. */
  readonly body: BodyUse | null;
  readonly side: Side | null;
  readonly measure: MeasureKey | null;
  readonly unit: Unit | null;
  /** Whether it ends in the number of a trial. */
  readonly isNumbered: boolean;
  /** The words left without all these: the name of the test. */
  readonly stem: string;
  readonly words: readonly string[];
};

/** Reads a heading of one row or of several, from top to bottom ("Hop" over "Left 1 (cm)"). */
export function readHeading(rows: readonly string[]): Heading {
  const split = rows.filter((row) => row.trim() !== "").map((row, at) => splitRow(row, at));
  const unit = split.findLast((row) => row.unit !== null)?.unit ?? null;
  const name = split
    .map((row) => row.name)
    .filter((part) => part !== "")
    .join(" ");
  const words = wordsOf(name);
  const named = namedUse(words);
  const body = bodyNamed(words, unit);
  const found = named === null ? measureAmong(words, unit) : null;
  const side = sideAmong(words);
  const kept = words.map((_, at) => !found || at < found.from || at >= found.to);
  const isNumbered = dropTrial(words, kept, side?.at ?? null);
  if (side) dropSide(words, kept, side.at);
  if (found && /^time\d/.test(found.measure)) drop(words, kept, timeWords);
  return {
    text: rows.join(" ").trim(),
    named,
    body,
    side: side?.side ?? null,
    measure: found?.measure ?? null,
    unit,
    isNumbered,
    stem: joined(words, kept),
    words: words.map(({ word }) => word),
  };
}

/** A lower row may hold the unit and nothing else. */
function splitRow(row: string, at: number): { name: string; unit: Unit | null } {
  const alone = at > 0 ? unitOf(row) : null;
  return alone ? { name: "", unit: alone } : splitHeading(row);
}

/** "10 m time" and "10 m split" are the 10 m of the sprint. */
const timeWords: readonly string[] = ["time", "times", "zeit", "split"];
const trialWords: readonly string[] = ["trial", "trials", "attempt", "versuch"];

const useWords = ["athlete", "side", "attempt", "test", "measure", "unit", "date", "group", "result"] as const;

function namedUse(words: readonly HeadingWord[]): ColumnUse | null {
  const plain = words.map(({ word }) => word).join(" ");
  const named = useWords.find((use) => (headingWords[use] as readonly string[]).includes(plain));
  if (named) return named;
  return words.some(({ word }) => (headingWords.athlete as readonly string[]).includes(word)) ? "athlete" : null;
}

function bodyNamed(words: readonly HeadingWord[], unit: Unit | null): BodyUse | null {
  const plain = words.map(({ word }) => word).join(" ");
  return (
    bodyUses.find((use) => (bodyWords[use] as readonly string[]).includes(plain) && fitsMeasure(unit, use)) ?? null
  );
}

/**
 * The number of the trial ends the heading, or stands beside the side or the word for a trial. A number that is part of
 * a name ("505", "5-10-5", "Drop jump 40") is none. Gives whether there was one.
 */
function dropTrial(words: readonly HeadingWord[], kept: boolean[], sideAt: number | null): boolean {
  const left = words.map((_, at) => at).filter((at) => kept[at]);
  const isTrialWord = (at: number | undefined) =>
    at !== undefined && (headingWords.attempt as readonly string[]).includes(words[at]!.word);
  const at = left.findLast((candidate, place) => {
    const word = words[candidate]!;
    const [previous, next] = [left[place - 1], left[place + 1]];
    const isLast = next === undefined;
    if (isLast && /^[tv][1-9]$/.test(word.word)) return true;
    if (!/^\d+$/.test(word.word) || Number(word.word) > mostTrials || Number(word.word) === 0) return false;
    const isPartOfName = previous !== undefined && /^[-–]$/.test(word.before) && /\d$/.test(words[previous]!.word);
    const stands = isLast || isTrialWord(previous) || isTrialWord(next) || next === sideAt || previous === sideAt;
    return stands && !isPartOfName;
  });
  if (at !== undefined) {
    const place = left.indexOf(at);
    for (const near of [left[place - 1], left[place + 1]]) if (isTrialWord(near)) kept[near!] = false;
    kept[at] = false;
  }
  drop(words, kept, trialWords);
  return at !== undefined;
}

/** Takes out the side, and the "leg" or "arm" beside it. */
function dropSide(words: readonly HeadingWord[], kept: boolean[], at: number): void {
  kept[at] = false;
  for (const near of [at - 1, at + 1]) {
    const word = words[near];
    // "Single-leg hop" and "Single leg left" are names of a test.
    const isBound = near < at && (word?.before === "-" || words[near - 1]?.word === "single");
    if (word && !isBound && (headingWords.side as readonly string[]).includes(word.word)) kept[near] = false;
  }
}

function drop(words: readonly HeadingWord[], kept: boolean[], dropped: readonly string[]): void {
  words.forEach(({ word }, at) => {
    if (dropped.includes(word)) kept[at] = false;
  });
}
