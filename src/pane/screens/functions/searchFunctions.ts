import type { FunctionHelp } from "../../../functions/reference";

export type FunctionGroup = { readonly subject: string; readonly functions: readonly FunctionHelp[] };

/** The functions in which every word of the query stands somewhere, by subject; all of them for an empty query. */
export function searchFunctions(reference: readonly FunctionHelp[], query: string): FunctionGroup[] {
  const wanted = query
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "");
  const groups = new Map<string, FunctionHelp[]>();
  for (const help of reference) {
    const text = everythingSaidOf(help);
    if (!wanted.every((word) => text.includes(word))) continue;
    const group = groups.get(help.subject);
    if (group) group.push(help);
    else groups.set(help.subject, [help]);
  }
  return [...groups].map(([subject, functions]) => ({ subject, functions }));
}

/** All but the example and the source, whose names of authors would be found by chance. */
const everythingSaidOf = ({ id, subject, alsoFoundBy, answers, more, gives, parameters }: FunctionHelp): string =>
  [id, subject, alsoFoundBy, answers, more, gives, ...parameters.flatMap(({ name, help }) => [name, help])]
    .join(" ")
    .toLowerCase();
