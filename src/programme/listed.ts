import { say } from "../language/say";

/** "a, b and c". */
export const listed = (words: readonly string[]): string =>
  words.length <= 1 ? (words[0] ?? "") : say`${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

/** "a, b, c and 4 more", where a page has no room for all. */
export const listedUpTo = (words: readonly string[], most: number): string =>
  words.length <= most ? listed(words) : say`${words.slice(0, most).join(", ")} and ${words.length - most} more`;

/** "1 week", "3 weeks". */
export const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? "" : "s"}`;
