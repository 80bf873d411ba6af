import { type Grid, textOf } from "./grid";
import { readDate } from "./readDate";
import { headingWords } from "./vocabulary";

/**
 * The day that stands in the rows above the headings: in a cell ("Test day: 11.08.2026", "Seniors, 11 August 2026"), or
 * as a date beside a word for it. Null where none stands there, or several days.
 */
export function dateAbove(grid: Grid, firstHeadingRow: number): string | null {
  const found = new Set<string>();
  for (let row = 0; row < firstHeadingRow; row++) {
    let label = "";
    for (const cell of grid.cells[row]!) {
      if (typeof cell === "string") {
        for (const date of datesIn(cell)) found.add(date);
        if (textOf(cell) !== "") label = textOf(cell);
      } else if (typeof cell === "number" && saysDay(label)) {
        const read = readDate(cell);
        if (read.kind === "date") found.add(read.date);
      }
    }
  }
  return found.size === 1 ? [...found][0]! : null;
}

/** A number is a day only beside a word for it: 45,000 may be anything. */
const saysDay = (label: string): boolean =>
  label
    .toLowerCase()
    .split(/[\s:.,]+/)
    .some((word) => dayWords.includes(word));

const dayWords: readonly string[] = [...headingWords.date, "testtag", "on", "am"];

const datePatterns = [
  /(?<!\d)\d{4}-\d{1,2}-\d{1,2}(?!\d)/g,
  /(?<![\d.])\d{1,2}\.\s?\d{1,2}\.\s?(?:\d{4}|\d{2})(?!\d)/g,
  /(?<![\d/])\d{1,2}\/\d{1,2}\/\d{4}(?!\d)/g,
  /(?<!\d)\d{1,2}\.?\s\p{L}{3,9}\.?,?\s\d{4}(?!\d)/gu,
  /\p{L}{3,9}\s\d{1,2},?\s\d{4}(?!\d)/gu,
];

const datesIn = (text: string): string[] =>
  datePatterns
    .flatMap((pattern) => text.match(pattern) ?? [])
    .map((match) => readDate(match))
    .flatMap((read) => (read.kind === "date" ? [read.date] : []));
