// biome-ignore-all lint/suspicious/noExplicitAny: cells hold anything.

/** Ranges as Excel hands them over and answers as it takes them. */

/** One value below the other. */
export const down = (values: readonly unknown[]): any[][] => values.map((value) => [value]);

/** One value beside the other. */
export const across = (...values: readonly unknown[]): any[][] => [[...values]];

/** The error a call leaves in its cell, with words that match. */
export const failing = (code: "#N/A" | "#VALUE!", words: RegExp) =>
  expect.objectContaining({ code, message: expect.stringMatching(words) });

/** Fails unless the call leaves this error in its cell. */
export function expectError(call: () => unknown, code: "#N/A" | "#VALUE!", words: RegExp): void {
  expect(call).toThrow(failing(code, words));
}

/** Cells of an answer with a label before them, by label. */
export const byLabel = (table: any[][]): Record<string, any[]> =>
  Object.fromEntries(table.map(([label, ...cells]) => [label, cells]));
