import { z } from "zod";

/** Name of the workbook setting that remembers what marked cells looked like before. */
export const marksSetting = "Tapeline.marks";

const edge = z.object({ style: z.string(), weight: z.string(), color: z.string() });

const mark = z.object({
  sheetId: z.string(),
  address: z.string(),
  /** What we say of the cell; null where the program lets no add-in write notes. */
  said: z.string().nullable(),
  /** What was there before we first marked the cell: of its look exactly what a mark changes. */
  before: z.object({
    note: z.string().nullable(),
    /** Null where single letters of the cell differ: then a mark leaves it as it is. */
    bold: z.boolean().nullable(),
    italic: z.boolean().nullable(),
    edges: z.object({ top: edge, bottom: edge, left: edge, right: edge }),
  }),
});

const schema = z.object({ version: z.literal(1), marks: z.record(z.string(), mark) });

export type Mark = z.output<typeof mark>;
export type Marks = z.output<typeof schema>;

export const noMarks: Marks = { version: 1, marks: {} };

/** Which mark is which: a cell of a sheet. */
export const markKey = ({ sheetId, address }: Pick<Mark, "sheetId" | "address">): string => `${sheetId}!${address}`;

/** What the setting holds; null where it was written by a newer version or is damaged, and must not be touched. */
export function parseMarks(stored: unknown): Marks | null {
  const parsed = schema.safeParse(stored);
  return parsed.success ? parsed.data : null;
}
