import { type ColumnMap, offsetOf } from "../reading/columns";
import { type Cell, type Grid, textOf } from "../reading/grid";
import { readDate } from "../reading/readDate";
import { readResults } from "../reading/readResults";
import { sideOf } from "../reading/vocabulary";
import type { SquadMember } from "./squad";

/** Headings of a coach's list of names, English and German. */
const headings = {
  role: /\b(role|position|rolle)\b/i,
  group: /\b(team|squad|age group|training group|mannschaft|altersklasse)\b/i,
  roleOrGroup: /\b(group|line|gruppe)\b/i,
  dominantSide: /\b(dominant|stronger|preferred|throwing|hand|handedness|wurfhand|wurfarm)\b/i,
  birth: /\b(born|birth|birthday|year|jahrgang|geburtsjahr|geburtsdatum|geboren)\b/i,
  notes: /\b(notes?|remarks?|comments?|notiz(en)?|bemerkung(en)?|anmerkung(en)?)\b/i,
} as const;

/** The squad as a coach's own list of names has it: whatever columns say of role, team, build and side, each athlete once. */
export function squadFromCells(grid: Grid, map: ColumnMap): SquadMember[] {
  const nameAt = offsetOf(map, "athlete");
  if (nameAt === null) return [];
  const { athletes, bodies } = readResults(grid, map);
  const columnHeaded = (...words: readonly RegExp[]) =>
    map.columns.find(({ heading, offset }) => offset !== nameAt && words.some((word) => word.test(heading)))?.offset ??
    null;
  const teamAt = columnHeaded(headings.group);
  const roleAt = columnHeaded(headings.role) ?? columnHeaded(headings.roleOrGroup);
  const rest = columnHeaded(headings.roleOrGroup);
  const groupAt = teamAt ?? (rest === roleAt ? null : rest);
  const sideAt = offsetOf(map, "side") ?? columnHeaded(headings.dominantSide);
  const birthAt = columnHeaded(headings.birth);
  const notesAt = columnHeaded(headings.notes);
  const rowOf = new Map<string, readonly Cell[]>();
  for (const row of grid.cells.slice(map.firstDataRow)) {
    const name = textOf(row[nameAt]!);
    if (!rowOf.has(name)) rowOf.set(name, row);
  }
  return athletes.map((athlete) => {
    const row = rowOf.get(athlete);
    const cellAt = (offset: number | null): Cell => (offset === null ? null : (row?.[offset] ?? null));
    const textAt = (offset: number | null): string => textOf(cellAt(offset));
    const body = bodies.find((one) => one.athlete === athlete);
    return {
      athlete,
      role: textAt(roleAt) || null,
      group: textAt(groupAt) || null,
      dominantSide: sideOf(textAt(sideAt)),
      birthYear: yearOf(cellAt(birthAt)),
      bodyMass: body?.bodyMass ?? null,
      stature: body?.stature ?? null,
      notes: textAt(notesAt) || null,
    };
  });
}

/** The year of birth, also where the day is given. */
function yearOf(cell: Cell): number | null {
  const year = Number(textOf(cell));
  if (Number.isInteger(year) && year > 1900 && year < 2100) return year;
  const read = readDate(cell);
  return read.kind === "date" ? Number(read.date.slice(0, 4)) : null;
}
