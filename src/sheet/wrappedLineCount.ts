/** Height of a line in points, with air. Not every program makes room for lines that wrap, so rows are given theirs. */
const lineHeight = 15;

/** Points; Excel refuses a row that is higher than 409.5. */
export const highestRow = 405;

/** Height of a row of so many lines, in points. */
export const rowHeight = (lines: number): number => Math.min(lines * lineHeight, highestRow);

/** How many lines a text takes that breaks between words. @param width in characters. */
export const wrappedLineCount = (text: string, width: number): number =>
  text.split("\n").reduce((lines, paragraph) => lines + linesOfParagraph(paragraph, width), 0);

function linesOfParagraph(text: string, width: number): number {
  let lines = 1;
  let length = 0;
  for (const word of text.split(" ")) {
    const longer = length === 0 ? word.length : length + 1 + word.length;
    if (longer > width && length > 0) {
      lines += 1;
      length = word.length;
    } else length = longer;
  }
  return lines;
}
