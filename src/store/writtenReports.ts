import { z } from "zod";

/** Name of the workbook setting that remembers which tables are ours. */
export const writtenReportsSetting = "Tapeline.writtenReports";

const writtenReport = z.object({
  tableId: z.string(),
  sheetId: z.string(),
  /** Headings of our columns as last written, in our order: a coach's own columns are the others. */
  headings: z.array(z.string()),
  /** Their keys in the report, by which a column is known whose heading has changed; not there in early workbooks. */
  keys: z.array(z.string()).optional(),
  /** The lines above the table as last written: a line that reads otherwise is the coach's. */
  head: z.array(z.string()),
  /** The rows of notes below the table as last written; null for a row among them that is the coach's. */
  foot: z.array(z.string().nullable()),
  chart: z.string().nullable(),
});

const schema = z.object({ version: z.literal(1), reports: z.record(z.string(), writtenReport) });

export type WrittenReport = z.output<typeof writtenReport>;
export type WrittenReports = z.output<typeof schema>;

export const noWrittenReports: WrittenReports = { version: 1, reports: {} };

/** What the setting holds; null where it was written by a newer version or is damaged, and must not be touched. */
export function parseWrittenReports(stored: unknown): WrittenReports | null {
  const parsed = schema.safeParse(stored);
  return parsed.success ? parsed.data : null;
}
