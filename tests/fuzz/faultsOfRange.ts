import { analyses } from "../../src/analyses";
import type { AnyAnalysis } from "../../src/analyses/analysis";
import type { Report } from "../../src/analyses/report";
import type { Result } from "../../src/engine/result";
import { addressOf, placeOf } from "../../src/reading/address";
import { type ColumnMap, holdsResults, offsetOf } from "../../src/reading/columns";
import { type Grid, isCellError, textOf } from "../../src/reading/grid";
import type { Reading } from "../../src/reading/readResults";
import { askGrid } from "../askGrid";
import type { Random } from "./random";

/** Reads a selection and asks an analysis of it, as the pane does; gives what must not be, in words. */
export function faultsOfRange(grid: Grid, random: Random): string[] {
  const analysis: AnyAnalysis = random.oneOf(analyses);
  const { map, reading, answer } = askGrid(analysis, grid);
  return [...dropped(grid, map, reading), ...strange(reading), ...faultsOfAnswer(analysis, reading, answer)];
}

/** Filled cells among the results that are neither used, nor told of by their address, nor of a row that is told of. */
function dropped(grid: Grid, map: ColumnMap, reading: Reading): string[] {
  // Without names no result is read, and every question is refused for that.
  if (offsetOf(map, "athlete") === null) return [];
  const used = new Set(reading.results.map(({ cell }) => cell));
  const told = new Set(reading.remarks.map(({ cell }) => cell));
  const rowsTold = new Set(
    reading.remarks
      .filter(({ code }) => code === "noAthlete" || code === "hiddenRow" || code === "unknownSide")
      .map(({ cell }) => placeOf(cell).row),
  );
  // A row may say that its number is a body mass: such a number goes to the athlete's body facts, which name no cell.
  const mayBeBody = reading.bodies.length > 0 && (offsetOf(map, "measure") !== null || offsetOf(map, "test") !== null);
  const columns = map.columns.filter(holdsResults);
  const faults: string[] = [];
  for (let row = map.firstDataRow; row < grid.cells.length; row += 1) {
    if (grid.unselectedRows.includes(row) || rowsTold.has(grid.firstRow + row)) continue;
    for (const { offset } of columns) {
      const cell = grid.cells[row]![offset]!;
      const address = addressOf(grid, row, offset);
      if (!isCellError(cell) && textOf(cell) === "") continue;
      if (!used.has(address) && !told.has(address) && !mayBeBody) faults.push(`${address} was dropped silently`);
    }
  }
  if (used.size !== reading.results.length) faults.push("a cell was used twice");
  return faults;
}

function strange({ results, remarks }: Reading): string[] {
  return [
    ...results.filter(({ value }) => !Number.isFinite(value) || value < 0).map(({ cell }) => `${cell} is no result`),
    ...remarks
      .filter(({ why }) => why.trim() === "" || why.length > 400)
      .map(({ why }) => `a remark of no use: ${why}`),
  ];
}

function faultsOfAnswer(analysis: AnyAnalysis, reading: Reading, answer: Result<Report>): string[] {
  if (!answer.ok) {
    return answer.reasons.some(({ message }) => !isSentence(message))
      ? [`${analysis.id}: a refusal without words`]
      : [];
  }
  const { table, summary, cautions, provenance, marks } = answer.value;
  const readAt = new Set([...reading.results, ...reading.remarks].map(({ cell }) => cell));
  const place = table.columns.findIndex(({ key }) => key === table.rowKey);
  const keys = table.rows.map((row) => row[place]);
  return [
    ...table.rows
      .flat()
      .flatMap((value) => (typeof value === "number" && !Number.isFinite(value) ? ["not finite"] : [])),
    ...[...summary, ...cautions].filter((sentence) => !isSentence(sentence)),
    ...(new Set(keys).size < keys.length ? ["two rows of one name"] : []),
    ...[...marks, ...provenance.leftOut].flatMap(({ cell }) => (readAt.has(cell) ? [] : [`${cell} was never read`])),
  ].map((fault) => `${analysis.id}: ${fault}`);
}

/** Whether a number or a name that is none has got into what is said; names of athletes and tests may hold anything. */
const isSentence = (words: string): boolean => words.trim() !== "" && !/\b(NaN|Infinity|undefined|null)\b/.test(words);
