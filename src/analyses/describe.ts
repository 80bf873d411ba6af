import type { z } from "zod";
import { ok, type Refusal, type Result, refuse } from "../engine/result";
import { inSentence, say } from "../language/say";
import type { ColumnUse } from "../reading/columns";
import { isMeasureKey, measureOf } from "../reading/measures";
import type { Reading } from "../reading/readResults";
import type { TestResult } from "../reading/testResult";
import { wordOfUnit } from "../reading/units";
import { type Background, memberCalled } from "../store/background";
import type { Answer, AnyAnalysis, Occasion } from "./analysis";
import { withBodies } from "./bodies";
import type { FieldMeta } from "./fields";
import type { LiveSource } from "./liveCells";
import { liveFormulas, liveNote } from "./liveFormulas";
import type { Report, ReportChart, ReportColumn, ReportTable, ReportValue } from "./report";
import { isDerived, nameOf, seriesOf } from "./seriesOf";

export type Asked = {
  readonly analysis: AnyAnalysis;
  readonly reading: Reading;
  /** What the source tells of each result: see `usesOf`. */
  readonly uses: ReadonlySet<ColumnUse>;
  /** Which of the tests that `seriesOf` offers is meant, by the name of its series. */
  readonly test: string;
  /** Settings as the form gives them; checked here against the analysis' own schema. */
  readonly settings: Readonly<Record<string, unknown>>;
  readonly background: Background;
  /** Given where the table is to follow the results by formulas: the cells they stand in. */
  readonly live?: LiveSource;
  /** Address that was read. */
  readonly source: string;
  /** Today, ISO. */
  readonly date: string;
};

/** From a reading to the report: checks what the analysis needs, computes, and describes the answer as plain data. */
export function describe(asked: Asked): Result<Report> {
  const { analysis, reading, test } = asked;
  const background = withBodies(asked.background, reading);
  const missing = missingNeeds(asked);
  if (missing) return refuse(missing);
  const offered = seriesOf(analysis, reading, background);
  if (reading.results.length > 0 && offered.results.length === 0) return refuse(nothingToAskAbout(analysis));
  const results = withRoles(
    offered.results.filter((result) => analysis.tests === "all" || nameOf(result) === test),
    background,
  );
  const settings = analysis.settings.parse(asked.settings);
  const occasion: Occasion = { today: asked.date, remarks: reading.remarks };
  const computed = analysis.compute(results, settings, background, occasion) as Result<
    Answer<Record<string, ReportValue>>
  >;
  if (!computed.ok) return computed;
  const answer = computed.value;
  const { columns, rows } = tableOf(analysis.gives, answer, results);
  const table: ReportTable = {
    name: tableName(analysis.id),
    rowKey: analysis.rowKey,
    columns,
    rows,
    ...(asked.live
      ? {
          formulas: liveFormulas(
            analysis,
            { columns, rows },
            answer.rows,
            { results, settings, background },
            asked.live,
          ),
        }
      : {}),
  };
  const note = liveNote(table, asked.date);
  const remarks = reading.remarks.filter((remark) => remark.leftOut);
  return ok({
    analysis: analysis.id,
    sheet: analysis.sheet,
    title: test === "" || analysis.tests === "all" ? analysis.title : `${analysis.title}: ${test}`,
    summary: answer.summary,
    table,
    chart: chartOf(analysis),
    cautions: [...(note ? [note] : []), ...answer.cautions, ...analysis.cautions],
    provenance: {
      source: asked.source,
      date: asked.date,
      method: `${answer.method} ${analysis.method.source}`,
      used: usedOf(results, answer),
      leftOut: [...remarks.map(({ cell, why }) => ({ cell, why })), ...answer.leftOut],
    },
    marks: answer.marks ?? [],
    testAgain: answer.testAgain ?? [],
  });
}

function usedOf(results: readonly TestResult[], { used, leftOut }: Answer<Record<string, ReportValue>>): string {
  if (used) return say`${used.athletes} athletes, ${used.count} ${used.what}`;
  const measured = results.filter((result) => !isDerived(result));
  // Of a derived series alone, its own results are what was used.
  const counted = measured.length > 0 ? measured : results;
  return say`${new Set(results.map(({ athlete }) => athlete)).size} athletes, ${counted.length - leftOut.length} results`;
}

