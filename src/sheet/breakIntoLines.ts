/** Letters of a line: about what a landscape page and half a wide screen show at the sheet's usual size. */
const lineLength = 100;

/** No word is longer in a line than this; what is cut ends with "…". */
const wordLength = 60;

/** Breaks a text into lines between its words, so that each can stand in a cell of its own. Empty text has none. */
export function breakIntoLines(text: string): string[] {
  const words = text
    .split(/[\s\p{Cc}]+/u)
    .filter((word) => word !== "")
    .map((word) => (word.length <= wordLength ? word : `${word.slice(0, wordLength - 1)}…`));
  const lines: string[] = [];
  for (const word of words) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= lineLength) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
