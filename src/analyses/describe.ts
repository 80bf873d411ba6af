import type { z } from "zod";
import { ok, type Refusal, type Result, refuse } from "../engine/result";
import type { ColumnMap } from "../reading/columns";
import type { Reading } from "../reading/readResults";
import type { Answer, AnyAnalysis } from "./analysis";
import type { FieldMeta } from "./fields";
import type { Report, ReportChart, ReportColumn, ReportValue } from "./report";

export type Asked = {
  readonly analysis: AnyAnalysis;
  readonly reading: Reading;
  readonly map: ColumnMap;
  /** Which of the reading's tests is meant. */
  readonly test: string;
  /** Settings as the form gives them; checked here against the analysis' own schema. */
  readonly settings: Readonly<Record<string, unknown>>;
  /** Address that was read. */
  readonly source: string;
  /** Today, ISO. */
  readonly date: string;
};

/** From a reading to the report: checks what the analysis needs, computes, and describes the answer as plain data. */
export function describe(asked: Asked): Result<Report> {
  const { analysis, reading, map, test } = asked;
  const missing = missingUses(analysis, map);
  if (missing) return refuse(missing);
  const results = reading.results.filter((result) => analysis.tests === "all" || result.test === test);
  const settings = analysis.settings.parse(asked.settings);
  const computed = analysis.compute(results, settings) as Result<Answer<Record<string, ReportValue>>>;
  if (!computed.ok) return computed;
  const answer = computed.value;
  const columns = columnsOf(analysis.gives, reading.unit, decimalsOf(results.map((result) => result.value)));
  const remarks = reading.remarks.filter((remark) => remark.leftOut);
  return ok({
    analysis: analysis.id,
    sheet: analysis.sheet,
    title: test === "" || analysis.tests === "all" ? analysis.title : `${analysis.title}: ${test}`,
    summary: answer.summary,
    table: {
      name: tableName(analysis.id),
      rowKey: analysis.rowKey,
      columns,
      rows: answer.rows.map((row) => columns.map((column) => row[column.key] ?? null)),
    },
    chart: chartOf(analysis),
    cautions: [...answer.cautions, ...analysis.cautions],
    provenance: {
      source: asked.source,
      date: asked.date,
      method: `${answer.method} ${analysis.method.source}`,
      used: `${new Set(results.map((result) => result.athlete)).size} athletes, ${results.length - answer.leftOut.length} results`,
      leftOut: [...remarks.map(({ cell, why }) => ({ cell, why })), ...answer.leftOut],
    },
  });
}

function chartOf({ chart }: AnyAnalysis): ReportChart {
  const { series, band, ...rest } = chart;
  return {
    ...rest,
    series: series.map(({ field, name, tone }) => ({ column: field, name, tone })),
    ...(band ? { band: { column: band.field, name: band.name } } : {}),
  };
}

/** The columns of an analysis' answer, quiet ones last. */
export function columnsOf(gives: z.ZodObject, unit: string | null, decimals: number): ReportColumn[] {
  const columns = Object.entries(gives.shape).map(([key, field]): ReportColumn => {
    const meta = (field as z.ZodType).meta() as FieldMeta | undefined;
    if (!meta) throw new Error(`The field ${key} has no label and meaning.`);
    const shownUnit = meta.unit === "as measured" ? unit : meta.unit;
    const format = formatOf(meta.format, decimals);
    return {
      key,
      heading: shownUnit ? `${meta.label} (${shownUnit})` : meta.label,
      meaning: meta.meaning,
      ...(format === undefined ? {} : { format }),
      ...(meta.quiet ? { quiet: true } : {}),
    };
  });
  return [...columns.filter((column) => !column.quiet), ...columns.filter((column) => column.quiet)];
}

function formatOf(format: string | undefined, decimals: number): string | undefined {
  if (format === "as measured") return decimalFormat(decimals);
  return format === "finer" ? decimalFormat(decimals + 1) : format;
}

const decimalFormat = (decimals: number): string => (decimals === 0 ? "0" : `0.${"0".repeat(decimals)}`);

/** Decimals to show: as many as the coach's own results have, at most 3. */
export function decimalsOf(values: readonly number[]): number {
  let most = 0;
  for (const value of values) {
    while (most < 3 && Math.abs(value - Number(value.toFixed(most))) > 1e-9 * Math.max(1, Math.abs(value))) most++;
  }
  return most;
}

export const tableName = (id: string): string => `Tapeline_${id.charAt(0).toUpperCase()}${id.slice(1)}`;

/** Nothing where one of the analysis' layouts is complete; else what the nearest one still lacks. */
function missingUses(analysis: AnyAnalysis, map: ColumnMap): Refusal | null {
  const present = new Set(map.columns.map((column) => column.use));
  const lacking = analysis.needs.map((layout) => layout.filter((use) => !present.has(use)));
  if (lacking.some((uses) => uses.length === 0)) return null;
  const nearest = lacking.reduce((least, uses) => (uses.length < least.length ? uses : least));
  const uses = nearest.map((use) => useWords[use]).join(", ");
  return {
    code: "missingColumns",
    message: `Say which column holds ${uses}.`,
    facts: { uses },
  };
}

const useWords = {
  athlete: "the athletes' names",
  left: "the left results",
  right: "the right results",
  result: "the results",
  side: "the side",
  attempt: "the attempt number",
  test: "the test",
  date: "the date",
  group: "the role or group",
  none: "nothing",
} as const;
