import { type FunctionCode, functionCode, functionReference } from "./reference";

/** What a call of a custom function gives: rows of values, each error with its reason. */
export type FunctionAnswer = readonly (readonly AnswerCell[])[];

export type AnswerCell = number | string | boolean | AnswerError;

export type AnswerError = {
  /** As the cell shows it, e.g. "#N/A". */
  readonly error: string;
  /** In words; "" where the function gives none. */
  readonly why: string;
};

/**
 * Calls a function once more, as Excel would, to learn what a cell cannot show: why there is an error. The code is the
 * one that answers in the cells.
 *
 * @param id of the function, e.g. "ASYMMETRY".
 * @param given rows of cells for each argument, a single value as one cell; those left out at the end may be missing.
 */
export async function answerOf(
  id: string,
  given: readonly (readonly (readonly unknown[])[])[],
): Promise<FunctionAnswer> {
  const help = functionReference.find((one) => one.id === id);
  const code = await functionCode[id]?.();
  if (!code || !help) throw new Error(`There is no function ${id}.`);
  const isMany = help.parameters.some(({ takesCells }, index) => !takesCells && cellCount(given[index]) > 1);
  if (isMany) return [[{ error: "#VALUE!", why: "" }]];
  const answer = call(
    code,
    help.parameters.map(({ takesCells, optional }, index) => {
      const cells = given[index] ?? [[null]];
      const isLeftOut = cellCount(cells) === 1 && cells[0]![0] === null;
      return takesCells && !(optional && isLeftOut) ? cells : cells[0]![0];
    }),
  );
  return Array.isArray(answer) ? answer.map((row: unknown[]) => row.map(cellOf)) : [[cellOf(answer)]];
}

const cellCount = (cells: readonly (readonly unknown[])[] | undefined): number => (cells ?? []).flat().length;

function call(code: FunctionCode, given: readonly unknown[]): unknown {
  try {
    return code(...given);
  } catch (thrown) {
    if (thrown instanceof CustomFunctions.Error) return thrown;
    throw thrown;
  }
}

function cellOf(value: unknown): AnswerCell {
  if (value instanceof CustomFunctions.Error) return { error: value.code, why: value.message ?? "" };
  return typeof value === "number" || typeof value === "boolean" ? value : String(value ?? "");
}
