import type { WorkbookPackage } from "../package/workbookPackage";

/** Kinds of parts that are not taken over, and how to say so. */
const partsLeft: readonly { readonly path: RegExp; readonly sentence: (count: number) => string }[] = [
  { path: /\/media\//, sentence: (count) => `${plural(count, "picture")} in the file: not shown and not saved again.` },
  {
    path: /\/pivotTables\/[^/]+\.xml$/,
    sentence: (count) => `${plural(count, "pivot table")}: the cells stay, the pivot is not saved again.`,
  },
  { path: /\/threadedComments\/[^/]+\.xml$/, sentence: () => "Threaded comments: shown as plain notes." },
  { path: /\/slicers?\/|\/timelines?\//i, sentence: () => "Slicers: not shown and not saved again." },
  { path: /\/ctrlProps\/|\/activeX\//, sentence: () => "Form controls: not shown and not saved again." },
];

/** A sentence for each thing in the file that did not come along; none for an ordinary workbook. */
export function noticesOf(file: WorkbookPackage, told: { formats: number; chartsRead: number }): string[] {
  const paths = Object.keys(file.parts).map((path) => `/${path}`);
  const sentences = partsLeft.flatMap(({ path, sentence }) => {
    const count = paths.filter((each) => path.test(each)).length;
    return count > 0 ? [sentence(count)] : [];
  });
  const charts = paths.filter((path) => /\/charts\/chart[^/]*\.xml$/.test(path)).length - told.chartsRead;
  if (charts > 0) sentences.push(`${plural(charts, "chart")} of a kind that is not drawn here: not saved again.`);
  if (told.formats > 0) {
    sentences.push(`${plural(told.formats, "conditional format")} of a kind that is not supported: left out.`);
  }
  return sentences;
}

const plural = (count: number, what: string) => `${count} ${what}${count === 1 ? "" : "s"}`;
