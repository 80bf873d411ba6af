import { addressOf } from "./address";
import { type ColumnMap, type ColumnUse, offsetOf } from "./columns";
import { type Cell, type Grid, textOf } from "./grid";
import { type MeasureKey, measureCalled } from "./measures";
import { readDate } from "./readDate";
import { shorten } from "./readNumber";
import type { Remark } from "./readResults";
import { unitOf } from "./units";
import { type Side, sideOf } from "./vocabulary";

type InRow = {
  readonly side: Side | null;
  readonly unknownSide: Remark | null;
  readonly date: string | null;
  readonly test: string;
  readonly measure: MeasureKey | null;
  readonly unit: string | null;
  readonly group: string | null;
  readonly attempt: number | null;
};

/** Reads what a row says of all its results: side, day, test and number of the attempt, where columns for these exist. */
export function rowReader(grid: Grid, map: ColumnMap, remarks: Remark[]): (row: number) => InRow {
  const at = (use: ColumnUse): number | null => offsetOf(map, use);
  const [sideAt, dateAt, testAt, measureAt] = [at("side"), at("date"), at("test"), at("measure")];
  const [unitAt, groupAt, attemptAt] = [at("unit"), at("group"), at("attempt")];
  return (row) => {
    const cellAt = (offset: number | null | undefined): Cell => (offset == null ? null : grid.cells[row]![offset]!);
    const side = readSide(cellAt(sideAt));
    const attempt = cellAt(attemptAt);
    return {
      side,
      unknownSide: sideAt != null && side === null ? unknownSide(grid, row, sideAt) : null,
      date: dateAt == null ? null : dateOf(grid, row, dateAt, remarks),
      test: textOf(cellAt(testAt)),
      measure: measureCalled(textOf(cellAt(measureAt))),
      unit: unitOf(textOf(cellAt(unitAt)))?.symbol ?? null,
      group: textOf(cellAt(groupAt)) || null,
      attempt: typeof attempt === "number" && Number.isInteger(attempt) && attempt > 0 ? attempt : null,
    };
  };
}

function unknownSide(grid: Grid, row: number, column: number): Remark {
  const shown = textOf(grid.cells[row]![column]!);
  const why =
    shown === "" ? "No side is given; left or right is needed." : `“${shorten(shown)}” is neither left nor right.`;
  return { cell: addressOf(grid, row, column), code: "unknownSide", leftOut: true, why };
}

const readSide = (cell: Cell): Side | null => (typeof cell === "string" ? sideOf(cell) : null);

/** The day in a row; one that cannot be read is told, and the row's results are used without it. */
function dateOf(grid: Grid, row: number, column: number, remarks: Remark[]): string | null {
  const read = readDate(grid.cells[row]![column]!);
  if (read.kind === "date") return read.date;
  if (read.kind === "unread") {
    remarks.push({ cell: addressOf(grid, row, column), code: "date", leftOut: false, why: read.why });
  }
  return null;
}
