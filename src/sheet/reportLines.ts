import type { Report } from "../analyses/report";
import { say } from "../language/say";
import { breakIntoLines } from "./breakIntoLines";

/** The last lines above a table say where it comes from and what stands below it. */
export const originLines = 2;

/**
 * The lines above a written table, one cell each and short enough to be read at a glance: title, answer, where it comes
 * from, and what stands in the notes below. The blank line is room for an answer that grows by one.
 *
 * @param count how many lines there are room for, where the table stands already; its last answer line takes the rest.
 */
export function headLines(report: Report, count?: number): string[] {
  const { provenance } = report;
  const answer = report.summary.flatMap((sentence) => breakIntoLines(sentence));
  const origin = [
    ...breakIntoLines(say`Read from ${provenance.source} on ${provenance.date}: ${provenance.used}.`).slice(0, 1),
    `${belowWords(report)} ${leftOutWords(provenance.leftOut.length)}`,
  ];
  const title = breakIntoLines(report.title)[0] ?? "";
  if (count === undefined) return [title, ...answer, "", ...origin];
  const room = Math.max(count - 1 - originLines, 1);
  const fitted = answer.length > room ? [...answer.slice(0, room - 1), answer.slice(room - 1).join(" ")] : answer;
  return [title, ...Array.from({ length: room }, (_, line) => fitted[line] ?? ""), ...origin];
}

const belowWords = ({ cautions }: Report): string =>
  cautions.length === 0
    ? say`Below the table: how it was computed.`
    : say`Below the table: how it was computed, and ${cautions.length === 1 ? say`one thing` : say`${cautions.length} things`} to keep in mind.`;

const leftOutWords = (count: number): string =>
  count === 0 ? say`Nothing was left out.` : say`${count === 1 ? say`1 cell was` : say`${count} cells were`} left out.`;

/** A line of the notes below a table. */
export type FootLine = { readonly text: string; readonly isHeading: boolean };

/** The notes below a written table: how it was computed, what to keep in mind, and what was left out, by reason. */
export function footLines(report: Report): FootLine[] {
  const { method, leftOut } = report.provenance;
  return [
    heading(say`How it was computed`),
    ...body(breakIntoLines(method)),
    ...(report.cautions.length === 0 ? [] : [heading(say`Keep in mind`)]),
    ...body(report.cautions.flatMap(listed)),
    ...(leftOut.length === 0 ? [] : [heading(say`Left out (${leftOut.length})`)]),
    ...body(byReason(leftOut).flatMap(listed)),
  ];
}

const heading = (text: string): FootLine => ({ text, isHeading: true });
const body = (lines: readonly string[]): FootLine[] => lines.map((text) => ({ text, isHeading: false }));

/** An item of a list; the lines it goes on for stand under its first word. */
const listed = (text: string): string[] =>
  breakIntoLines(text).map((line, index) => `${index === 0 ? "•" : "  "} ${line}`);

/** One sentence for all cells that were left out for the same reason. */
function byReason(leftOut: Report["provenance"]["leftOut"]): string[] {
  const cells = new Map<string, string[]>();
  for (const { cell, why } of leftOut) cells.set(why, [...(cells.get(why) ?? []), cell]);
  return [...cells].map(([why, where]) => `${where.join(", ")}: ${why}`);
}
