import { z } from "zod";
import { type ColumnMap, columnUses } from "../reading/columns";
import { measureKeys } from "../reading/measures";

/** Name of the workbook setting that remembers how the coach had selections read. */
export const columnMapsSetting = "Tapeline.columnMaps";

/** So many are kept; the one longest not used makes room for a new one. */
export const mostColumnMaps = 100;

const column = z.object({
  offset: z.number().int().nonnegative(),
  letters: z.string(),
  use: z.enum(columnUses),
  test: z.string(),
  measure: z.enum(measureKeys).nullable(),
  unit: z.string().nullable(),
  attempt: z.number().int().positive().optional(),
});

const remembered = z.object({
  /** Sheet's identity and first cell of the selection, e.g. "{0001}!A3". */
  place: z.string(),
  /** Headings of the columns, in order: the map holds for these and no others. */
  headings: z.array(z.string()),
  map: z.object({
    firstDataRow: z.number().int().nonnegative(),
    columns: z.array(column),
    date: z.string().nullable(),
    sameAthlete: z.record(z.string(), z.string()),
    sameTest: z
      .record(z.string(), z.object({ test: z.string(), measure: z.enum(measureKeys).nullable() }))
      // Maps of workbooks from before tests could be read by another name.
      .default({}),
    includeHiddenRows: z.boolean(),
  }),
});

const schema = z.object({ version: z.literal(1), maps: z.array(remembered) });

/** The longest not used first. */
export type ColumnMaps = z.output<typeof schema>;

export const noColumnMaps: ColumnMaps = { version: 1, maps: [] };

/** What the setting holds; null where it was written by a newer version or is damaged, and must not be touched. */
export function parseColumnMaps(stored: unknown): ColumnMaps | null {
  const parsed = schema.safeParse(stored);
  return parsed.success ? parsed.data : null;
}

/** How a place was read last; null where it never was, or its headings read otherwise now. */
export function columnMapAt({ maps }: ColumnMaps, place: string, headings: readonly string[]): ColumnMap | null {
  const found = maps.find((one) => one.place === place);
  if (!found || found.map.columns.length !== headings.length || !isSame(found.headings, headings)) return null;
  return { ...found.map, columns: found.map.columns.map((one, index) => ({ ...one, heading: headings[index]! })) };
}

export function withColumnMap(
  { version, maps }: ColumnMaps,
  place: string,
  headings: readonly string[],
  { columns, ...how }: ColumnMap,
): ColumnMaps {
  const kept = columns.map(({ heading: _, ...rest }) => rest);
  const map = { ...how, columns: kept };
  const others = maps.filter((one) => one.place !== place);
  return { version, maps: [...others, { place, headings: [...headings], map }].slice(-mostColumnMaps) };
}

const isSame = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((text, index) => text === b[index]);
