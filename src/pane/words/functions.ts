import { say } from "../../language/say";
import type { Inserted } from "../../sheet/insertExample";
import type { ReplaceScope } from "../../sheet/replaceByValues";

/** What the pane says about the functions in cells. */
export const functionWords = {
  cell: {
    title: say`This cell`,
    none: say`Select a cell with a TAPELINE formula: here stands what it asks and, should it show an error, why.`,
    asks: (address: string, id: string) => say`${address} asks ${id}`,
    leftOut: say`left out`,
    missing: say`missing`,
    why: (error: string) => say`Why it shows ${error}`,
    notRead: (parts: readonly string[]) =>
      say`The reason can be found only for cells and values; ${parts.join(say` and `)} is worked out by another formula. In general:`,
    elsewhere: say`The function itself answers now. The error comes from the rest of the formula, or the cell waits to be calculated.`,
    meanings: {
      "#N/A": say`The cells cannot answer the question: too few results, or results that are no possible ones.`,
      "#VALUE!": say`A part of the call is not what the function takes: text in place of a number, several cells for one value, or a word it does not know.`,
      "#NAME?": say`The workbook does not know the function. Repair the formulas below; if that does not help, check its name.`,
      "#SPILL!": say`The answer needs more cells than are free. Empty the cells below and beside it.`,
      "#BUSY!": say`It is being calculated.`,
      "#REF!": say`Cells the formula refers to have been deleted.`,
      "#NUM!": say`A number is outside what the function can take.`,
      "#DIV/0!": say`Something in the formula is divided by zero or by an empty cell.`,
      "#CALC!": say`The answer has no cells.`,
    } as Readonly<Record<string, string>>,
    otherError: say`The error comes from a cell the formula refers to.`,
  },

  list: {
    title: say`All functions`,
    search: say`Search by name or by what you want to know`,
    found: (count: number) => (count === 0 ? say`Nothing found. Try another word.` : say`${count} found`),
    optional: say`may be left out`,
    gives: say`Gives`,
    example: say`Example`,
    separators: say`Typed by hand, some languages of Excel want a semicolon between the parts.`,
    source: say`Source`,
    insert: say`Put the example into the active cell`,
    inserted: (address: string) => say`Written into ${address}. Put your own cells in place of its numbers.`,
    inTheWay: {
      cells: (address: string) => say`Nothing was written: ${address} is not empty. Select a free cell.`,
      merged: (address: string) => say`Nothing was written: ${address} is merged. Select a free cell.`,
      table: (name: string) =>
        say`Nothing was written: the answer fills several cells, which the table ${name} does not allow.`,
      edge: () => say`Nothing was written: the answer would reach over the edge of the sheet.`,
    } satisfies Record<(Inserted & { kind: "inTheWay" })["what"], (address: string) => string>,
  },

  mend: {
    title: say`Repair and share`,
    repairText: say`Formulas that show #NAME?, because they were opened or typed before Tapeline was there, are written once more.`,
    repair: say`Repair formulas`,
    nothingToRepair: say`All TAPELINE formulas are known. Nothing was changed.`,
    repaired: (count: number, cells: string) => say`${formulas(count)} written anew: ${cells}.`,
    still: (cells: string) => say`Still not known: ${cells}. Check the names of the functions, or load Tapeline again.`,
    shareText: say`People without Tapeline see errors once their workbook calculates. Before you share it, replace our formulas by their values. They no longer follow your results then: keep a copy of the workbook.`,
    scope: say`Where`,
    scopes: {
      selection: say`In the selected cells`,
      sheet: say`On this sheet`,
      workbook: say`In the whole workbook`,
    } satisfies Record<ReplaceScope, string>,
    replace: say`Replace formulas by values`,
    nothingToReplace: say`There is no TAPELINE formula with a value there. Nothing was changed.`,
    replaced: (count: number, cells: string) => say`${formulas(count)} replaced: ${cells}.`,
    left: (cells: string) => say`Left as formulas, since they show an error: ${cells}.`,
    errorsWritten: (cells: string) => say`Errors that stand among the values now: ${cells}.`,
    working: say`Working…`,
  },
} as const;

const formulas = (count: number): string => (count === 1 ? say`1 formula was` : say`${count} formulas were`);

const listedAtMost = 6;

/** Addresses for a sentence; the rest as a number. */
export const listed = (addresses: readonly string[]): string =>
  addresses.length <= listedAtMost
    ? addresses.join(", ")
    : say`${addresses.slice(0, listedAtMost).join(", ")} and ${addresses.length - listedAtMost} more places`;
