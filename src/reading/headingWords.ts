import { atStart } from "../language/say";
import { leftWords, rightWords, type Side, sideOf } from "./vocabulary";

/** One word of a heading, with what stands between it and the word before ("-" in "Single-leg"). */
export type HeadingWord = {
  readonly shown: string;
  /** Lower case, without dots and "#". */
  readonly word: string;
  readonly before: string;
};

/** The words of a heading in order; a distance run together ("10m") is two of them, and so is a numbered side ("L1"). */
export function wordsOf(name: string): HeadingWord[] {
  const words: HeadingWord[] = [];
  // "Re-test" is one word, lest its "re" be the German "rechts".
  const text = name.replace(/\bre-(?=\w)/gi, "re");
  for (const [, before, run] of text.matchAll(/([\s_/,;:()[\]–-]*)([^\s_/,;:()[\]–-]+)/g)) {
    const [first, second] = partsOf(run!);
    words.push({ shown: first, word: plain(first), before: before!.trim() });
    if (second !== null) words.push({ shown: second, word: plain(second), before: "" });
  }
  return words.filter(({ word }) => word !== "");
}

const plain = (shown: string): string => shown.toLowerCase().replace(/[.#]/g, "");

function partsOf(run: string): [string, string | null] {
  const distance = /^(\d+)(m)$/i.exec(run);
  if (distance) return [distance[1]!, distance[2]!];
  const numbered = /^([A-Za-z]+)(\d+)$/.exec(run);
  if (numbered && sideOf(numbered[1]!) !== null) return [numbered[1]!, numbered[2]!];
  return [run, null];
}

/** Where the side stands among the words: "Left 1", "Hop L2", "SL hop right"; null where none or several are named. */
export function sideAmong(words: readonly HeadingWord[]): { readonly at: number; readonly side: Side } | null {
  const found = words.flatMap(({ word }, at) => {
    const side = isSideWord(word) && !namesRunOfShape(words, at) ? sideOf(word) : null;
    return side === null ? [] : [{ at, side }];
  });
  return found.length === 1 ? found[0]! : null;
}

const isSideWord = (word: string): boolean => ([...leftWords, ...rightWords] as readonly string[]).includes(word);

/** The L of an "L-run" is a shape on the floor. */
const namesRunOfShape = (words: readonly HeadingWord[], at: number): boolean =>
  words[at]!.word === "l" && ["run", "test", "drill"].includes(words[at + 1]?.word ?? "");

/** Words joined again as they stood: with a blank, or with the hyphen or stroke between them. */
export function joined(words: readonly HeadingWord[], kept: readonly boolean[]): string {
  let text = "";
  words.forEach(({ shown, before }, at) => {
    if (!kept[at]) return;
    const glue = text === "" ? "" : kept[at - 1] && /^[-–/]$/.test(before) ? before : " ";
    const isNewFirst = text === "" && at > 0;
    text += glue + (isNewFirst ? atStart(shown) : shown);
  });
  return text;
}
