/**
 * The answer of an analysis as plain data. The pane's preview, the written sheet, the printed page and the tests
 * all read this one object; none of them knows which analysis made it.
 */
export type Report = {
  /** Id of the analysis, e.g. "asymmetry". */
  readonly analysis: string;
  /** Name wished for its sheet, e.g. "Asymmetry". */
  readonly sheet: string;
  /** Title on the written sheet, e.g. "Left-right asymmetry". */
  readonly title: string;
  /** The answer in plain words, most important first. */
  readonly summary: readonly string[];
  readonly table: ReportTable;
  readonly chart?: ReportChart;
  /** What to keep in mind when using these numbers. */
  readonly cautions: readonly string[];
  readonly provenance: Provenance;
  /** Cells of the coach's own sheets that should be looked at again, each with its reason. */
  readonly marks: readonly { readonly cell: string; readonly why: string }[];
  /** Whom to test again in what. */
  readonly testAgain: readonly { readonly athlete: string; readonly test: string }[];
};

export type ReportTable = {
  /** Name of the table in the workbook; letters, digits and "_". */
  readonly name: string;
  readonly columns: readonly ReportColumn[];
  readonly rows: readonly (readonly ReportValue[])[];
  /**
   * Formulas that keep cells live, row by row beside `rows`; null where the value is written. A row keeps its formulas
   * wherever it comes to stand, so that they refer to their own row by the table's columns, never by address.
   */
  readonly formulas?: readonly (readonly (string | null)[])[];
  /** Key of the column that says which row is which (the athlete), so that a rerun finds each row again. */
  readonly rowKey: string;
};

export type ReportValue = number | string | null;

export type ReportColumn = {
  readonly key: string;
  /** Heading with the unit in it, e.g. "Left best (cm)". */
  readonly heading: string;
  /** What the number means, in one or two sentences: the note on the heading and the pane's "what is this?". */
  readonly meaning: string;
  /** Number format of the sheet, e.g. "0.0"; text columns have none. */
  readonly format?: string;
  /** Quiet columns serve the chart: written last, in grey. */
  readonly quiet?: boolean;
};

export type ReportChart = {
  readonly kind: "bar" | "line" | "scatter";
  readonly title: string;
  readonly categories: string;
  readonly series: readonly {
    readonly column: string;
    readonly name: string;
    readonly tone: "strong" | "soft";
  }[];
  readonly valueAxisTitle: string;
  /** What lies to either side of zero, where values have a sign. */
  readonly ends?: { readonly negative: string; readonly positive: string };
  /** A column whose value, to either side of zero, is what noise explains: drawn as a band where bands can be drawn. */
  readonly band?: { readonly column: string; readonly name: string };
};

export type Provenance = {
  /** Address that was read, e.g. "'Hop test'!A3:G28". */
  readonly source: string;
  /** Day of the computation, ISO (YYYY-MM-DD), local. */
  readonly date: string;
  /** How the numbers were made, in a sentence or two, with the source of the method. */
  readonly method: string;
  /** How many athletes and results were used. */
  readonly used: string;
  /** What was left out, each with its cell and the reason. */
  readonly leftOut: readonly { readonly cell: string; readonly why: string }[];
};
