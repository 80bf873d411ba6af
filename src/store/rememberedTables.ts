import { z } from "zod";
import { type StoreTableId, storeTableIds } from "./storeTable";

/** Name of the workbook setting that remembers which tables are ours, whatever the coach calls them. */
export const rememberedTablesSetting = "Tapeline.tables";

const schema = z.object({
  version: z.literal(1),
  tables: z.partialRecord(z.enum(storeTableIds), z.object({ tableId: z.string(), sheetId: z.string() })),
});

export type RememberedTables = z.output<typeof schema>;

export const noRememberedTables: RememberedTables = { version: 1, tables: {} };

/** What the setting holds; null where it was written by a newer version or is damaged, and must not be touched. */
export function parseRememberedTables(stored: unknown): RememberedTables | null {
  const parsed = schema.safeParse(stored);
  return parsed.success ? parsed.data : null;
}

/** The remembered table where it still stands, else the one of that name; null where there is neither. */
export function findTable<Standing extends { readonly id: string; readonly name: string }>(
  { id, name }: { readonly id: StoreTableId; readonly name: string },
  remembered: RememberedTables | null,
  standing: readonly Standing[],
): Standing | null {
  const known = remembered?.tables[id]?.tableId;
  return (
    standing.find((table) => table.id === known) ??
    standing.find((table) => table.name.toLowerCase() === name.toLowerCase()) ??
    null
  );
}
