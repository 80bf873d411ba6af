import { type ColumnMap, offsetOf } from "../reading/columns";
import { type Cell, type Grid, textOf } from "../reading/grid";
import { readResults } from "../reading/readResults";
import { sideOf } from "../reading/vocabulary";
import type { SquadMember } from "./squad";

/** Headings of a year of birth, English and German. */
const birthYearHeading = /\b(born|birth|year|jahrgang|geburtsjahr)\b/i;
const dominantHeading = /\b(dominant|stronger|preferred|throwing|hand|handedness|wurfhand|wurfarm)\b/i;

/** The squad as a coach's own list of names has it: whatever columns say of role, build and side, each athlete once. */
export function squadFromCells(grid: Grid, map: ColumnMap): SquadMember[] {
  const nameAt = offsetOf(map, "athlete");
  if (nameAt === null) return [];
  const { athletes, bodies } = readResults(grid, map);
  const roleAt = offsetOf(map, "group");
  const sideAt =
    offsetOf(map, "side") ?? map.columns.find(({ heading }) => dominantHeading.test(heading))?.offset ?? null;
  const birthAt = map.columns.find(({ heading }) => birthYearHeading.test(heading))?.offset ?? null;
  const rowOf = new Map<string, readonly Cell[]>();
  for (const row of grid.cells.slice(map.firstDataRow)) {
    const name = textOf(row[nameAt]!);
    if (!rowOf.has(name)) rowOf.set(name, row);
  }
  return athletes.map((athlete) => {
    const row = rowOf.get(athlete);
    const textAt = (offset: number | null): string => (offset === null || !row ? "" : textOf(row[offset]!));
    const body = bodies.find((one) => one.athlete === athlete);
    const birthYear = Number(textAt(birthAt));
    return {
      athlete,
      role: textAt(roleAt) || null,
      group: null,
      dominantSide: sideOf(textAt(sideAt)),
      birthYear: Number.isInteger(birthYear) && birthYear > 1900 ? birthYear : null,
      bodyMass: body?.bodyMass ?? null,
      stature: body?.stature ?? null,
      notes: null,
    };
  });
}
