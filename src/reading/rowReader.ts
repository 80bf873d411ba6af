import { inSentence, say } from "../language/say";
import { addressOf } from "./address";
import { type ColumnMap, type ColumnUse, offsetOf } from "./columns";
import { type Cell, type Grid, isCellError, textOf } from "./grid";
import { readHeading } from "./heading";
import { type MeasureKey, measureCalled } from "./measures";
import { mergedCells } from "./mergedCells";
import { unnamedSprint } from "./nameSeries";
import { readDate } from "./readDate";
import { shorten } from "./readNumber";
import type { Remark } from "./readResults";
import { type Unit, unitOf } from "./units";
import { type Side, sideOf } from "./vocabulary";

/** What a row says of all its results; null or "" where it says nothing. */
export type InRow = {
  readonly side: Side | null;
  readonly unknownSide: Remark | null;
  readonly date: string | null;
  readonly test: string;
  readonly measure: MeasureKey | null;
  /** Whether the row names what was measured, be it known here or not: then its column has no say in it. */
  readonly saysMeasure: boolean;
  readonly unit: Unit | null;
  /** Whether a unit stands there that is not known here. */
  readonly unknownUnit: boolean;
  readonly group: string | null;
  readonly attempt: number | null;
};

/**
 * Reads what a row says of all its results, where columns for it exist. A cell merged down over several rows counts for
 * each of them. What cannot be read is told, once for each word, and the row is used without it.
 */
export function rowReader(grid: Grid, map: ColumnMap, remarks: Remark[]): (row: number) => InRow {
  const mergedAt = mergedCells(grid);
  const told = new Set<string>();
  const offsets = new Map(map.columns.map(({ use }) => [use, offsetOf(map, use)!]));
  const namedTests = new Map<string, Pick<InRow, "test" | "measure">>();

  function cellOf(row: number, use: ColumnUse): { readonly cell: Cell; readonly address: string } {
    const column = offsets.get(use);
    if (column === undefined) return { cell: null, address: "" };
    const own = grid.cells[row]![column]!;
    const area = own === null ? mergedAt(row, column) : null;
    const inherited = area?.firstColumn === column ? (grid.cells[area.firstRow]?.[column] ?? null) : own;
    return { cell: inherited, address: addressOf(grid, row, column) };
  }

  function tell(use: ColumnUse, word: string, remark: Pick<Remark, "cell" | "code" | "why">): void {
    const once = `${use}|${word}`;
    if (!told.has(once)) remarks.push({ ...remark, leftOut: false });
    told.add(once);
  }

  function textIn(row: number, use: "test" | "measure" | "unit" | "group"): string {
    const { cell, address } = cellOf(row, use);
    if (isCellError(cell)) {
      const why = say`The cell shows the error ${cell.error}; the row was read without it.`;
      tell(use, address, { cell: address, code: "error", why });
    }
    return textOf(cell);
  }

  function dateIn(row: number): string | null {
    if (!offsets.has("date")) return map.date;
    const { cell, address } = cellOf(row, "date");
    const read = readDate(cell);
    if (read.kind === "unread") tell("date", address, { cell: address, code: "date", why: read.why });
    return read.kind === "date" ? read.date : null;
  }

  function attemptIn(row: number): number | null {
    const { cell, address } = cellOf(row, "attempt");
    if (cell === null || textOf(cell) === "") {
      if (isCellError(cell)) tell("attempt", address, { cell: address, code: "error", why: noTrial(cell.error) });
      return null;
    }
    const number = Number(/^(?:\p{L}+\.?\s*|#)?(\d+)\.?$/u.exec(textOf(cell))?.[1] ?? Number.NaN);
    if (number > 0 && number <= mostTrials) return number;
    tell("attempt", address, { cell: address, code: "text", why: noTrial(textOf(cell)) });
    return null;
  }

  /** The series of a row. A measure we do not know is part of the test's name, lest two kinds of numbers be mixed. */
  function seriesIn(row: number, unit: Unit | null): Pick<InRow, "test" | "measure" | "saysMeasure"> {
    const test = textIn(row, "test");
    const words = textIn(row, "measure");
    if (words === "") {
      const spelled = `${test}|${unit?.symbol}`;
      if (!namedTests.has(spelled)) namedTests.set(spelled, testCalledWith(test, unit));
      return { ...namedTests.get(spelled)!, saysMeasure: false };
    }
    const measure = measureCalled(words);
    if (measure !== null) return { test, measure, saysMeasure: true };
    const name = test === "" ? words : `${test}, ${inSentence(words)}`;
    const { address } = cellOf(row, "measure");
    const why = say`“${shorten(words)}” is no measure known here; its results were read as the test “${shorten(name)}”.`;
    tell("measure", `${test}|${words}`, { cell: address, code: "measure", why });
    return { test: name, measure: null, saysMeasure: true };
  }

  return (row) => {
    const spelled = textIn(row, "unit");
    const unit = unitOf(spelled);
    if (spelled !== "" && unit === null) {
      const why = say`“${shorten(spelled)}” is no unit known here; its results were read without a unit.`;
      tell("unit", spelled, { cell: cellOf(row, "unit").address, code: "unit", why });
    }
    const sides = cellOf(row, "side");
    const side = typeof sides.cell === "string" ? sideOf(sides.cell) : null;
    return {
      side,
      unknownSide: sides.address !== "" && side === null ? unknownSide(sides.cell, sides.address) : null,
      date: dateIn(row),
      ...seriesIn(row, unit),
      unit,
      unknownUnit: spelled !== "" && unit === null,
      group: textIn(row, "group") || null,
      attempt: attemptIn(row),
    };
  };
}

/** "10 m sprint" in a column of tests names a measure too; a name without one stays as it was typed. */
function testCalledWith(name: string, unit: Unit | null): Pick<InRow, "test" | "measure"> {
  const known = measureCalled(name);
  if (known !== null && !/^time\d/.test(known)) return { test: "", measure: known };
  const { measure, stem } = readHeading([unit ? `${name} (${unit.symbol})` : name]);
  return measure === null ? { test: name, measure } : { test: stem || unnamedSprint, measure };
}

/** Nobody does a test more often on one day; a larger number is a day, or a slip. */
const mostTrials = 999;

const noTrial = (shown: string): string =>
  say`“${shorten(shown)}” is no number of a trial; the trial is numbered by its row.`;

function unknownSide(cell: Cell, address: string): Remark {
  const shown = isCellError(cell) ? cell.error : textOf(cell);
  const why =
    shown === ""
      ? say`No side is given; left or right is needed.`
      : say`“${shorten(shown)}” is neither left nor right.`;
  return { cell: address, code: "unknownSide", leftOut: true, why };
}
