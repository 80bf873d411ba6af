import { isBodyUse } from "./columns";
import type { HeadingWord } from "./headingWords";
import { fitsMeasure, type MeasureKey, measureKeys, measureOf } from "./measures";
import type { Unit } from "./units";

/** A measure named in a heading: which, and the words that name it (from, up to but not including). */
export type NamedMeasure = { readonly measure: MeasureKey; readonly from: number; readonly to: number };

/** Runs whose distance is not one from a standing start: their times are no splits of a sprint. */
const noSplits = ["fly", "flying", "fliegend", "shuttle", "pendel", "pendellauf", "hop", "agility", "jump"];
/** Words that make a distance without a unit of time a sprint's. */
const sprintWords = ["sprint", "sprints", "run", "lauf", "dash", "time", "zeit", "split"];
/** A height to jump from is a condition of the test. */
const dropWords = ["drop", "box", "fall", "from"];

/**
 * The measure a heading names, by the longest of the vocabulary's spellings; null where it names none, or one that its
 * unit contradicts ("Contact (N)").
 */
export function measureAmong(words: readonly HeadingWord[], unit: Unit | null): NamedMeasure | null {
  let best: NamedMeasure | null = null;
  let longest = 0;
  for (const measure of measureKeys.filter((key) => !isBodyUse(key))) {
    const { spellings, spellingsBesideTest = [] } = measureOf(measure);
    for (const spelling of [...spellings, ...spellingsBesideTest]) {
      const wanted = spelling.replace(/^(\d+)m$/, "$1 m").split(" ");
      const from = placeAmong(words, wanted);
      if (from === null || spelling.length <= longest || !fitsMeasure(unit, measure)) continue;
      const named = { measure, from, to: from + wanted.length };
      const needsTest = !spellings.includes(spelling);
      if (needsTest && !standsBesideTest(words, named)) continue;
      if (/^\d/.test(spelling) && !isSplit(words, named, unit)) continue;
      best = named;
      longest = spelling.length;
    }
  }
  return best && isFromZero(words, best) ? { ...best, from: best.from - 1 } : best;
}

function placeAmong(words: readonly HeadingWord[], wanted: readonly string[]): number | null {
  const at = words.findIndex((_, start) => wanted.every((word, i) => words[start + i]?.word === word));
  return at < 0 ? null : at;
}

const outside = (words: readonly HeadingWord[], { from, to }: NamedMeasure): HeadingWord[] =>
  words.filter((_, at) => at < from || at >= to);

const standsBesideTest = (words: readonly HeadingWord[], named: NamedMeasure): boolean => {
  const rest = outside(words, named);
  const isCondition = dropWords.includes(words[named.from - 1]?.word ?? "");
  return !isCondition && rest.some(({ word }) => /[a-zäöü]{2}/.test(word) && word !== "body" && word !== "standing");
};

/** "10 m" of a sprint; not of a flying start, of a shuttle run, or of a stretch such as "10-20 m". */
function isSplit(words: readonly HeadingWord[], named: NamedMeasure, unit: Unit | null): boolean {
  const rest = outside(words, named).map(({ word }) => word);
  if (rest.some((word) => noSplits.includes(word))) return false;
  if (isStretch(words, named) && !isFromZero(words, named)) return false;
  const names = rest.filter((word) => /[a-zäöü]{2}/.test(word));
  return unit?.quantity === "time" || names.length === 0 || names.some((word) => sprintWords.includes(word));
}

const isStretch = (words: readonly HeadingWord[], { from }: NamedMeasure): boolean => {
  const previous = words[from - 1]?.word ?? "";
  if (previous === "to" || previous === "bis") return true;
  return /^\d+$/.test(previous) && /^[-–]$/.test(words[from]!.before);
};

const isFromZero = (words: readonly HeadingWord[], named: NamedMeasure): boolean =>
  isStretch(words, named) && words[named.from - 1]?.word === "0";
