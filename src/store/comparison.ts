import { z } from "zod";

/** Name of the workbook setting that remembers whom athletes are compared with. */
export const comparisonSetting = "Tapeline.comparison";

export const comparisons = ["squad", "group", "role", "age"] as const;

/** Whom an athlete is compared with: everybody, or those of the same group, role or age group of the squad. */
export type Comparison = (typeof comparisons)[number];

const schema = z.object({ version: z.literal(1), with: z.enum(comparisons) });

/** What the setting holds; the squad where it is missing, damaged, or written by a newer version. */
export function parseComparison(stored: unknown): Comparison {
  const parsed = schema.safeParse(stored);
  return parsed.success ? parsed.data.with : "squad";
}

export const writtenComparison = (comparison: Comparison): z.input<typeof schema> => ({ version: 1, with: comparison });

/** Whether what the setting holds may be replaced: what a newer version has written must not be. */
export const mayReplaceComparison = (stored: unknown): boolean =>
  stored === undefined || schema.safeParse(stored).success;
