import type { WorkbookPackage } from "../package/workbookPackage";
import { countOf } from "../package/xml";
import type { ReadChart } from "./charts";

/** Kinds of parts that are not taken over, and how to say so. */
const partsLeft: readonly { readonly path: RegExp; readonly sentence: (count: number) => string }[] = [
  { path: /\/media\//, sentence: (count) => `${plural(count, "picture")} in the file: not shown and not saved again.` },
  {
    path: /\/pivotTables\/[^/]+\.xml$/,
    sentence: (count) => `${plural(count, "pivot table")}: the cells stay, the pivot is not saved again.`,
  },
  { path: /\/threadedComments\/[^/]+\.xml$/, sentence: () => "Threaded comments: shown as plain notes." },
  { path: /\/slicers?\/|\/timelines?\//i, sentence: () => "Slicers: not shown and not saved again." },
  { path: /\/chartsheets\/[^/]+\.xml$/, sentence: (count) => `${plural(count, "sheet")} that is all chart: left out.` },
  { path: /\/ctrlProps\/|\/activeX\//, sentence: () => "Form controls: not shown and not saved again." },
];

/** What the readers found and could not take along. */
export type Told = {
  readonly charts: readonly ReadChart[];
  /** Conditional formats, texts with several looks in one cell, gradients as fills, groups of small charts in cells. */
  readonly formats: number;
  readonly richTexts: number;
  readonly gradients: number;
  readonly sparklines: number;
};

/** A sentence for each thing in the file that did not come along; none for an ordinary workbook. */
export function noticesOf(file: WorkbookPackage, told: Told): string[] {
  const paths = Object.keys(file.parts).map((path) => `/${path}`);
  const sentences = partsLeft.flatMap(({ path, sentence }) => {
    const count = paths.filter((each) => path.test(each)).length;
    return count > 0 ? [sentence(count)] : [];
  });
  const charts = paths.filter((path) => /\/charts\/chart[^/]*\.xml$/.test(path)).length - told.charts.length;
  if (charts > 0) sentences.push(`${plural(charts, "chart")} of a kind that is not drawn here: not saved again.`);
  if (told.formats > 0) {
    sentences.push(`${plural(told.formats, "conditional format")} of a kind that is not supported: left out.`);
  }
  const chartParts = [...new Set(told.charts.flatMap(({ left }) => left))];
  if (chartParts.length > 0) sentences.push(`Of charts, not drawn and not saved again: ${chartParts.join(", ")}.`);
  const shapes = paths
    .filter((path) => /\/drawings\/drawing[^/]*\.xml$/.test(path))
    .reduce((count, path) => count + countOf(file.xml(path.slice(1)), ["sp", "cxnSp"]), 0);
  if (shapes > 0) sentences.push(`${plural(shapes, "drawn shape")} or text boxes: not shown and not saved again.`);
  if (told.sparklines > 0) sentences.push("Small charts in cells: not shown and not saved again.");
  if (told.richTexts > 0) {
    sentences.push(`${plural(told.richTexts, "text")} with several looks in one cell: shown and saved in one look.`);
  }
  if (told.gradients > 0)
    sentences.push(`${plural(told.gradients, "fill")} that runs from one colour to another: left out.`);
  return sentences;
}

const plural = (count: number, what: string) => `${count} ${what}${count === 1 ? "" : "s"}`;
