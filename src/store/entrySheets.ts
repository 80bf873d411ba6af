import { z } from "zod";
import { isMeasureKey } from "../reading/measures";

/** Name of the workbook setting that remembers the entry sheets, whatever the coach calls them. */
export const entrySheetsSetting = "Tapeline.entrySheets";

const entryColumn = z.object({
  heading: z.string(),
  use: z.enum(["athlete", "group", "left", "right", "result"]),
  test: z.string(),
  measure: z.string().refine(isMeasureKey).nullable(),
  unit: z.string().nullable(),
  /** Which trial it is; not there in early workbooks. */
  attempt: z.number().int().positive().optional(),
});

const entrySheet = z.object({
  tableId: z.string(),
  /** ISO day of all results. */
  date: z.iso.date(),
  columns: z.array(entryColumn),
});

/** By the identity of the sheet. */
const schema = z.object({ version: z.literal(1), sheets: z.record(z.string(), entrySheet) });

export type RememberedEntrySheets = z.output<typeof schema>;
export type RememberedEntrySheet = RememberedEntrySheets["sheets"][string];

export const noEntrySheets: RememberedEntrySheets = { version: 1, sheets: {} };

/** What the setting holds; null where it was written by a newer version or is damaged, and must not be touched. */
export function parseEntrySheets(stored: unknown): RememberedEntrySheets | null {
  const parsed = schema.safeParse(stored);
  return parsed.success ? parsed.data : null;
}
