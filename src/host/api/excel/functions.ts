import type { Area } from "../../engine/area";
import type { Book } from "../../engine/book";
import { addressOf } from "../../engine/references";
import { calculateFormula, isWorksheetFunction, type Outcome } from "../../engine/worksheetFunctions";
import { refuse } from "../errors";
import { type Members, type ProxyClass, proxyClass, publishedNames } from "../proxies/proxyClass";

/** A call of a worksheet function: what it gave, and as text, for calls it stands in. */
type CallTarget = { readonly text: string; readonly outcome: Outcome };

/** "norm_S_Dist" of the API is NORM.S.DIST in a cell. */
const nameInCells = (member: string): string => member.replaceAll("_", ".").toUpperCase();

/** One argument as it stands in a formula. */
function argument(given: unknown): string {
  if (given === null || given === undefined) return "";
  if (typeof given === "number") return String(given);
  if (typeof given === "boolean") return given ? "TRUE" : "FALSE";
  if (typeof given === "string") return `"${given.replaceAll('"', '""')}"`;
  if (typeof given === "object" && "rowCount" in given) return addressOf(given as Area);
  if (typeof given === "object" && "text" in given) return (given as CallTarget).text;
  if (typeof given === "object" && "address" in given) return String(given.address);
  return refuse("InvalidArgument", "A function takes values, ranges and results of functions.");
}

function textOf(member: string, given: readonly unknown[]): string {
  const last = given.findLastIndex((value) => value !== undefined);
  // Functions of any number of values get them in one list.
  const values = given.slice(0, last + 1).flat();
  return `${nameInCells(member)}(${values.map(argument).join(",")})`;
}

export const FunctionResult: ProxyClass<Excel.FunctionResult<unknown>, CallTarget> = proxyClass<
  Excel.FunctionResult<unknown>,
  CallTarget
>("FunctionResult", {
  scalars: {
    error: { get: ({ outcome }) => outcome.error },
    value: { get: ({ outcome }) => outcome.value },
  },
});

/** What calls gave that are on their way to their proxies: calculating takes its time, making a proxy may not. */
const outcomes = new WeakMap<Book, Map<string, Outcome>>();

const call = (member: string) => ({
  of: () => FunctionResult,
  reads: true,
  async first(book: Book, ...given: unknown[]): Promise<void> {
    const text = textOf(member, given);
    const known = outcomes.get(book) ?? new Map<string, Outcome>();
    outcomes.set(book, known.set(text, await calculateFormula(book, `=${text}`)));
  },
  at(book: Book, ...given: unknown[]): CallTarget {
    const text = textOf(member, given);
    const outcome = outcomes.get(book)?.get(text) ?? refuse("GeneralException", "The function was not calculated.");
    outcomes.get(book)?.delete(text);
    return { text, outcome };
  },
});

/** All functions that formulas know here (excel/excel-add-ins-worksheet-functions); others refuse by their names. */
const offered = publishedNames("Functions").filter((member) => isWorksheetFunction(nameInCells(member)));

export const Functions: ProxyClass<Excel.Functions, Book> = proxyClass<Excel.Functions, Book>("Functions", {
  methods: Object.fromEntries(offered.map((member) => [member, call(member)])),
} as Members<Excel.Functions, Book>);
