import { say } from "../language/say";
import { areaAddress, quotedSheet } from "../reading/address";
import { areasOf, splitAreas } from "./areas";
import { cellRuns } from "./cellRuns";
import type { CellGrid, Deed, Restoration } from "./deed";
import { callsUs } from "./functionCalls";
import { trapHost } from "./hostRefusal";
import { type FormulaCell, readFormulas } from "./readFormulas";
import { writeOrTakeBack } from "./takeBack";

export type ReplaceScope = "selection" | "sheet" | "workbook";

export type Replaced = {
  /** How many formulas have become values; one that spills counts once. */
  readonly count: number;
  /** Where the values stand, e.g. "'Hop test'!J4:J29". */
  readonly cells: readonly string[];
  /**
   * Errors that were met. A formula that shows nothing but an error is left, so that its reason can still be found; an
   * error among values that spill stands there as an error from now on.
   */
  readonly errors: readonly { readonly cell: string; readonly error: string; readonly formulaLeft: boolean }[];
  readonly deed: Deed;
};

/**
 * Replaces formulas that call a function of ours by what they show, so that the workbook can be shared with people who
 * do not have the add-in. A formula that calls ours among other things becomes a value too, for without the add-in it
 * would be an error. What spills becomes values as a whole block, also where the selection has only a part of it. Four
 * round trips whatever the number of formulas.
 */
export const replaceByValues = (scope: ReplaceScope): Promise<Replaced> =>
  trapHost(() =>
    Excel.run(async (context): Promise<Replaced> => {
      const { sheets, covers } = await readScope(context, scope);
      const formulas = await readFormulas(context, sheets, callsUs);
      const blocks = (await readBlocks(context, formulas)).filter(covers);
      const isLeft = ({ rowCount, columnCount, types }: Block) =>
        rowCount * columnCount === 1 && types[0]![0] === "Error";
      const replaced = blocks.filter((block) => !isLeft(block));
      const writes = replaced
        .flatMap((block) => (isSingle(block) ? [] : [blockWrite(block)]))
        .concat(runWrites(replaced));
      const deed: Deed = {
        what: say`Replaced ${replaced.length === 1 ? say`1 formula` : say`${replaced.length} formulas`} by values`,
        steps: writes.map(({ restoration }) => restoration),
      };
      await writeOrTakeBack(deed, async () => {
        for (const { range, values } of writes) range.values = values;
        await context.sync();
      });
      return {
        count: replaced.length,
        cells: writes.map(({ address }) => address),
        errors: blocks.flatMap((block) => errorsIn(block, isLeft(block))),
        deed,
      };
    }),
  );

/** A formula of ours with all the cells it fills. */
type Block = {
  readonly sheet: Excel.Worksheet;
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  readonly columnCount: number;
  readonly formula: string;
  readonly values: CellGrid;
  readonly types: CellGrid;
  readonly numberFormat: CellGrid;
};

async function readScope(context: Excel.RequestContext, scope: ReplaceScope) {
  const { workbook } = context;
  if (scope === "workbook") {
    workbook.worksheets.load("items/id,items/name");
    await context.sync();
    return { sheets: workbook.worksheets.items, covers: () => true };
  }
  const sheet = workbook.worksheets.getActiveWorksheet();
  sheet.load("id,name");
  if (scope === "sheet") {
    await context.sync();
    return { sheets: [sheet], covers: () => true };
  }
  const selected = workbook.getSelectedRanges();
  selected.load("address");
  await context.sync();
  const areas = splitAreas(selected.address).map((area) => areasOf(withoutDollars(area)));
  const covers = ({ row, column, rowCount, columnCount }: Block) =>
    areas.some(({ rows, columns }) => touches(rows, row, rowCount) && touches(columns, column, columnCount));
  return { sheets: [sheet], covers };
}

const withoutDollars = (address: string): string => address.replaceAll("$", "");

const touches = (lines: ReadonlySet<number>, first: number, count: number): boolean =>
  Array.from({ length: count }, (_, offset) => first + offset).some((line) => lines.has(line));

