import { columnLetters } from "./address";
import type { Column, ColumnMap, ColumnUse } from "./columns";
import type { Cell, Grid } from "./grid";
import { splitHeading, type Unit, unitOf } from "./units";
import { headingWords, leftWords, otherMeasures, rightWords, type Side, sideOf } from "./vocabulary";

/** How far down a heading is looked for: titles, dates and notes often stand above it. */
const rowsSearched = 20;

/**
 * What each column of a selection seems to hold, from its heading and its cells. Knows wide sheets (one row per
 * athlete, columns such as "Left 1 (cm)" or two heading rows "Left | | Right" over "1 | 2 | 1 | 2") and long sheets
 * (one row per attempt, with a column of sides). Never fails: what it cannot tell is "none", for the coach to say.
 */
export function recogniseColumns(grid: Grid): ColumnMap {
  const headings = findHeadings(grid);
  const firstDataRow = headings ? headings.lastRow + 1 : 0;
  const described = (grid.cells[0] ?? []).map((_, offset) =>
    describeColumn(grid, offset, headings?.texts[offset] ?? "", firstDataRow),
  );
  const uses = assignUses(described);
  const columns = described.map(
    (column, index): Column => ({
      offset: column.offset,
      letters: columnLetters(grid.firstColumn + column.offset),
      heading: column.heading,
      use: uses[index]!,
      test: column.stem,
      measure: null,
      unit: null,
    }),
  );
  const inUse = described.filter((_, index) => ["left", "right", "result"].includes(uses[index]!));
  const unit = unitOfColumns(grid, inUse, firstDataRow);
  return {
    firstDataRow,
    columns: columns.map((column, index) => ({ ...column, unit: (described[index]!.unit ?? unit)?.symbol ?? null })),
    date: null,
    includeHiddenRows: false,
  };
}

type DescribedColumn = {
  readonly offset: number;
  readonly heading: string;
  readonly named: ColumnUse | null;
  readonly side: Side | null;
  readonly stem: string;
  readonly unit: Unit | null;
  readonly numbers: number;
  readonly texts: number;
  readonly sides: number;
  readonly selected: boolean;
};

type Headings = { readonly lastRow: number; readonly texts: readonly string[] };

/** The heading row, joined with a row of sides above it or of attempt numbers below it. */
function findHeadings(grid: Grid): Headings | null {
  const rows = grid.cells.slice(0, rowsSearched);
  const first = rows.findIndex(isHeadingRow);
  if (first < 0) return null;
  const own = rows[first]!.map(asText);
  const below = rows[first + 1];
  if (below && (isAttemptRow(below) || (isHeadingRow(below) && !below.some((cell) => typeof cell === "number")))) {
    const next = below.map(asText);
    return { lastRow: first + 1, texts: joinRows(spread(own, next), next) };
  }
  return { lastRow: first, texts: own };
}

const isHeadingRow = (cells: readonly Cell[]): boolean => cells.filter(isHeadingWord).length >= 2;

const asText = (cell: Cell): string =>
  typeof cell === "string" ? cell.trim() : typeof cell === "number" ? String(cell) : "";

/** A group heading ("Left") stands once over its columns: carry it to the right until the next one. */
function spread(groups: readonly string[], names: readonly string[]): string[] {
  let current = "";
  return names.map((name, index) => {
    const group = groups[index] ?? "";
    if (group !== "") current = group;
    return name === "" ? group : current;
  });
}

const joinRows = (first: readonly string[], second: readonly string[]): string[] =>
  second.map((text, index) => `${first[index] ?? ""} ${text}`.trim());

/** A row under the headings that only numbers the attempts: 1 2 3 1 2 3, or "Trial 1", with no name in it. */
function isAttemptRow(cells: readonly Cell[]): boolean {
  const texts = cells.map(asText).filter((text) => text !== "");
  return (
    texts.length >= 2 && texts.length < cells.length && texts.every((text) => /^(?:[A-Za-z]+\.?\s*)?[1-9]$/.test(text))
  );
}

