import { BooleanNumber, BorderStyleTypes, HorizontalAlign, type IStyleData } from "@univerjs/core";

const on = BooleanNumber.TRUE;
const filled = (fill: string, colour: string): IStyleData => ({ bg: { rgb: fill }, cl: { rgb: colour } });
const heading = (size: number, line: string | null): IStyleData => ({
  fs: size,
  bl: on,
  cl: { rgb: "#44546A" },
  ...(line ? { bd: { b: { s: BorderStyleTypes.MEDIUM, cl: { rgb: line } } } } : {}),
});

/** The looks of Excel's built-in cell styles in its standard theme, as far as the host offers them. */
export const namedStyles: Readonly<Record<string, IStyleData>> = {
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
  Currency: { n: { pattern: '_($* #,##0.00_);_($* (#,##0.00);_($* "-"??_);_(@_)' } },
};
