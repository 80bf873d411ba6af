import { BooleanNumber, BorderStyleTypes, HorizontalAlign, type IStyleData } from "@univerjs/core";

const on = BooleanNumber.TRUE;
const filled = (fill: string, colour: string): IStyleData => ({ bg: { rgb: fill }, cl: { rgb: colour } });
const heading = (size: number, line: string | null): IStyleData => ({
  fs: size,
  bl: on,
  cl: { rgb: "#44546A" },
  ...(line ? { bd: { b: { s: BorderStyleTypes.MEDIUM, cl: { rgb: line } } } } : {}),
});

/** Excel's lighter versions of an accent colour, from its palette of theme colours. */
const tints = (accent: number, light: string, middle: string, strong: string): Record<string, IStyleData> => ({
  [`20% - Accent${accent}`]: { bg: { rgb: light } },
  [`40% - Accent${accent}`]: { bg: { rgb: middle } },
  [`60% - Accent${accent}`]: { bg: { rgb: strong }, cl: { rgb: "#FFFFFF" } },
});
const link = (colour: string): IStyleData => ({ cl: { rgb: colour }, ul: { s: on } });
const boxed = (style: BorderStyleTypes, colour: string) => {
  const edge = { s: style, cl: { rgb: colour } };
  return { t: edge, b: edge, l: edge, r: edge };
};

/** The looks of Excel's built-in cell styles in its standard theme, as far as the host offers them. */
export const builtInStyles: Readonly<Record<string, IStyleData>> = {
  Normal: {},
  Title: { fs: 18, cl: { rgb: "#44546A" } },
  "Heading 1": heading(15, "#4472C4"),
  "Heading 2": heading(13, "#A1B8E1"),
  "Heading 3": heading(11, "#8EA9DB"),
  "Heading 4": heading(11, null),
  Total: {
    bl: on,
    bd: {
      t: { s: BorderStyleTypes.THIN, cl: { rgb: "#4472C4" } },
      b: { s: BorderStyleTypes.DOUBLE, cl: { rgb: "#4472C4" } },
    },
  },
  Good: filled("#C6EFCE", "#006100"),
  Bad: filled("#FFC7CE", "#9C0006"),
  Neutral: filled("#FFEB9C", "#9C5700"),
  Input: filled("#FFCC99", "#3F3F76"),
  Output: { ...filled("#F2F2F2", "#3F3F3F"), bl: on },
  Calculation: { ...filled("#F2F2F2", "#FA7D00"), bl: on },
  Note: { bg: { rgb: "#FFFFCC" } },
  "Explanatory Text": { it: on, cl: { rgb: "#7F7F7F" } },
  "Warning Text": { cl: { rgb: "#FF0000" } },
  Accent1: filled("#4472C4", "#FFFFFF"),
  Accent2: filled("#ED7D31", "#FFFFFF"),
  Accent3: filled("#A5A5A5", "#FFFFFF"),
  Accent4: filled("#FFC000", "#FFFFFF"),
  Accent5: filled("#5B9BD5", "#FFFFFF"),
  Accent6: filled("#70AD47", "#FFFFFF"),
  Percent: { n: { pattern: "0%" } },
  Comma: { n: { pattern: '_(* #,##0.00_);_(* (#,##0.00);_(* "-"??_);_(@_)' }, ht: HorizontalAlign.UNSPECIFIED },
  "Linked Cell": {
    cl: { rgb: "#FA7D00" },
    bd: { b: { s: BorderStyleTypes.DOUBLE, cl: { rgb: "#FF8001" } } },
  },
  "Check Cell": { ...filled("#A5A5A5", "#FFFFFF"), bl: on, bd: boxed(BorderStyleTypes.DOUBLE, "#3F3F3F") },
  Hyperlink: link("#0563C1"),
  "Followed Hyperlink": link("#954F72"),
  ...tints(1, "#D9E1F2", "#B4C6E7", "#8EA9DB"),
  ...tints(2, "#FCE4D6", "#F8CBAD", "#F4B084"),
  ...tints(3, "#EDEDED", "#DBDBDB", "#C9C9C9"),
  ...tints(4, "#FFF2CC", "#FFE699", "#FFD966"),
  ...tints(5, "#DDEBF7", "#BDD7EE", "#9BC2E6"),
  ...tints(6, "#E2EFDA", "#C6E0B4", "#A9D08E"),
  "Comma [0]": { n: { pattern: '_(* #,##0_);_(* (#,##0);_(* "-"_);_(@_)' } },
  "Currency [0]": { n: { pattern: '_($* #,##0_);_($* (#,##0);_($* "-"_);_(@_)' } },
  Currency: { n: { pattern: '_($* #,##0.00_);_($* (#,##0.00);_($* "-"??_);_(@_)' } },
};
