import type { Inserted } from "../../sheet/insertExample";
import type { ReplaceScope } from "../../sheet/replaceByValues";

/** What the pane says about the functions in cells. */
export const functionWords = {
  cell: {
    title: "This cell",
    none: "Select a cell with a TAPELINE formula: here stands what it asks and, should it show an error, why.",
    asks: (address: string, id: string) => `${address} asks ${id}`,
    leftOut: "left out",
    missing: "missing",
    why: (error: string) => `Why it shows ${error}`,
    notRead: (parts: readonly string[]) =>
      `The reason can be found only for cells and values; ${parts.join(" and ")} is worked out by another formula. In general:`,
    elsewhere:
      "The function itself answers now. The error comes from the rest of the formula, or the cell waits to be calculated.",
    meanings: {
      "#N/A": "The cells cannot answer the question: too few results, or results that are no possible ones.",
      "#VALUE!":
        "A part of the call is not what the function takes: text in place of a number, several cells for one value, or a word it does not know.",
      "#NAME?":
        "The workbook does not know the function. Repair the formulas below; if that does not help, check its name.",
      "#SPILL!": "The answer needs more cells than are free. Empty the cells below and beside it.",
      "#BUSY!": "It is being calculated.",
      "#REF!": "Cells the formula refers to have been deleted.",
      "#NUM!": "A number is outside what the function can take.",
      "#DIV/0!": "Something in the formula is divided by zero or by an empty cell.",
      "#CALC!": "The answer has no cells.",
    } as Readonly<Record<string, string>>,
    otherError: "The error comes from a cell the formula refers to.",
  },

  list: {
    title: "All functions",
    search: "Search by name or by what you want to know",
    found: (count: number) => (count === 0 ? "Nothing found. Try another word." : `${count} found`),
    optional: "may be left out",
    gives: "Gives",
    example: "Example",
    separators: "Typed by hand, some languages of Excel want a semicolon between the parts.",
    source: "Source",
    insert: "Put the example into the active cell",
    inserted: (address: string) => `Written into ${address}. Put your own cells in place of its numbers.`,
    inTheWay: {
      cells: (address: string) => `Nothing was written: ${address} is not empty. Select a free cell.`,
      merged: (address: string) => `Nothing was written: ${address} is merged. Select a free cell.`,
      table: (name: string) =>
        `Nothing was written: the answer fills several cells, which the table ${name} does not allow.`,
      edge: () => "Nothing was written: the answer would reach over the edge of the sheet.",
    } satisfies Record<(Inserted & { kind: "inTheWay" })["what"], (address: string) => string>,
  },

  mend: {
    title: "Repair and share",
    repairText:
      "Formulas that show #NAME?, because they were opened or typed before Tapeline was there, are written once more.",
    repair: "Repair formulas",
    nothingToRepair: "All TAPELINE formulas are known. Nothing was changed.",
    repaired: (count: number, cells: string) => `${formulas(count)} written anew: ${cells}.`,
    still: (cells: string) => `Still not known: ${cells}. Check the names of the functions, or load Tapeline again.`,
    shareText:
      "People without Tapeline see errors once their workbook calculates. Before you share it, replace our formulas by their values. They no longer follow your results then: keep a copy of the workbook.",
    scope: "Where",
    scopes: {
      selection: "In the selected cells",
      sheet: "On this sheet",
      workbook: "In the whole workbook",
    } satisfies Record<ReplaceScope, string>,
    replace: "Replace formulas by values",
    nothingToReplace: "There is no TAPELINE formula with a value there. Nothing was changed.",
    replaced: (count: number, cells: string) => `${formulas(count)} replaced: ${cells}.`,
    left: (cells: string) => `Left as formulas, since they show an error: ${cells}.`,
    errorsWritten: (cells: string) => `Errors that stand among the values now: ${cells}.`,
    working: "Working…",
  },
} as const;

const formulas = (count: number): string => (count === 1 ? "1 formula was" : `${count} formulas were`);

const listedAtMost = 6;

/** Addresses for a sentence; the rest as a number. */
export const listed = (addresses: readonly string[]): string =>
  addresses.length <= listedAtMost
    ? addresses.join(", ")
    : `${addresses.slice(0, listedAtMost).join(", ")} and ${addresses.length - listedAtMost} more places`;
