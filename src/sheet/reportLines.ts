import type { Report } from "../analyses/report";

/** The lines that stand above a written table, one cell each: title, answer, where it comes from, what to mind. */
export function reportLines(report: Report): string[] {
  const { provenance } = report;
  const leftOut = provenance.leftOut.map(({ cell, why }) => `${cell}: ${why}`).join("  ");
  return [
    report.title,
    report.summary.join(" "),
    `Read from ${provenance.source} on ${provenance.date}: ${provenance.used}. ${provenance.method}`,
    leftOut === "" ? "Nothing was left out." : `Left out (${provenance.leftOut.length}): ${leftOut}`,
    `Keep in mind: ${report.cautions.join(" ")}`,
  ].map(fitCell);
}

/** A cell holds 32,767 characters; a longer line says that it goes on. */
const fitCell = (line: string): string => (line.length <= 32_767 ? line : `${line.slice(0, 32_700)} … and more.`);
