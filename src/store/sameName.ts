import { germanTableWords, wordings } from "../language/tableWords";

/** Names come again in every row: what was worked out for one is kept, as long as there are not too many. */
const known = new Map<string, string>();
const mostKnown = 20_000;

/** What two spellings of one name share: athletes, tests and headings are found whatever their case and blanks. */
export function nameKey(words: string): string {
  const before = known.get(words);
  if (before !== undefined) return before;
  if (known.size >= mostKnown) known.clear();
  const key = words.trim().replace(/\s+/g, " ").toLowerCase();
  known.set(words, key);
  return key;
}

export const isSameName = (one: string, other: string): boolean => nameKey(one) === nameKey(other);

/** Whether words are ours, in whichever of our languages they were written. */
export const isWording = (words: string, ours: string): boolean => wordings(ours).some((one) => isSameName(words, one));

const englishKeys = new Set(Object.keys(germanTableWords).map(nameKey));
const fromGerman = new Map(
  Object.entries(germanTableWords).map(([english, german]) => [nameKey(german), nameKey(english)]),
);

/**
 * As `nameKey`, and the same in all our languages for words we offer: qualities, roles, tests and exercises. One table of
 * a workbook may have been made in one language and another in another.
 */
export function wordingKey(words: string): string {
  const key = nameKey(words);
  return englishKeys.has(key) ? key : (fromGerman.get(key) ?? key);
}

export const isSameWording = (one: string, other: string): boolean => wordingKey(one) === wordingKey(other);
