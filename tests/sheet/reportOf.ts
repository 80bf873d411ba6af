import type { Report, ReportValue } from "../../src/analyses/report";

/** A small report: athlete, a result in cm, and a verdict. */
export const reportOf = (rows: readonly (readonly ReportValue[])[], more: Partial<Report> = {}): Report => ({
  analysis: "sample",
  sheet: "Sample",
  title: "A sample",
  summary: ["One sentence."],
  table: {
    name: "Tapeline_Sample",
    rowKey: "athlete",
    columns: [
      { key: "athlete", heading: "Athlete", meaning: "Name." },
      { key: "value", heading: "Value (cm)", meaning: "Result.", format: "0.0" },
      { key: "verdict", heading: "Verdict", meaning: "What it means." },
    ],
    rows,
  },
  chart: {
    kind: "bar",
    title: "Values",
    categories: "athlete",
    series: [{ column: "value", name: "Value", tone: "strong" }],
    valueAxisTitle: "Value (cm)",
  },
  cautions: ["Mind this."],
  marks: [],
  testAgain: [],
  provenance: {
    source: "Test!A1:B3",
    date: "2026-08-11",
    method: "By hand.",
    used: "2 athletes, 2 results",
    leftOut: [],
  },
  ...more,
});
