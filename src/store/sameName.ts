/** What two spellings of one name share: athletes, tests and headings are found whatever their case and blanks. */
export const nameKey = (words: string): string => words.trim().replace(/\s+/g, " ").toLowerCase();

export const isSameName = (one: string, other: string): boolean => nameKey(one) === nameKey(other);
