import { say } from "../language/say";
import { addressOf } from "./address";
import { type ColumnMap, layoutOf, offsetOf } from "./columns";
import { type Cell, type Grid, isCellError, textOf } from "./grid";
import { mergedCells } from "./mergedCells";
import { shorten } from "./readNumber";
import type { Remark } from "./readResults";

/** Names that may be one person's, each with the first cell it stands in. The coach says whether they are. */
export type Alike = { readonly names: readonly string[]; readonly cells: readonly string[] };

export type Names = {
  /** The athlete of each row that has one. */
  readonly ofRow: ReadonlyMap<number, string>;
  readonly alike: readonly Alike[];
};

/**
 * The athlete of each row. Blanks around a name are trimmed, and told. Names that differ in more than that are kept
 * apart, unless the map says that they are one person's: two people may be called alike. In a wide sheet the same name
 * on two rows gives two athletes, told apart by their rows. A name merged down over several rows counts for each of them.
 */
export function readNames(grid: Grid, map: ColumnMap, rows: readonly number[], remarks: Remark[]): Names {
  const column = offsetOf(map, "athlete");
  const ofRow = new Map<number, string>();
  if (column === null) return { ofRow, alike: [] };
  const read = nameReader(grid, column, remarks);
  const likes = new Map<string, Map<string, string>>();
  const firstCells = new Map<string, string>();
  const readAs = (name: string): string => (Object.hasOwn(map.sameAthlete, name) ? map.sameAthlete[name]! : name);
  const repeats = layoutOf(map) === "long";

  for (const row of rows) {
    const typed = read(row);
    if (typed === null) continue;
    const cell = addressOf(grid, row, column);
    const isSecond = firstCells.has(typed) && !repeats;
    const name = isSecond ? say`${typed} (row ${grid.firstRow + row + 1})` : typed;
    const like = likes.get(likeness(typed)) ?? new Map<string, string>();
    likes.set(likeness(typed), like);
    if (!like.has(name)) {
      const told = (code: Remark["code"], why: string) => remarks.push({ cell, code, leftOut: false, why });
      const apart = [...like.keys()].find((other) => readAs(other) !== readAs(name));
      if (readAs(name) !== name)
        told("sameAthlete", say`“${shorten(name)}” was read as “${shorten(readAs(name))}”, as you said.`);
      else if (isSecond && apart !== undefined) {
        told(
          "duplicate",
          say`“${shorten(typed)}” also stands in ${firstCells.get(typed)}. The two rows were kept apart.`,
        );
      } else if (apart !== undefined) {
        const why = say`“${shorten(name)}” looks like “${shorten(apart)}” in ${like.get(apart)}. They were kept apart; give them one spelling if they are one person.`;
        told("nearDuplicate", why);
      }
      like.set(name, cell);
    }
    if (!firstCells.has(typed)) firstCells.set(typed, cell);
    ofRow.set(row, readAs(name));
  }
  const groups = [...likes.values()].filter((like) => like.size > 1);
  return { ofRow, alike: groups.map((like) => ({ names: [...like.keys()], cells: [...like.values()] })) };
}

/** Reads the name in a row, without blanks around it; null where none stands there, and then a remark says so. */
function nameReader(grid: Grid, column: number, remarks: Remark[]): (row: number) => string | null {
  const mergedAt = mergedCells(grid);
  return (row) => {
    const cell = addressOf(grid, row, column);
    const raw = grid.cells[row]![column]!;
    const area = mergedAt(row, column);
    const inherited: Cell = area?.firstColumn === column ? (grid.cells[area.firstRow]?.[column] ?? null) : null;
    const name = textOf(raw) || textOf(inherited);
    if (name === "") {
      const why = isCellError(raw)
        ? say`The cell shows the error ${raw.error}; a name is needed.`
        : say`No name stands here; the row was left out.`;
      remarks.push({ cell, code: "noAthlete", leftOut: true, why });
      return null;
    }
    if (typeof raw === "string" && raw !== name && raw.trim() !== "") {
      const why = say`The name has a blank before or after it; read as “${shorten(name)}”.`;
      remarks.push({ cell, code: "converted", leftOut: false, why });
    }
    return name;
  };
}

/** Names that share a likeness differ at most in case, dots, commas, hyphens, inner blanks and letters nobody sees. */
const likeness = (name: string): string =>
  name
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[\s.,'’\p{Cf}-]+/gu, "");
