import { readFileSync } from "node:fs";
import { z } from "zod";
import type { AnyAnalysis } from "../analyses/analysis";
import { type ColumnMap, columnUses, withUnit, withUse } from "../reading/columns";
import { unitOf, units } from "../reading/units";
import { BatchRefusal, OrderRefusal } from "./refusal";

/** What a coach corrects or chooses in the pane, said beforehand and for every workbook alike. */
const schema = z.strictObject({
  /** Name of the test, where the range holds several. */
  test: z.string().optional(),
  /** Unit of the results, where the headings do not say it or say it wrongly. */
  unit: z.string().optional(),
  hiddenRows: z.boolean().optional(),
  /** What a column is used for, by its letters: { "C": "left" }. */
  columns: z.record(z.string(), z.enum(columnUses)).optional(),
  settings: z.record(z.string(), z.unknown()).optional(),
});

export type Options = z.output<typeof schema>;

/**
 * Reads `--options`: JSON, or the name of a file that holds it. Settings are held to the analysis' own schema here, so
 * that a slip is told once and before any workbook is opened.
 *
 * @param kept whether kept results are asked about, which need no corrections: they have their own table for that.
 */
export function readOptions(given: string | undefined, analysis: AnyAnalysis, kept = false): Options {
  if (given === undefined) return {};
  const parsed = schema.safeParse(jsonOf(given));
  if (!parsed.success) throw refused(parsed.error, "");
  const { unit, settings = {}, columns, hiddenRows } = parsed.data;
  if (kept && (unit !== undefined || columns !== undefined || hiddenRows !== undefined)) {
    throw new OrderRefusal('--options: "unit", "columns" and "hiddenRows" are for --range; kept results say theirs.');
  }
  if (unit !== undefined && !unitOf(unit)) {
    const known = units.map(({ symbol }) => symbol).join(", ");
    throw new OrderRefusal(`--options: "${unit}" is no unit known here. Use one of ${known}.`);
  }
  const checked = analysis.settings.strict().safeParse(settings);
  if (!checked.success) throw refused(checked.error, "settings.");
  return parsed.data;
}

function jsonOf(given: string): unknown {
  const isInline = given.trimStart().startsWith("{");
  const text = isInline ? given : textOf(given);
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    throw new OrderRefusal(`--options is not JSON: ${error instanceof Error ? error.message : error}`, [
      `Write it as '{"settings":{"threshold":12}}', or keep it in a file and give the file's name.`,
    ]);
  }
}

function textOf(file: string): string {
  try {
    return readFileSync(file, "utf8");
  } catch {
    throw new OrderRefusal(`--options is neither JSON in braces nor a file that can be read: ${file}`);
  }
}

const refused = ({ issues }: z.ZodError, before: string) =>
  new OrderRefusal(
    "--options cannot be followed:",
    issues.map(({ path, message }) => {
      const place = `${before}${path.join(".")}`.replace(/\.$/, "");
      return place === "" ? message : `${place}: ${message}`;
    }),
  );

/** The columns as recognised, with the coach's corrections over them. */
export function corrected(recognised: ColumnMap, { columns = {}, unit, hiddenRows }: Options): ColumnMap {
  const map = Object.entries(columns).reduce((before, [letters, use]) => {
    const column = before.columns.find((one) => one.letters === letters.toUpperCase());
    if (!column) {
      const [first, last] = [before.columns[0]!.letters, before.columns.at(-1)!.letters];
      throw new BatchRefusal(
        `--options: column ${letters} is not in the range, which has the columns ${first} to ${last}.`,
      );
    }
    return withUse(before, column.offset, use);
  }, recognised);
  const inUnit = unit === undefined ? map : withUnit(map, unitOf(unit)!.symbol);
  return { ...inUnit, includeHiddenRows: hiddenRows ?? map.includeHiddenRows };
}
