import type { z } from "zod";
import type { Result } from "../engine/result";
import type { ColumnUse } from "../reading/columns";
import type { MeasureKey } from "../reading/measures";
import type { Remark } from "../reading/readResults";
import type { TestResult } from "../reading/testResult";
import type { Background } from "../store/background";
import type { LiveContext, LiveFields } from "./liveFormulas";

/** What a list of questions shows of an analysis; light, so that the list need not load the analyses themselves. */
export type About = {
  readonly id: string;
  readonly title: string;
  /** Name of the sheet its table goes to. */
  readonly sheet: string;
  /** What the coach is asking, in a coach's words. */
  readonly question: string;
  /** Part of the cycle in which it is asked. */
  readonly part: "test" | "understand" | "review";
};

/**
 * A question a coach asks, declared once. From this object come the pane's form, the reading of the selection, the
 * written table and chart, the help, and the laws it is tested by. Adding an analysis is adding one folder with one of
 * these, and its line in index.ts.
 */
export type Analysis<Settings extends z.ZodObject, Gives extends z.ZodObject> = About & {
  /** What to select, for a coach who has not yet. */
  readonly select: string;
  /** Whether it answers for one test at a time, which the coach picks, or for all tests of the selection at once. */
  readonly tests: "one" | "all";
  /** Results as measured, where it knows their formulas itself; or also what formulas make of them (`seriesOf`). */
  readonly takes: "measured" | "measuredAndDerived";
  /** Given where it is about tests with two sides only. */
  readonly sides?: "both";
  /** Column uses and measures the results must have; each inner list is one way to lay a sheet out. */
  readonly needs: readonly (readonly (ColumnUse | MeasureKey)[])[];
  readonly settings: Settings;
  /** One row of the answer: each field a column. */
  readonly gives: Gives;
  /** The field that says whose row it is. */
  readonly rowKey: keyof z.output<Gives> & string;
  /**
   * @param background what the workbook says about athletes and tests; empty where nothing was set up.
   * @param occasion the day and what the reading had to say; left out where neither matters.
   */
  readonly compute: (
    results: readonly TestResult[],
    settings: z.output<Settings>,
    background: Background,
    occasion?: Occasion,
  ) => Result<Answer<z.output<Gives>>>;
  /** Formulas by which cells of a row follow the results, where the coach asks for a live table. */
  readonly live?: (row: z.output<Gives>, context: LiveContext<z.output<Settings>>) => LiveFields<z.output<Gives>>;
  readonly chart: {
    readonly kind: "bar" | "line" | "scatter";
    readonly title: string;
    readonly categories: keyof z.output<Gives> & string;
    readonly series: readonly {
      readonly field: keyof z.output<Gives> & string;
      readonly name: string;
      readonly tone: "strong" | "soft";
    }[];
    readonly valueAxisTitle: string;
    /** What lies to either side of zero. */
    readonly ends?: { readonly negative: string; readonly positive: string };
    readonly band?: { readonly field: keyof z.output<Gives> & string; readonly name: string };
  };
  /** What always has to be kept in mind with this analysis. */
  readonly cautions: readonly string[];
  readonly method: { readonly formula: string; readonly source: string };
  readonly example: {
    readonly results: readonly TestResult[];
    readonly settings: z.input<Settings>;
    readonly gives: readonly Partial<z.output<Gives>>[];
  };
};

/** What an answer may depend on beside the results. */
export type Occasion = {
  /** ISO day on which is asked. */
  readonly today: string;
  /** What the reading says of cells it left out or changed. */
  readonly remarks: readonly Remark[];
};

export type Answer<Row> = {
  readonly rows: readonly Row[];
  /** Columns that follow from the data and cannot be declared beforehand, such as one for each quality. */
  readonly moreColumns?: readonly MoreColumn[];
  /** The answer in plain words, most important first. */
  readonly summary: readonly string[];
  /** Cautions this answer calls for, beyond the analysis' own. */
  readonly cautions: readonly string[];
  /** The choices made, in a sentence: reduction, formula, noise. */
  readonly method: string;
  /** What the rows rest on, where it is not all results that were read: how many athletes, and of what how many. */
  readonly used?: Used;
  /** Results that were read but could not be used, and why. */
  readonly leftOut: readonly CellRemark[];
  /** Results to look at again, each with its reason in words: marked on the coach's sheet if they ask for it. */
  readonly marks?: readonly CellRemark[];
  /** Whom to test again in what: an entry sheet can be made for it. `test` is a series, perhaps with its side. */
  readonly testAgain?: readonly { readonly athlete: string; readonly test: string }[];
};

/** "26 athletes, 52 results of their latest days". */
export type Used = { readonly athletes: number; readonly count: number; readonly what: string };

/** Stands after the declared columns, before the quiet ones. */
export type MoreColumn = {
  readonly key: string;
  readonly heading: string;
  readonly meaning: string;
  readonly format: string;
  /** One for each of the answer's rows, in their order. */
  readonly values: readonly (number | null)[];
};

/** A cell of the coach's sheet (`TestResult.cell`) and what is to be said of it. */
export type CellRemark = { readonly cell: string; readonly why: string };

/** Identity at run time; at compile time it ties settings, computation, table and chart together. */
export const defineAnalysis = <Settings extends z.ZodObject, Gives extends z.ZodObject>(
  analysis: Analysis<Settings, Gives>,
): Analysis<Settings, Gives> => analysis;

/** Any analysis, its own types forgotten: the form in which pane, sheet and tests handle all of them alike. */
// biome-ignore lint/suspicious/noExplicitAny: the one place where the generics of differently typed analyses are erased
export type AnyAnalysis = Analysis<any, any>;
