import { type Cell, type Grid, isCellError, textOf } from "../reading/grid";
import { mergedCells } from "../reading/mergedCells";
import { absenceWords, headingWords } from "../reading/vocabulary";
import { type DiaryEntry, diaryTable, readDiary } from "../store/diary";
import { nameKey } from "../store/sameName";
import { columnsOf, type StoreRemark } from "../store/storeTable";

type Field = keyof DiaryEntry;

/** The words by which coaches head the columns of a diary, English and German, in lower case. */
const headings: Readonly<Record<Field, readonly string[]>> = {
  date: ["date", "day", "datum", "tag"],
  athlete: headingWords.athlete,
  session: ["session", "training", "type", "activity", "content", "einheit", "inhalt", "art"],
  attended: ["attended", "attendance", "present", "there", "anwesend", "anwesenheit", "teilnahme", "dabei"],
  minutes: ["minutes", "min", "mins", "duration", "length", "time", "dauer", "minuten", "länge"],
  rating: [
    ...["rating", "rpe", "srpe", "session rpe", "session rating", "exertion", "effort", "how hard"],
    ...["anstrengung", "belastung", "beanspruchung", "bewertung"],
  ],
  throws: ["throws", "throw", "würfe", "wurfzahl"],
  jumps: ["jumps", "jump", "sprünge", "sprungzahl"],
  sprints: ["sprints", "sprint", "antritte"],
  deliveries: ["deliveries", "balls bowled", "bowled", "balls", "pitches"],
};

const fields = columnsOf(diaryTable).map(([field]) => field);

/** How far down a heading is looked for: titles and notes often stand above it. */
const rowsSearched = 20;

export type DiaryReading = {
  readonly entries: readonly DiaryEntry[];
  /** Cells that could not be read as they stand, each with the reason. */
  readonly remarks: readonly StoreRemark[];
  /** Headings of columns that were not used. */
  readonly unused: readonly string[];
  /** Rows that were not read, since a filter or the coach hides them. */
  readonly hiddenRows: number;
};

/**
 * A coach's own diary sheet as entries of ours: one row per athlete and session, columns in any order under headings a
 * coach would choose. Null where no row of headings names a day and an athlete.
 */
export function diaryFromCells(grid: Grid): DiaryReading | null {
  const top = grid.cells.slice(0, rowsSearched).findIndex((row) => {
    const found = usesOf(row);
    return found.has("date") && found.has("athlete") && found.size >= 3;
  });
  if (top < 0) return null;
  const uses = usesOf(grid.cells[top]!);
  const columnOf = (field: Field): number | null => uses.get(field) ?? null;
  const body = readableRows(grid, top + 1).map((row) => {
    const cells = [...row, ...fields.map((): Cell => null)];
    const attended = columnOf("attended");
    const numbers = (["minutes", "rating"] as const).map(columnOf).map((column) => cells[column ?? -1] ?? null);
    const at = attended ?? row.length + fields.indexOf("attended");
    cells[at] = attended === null ? (numbers.some(isAbsence) ? "no" : null) : yesOrNo(cells[at] ?? null);
    return cells;
  });
  const width = grid.cells[top]!.length;
  const named = Array.from({ length: width + fields.length }, (_, column) => {
    const field = fields.find((one) => columnOf(one) === column);
    if (field !== undefined) return diaryTable.columns[field].heading;
    const absent = fields[column - width];
    return absent !== undefined && columnOf(absent) === null ? diaryTable.columns[absent].heading : "";
  });
  const { diary, remarks } = readDiary({
    ...{ sheet: grid.sheet, headings: named, body },
    ...{ firstRow: grid.firstRow + top + 1, firstColumn: grid.firstColumn },
  });
  const unused = grid.cells[top]!.map(textOf).filter(
    (heading, column) => heading !== "" && ![...uses.values()].includes(column),
  );
  return { entries: diary, remarks, unused, hiddenRows: grid.hiddenRows.filter((row) => row > top).length };
}

/** Rows with what merged cells say in each row they cover; those hidden or not selected come empty, in their place. */
function readableRows(grid: Grid, from: number): readonly (readonly Cell[])[] {
  const passedOver = new Set([...grid.hiddenRows, ...grid.unselectedRows]);
  const mergedAt = mergedCells(grid);
  return grid.cells.slice(from).map((row, index) =>
    row.map((cell, column): Cell => {
      if (passedOver.has(from + index)) return null;
      const area = cell === null ? mergedAt(from + index, column) : null;
      return area === null ? cell : (grid.cells[area.firstRow]?.[area.firstColumn] ?? null);
    }),
  );
}

/** Which column of a row of headings is what; the first that says it counts. */
function usesOf(row: readonly Cell[]): ReadonlyMap<Field, number> {
  const uses = new Map<Field, number>();
  row.forEach((cell, column) => {
    if (typeof cell !== "string" || isCellError(cell)) return;
    // "Rating (0-10)", "Dauer [min]": what stands in brackets is a scale or a unit.
    const words = nameKey(cell.replace(/[([].*$/, "").replace(/[:.]+\s*$/, ""));
    const field = fields.find((one) => headings[one].includes(words));
    if (field !== undefined && !uses.has(field)) uses.set(field, column);
  });
  return uses;
}

const isAbsence = (cell: Cell): boolean => typeof cell === "string" && nameKey(cell) in absenceWords;

const yesWords = ["yes", "y", "ja", "j", "x", "1", "true", "ok", "✓", "✔", "wahr"];
const noWords = ["no", "n", "nein", "0", "false", "falsch", "away", "fehlt", "entschuldigt"];

/** The word of ours for what stands under "attended"; other words stay, to be told. */
function yesOrNo(cell: Cell): Cell {
  const word = nameKey(textOf(cell));
  if (yesWords.includes(word)) return "yes";
  return noWords.includes(word) || isAbsence(cell) ? "no" : cell;
}