async function readBlocks(
  context: Excel.RequestContext,
  formulas: readonly { readonly sheet: Excel.Worksheet; readonly cells: readonly FormulaCell[] }[],
): Promise<Block[]> {
  const asked = formulas.flatMap(({ sheet, cells }) =>
    cells.map((cell) => {
      const range = sheet.getRangeByIndexes(cell.row, cell.column, 1, 1);
      const spill = range.getSpillingToRangeOrNullObject();
      range.load("values,valueTypes");
      spill.load("values,valueTypes,numberFormat,rowCount,columnCount");
      return { sheet, cell, range, spill };
    }),
  );
  await context.sync();
  const blocks = asked.map(({ sheet, cell, range, spill }): Block => {
    const { row, column, formula } = cell;
    if (spill.isNullObject) {
      const types = range.valueTypes as CellGrid;
      const numberFormat = [[cell.numberFormat]];
      return { sheet, row, column, rowCount: 1, columnCount: 1, formula, values: range.values, types, numberFormat };
    }
    const { rowCount, columnCount, values, numberFormat } = spill;
    return { sheet, row, column, rowCount, columnCount, formula, values, types: spill.valueTypes, numberFormat };
  });
  // Should the program show the formula also in the cells it spills into, they are not formulas of their own.
  const spilling = blocks.filter((block) => !isSingle(block));
  return blocks.filter((block) => !isSingle(block) || !spilling.some((other) => holds(other, block)));
}

const isSingle = ({ rowCount, columnCount }: Block): boolean => rowCount * columnCount === 1;

const holds = (outer: Block, { sheet, row, column }: Block): boolean =>
  outer.sheet === sheet &&
  row >= outer.row &&
  row < outer.row + outer.rowCount &&
  column >= outer.column &&
  column < outer.column + outer.columnCount;

type Write = {
  readonly range: Excel.Range;
  readonly address: string;
  readonly values: unknown[][];
  readonly restoration: Restoration;
};

function blockWrite({ sheet, row, column, rowCount, columnCount, formula, values, numberFormat }: Block): Write {
  const formulas = values.map((cells, r) => cells.map((_, c) => (r === 0 && c === 0 ? formula : "")));
  return write(sheet, row, column, { rowCount, columnCount, formulas, values, numberFormat });
}

/** Formulas below each other that do not spill are one write. */
function runWrites(blocks: readonly Block[]): Write[] {
  const sheets = new Set(blocks.map(({ sheet }) => sheet));
  return [...sheets].flatMap((sheet) =>
    cellRuns(blocks.filter((block) => block.sheet === sheet && isSingle(block))).map(({ row, column, cells }) =>
      write(sheet, row, column, {
        rowCount: cells.length,
        columnCount: 1,
        formulas: cells.map(({ formula }) => [formula]),
        values: cells.map(({ values }) => values[0]!),
        numberFormat: cells.map(({ numberFormat }) => numberFormat[0]!),
      }),
    ),
  );
}

type Filling = {
  readonly rowCount: number;
  readonly columnCount: number;
  readonly formulas: CellGrid;
  readonly values: CellGrid;
  readonly numberFormat: CellGrid;
};

function write(sheet: Excel.Worksheet, row: number, column: number, filling: Filling): Write {
  const { rowCount, columnCount, formulas, values, numberFormat } = filling;
  const address = areaAddress(row, column, rowCount, columnCount);
  return {
    range: sheet.getRangeByIndexes(row, column, rowCount, columnCount),
    address: `${quotedSheet(sheet.name)}!${address}`,
    values: values.map((cells, r) => cells.map((value, c) => asEntered(value, numberFormat[r]![c]))),
    restoration: { kind: "restoreCells", sheetId: sheet.id, address, formulas, numberFormat, written: values },
  };
}

/** Text stays text, whatever it looks like; an error is entered as it reads. */
function asEntered(value: unknown, numberFormat: unknown): unknown {
  const isText = typeof value === "string" && value !== "" && !value.startsWith("#");
  return isText && numberFormat !== "@" ? `'${value}` : value;
}

function errorsIn({ sheet, row, column, values, types }: Block, formulaLeft: boolean): Replaced["errors"] {
  return types.flatMap((cells, r) =>
    cells.flatMap((type, c) => {
      if (type !== "Error") return [];
      const cell = `${quotedSheet(sheet.name)}!${areaAddress(row + r, column + c, 1, 1)}`;
      return [{ cell, error: String(values[r]![c]), formulaLeft }];
    }),
  );
}
