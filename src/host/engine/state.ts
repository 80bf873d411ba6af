/** An XML part an add-in keeps in the workbook. */
export type XmlPart = { readonly id: string; xml: string };

/** Names and contents a workbook carries along; the .xlsx room reads and writes them. */
export type WorkbookState = {
  settings: Record<string, unknown>;
  customProperties: Record<string, unknown>;
  documentProperties: Record<string, string>;
  sheetProperties: Record<string, Record<string, string>>;
  xmlParts: XmlPart[];
};

/** What add-ins keep in a workbook beside its cells. */
export class State {
  /** `Workbook.settings`: JSON values by key. */
  readonly settings = new Map<string, unknown>();
  /** `Workbook.properties.custom`. */
  readonly customProperties = new Map<string, unknown>();
  /** Title, author and the other properties of the document. */
  readonly documentProperties = new Map<string, string>();
  readonly xmlParts: XmlPart[] = [];
  /** When the workbook was made, as far as is known: when it was opened here. */
  readonly created = new Date();
  readonly #listeners = new Set<() => void>();
  readonly #sheetProperties = new Map<string, Map<string, string>>();

  sheetProperties(sheetId: string): Map<string, string> {
    const known = this.#sheetProperties.get(sheetId) ?? new Map<string, string>();
    this.#sheetProperties.set(sheetId, known);
    return known;
  }

  set(key: string, value: unknown): void {
    this.settings.set(key, value);
    for (const listener of [...this.#listeners]) listener();
  }

  remove(key: string): void {
    this.settings.delete(key);
    for (const listener of [...this.#listeners]) listener();
  }

  /** Calls back when a setting changes; answers how to stop. */
  listen(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  save(): WorkbookState {
    return {
      settings: Object.fromEntries(this.settings),
      customProperties: Object.fromEntries(this.customProperties),
      documentProperties: Object.fromEntries(this.documentProperties),
      sheetProperties: Object.fromEntries(
        [...this.#sheetProperties].map(([sheetId, properties]) => [sheetId, Object.fromEntries(properties)]),
      ),
      xmlParts: this.xmlParts.map((part) => ({ ...part })),
    };
  }

  load(saved: Partial<WorkbookState>): void {
    const fill = <T>(map: Map<string, T>, from: Record<string, T> | undefined) => {
      map.clear();
      for (const [key, value] of Object.entries(from ?? {})) map.set(key, value);
    };
    fill(this.settings, saved.settings);
    fill(this.customProperties, saved.customProperties);
    fill(this.documentProperties, saved.documentProperties);
    this.#sheetProperties.clear();
    for (const [sheetId, properties] of Object.entries(saved.sheetProperties ?? {})) {
      fill(this.sheetProperties(sheetId), properties);
    }
    this.xmlParts.splice(0, this.xmlParts.length, ...(saved.xmlParts ?? []).map((part) => ({ ...part })));
  }
}
