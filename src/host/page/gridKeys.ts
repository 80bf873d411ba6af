import { CommandType, Direction, ICommandService } from "@univerjs/core";
import { MoveSelectionCommand, ScrollToCellCommand, whenSheetEditorFocused } from "@univerjs/sheets-ui";
import { IShortcutService, KeyCode, MetaKeys } from "@univerjs/ui";
import type { Area, Rectangle } from "../engine/area";
import { sheetColumns, sheetRows } from "../engine/area";
import { wholeSheet } from "../engine/references";
import { activeCell, select, selectedAreas } from "../engine/selection";
import { usedPart } from "../engine/usedRange";
import type { Book } from "../index";

/** Keys as browsers number them; the grid's own list lacks these. */
const keys = { pageUp: 33, pageDown: 34, end: 35, home: 36 } as const;

/** Rows a page of the grid moves by. */
const pageOfRows = 25;

/** Where a key leads from the active cell. */
type Move = (book: Book, from: Area) => Rectangle;

const cell = (row: number, column: number): Rectangle => ({ row, column, rowCount: 1, columnCount: 1 });

/** The first row and column that are not frozen: where Home goes to, as in Excel. */
function corner(book: Book, { sheetId }: Area) {
  const { xSplit, ySplit } = book.worksheet(sheetId).getConfig().freeze;
  return { row: Math.max(0, ySplit), column: Math.max(0, xSplit) };
}

/** The last row and column that hold anything. */
function lastUsed(book: Book, from: Area): Rectangle {
  const used = usedPart(book, from.sheetId, wholeSheet({ book, id: from.sheetId }), true);
  return used ? cell(used.row + used.rowCount - 1, used.column + used.columnCount - 1) : cell(0, 0);
}

const rowMoved = (book: Book, { sheetId, row, column }: Area, by: number): Rectangle =>
  cell(Math.min(Math.max(0, row + by), book.worksheet(sheetId).getRowCount() - 1), column);

const moves: readonly { readonly id: string; readonly binding: number; readonly to: Move }[] = [
  { id: "row-start", binding: keys.home, to: (book, from) => cell(from.row, corner(book, from).column) },
  {
    id: "sheet-start",
    binding: keys.home | MetaKeys.CTRL_COMMAND,
    to: (book, from) => cell(corner(book, from).row, corner(book, from).column),
  },
  { id: "sheet-end", binding: keys.end | MetaKeys.CTRL_COMMAND, to: lastUsed },
  { id: "page-up", binding: keys.pageUp, to: (book, from) => rowMoved(book, from, -pageOfRows) },
  { id: "page-down", binding: keys.pageDown, to: (book, from) => rowMoved(book, from, pageOfRows) },
  {
    id: "whole-rows",
    binding: KeyCode.SPACE | MetaKeys.SHIFT,
    to: (book) => ({ ...lastSelected(book), column: 0, columnCount: sheetColumns }),
  },
  {
    id: "whole-columns",
    binding: KeyCode.SPACE | MetaKeys.CTRL_COMMAND,
    to: (book) => ({ ...lastSelected(book), row: 0, rowCount: sheetRows }),
  },
];

const lastSelected = (book: Book): Area => selectedAreas(book).at(-1)!;

/** Keys of a spreadsheet that the grid lacks, or that do nothing in its pinned version. */
export function addGridKeys(book: Book): void {
  const commands = book.injector.get(ICommandService);
  const shortcuts = book.injector.get(IShortcutService);
  for (const { id, binding, to } of moves) {
    const command = `tapeline.command.${id}`;
    commands.registerCommand({
      id: command,
      type: CommandType.COMMAND,
      handler: () => {
        const from = activeCell(book);
        const target = { ...from, ...to(book, from) };
        select([target]);
        // What is selected whole stays in sight where it is.
        if (target.rowCount * target.columnCount > 1) return true;
        return commands.syncExecuteCommand(ScrollToCellCommand.id, {
          range: {
            startRow: target.row,
            endRow: target.row,
            startColumn: target.column,
            endColumn: target.column,
          },
        });
      },
    });
    shortcuts.registerShortcut({ id: command, binding, priority: 200, preconditions: whenSheetEditorFocused });
  }
  const back = [
    { binding: KeyCode.TAB | MetaKeys.SHIFT, direction: Direction.LEFT },
    { binding: KeyCode.ENTER | MetaKeys.SHIFT, direction: Direction.UP },
  ];
  for (const { binding, direction } of back) {
    shortcuts.registerShortcut({
      id: MoveSelectionCommand.id,
      binding,
      priority: 200,
      preconditions: whenSheetEditorFocused,
      staticParameters: { direction },
    });
  }
}
