import type { Area } from "../engine/area";
import type { Book } from "../engine/book";
import { readText, readValues, writeValues } from "../engine/cells";
import { selectedAreas } from "../engine/selection";
import { strict } from "./strict";

/** Words of the older, common API. */
export const documentWords = {
  AsyncResultStatus: { Succeeded: "succeeded", Failed: "failed" },
  CoercionType: {
    Text: "text",
    Matrix: "matrix",
    Table: "table",
    Html: "html",
    Ooxml: "ooxml",
    SlideRange: "slideRange",
    Image: "image",
    XmlSvg: "xmlSvg",
  },
  DocumentMode: { ReadOnly: "readOnly", ReadWrite: "readWrite" },
  EventType: { DocumentSelectionChanged: "documentSelectionChanged", SettingsChanged: "settingsChanged" },
  FileType: { Text: "text", Compressed: "compressed", Pdf: "pdf" },
  ValueFormat: { Unformatted: "unformatted", Formatted: "formatted" },
} as const;

type Failure = { readonly code: number; readonly name: string; readonly message: string };
type AsyncResult = {
  readonly status: "succeeded" | "failed";
  readonly value: unknown;
  readonly error: Failure | null;
  readonly asyncContext: unknown;
};
type Callback = (result: AsyncResult) => void;
type Options = {
  readonly asyncContext?: unknown;
  readonly valueFormat?: string;
  readonly coercionType?: string;
  readonly handler?: unknown;
};

/** A call of the common API: options and callback may each be left out; it answers by the callback alone. */
function answering(given: readonly unknown[], work: (options: Options) => unknown): void {
  const callback = given.find((value): value is Callback => typeof value === "function");
  const options = (given.find((value) => typeof value === "object" && value !== null) ?? {}) as Options;
  const { asyncContext } = options;
  let result: AsyncResult;
  try {
    result = { status: "succeeded", value: work(options), error: null, asyncContext };
  } catch (error) {
    // ASSUMPTION: every refusal has the code of an unspecified fault of the host (5001).
    const failure = { code: 5001, name: "Internal Error", message: String((error as Error).message) };
    result = { status: "failed", value: undefined, error: failure, asyncContext };
  }
  queueMicrotask(() => callback?.(result));
}

function selected(book: Book): Area {
  const areas = selectedAreas(book);
  if (areas.length !== 1) throw new Error("Several areas are selected.");
  return areas[0]!;
}

/** Rows of text, parted as a copied selection is. */
const asText = (rows: readonly (readonly unknown[])[]): string => rows.map((row) => row.join("\t")).join("\r\n");

function readSelected(book: Book, type: unknown, { valueFormat }: Options): unknown {
  const area = selected(book);
  const rows = valueFormat === "formatted" ? readText(area) : readValues(area);
  if (type === "matrix") return rows;
  if (type === "text") return asText(rows);
  throw new Error(`The embedded host does not offer a selection as ${String(type)}.`);
}

function writeSelected(book: Book, data: unknown): void {
  const rows = typeof data === "string" ? data.split(/\r?\n/).map((line) => line.split("\t")) : (data as unknown[][]);
  if (!Array.isArray(rows) || !rows.every(Array.isArray)) throw new Error("Text or rows of values are wanted.");
  const size = { rowCount: rows.length, columnCount: Math.max(1, ...rows.map((cells) => cells.length)) };
  writeValues({ ...selected(book), ...size }, rows);
}

/** `Office.context.document`: the workbook as the common API of all Office applications sees it. */
export function createDocument(book: Book) {
  // Settings are the workbook's own; what is set reaches it with saveAsync (develop/persisting-add-in-state-and-settings).
  const unsaved = new Map<string, { readonly value: unknown } | null>();
  const selectionHandlers = new Map<unknown, () => void>();

  const settings = strict("Office.context.document.settings", {
    get: (name: string): unknown => {
      const own = unsaved.get(name);
      return own === undefined ? (book.state.settings.get(name) ?? null) : (own?.value ?? null);
    },
    set: (name: string, value: unknown) => void unsaved.set(name, { value: JSON.parse(JSON.stringify(value)) }),
    remove: (name: string) => void unsaved.set(name, null),
    saveAsync: (...given: unknown[]) =>
      answering(given, () => {
        for (const [name, own] of unsaved) {
          if (own) book.state.set(name, own.value);
          else book.state.remove(name);
        }
        unsaved.clear();
        return settings;
      }),
    refreshAsync: (...given: unknown[]) =>
      answering(given, () => {
        unsaved.clear();
        return settings;
      }),
  });

  return strict("Office.context.document", {
    mode: documentWords.DocumentMode.ReadWrite,
    settings,
    getSelectedDataAsync: (type: unknown, ...given: unknown[]) =>
      answering(given, (options) => readSelected(book, type, options)),
    setSelectedDataAsync: (data: unknown, ...given: unknown[]) => answering(given, () => writeSelected(book, data)),
    addHandlerAsync: (event: unknown, handler: (args: unknown) => void, ...given: unknown[]) =>
      answering(given, () => {
        if (event !== documentWords.EventType.DocumentSelectionChanged) {
          throw new Error(`The embedded host does not offer the event ${String(event)}.`);
        }
        const stop = book.changes.listen((change) => {
          if (change.kind === "selection") queueMicrotask(() => handler({ type: event, document: null }));
        });
        selectionHandlers.set(handler, stop);
        return undefined;
      }),
    removeHandlerAsync: (_event: unknown, ...given: unknown[]) =>
      answering(given, ({ handler }) => {
        for (const [known, stop] of selectionHandlers) if (handler === undefined || handler === known) stop();
        return undefined;
      }),
  });
}
