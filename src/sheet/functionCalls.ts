/** Text in double quotes, which may hold anything, also what looks like a call. */
const quoted = '"(?:[^"]|"")*"';

/**
 * A name that the program has marked because it did not know the function when it opened the workbook: "_xldudf_" before it, "_"
 * for its dots, sometimes the file of another add-in before it all. Read in public reports of such workbooks:
 * office-js#2051, #2568, #3872, #5611.
 */
const marked = new RegExp(
  String.raw`${quoted}|(?:'(?:[^']|'')*'!|[^\s"'!(),;&+*/^=<>{}@-]+!)?_xldudf_TAPELINE[._]([A-Z0-9._]+)(?=\()`,
  "gi",
);

const call = new RegExp(String.raw`${quoted}|(?<![\w.])(?:_xldudf_)?TAPELINE[._]([A-Z0-9._]+)\(`, "gi");

/** Whether a formula calls one of our functions, by its own name or a marked one. */
export const callsUs = (formula: unknown): formula is string =>
  typeof formula === "string" && formula.startsWith("=") && [...formula.matchAll(call)].some(([, id]) => id);

/** Whether the program has marked one of our functions in the formula as unknown. */
export const isMarked = (formula: string): boolean => unmarked(formula) !== formula;

/** The formula with the names of our functions as a coach types them. No id of ours has a "_" of its own. */
export const unmarked = (formula: string): string =>
  formula.replace(marked, (whole: string, id: string | undefined) =>
    id === undefined ? whole : `TAPELINE.${id.replaceAll("_", ".").toUpperCase()}`,
  );

export type FunctionCall = {
  /** As in the reference: "ASYMMETRY". */
  readonly id: string;
  /** As they stand in the formula; "" where one is left out. */
  readonly arguments: readonly string[];
};

/** The first call of one of our functions in a formula; null where there is none. */
export function firstCall(formula: unknown): FunctionCall | null {
  if (!callsUs(formula)) return null;
  const plain = unmarked(formula);
  const found = [...plain.matchAll(call)].find(([, id]) => id)!;
  return { id: found[1]!.toUpperCase(), arguments: argumentsFrom(plain, found.index + found[0].length) };
}

/** The arguments of the call whose bracket opens just before `start`. */
function argumentsFrom(formula: string, start: number): string[] {
  const given: string[] = [];
  let depth = 0;
  let from = start;
  for (let at = start; at < formula.length; at++) {
    const sign = formula[at]!;
    if (sign === '"' || sign === "'") {
      at = formula.indexOf(sign, at + 1);
      if (at < 0) break;
    } else if ("({[".includes(sign)) depth++;
    else if (depth === 0 && (sign === "," || sign === ")")) {
      given.push(formula.slice(from, at).trim());
      from = at + 1;
      if (sign === ")") break;
    } else if (")}]".includes(sign)) depth--;
  }
  return given.length === 1 && given[0] === "" ? [] : given;
}
