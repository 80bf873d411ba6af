import { say } from "../language/say";
import type { Page } from "../programme/page";
import { fingerprint } from "../store/fingerprint";
import { removeSheets } from "./createStoreTable";
import { freeName } from "./createTable";
import type { Deed, Restoration } from "./deed";
import { fillPage, type PageCell, pageCells } from "./fillPage";
import { HostRefusal, trapHost } from "./hostRefusal";
import { type LaidPage, layPage } from "./layPage";
import type { Paper } from "./printPage";

export type PagesWritten = {
  /** Names of the sheets written, in their order. */
  readonly sheets: readonly string[];
  /** How many of them took the place of a page written before. */
  readonly replaced: number;
  /** Why not all pages were written: those named in `sheets` stand, the others do not. Null where all were. */
  readonly stopped: "cancelled" | HostRefusal | null;
  readonly deed: Deed;
};

export type PageWriting = {
  readonly paper?: Paper;
  /** Told after each page. */
  readonly onProgress?: (done: number, of: number) => void;
  /** Looked at before each page. */
  readonly signal?: AbortSignal;
};

/** Property of a sheet by which a page of ours is known, and whether it stands as we wrote it. */
export const pageProperty = "Tapeline.page";

/**
 * Writes pages to print, each on its own sheet. A page written before under the same name is replaced as long as it reads
 * as we wrote it; a sheet of the coach's, or a page they have written on, stays, and ours gets the next free name. Two
 * round trips and one for each page.
 */
export async function writePages(
  pages: readonly Page[],
  { paper = "a4", onProgress, signal }: PageWriting = {},
): Promise<PagesWritten> {
  const standing = await trapHost(() => readStanding(pages.map(({ sheet }) => sheetNameFrom(sheet))));
  const taken = [...standing.names];
  const sheets: string[] = [];
  const steps: Restoration[] = [];
  let replaced = 0;
  let stopped: PagesWritten["stopped"] = null;
  for (const page of pages) {
    if (signal?.aborted) {
      stopped = "cancelled";
      break;
    }
    const wished = sheetNameFrom(page.sheet);
    const replaces = standing.ours.has(wished.toLowerCase()) && !sheets.includes(wished);
    const name = replaces ? wished : freeSheetName(wished, taken);
    try {
      steps.push(await writePage(page, { name, replaces, isFirst: sheets.length === 0, paper, taken }));
    } catch (error) {
      if (!(error instanceof HostRefusal)) throw error;
      stopped = error;
      break;
    }
    sheets.push(name);
    taken.push(name);
    if (replaces) replaced += 1;
    onProgress?.(sheets.length, pages.length);
  }
  return { sheets, replaced, stopped, deed: { what: writtenWords(sheets.length, replaced), steps } };
}

/** Names of all sheets, and which of the wished ones, in lower case, are pages of ours that read as we wrote them. */
const readStanding = (wished: readonly string[]) =>
  Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    const keys = new Set(wished.map((name) => name.toLowerCase()));
    const found = worksheets.items
      .filter(({ name }) => keys.has(name.toLowerCase()))
      .map((sheet) => ({
        name: sheet.name,
        property: sheet.customProperties.getItemOrNullObject(pageProperty).load("value"),
        used: sheet.getUsedRangeOrNullObject(true).load("formulas,rowIndex,columnIndex"),
      }));
    await context.sync();
    const ours = found
      .filter(({ property, used }) => !property.isNullObject && property.value === markOf(cellsOfRange(used)))
      .map(({ name }) => name.toLowerCase());
    return { names: worksheets.items.map(({ name }) => name), ours: new Set(ours) };
  });

const markOf = (cells: readonly PageCell[]): string => fingerprint(cells.flat());

function cellsOfRange(used: Excel.Range): PageCell[] {
  if (used.isNullObject) return [];
  return used.formulas.flatMap((row: unknown[], r) =>
    row.flatMap((value, c): PageCell[] =>
      value === "" ? [] : [[used.rowIndex + r, used.columnIndex + c, value as number | string]],
    ),
  );
}

type Writing = {
  readonly name: string;
  readonly replaces: boolean;
  readonly isFirst: boolean;
  readonly paper: Paper;
  readonly taken: readonly string[];
};

/** Writes one page, and gives how to remove it. The page it replaces goes last; where writing fails, it stays. */
function writePage(page: Page, { name, replaces, isFirst, paper, taken }: Writing): Promise<Restoration> {
  const laid: LaidPage = layPage(page);
  const cells = pageCells(laid);
  const meanwhile = replaces ? freeSheetName(name, taken) : name;
  return trapHost(() =>
    Excel.run(async (context): Promise<Restoration> => {
      const sheet = context.workbook.worksheets.add(meanwhile);
      try {
        sheet.load("id");
        fillPage(sheet, laid, paper, page.title);
        sheet.customProperties.add(pageProperty, markOf(cells));
        if (replaces) {
          context.workbook.worksheets.getItem(name).delete();
          sheet.name = name;
        }
        if (isFirst) sheet.activate();
        await context.sync();
      } catch (error) {
        await removeSheets(context, [meanwhile]).catch(() => undefined);
        throw error;
      }
      return { kind: "removeSheet", sheetId: sheet.id, written: { row: 0, column: 0, formulas: gridOf(cells) } };
    }),
  );
}

function gridOf(cells: readonly PageCell[]): (number | string)[][] {
  const [rows, columns] = [0, 1].map((axis) => Math.max(...cells.map((cell) => Number(cell[axis]))) + 1);
  const grid = Array.from({ length: rows! }, () => Array<number | string>(columns!).fill(""));
  for (const [row, column, value] of cells) grid[row]![column] = value;
  return grid;
}

/** Letters that the name of a sheet may have. */
const longestName = 31;

/** What of a name can be one of a sheet. */
const sheetNameFrom = (wished: string): string =>
  wished
    .replace(/[\\/?*[\]:]/g, "-")
    .slice(0, longestName)
    .replace(/^'+|'+$/g, "")
    .trim() || say`Page`;

/** The name, or the first with a number that nobody has; a long one gives way to the number. */
const freeSheetName = (wished: string, taken: readonly string[]): string =>
  taken.some((name) => name.toLowerCase() === wished.toLowerCase())
    ? freeName(wished.slice(0, longestName - 4).trim(), " ", [...taken, wished.slice(0, longestName - 4).trim()])
    : wished;

function writtenWords(count: number, replaced: number): string {
  const pages = count === 1 ? say`1 page` : say`${count} pages`;
  const again = replaced === 1 ? say`an earlier one, which is` : say`${replaced} earlier ones, which are`;
  return replaced === 0 ? say`Wrote ${pages}.` : say`Wrote ${pages}, in place of ${again} not brought back.`;
}
