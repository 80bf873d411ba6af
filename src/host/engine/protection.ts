import { fits, type Password } from "./passwords";

/** A change that protection forbids. */
export class Forbidden extends Error {
  constructor(what: string) {
    super(`The ${what} is protected.`);
  }
}

export type Lock = { readonly options: Readonly<Record<string, unknown>>; readonly password: Password };

/** Protection of sheets and of the workbook's structure. Cells of a protected sheet are locked unless marked otherwise. */
export class Protection {
  readonly #sheets = new Map<string, Lock>();
  #structure: Password | null = null;
  readonly #listeners = new Set<(sheetId: string, isProtected: boolean) => void>();

  sheet(sheetId: string): Lock | null {
    return this.#sheets.get(sheetId) ?? null;
  }

  protectSheet(sheetId: string, options: Lock["options"], password: Password): void {
    if (this.#sheets.has(sheetId)) throw new Forbidden("worksheet");
    this.#sheets.set(sheetId, { options, password });
    for (const listener of [...this.#listeners]) listener(sheetId, true);
  }

  unprotectSheet(sheetId: string, password: string): void {
    const lock = this.#sheets.get(sheetId);
    if (!lock) return;
    if (!fits(lock.password, password)) throw new Forbidden("worksheet");
    this.#sheets.delete(sheetId);
    for (const listener of [...this.#listeners]) listener(sheetId, false);
  }

  get isStructureProtected(): boolean {
    return this.#structure !== null;
  }

  /** What the structure is protected with, null where it is not. */
  get structure(): Password | null {
    return this.#structure;
  }

  protectStructure(password: Password): void {
    if (this.#structure !== null) throw new Forbidden("workbook");
    this.#structure = password;
  }

  unprotectStructure(password: string): void {
    if (this.#structure !== null && !fits(this.#structure, password)) throw new Forbidden("workbook");
    this.#structure = null;
  }

  /** Throws where cells of the sheet, or with an option such as "allowFormatCells" only their look, are locked. */
  checkCells(sheetId: string, option?: string): void {
    const lock = this.#sheets.get(sheetId);
    if (lock && !(option && lock.options[option] === true)) throw new Forbidden("worksheet");
  }

  checkStructure(): void {
    if (this.#structure !== null) throw new Forbidden("workbook");
  }

  /** Calls back when a sheet is protected or no longer; answers how to stop. */
  listen(listener: (sheetId: string, isProtected: boolean) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
}
