import { IDefinedNamesService } from "@univerjs/engine-formula";
import {
  InsertDefinedNameCommand,
  RemoveDefinedNameCommand,
  SCOPE_WORKBOOK_VALUE_DEFINED_NAME,
  SetDefinedNameCommand,
} from "@univerjs/sheets";
import type { Book } from "./book";

/** A defined name. `formula` begins with "=". */
export type DefinedName = {
  readonly id: string;
  readonly name: string;
  readonly formula: string;
  readonly comment: string;
  readonly visible: boolean;
  /** The sheet whose name it is, or null for the workbook. */
  readonly sheetId: string | null;
};

/** Why nothing can have this name, or null: Excel's rules for names and tables. */
export function nameFault(name: string): string | null {
  if (typeof name !== "string" || name === "") return "A name is not empty.";
  if (name.length > 255) return "A name has at most 255 letters.";
  if (!/^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u.test(name)) {
    return "A name begins with a letter or _ and has letters, digits, _ and . only.";
  }
  if (/^[A-Za-z]{1,3}\d{1,7}$/.test(name) || /^(r|c|r\d*c\d*)$/i.test(name))
    return "A name is not like a cell address.";
  if (/^(true|false)$/i.test(name)) return "A name is no truth value.";
  return null;
}

/** The workbook's defined names. */
export class Names {
  readonly #book: Book;
  readonly #service: IDefinedNamesService;

  constructor(book: Book) {
    this.#book = book;
    this.#service = book.injector.get(IDefinedNamesService);
  }

  list(): DefinedName[] {
    return Object.values(this.#service.getDefinedNameMap(this.#book.id) ?? {}).map((item) => ({
      id: item.id,
      name: item.name,
      formula: item.formulaOrRefString.startsWith("=") ? item.formulaOrRefString : `=${item.formulaOrRefString}`,
      comment: item.comment ?? "",
      visible: !item.hidden,
      sheetId: !item.localSheetId || item.localSheetId === SCOPE_WORKBOOK_VALUE_DEFINED_NAME ? null : item.localSheetId,
    }));
  }

  get(id: string): DefinedName | null {
    return this.list().find((name) => name.id === id) ?? null;
  }

  named(name: string, sheetId: string | null): DefinedName | null {
    return (
      this.list().find((item) => item.name.toLowerCase() === name.toLowerCase() && item.sheetId === sheetId) ?? null
    );
  }

  /** The formula of the name as seen from a sheet: its own names come first. */
  formulaOf(name: string, sheetId: string | null): string | null {
    return (this.named(name, sheetId) ?? this.named(name, null))?.formula ?? null;
  }

  add(name: string, formula: string, comment: string, sheetId: string | null): string {
    const used = new Set(this.list().map(({ id }) => id));
    let number = used.size + 1;
    while (used.has(`name-${number}`)) number += 1;
    const id = `name-${number}`;
    this.#book.run(InsertDefinedNameCommand.id, this.#params({ id, name, formula, comment, visible: true, sheetId }));
    return id;
  }

  change(item: DefinedName, change: Partial<Pick<DefinedName, "formula" | "comment" | "visible">>): void {
    this.#book.run(SetDefinedNameCommand.id, this.#params({ ...item, ...change }));
    if (change.formula !== undefined) this.#book.recalculate();
  }

  remove(item: DefinedName): void {
    this.#book.run(RemoveDefinedNameCommand.id, this.#params(item));
  }

  /** References stand without "=", as the engine writes them itself; values and calculations with it. */
  #params({ id, name, formula, comment, visible, sheetId }: DefinedName) {
    const isReference = /^=('[^']*(''[^']*)*'|[\p{L}\p{N}_.]+)!\$?[A-Z]{1,3}\$?\d+(:\$?[A-Z]{1,3}\$?\d+)?$/iu.test(
      formula,
    );
    return {
      unitId: this.#book.id,
      id,
      name,
      formulaOrRefString: isReference ? formula.slice(1) : formula,
      comment,
      hidden: !visible,
      localSheetId: sheetId ?? SCOPE_WORKBOOK_VALUE_DEFINED_NAME,
    };
  }
}
