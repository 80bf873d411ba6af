import type { IStyleData } from "@univerjs/core";
import type { Book } from "../../engine/book";
import { type CellMarks, uniformMark } from "../../engine/cellMarks";
import { mark } from "../../engine/markCells";
import type { NamedStyle } from "../../engine/namedStyles";
import { applyStyle, uniform } from "../../engine/styles";
import { refuse } from "../errors";
import type { Scalar } from "../proxies/proxyClass";
import { oneOf } from "./arguments";
import type { Areas } from "./rangeAreas";

/** A cell style of the workbook, known by its name. */
export type NamedStyleTarget = { readonly book: Book; readonly name: string };

/** What has fill, font, borders and alignment: areas of cells, or a cell style. */
export type Looked = Areas | NamedStyleTarget;

export const isNamedStyle = (target: Looked): target is NamedStyleTarget => !Array.isArray(target);

export const styleOf = ({ book, name }: NamedStyleTarget): NamedStyle =>
  book.namedStyles.named(name) ?? refuse("ItemNotFound", "The style is gone.");

/** What all cells have of a look, or null where they differ; of a style what it says. */
export const lookOf = <T>(target: Looked, read: (style: IStyleData) => T): T | null =>
  isNamedStyle(target) ? read(styleOf(target).look) : uniform(target, read);

export function putLook(target: Looked, look: IStyleData): void {
  if (isNamedStyle(target)) target.book.namedStyles.change(styleOf(target), { look });
  else applyStyle(target, () => look);
}

export const markOf = <Key extends keyof CellMarks, T>(
  target: Looked,
  key: Key,
  read: (value: CellMarks[Key] | undefined) => T,
): T | null => (isNamedStyle(target) ? read(styleOf(target).marks[key]) : uniformMark(target, key, read));

/** Sets a mark, or with null takes it away where it stands. */
export function putMark<Key extends keyof CellMarks>(target: Looked, key: Key, value: CellMarks[Key] | null): void {
  if (isNamedStyle(target)) target.book.namedStyles.change(styleOf(target), { marks: { [key]: value } });
  else if (value !== null || isMarked(target, key)) mark(target, { [key]: value });
}

const isMarked = (areas: Areas, key: keyof CellMarks): boolean =>
  uniformMark(areas, key, (own) => own !== undefined) !== false;

/** A property that is kept as a mark; `standard` is what cells without it answer. */
export function keptMark<Key extends keyof CellMarks, Value extends CellMarks[Key]>(
  key: Key,
  standard: NonNullable<Value>,
  check: (value: unknown) => Value,
  // biome-ignore lint/suspicious/noExplicitAny: enumerations of the published types are nominal; their values are words.
): Scalar<Looked, any> {
  return {
    get: (target) => markOf(target, key, (value) => value ?? standard),
    set: (target, value) => {
      const checked = check(value);
      if (isNamedStyle(target)) putMark(target, key, checked === standard ? null : checked);
      // What cells are anyway needs no mark, unless their row, column or sheet says otherwise.
      else if (checked !== standard || isMarked(target, key)) mark(target, { [key]: checked });
    },
  };
}

export const truth = (value: unknown): boolean =>
  typeof value === "boolean" ? value : refuse("InvalidArgument", "true or false is wanted.");

/** From -1 (darkest) to 1 (lightest). Kept, and told again; colours are drawn as they were set. */
export const shade = (value: unknown): number =>
  typeof value === "number" && Math.abs(value) <= 1 ? value : refuse("InvalidArgument", "A shade is from -1 to 1.");

export const word =
  (words: readonly string[], what: string) =>
  (value: unknown): string =>
    oneOf(String(value), words, what);
