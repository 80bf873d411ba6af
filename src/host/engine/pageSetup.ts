import { InsertColMutation, InsertRowMutation, RemoveColMutation, RemoveRowMutation } from "@univerjs/sheets";
import { isEntireColumn, isEntireRow, type Rectangle } from "./area";
import type { Book } from "./book";

/** Header and footer of a kind of pages, each in three sections, with the format codes Excel has (&P is the page). */
export type HeaderAndFooter = {
  readonly leftHeader: string;
  readonly centerHeader: string;
  readonly rightHeader: string;
  readonly leftFooter: string;
  readonly centerFooter: string;
  readonly rightFooter: string;
};

/** Which pages have headers of their own; those of "odd" pages are those of all pages without such a difference. */
export type HeaderPages = "odd" | "even" | "first";

/** Lines of a sheet, counted from 0: rows or columns. */
export type Lines = { readonly start: number; readonly count: number };

/** How a sheet is printed. Margins are in points. */
export type PageSetup = {
  readonly orientation: "Portrait" | "Landscape";
  /** The paper's number in the file format (ECMA-376 part 1, 18.3.1.63): 1 Letter, 9 A4 .. */
  readonly paper: number;
  /** Percent, or the pages to fit on; null is as many as it takes. */
  readonly zoom: { readonly scale: number } | { readonly across: number | null; readonly down: number | null };
  readonly margins: Readonly<Record<"top" | "bottom" | "left" | "right" | "header" | "footer", number>>;
  readonly centerHorizontally: boolean;
  readonly centerVertically: boolean;
  readonly printGridlines: boolean;
  readonly printHeadings: boolean;
  readonly blackAndWhite: boolean;
  readonly draftMode: boolean;
  readonly firstPageNumber: number | null;
  readonly printComments: "NoComments" | "EndSheet" | "InPlace";
  readonly printErrors: "AsDisplayed" | "Blank" | "Dash" | "NotAvailable";
  readonly printOrder: "DownThenOver" | "OverThenDown";
  /** Empty: all that is filled. */
  readonly printArea: readonly Rectangle[];
  readonly titleRows: Lines | null;
  readonly titleColumns: Lines | null;
  readonly headers: Readonly<Record<HeaderPages, HeaderAndFooter>>;
  readonly differentFirst: boolean;
  readonly differentOddEven: boolean;
  readonly headersFollowMargins: boolean;
  readonly headersFollowScale: boolean;
  /** The rows and columns that begin a new page, in order. */
  readonly rowBreaks: readonly number[];
  readonly columnBreaks: readonly number[];
};

const noHeader: HeaderAndFooter = {
  leftHeader: "",
  centerHeader: "",
  rightHeader: "",
  leftFooter: "",
  centerFooter: "",
  rightFooter: "",
};

/** A sheet nobody has set up: the defaults of the file format, and the margins Excel writes for a new sheet. */
export const freshPageSetup: PageSetup = {
  orientation: "Portrait",
  paper: 1,
  zoom: { scale: 100 },
  margins: { top: 54, bottom: 54, left: 50.4, right: 50.4, header: 21.6, footer: 21.6 },
  centerHorizontally: false,
  centerVertically: false,
  printGridlines: false,
  printHeadings: false,
  blackAndWhite: false,
  draftMode: false,
  firstPageNumber: null,
  printComments: "NoComments",
  printErrors: "AsDisplayed",
  printOrder: "DownThenOver",
  printArea: [],
  titleRows: null,
  titleColumns: null,
  headers: { odd: noHeader, even: noHeader, first: noHeader },
  differentFirst: false,
  differentOddEven: false,
  headersFollowMargins: true,
  headersFollowScale: true,
  rowBreaks: [],
  columnBreaks: [],
};

/** How the sheets of the workbook are printed. The engine knows nothing of paper, so that this is the host's own. */
export class PageSetups {
  readonly #setups = new Map<string, PageSetup>();
  readonly #listeners = new Set<() => void>();

  constructor(book: Book) {
    // Areas and breaks stay with their rows and columns.
    book.commands.onCommandExecuted(({ id, params }) => {
      const follow = following[id];
      if (!follow) return;
      const { subUnitId, range } = params as LinesMoved;
      const setup = this.#setups.get(subUnitId);
      if (setup) this.#setups.set(subUnitId, follow(setup, range));
    });
  }

  of(sheetId: string): PageSetup {
    return this.#setups.get(sheetId) ?? freshPageSetup;
  }

  change(sheetId: string, change: Partial<PageSetup>): void {
    this.#setups.set(sheetId, { ...this.of(sheetId), ...change });
    for (const listener of [...this.#listeners]) listener();
  }

  /** The sheets somebody has set up. */
  list(): ReadonlyMap<string, PageSetup> {
    return this.#setups;
  }

  /** Calls back when a sheet is set up otherwise; answers how to stop. */
  listen(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
}

type LinesMoved = {
  readonly subUnitId: string;
  readonly range: { startRow: number; endRow: number; startColumn: number; endColumn: number };
};

/** Where lines stand after others came or went before or among them; null where they went themselves. */
type Move = (lines: Lines) => Lines | null;

const inserted =
  (at: number, more: number): Move =>
  ({ start, count }) =>
    at <= start ? { start: start + more, count } : { start, count: at < start + count ? count + more : count };

const removed =
  (from: number, less: number): Move =>
  ({ start, count }) => {
    const lost = (first: number, beyond: number) => Math.max(0, Math.min(beyond, from + less) - Math.max(first, from));
    const left = count - lost(start, start + count);
    return left > 0 ? { start: start - lost(0, start), count: left } : null;
  };

const rowsMoved = (setup: PageSetup, move: Move): PageSetup => ({
  ...setup,
  titleRows: setup.titleRows && move(setup.titleRows),
  rowBreaks: setup.rowBreaks.flatMap((row) => move({ start: row, count: 1 })?.start ?? []),
  printArea: setup.printArea.flatMap((area) => {
    if (isEntireColumn(area)) return [area];
    const rows = move({ start: area.row, count: area.rowCount });
    return rows ? [{ ...area, row: rows.start, rowCount: rows.count }] : [];
  }),
});

const columnsMoved = (setup: PageSetup, move: Move): PageSetup => ({
  ...setup,
  titleColumns: setup.titleColumns && move(setup.titleColumns),
  columnBreaks: setup.columnBreaks.flatMap((column) => move({ start: column, count: 1 })?.start ?? []),
  printArea: setup.printArea.flatMap((area) => {
    if (isEntireRow(area)) return [area];
    const columns = move({ start: area.column, count: area.columnCount });
    return columns ? [{ ...area, column: columns.start, columnCount: columns.count }] : [];
  }),
});

const following: Record<string, (setup: PageSetup, range: LinesMoved["range"]) => PageSetup> = {
  [InsertRowMutation.id]: (setup, { startRow, endRow }) => rowsMoved(setup, inserted(startRow, endRow - startRow + 1)),
  [RemoveRowMutation.id]: (setup, { startRow, endRow }) => rowsMoved(setup, removed(startRow, endRow - startRow + 1)),
  [InsertColMutation.id]: (setup, { startColumn, endColumn }) =>
    columnsMoved(setup, inserted(startColumn, endColumn - startColumn + 1)),
  [RemoveColMutation.id]: (setup, { startColumn, endColumn }) =>
    columnsMoved(setup, removed(startColumn, endColumn - startColumn + 1)),
};
