import { type FunctionCode, functionCode } from "./reference";

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
 * @param given one argument for each parameter: a single value, rows of cells, or null where it is left out.
 */
export async function answerOf(id: string, given: readonly unknown[]): Promise<FunctionAnswer> {
  const code = await functionCode[id]?.();
  if (!code) throw new Error(`There is no function ${id}.`);
  const answer = call(code, given);
  return Array.isArray(answer) ? answer.map((row: unknown[]) => row.map(cellOf)) : [[cellOf(answer)]];
}

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