function isHeadingWord(cell: Cell): boolean {
  if (typeof cell !== "string" || cell.length > 60 || isMeasurement(cell)) return false;
  const { name, unit } = splitHeading(cell);
  const unnumbered = name.replace(/[\s#]*\d+$/, "");
  return unit !== null || namedUse(unnumbered) !== null || sideIn(name) !== null;
}

/** "182 cm" is a result typed as text, not a heading. */
const isMeasurement = (text: string): boolean => /^\s*[+-]?\d+(?:[.,]\d+)?\s*[A-Za-z/"%]*\s*$/.test(text);

/** The use a heading names by itself ("Athlete", "Leg", "Attempt" ..). */
function namedUse(name: string): ColumnUse | null {
  const words = tokens(name);
  const plain = words.join(" ");
  for (const use of ["athlete", "side", "attempt", "test", "date", "group", "result"] as const) {
    if ((headingWords[use] as readonly string[]).includes(plain)) return use;
  }
  if (words.some((word) => (headingWords.athlete as readonly string[]).includes(word))) return "athlete";
  return null;
}

/** The side named within a heading: "Left 1", "Hop L2", "SL hop right", "R1". */
function sideIn(name: string): Side | null {
  const sides = tokens(name)
    .map((word) => sideOf(word) ?? sideOf(word.replace(/\d+$/, "")))
    .filter((side) => side !== null);
  return sides.length === 1 ? sides[0]! : null;
}

/** The heading without side, attempt number and the words for them: the name of the test. */
function stemOf(name: string): string {
  const dropped = new Set<string>([...leftWords, ...rightWords, ...headingWords.attempt, ...headingWords.side]);
  return name
    .split(/[\s_/,;:-]+/)
    .filter((word) => !/^[#]?\d+$/.test(word) && !dropped.has(word.toLowerCase().replace(/[.\d]+$/, "")))
    .join(" ")
    .trim();
}

const tokens = (name: string): string[] =>
  name
    .toLowerCase()
    .split(/[\s_/,;:.()#-]+/)
    .filter((word) => word !== "");

function describeColumn(grid: Grid, offset: number, heading: string, firstDataRow: number): DescribedColumn {
  const { name, unit } = splitHeading(heading);
  let numbers = 0;
  let texts = 0;
  let sides = 0;
  for (let row = firstDataRow; row < grid.cells.length; row++) {
    const cell = grid.cells[row]![offset]!;
    if (typeof cell === "number") numbers++;
    else if (typeof cell === "string" && cell.trim() !== "") {
      texts++;
      if (sideOf(cell) !== null) sides++;
    }
  }
  return {
    offset,
    heading,
    named: namedUse(name),
    side: sideIn(name),
    stem: stemOf(name),
    unit,
    numbers,
    texts,
    sides,
    selected: !grid.unselectedColumns.includes(offset),
  };
}

function assignUses(columns: readonly DescribedColumn[]): ColumnUse[] {
  const uses = columns.map((): ColumnUse => "none");
  const free = (column: DescribedColumn) => column.selected && uses[column.offset] === "none";
  const give = (use: ColumnUse, ...candidates: (DescribedColumn | undefined)[]) => {
    const column = candidates.find((candidate) => candidate !== undefined && free(candidate));
    if (column) uses[column.offset] = use;
    return column;
  };

  give(
    "athlete",
    columns.find((column) => column.named === "athlete"),
  );
  const side = give(
    "side",
    columns.find((column) => column.sides > 0 && column.sides >= 0.6 * (column.texts + column.numbers)),
  );
  if (!side) {
    for (const column of columns) {
      if (column.side !== null && free(column) && column.named === null) uses[column.offset] = column.side;
    }
  }
  for (const use of ["attempt", "test", "date", "group"] as const)
    give(
      use,
      columns.find((column) => column.named === use),
    );
  give("athlete", ...(uses.includes("athlete") ? [] : columns.filter((column) => column.texts > column.numbers)));
  if (side) {
    const numeric = columns.filter((column) => free(column) && column.numbers > 0 && column.numbers >= column.texts);
    give(
      "result",
      columns.find((column) => free(column) && column.named === "result" && column.unit !== null),
      numeric.find((column) => column.unit !== null),
      columns.find((column) => free(column) && column.named === "result"),
      numeric.at(-1),
    );
  } else if (!uses.includes("left") && !uses.includes("right")) {
    for (const column of columns) if (free(column) && looksLikeResult(column)) uses[column.offset] = "result";
  }
  return uses;
}

/** Where no side is named: a column of numbers whose heading has a unit, a number, or a word for results. */
function looksLikeResult({ heading, named, numbers, texts, unit }: DescribedColumn): boolean {
  if (numbers === 0 || numbers < texts) return false;
  const { name } = splitHeading(heading);
  if (tokens(name).some((word) => (otherMeasures as readonly string[]).includes(word))) return false;
  return unit !== null || named === "result" || /\d$/.test(name);
}

/** The unit the headings name; else the one most numbers typed as text carry. */
function unitOfColumns(grid: Grid, columns: readonly DescribedColumn[], firstDataRow: number): Unit | null {
  const named = columns.find((column) => column.unit !== null)?.unit;
  if (named) return named;
  const counts = new Map<Unit, number>();
  for (const { offset } of columns) {
    for (let row = firstDataRow; row < grid.cells.length; row++) {
      const cell = grid.cells[row]![offset];
      const spelling =
        typeof cell === "string" ? /^\s*\d+(?:[.,]\d+)?\s*([A-Za-z/"%]+)\s*$/.exec(cell)?.[1] : undefined;
      const unit = spelling === undefined ? null : unitOf(spelling);
      if (unit) counts.set(unit, (counts.get(unit) ?? 0) + 1);
    }
  }
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
}
