import { readFileSync } from "node:fs";
import { join } from "node:path";

/** Outside data and what other software makes of it. Where each comes from: SOURCES.md beside this file. */

/** One column of a dataset; empty cells are null. */
export function column(dataset: string, name: string): (number | null)[] {
  return labels(dataset, name).map((cell) => (cell === "" ? null : Number(cell)));
}

/** One column of a dataset whose values all are there. */
export const fullColumn = (dataset: string, name: string): number[] =>
  column(dataset, name).filter((cell) => cell !== null);

/** Some columns of a dataset, row by row. */
export function rows(dataset: string, names: readonly string[]): (number | null)[][] {
  const columns = names.map((name) => column(dataset, name));
  return columns[0]!.map((_, index) => columns.map((values) => values[index]!));
}

/** One column as text. */
export function labels(dataset: string, name: string): string[] {
  const [header, ...lines] = readFileSync(join(__dirname, "data", `${dataset}.csv`), "utf8")
    .trimEnd()
    .split(/\r?\n/);
  const index = header!.split(",").indexOf(name);
  if (index < 0) throw new Error(`${dataset} has no column ${name}.`);
  return lines.map((line) => line.split(",")[index]!);
}

/** The values of a column in groups of equal labels, in order of first appearance. */
export function groups(dataset: string, label: string, name: string): number[][] {
  const grouped = new Map<string, number[]>();
  const values = fullColumn(dataset, name);
  labels(dataset, label).forEach((key, index) => {
    grouped.set(key, [...(grouped.get(key) ?? []), values[index]!]);
  });
  return [...grouped.values()];
}

/** What other software computes from a dataset; the shape is the file's own. */
// biome-ignore lint/suspicious/noExplicitAny: a JSON file per dataset, each of its own shape
export const expected = (dataset: string): any =>
  JSON.parse(readFileSync(join(__dirname, "expected", `${dataset}.json`), "utf8"));

/** Fails unless `actual` is within a relative `tolerance` of `reference` (absolute when the reference is 0). */
export function expectRelative(actual: number, reference: number, tolerance: number): void {
  const deviation = Math.abs(actual - reference) / (reference === 0 ? 1 : Math.abs(reference));
  if (!(deviation <= tolerance)) {
    throw new Error(`${actual} is not ${reference}: relative deviation ${deviation}, allowed ${tolerance}.`);
  }
}
