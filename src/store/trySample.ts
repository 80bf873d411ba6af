import { z } from "zod";
import { say } from "../language/say";

/** Name of the workbook setting that remembers the sample to try things on, for as long as it stands. */
export const trySampleSetting = "Tapeline.trySample";

const schema = z.object({
  version: z.literal(1),
  /** The sheet with the sample's results. */
  sheetId: z.string(),
  /** Where the coach was before, to be brought back to. */
  before: z.object({ sheetId: z.string(), address: z.string() }),
  /** Settings of ours that stood before: of the others none is left behind. */
  settings: z.array(z.string()),
});

export type TrySample = z.output<typeof schema>;

/** What the setting holds; null where it is not ours to touch. */
export function parseTrySample(stored: unknown): TrySample | null {
  const parsed = schema.safeParse(stored);
  return parsed.success ? parsed.data : null;
}

/** The sheet's wished name, and its lines above the table. */
export const trySheet = {
  name: say`Tapeline sample`,
  title: say`A sample squad to try Tapeline on`,
  text: say`Invented: nobody is called so, and nobody has hopped so. Single-leg hop for distance, three trials a leg, in cm.`,
} as const;

export const tryHeadings = [
  say`Athlete`,
  say`Left 1`,
  say`Left 2`,
  say`Left 3`,
  say`Right 1`,
  say`Right 2`,
  say`Right 3`,
] as const;

/**
 * Ten invented handball players. Trials vary by about 2 %, as the season of the sample workbook does; one of them is
 * truly uneven, the others only as far as a leg varies from trial to trial.
 */
export const tryRows: readonly (readonly [string, ...number[]])[] = [
  ["Asvi Tranebær", 151, 154, 149, 152, 150, 155],
  ["Bryna Lyngmo", 163, 160, 166, 161, 164, 162],
  ["Eldrid Kveldsmo", 147, 149, 144, 131, 129, 134],
  ["Fjorna Blåtind", 158, 161, 156, 160, 157, 163],
  ["Gislaug Nordli", 142, 145, 143, 144, 147, 141],
  ["Hilvi Rimstad", 170, 166, 168, 165, 169, 172],
  ["Jorid Havtun", 155, 152, 157, 153, 150, 156],
  ["Mirvei Skogly", 161, 158, 160, 163, 159, 162],
  ["Solvår Isdal", 149, 153, 150, 151, 148, 152],
  ["Tuva Stjernli", 166, 163, 160, 162, 167, 164],
];
