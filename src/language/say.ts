/**
 * Everything Tapeline says goes through `say`, in English where it is said, so that the code reads as the coach reads:
 *
 *     say`${count} of ${total} athletes have been tested.`
 *
 * A language is a catalogue from the English sentence, with its places numbered in braces, to its own. Where its grammar
 * needs more than places, an entry is a function of what stands in them.
 */
export type Wording = string | ((...places: string[]) => string);
export type Catalogue = Readonly<Record<string, Wording>>;

export type Language = {
  /** As in BCP 47, e.g. "de". */
  readonly tag: string;
  /** Empty for English, which stands in the code. */
  readonly catalogue: Catalogue;
  readonly decimalMark: "." | ",";
  /** Whether nouns are written with a capital in the middle of a sentence too. */
  readonly capitalNouns: boolean;
};

export const english: Language = { tag: "en", catalogue: {}, decimalMark: ".", capitalNouns: false };

// One reader, one language: chosen once, before anything is said (chooseLanguage.ts).
let spoken: Language = english;

export function speak(language: Language): void {
  spoken = language;
}

/** A sentence, or any words a reader sees, in the language spoken; one that its catalogue lacks stays English. */
export function say(parts: TemplateStringsArray, ...values: readonly unknown[]): string {
  const places = values.map((value) => numeral(String(value)));
  const wording = spoken.catalogue[sentenceOf(parts)];
  if (typeof wording === "function") return wording(...places);
  if (wording !== undefined) return filled(wording, places);
  return parts.reduce((text, part, index) => text + places[index - 1] + part);
}

/** The sentence as catalogues list it, e.g. "{0} of {1} athletes have been tested.". */
export const sentenceOf = (parts: readonly string[]): string =>
  parts.reduce((text, part, index) => `${text}{${index - 1}}${part}`);

// Most words have no places, and some are said for every row of a table.
const filled = (wording: string, places: readonly string[]): string =>
  places.length === 0 ? wording : wording.replace(/\{(\d+)\}/g, (_, place: string) => places[Number(place)] ?? "");

/** A number, alone or with its unit, with the decimal mark of the language. Other words stay as they are. */
export function numeral(value: number | string): string {
  const text = String(value);
  return spoken.decimalMark === "," && aloneOrWithUnit.test(text) ? text.replace(".", ",") : text;
}

const aloneOrWithUnit = /^[+−-]?\d+\.\d+(?: ?(?:%|[a-z]{1,4}(?:\/[a-z]{1,4})?²?))?$/i;

/** A day, given as ISO, as the language spoken writes it in a sentence, e.g. "25 Nov 2026". */
export const dayInWords = (iso: string): string =>
  new Intl.DateTimeFormat(spoken.tag === "en" ? "en-GB" : spoken.tag, { dateStyle: "medium", timeZone: "UTC" }).format(
    new Date(`${iso}T00:00:00Z`),
  );

/** Words as they stand at the head of a sentence, or as a heading: with a capital. */
export const atStart = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/**
 * A heading or label as it stands within a sentence: "Jump height" as "jump height", where nouns have no capitals. What
 * begins with several, such as "CV", is no word of a sentence's own.
 */
export const inSentence = (label: string): string =>
  spoken.capitalNouns || /^\p{Lu}{2}/u.test(label) ? label : `${label.charAt(0).toLowerCase()}${label.slice(1)}`;
