import { analyses } from "../../src/analyses";
import type { AnyAnalysis } from "../../src/analyses/analysis";
import { describe as describeAnswer } from "../../src/analyses/describe";
import { seriesOf } from "../../src/analyses/seriesOf";
import { addressOf, gridAddress, placeOf } from "../../src/reading/address";
import { type ColumnMap, holdsResults, offsetOf, usesOf } from "../../src/reading/columns";
import { type Grid, isCellError, textOf } from "../../src/reading/grid";
import { type Reading, readResults } from "../../src/reading/readResults";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { noBackground } from "../../src/store/background";
import type { Random } from "./random";

/** Reads a selection and asks an analysis of it, as the pane does; gives what must not be, in words. */
export function faultsOfRange(grid: Grid, random: Random): string[] {
  const map = recogniseColumns(grid);
  const reading = readResults(grid, map);
  const analysis: AnyAnalysis = random.oneOf(analyses);
  return [...dropped(grid, map, reading), ...strange(reading), ...faultsOfAnswer(analysis, grid, map, reading)];
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

function faultsOfAnswer(analysis: AnyAnalysis, grid: Grid, map: ColumnMap, reading: Reading): string[] {
  const { tests } = seriesOf(analysis, reading, noBackground);
  const described = describeAnswer({
    ...{ analysis, reading, uses: usesOf(map), test: tests[0] ?? "", background: noBackground },
    ...{ settings: analysis.settings.parse({}), source: gridAddress(grid), date: "2026-11-20" },
  });
  if (!described.ok) {
    return described.reasons.some(({ message }) => !isSentence(message))
      ? [`${analysis.id}: a refusal without words`]
      : [];
  }
  const { table, summary, cautions, provenance, marks } = described.value;
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