function chartOf({ chart }: AnyAnalysis): ReportChart {
  const { series, band, ...rest } = chart;
  return {
    ...rest,
    series: series.map(({ field, name, tone }) => ({ column: field, name, tone })),
    ...(band ? { band: { column: band.field, name: band.name } } : {}),
  };
}

/** Results with the athlete's role from the squad where the sheet says none. */
const withRoles = (results: readonly TestResult[], background: Background): TestResult[] =>
  results.map((result) =>
    result.group === null ? { ...result, group: memberCalled(background, result.athlete)?.role ?? null } : result,
  );

/** Columns and rows of the answer: declared columns, those that follow from the data, and quiet ones last. */
function tableOf(
  gives: z.ZodObject,
  { rows, moreColumns = [] }: Answer<Record<string, ReportValue>>,
  results: readonly TestResult[],
): Pick<ReportTable, "columns" | "rows"> {
  const declared = columnsOf(gives, commonUnit(results), decimalsOf(results.map(({ value }) => value)))
    .filter(({ key }) => !metaOf(gives.shape[key]).whereSaid || rows.some((row) => (row[key] ?? "") !== ""))
    .map((column) => ({ column, values: rows.map((row) => row[column.key] ?? null) }));
  const more = moreColumns.map(({ values, ...column }) => ({ column, values }));
  const quietFrom = declared.findIndex(({ column }) => column.quiet);
  const end = quietFrom < 0 ? declared.length : quietFrom;
  const all = [...declared.slice(0, end), ...more, ...declared.slice(end)];
  return {
    columns: all.map(({ column }) => column),
    rows: rows.map((_, index) => all.map(({ values }) => values[index] ?? null)),
  };
}

/** The unit that all results share; null where they differ or have none. */
function commonUnit(results: readonly TestResult[]): string | null {
  const units = new Set(results.map(({ unit }) => unit));
  return units.size === 1 ? [...units][0]! : null;
}

/** The columns of an analysis' answer, quiet ones last. */
export function columnsOf(gives: z.ZodObject, unit: string | null, decimals: number): ReportColumn[] {
  const columns = Object.entries(gives.shape).map(([key, field]): ReportColumn => {
    const meta = metaOf(field);
    const shownUnit = meta.unit === "as measured" ? unit : meta.unit;
    const format = formatOf(meta.format, decimals);
    return {
      key,
      heading: shownUnit ? `${meta.label} (${wordOfUnit(shownUnit)})` : meta.label,
      meaning: meta.meaning,
      ...(format === undefined ? {} : { format }),
      ...(meta.quiet ? { quiet: true } : {}),
    };
  });
  return [...columns.filter((column) => !column.quiet), ...columns.filter((column) => column.quiet)];
}

function metaOf(field: unknown): FieldMeta {
  const meta = (field as z.ZodType).meta() as FieldMeta | undefined;
  if (!meta) throw new Error("A field of an analysis has no label and meaning.");
  return meta;
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
function missingNeeds({ analysis, reading, uses }: Asked): Refusal | null {
  const present = new Set<string>([...uses, ...reading.results.map(({ measure }) => measure ?? "")]);
  const lacking = analysis.needs.map((layout) => layout.filter((need) => !present.has(need)));
  if (lacking.some((needs) => needs.length === 0)) return null;
  const nearest = lacking.reduce((least, needs) => (needs.length < least.length ? needs : least));
  const needed = nearest.map((need) => (isMeasureKey(need) ? inSentence(measureOf(need).label) : useWords[need]));
  return {
    code: "missingColumns",
    message: say`Say which column holds ${needed.join(", ")}.`,
    facts: { uses: needed.join(", ") },
  };
}

const nothingToAskAbout = ({ sides }: AnyAnalysis): Refusal =>
  sides === "both"
    ? { code: "noSides", message: say`No test here was done left and right.`, facts: {} }
    : {
        code: "noSeries",
        message: say`No number here says anything by itself: a load needs the repetitions done with it.`,
        facts: {},
      };

const useWords: Readonly<Record<ColumnUse, string>> = {
  athlete: say`the athletes' names`,
  left: say`the left results`,
  right: say`the right results`,
  result: say`the results`,
  side: say`the side`,
  attempt: say`the attempt number`,
  test: say`the test`,
  measure: say`what was measured`,
  unit: say`the unit`,
  date: say`the date`,
  group: say`the role or group`,
  bodyMass: say`the body mass`,
  stature: say`the stature`,
  none: say`nothing`,
};
