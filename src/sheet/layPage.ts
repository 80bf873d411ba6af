import type { ReportChart, ReportColumn, ReportValue } from "../analyses/report";
import type { Page, PagePart, PageTable } from "../programme/page";

/** A page is laid out in this many units of width; its columns end where something on it ends. */
const gridColumns = 36;
/** In points. All of them together are as wide as the narrower of A4 and Letter allows within its margins. */
const gridColumnWidth = 14;
const pageWidth = gridColumns * gridColumnWidth;

export type Tone = "title" | "subtitle" | "heading" | "plain" | "quiet" | "strong";

/** A block of a page, with the row (zero-based) it begins in. */
export type LaidBlock =
  | {
      readonly kind: "line";
      readonly row: number;
      readonly text: string;
      readonly tone: Tone;
      /** Whether it needs more than one line, and so a cell as wide as the page. */
      readonly breaks: boolean;
    }
  | {
      readonly kind: "table";
      readonly row: number;
      readonly table: PageTable;
      readonly columns: readonly LaidColumn[];
    }
  | {
      readonly kind: "picture";
      readonly row: number;
      readonly rowCount: number;
      readonly chart: ReportChart;
      readonly isLayered: boolean;
      /** Beside its table a picture has a bar in each of its rows, and this above them, in the row of the headings. */
      readonly caption: string | null;
      /** Column it begins in; it ends with the page. */
      readonly start: number;
      /** Row of the first data, and columns, of the table it shows. */
      readonly dataRow: number;
      readonly dataCount: number;
      readonly columnOf: Readonly<Record<string, number>>;
    };

/** A quiet column serves the picture alone: it stands right of the page, where nothing is printed. */
export type LaidColumn = { readonly column: ReportColumn; readonly start: number; readonly span: number };

export type LaidPage = {
  readonly blocks: readonly LaidBlock[];
  /** In points, row by row. */
  readonly heights: readonly number[];
  /** In points, column by column, as far as is printed. */
  readonly widths: readonly number[];
};

const sizes: Readonly<Record<Tone, number>> = {
  ...{ title: 20, subtitle: 11, heading: 12, plain: 10.5, quiet: 9, strong: 10.5 },
};
export const sizeOf = (tone: Tone): number => sizes[tone];
export const tableSize = 10;

/** Mean width of a letter, as a share of the size of the type: on the wide side, so that nothing is cut off. */
const letterWidth = 0.48;
const lineHeight = 1.35;

const linesOf = (text: string, width: number, size: number): number => {
  const letters = Math.max(1, Math.floor(width / (size * letterWidth)));
  let lines = 1;
  let used = 0;
  for (const word of text.split(/\s+/)) {
    if (used > 0 && used + 1 + word.length > letters) {
      lines += 1;
      used = 0;
    }
    used += (used > 0 ? 1 : 0) + word.length;
    // A word longer than the line runs on over the next ones.
    lines += Math.floor((used - 1) / letters);
    used = ((used - 1) % letters) + 1;
  }
  return lines;
};

/** Lays a page out: what stands in which row, and how high it is. */
export function layPage({ title, subtitle, parts }: Page): LaidPage {
  const blocks: LaidBlock[] = [];
  const heights: number[] = [];
  const line = (text: string, tone: Tone, air = 4): void => {
    const size = sizes[tone];
    const lines = linesOf(text, pageWidth, size);
    blocks.push({ kind: "line", row: heights.length, text, tone, breaks: lines > 1 });
    heights.push(lines * size * lineHeight + air);
  };
  const gap = (height: number) => heights.push(height);

  line(title, "title", 2);
  line(subtitle, "subtitle", 8);
  for (let index = 0; index < parts.length; index++) {
    const part = parts[index]!;
    if (part.kind === "heading") {
      gap(6);
      line(part.text, "heading");
    } else if (part.kind === "text") line(part.text, part.tone);
    else if (part.kind === "table") {
      const pictures = picturesAfter(parts, index);
      layTable(part, pictures, blocks, heights);
      index += pictures.length;
      gap(6);
    } else throw new Error("A picture stands right behind the table it shows.");
  }
  return { ...inColumns(blocks), heights };
}

/** Puts in place of units of width the columns that a page needs. */
function inColumns(blocks: readonly LaidBlock[]): Pick<LaidPage, "blocks" | "widths"> {
  const ends = blocks.flatMap((block): number[] => {
    if (block.kind === "table") return block.columns.flatMap(({ start, span }) => [start, start + span]);
    return block.kind === "picture" ? [block.start] : [];
  });
  const edges = [...new Set([0, ...ends, gridColumns])].filter((edge) => edge <= gridColumns).sort((a, b) => a - b);
  const widths = edges.slice(1).map((edge, index) => (edge - edges[index]!) * gridColumnWidth);
  // What serves the pictures alone stands beyond the page, a column apart.
  const columnAt = (unit: number) =>
    unit <= gridColumns ? edges.indexOf(unit) : edges.length + unit - gridColumns - 1;
  const columnOf = (columns: Readonly<Record<string, number>>) =>
    Object.fromEntries(Object.entries(columns).map(([key, unit]) => [key, columnAt(unit)]));
  return {
    widths,
    blocks: blocks.map((block): LaidBlock => {
      if (block.kind === "line") return block;
      if (block.kind === "picture") {
        return { ...block, start: columnAt(block.start), columnOf: columnOf(block.columnOf) };
      }
      const columns = block.columns.map(({ column, start, span }) => ({
        ...{ column, start: columnAt(start) },
        span: column.quiet ? 1 : columnAt(start + span) - columnAt(start),
      }));
      return { ...block, columns };
    }),
  };
}

type Picture = Extract<PagePart, { kind: "picture" }>;

function picturesAfter(parts: readonly PagePart[], index: number): Picture[] {
  const pictures: Picture[] = [];
  for (const part of parts.slice(index + 1)) {
    if (part.kind !== "picture") break;
    pictures.push(part);
  }
  return pictures;
}

/** In points. */
const pictureRow = 15;

function layTable(table: PageTable, pictures: readonly Picture[], blocks: LaidBlock[], heights: number[]): void {
  const above = pictures.filter(({ place }) => place === "above");
  const [beside] = pictures.filter(({ place }) => place === "beside");
  const besideFrom = columnBeside(table);
  const columns = layColumns(table, beside ? besideFrom - 1 : gridColumns);
  const rows = beside ? alike(rowHeights(table, columns, besideRow)) : rowHeights(table, columns, 0);
  const pictureRows = above.map(({ chart }) => rowsOfPicture(chart, table.rows.length));
  const tableRow = heights.length + pictureRows.reduce((sum, count) => sum + count + 1, 0);
  const ofTable = {
    dataRow: tableRow + 1,
    dataCount: table.rows.length,
    columnOf: Object.fromEntries(columns.map(({ column, start }) => [column.key, start])),
  };
  above.forEach(({ chart, isLayered = false }, index) => {
    const rowCount = pictureRows[index]!;
    blocks.push({
      kind: "picture",
      row: heights.length,
      rowCount,
      start: 0,
      chart,
      isLayered,
      caption: null,
      ...ofTable,
    });
    for (let row = 0; row < rowCount; row++) heights.push(pictureRow);
    heights.push(6);
  });
  blocks.push({ kind: "table", row: tableRow, table, columns });
  if (beside) {
    const { chart, isLayered = false } = beside;
    const place = { row: tableRow + 1, rowCount: table.rows.length, start: besideFrom };
    blocks.push({ kind: "picture", ...place, chart, isLayered, caption: chart.valueAxisTitle, ...ofTable });
  }
  heights.push(...rows);
}

/** Columns from which a picture may stand beside its table, one apart. */
const leastBeside = 20;
const mostBeside = 27;

/** Where the picture beside a table begins, so that the words of the table have the width they wish, within limits. */
const columnBeside = (table: PageTable): number => {
  const wished = wishes(table).reduce((sum, column) => sum + unitsOf(column.wished), 0);
  return Math.min(Math.max(wished + 1, leastBeside), mostBeside);
};

/** Rows beside a picture are as high as the highest of them, so that each bar stands in its row; headings as they are. */
const alike = ([headings, ...rows]: readonly number[]): number[] => [headings!, ...rows.map(() => Math.max(...rows))];

/** In points: rows beside a picture are high enough for its bars. */
const besideRow = 18;

/** Heights of a table's rows, its headings first. */
function rowHeights(table: PageTable, columns: readonly LaidColumn[], least: number): number[] {
  const heightOf = (texts: readonly string[]): number => {
    const lines = columns.map(({ column, span }, index) =>
      column.quiet ? 1 : linesOf(texts[index] ?? "", span * gridColumnWidth - padding, tableSize),
    );
    return Math.max(...lines, 1) * tableSize * lineHeight + 4;
  };
  return [
    Math.max(least, heightOf(columns.map(({ column }) => column.heading))),
    ...table.rows.map((row) =>
      Math.max(
        least,
        table.toFillIn ? pencilHeight : 0,
        heightOf(columns.map(({ column }, index) => shown(row[index] ?? null, column))),
      ),
    ),
  ];
}

/** Room for what is written by hand, in letters of type. */
const pencilLetters = 36;
/** In points: room for a number by hand. */
const pencilHeight = 26;
/** In points: what a cell keeps free beside its text, with its indent. */
const padding = 8;

/** Rows a picture takes: for bars one and a half for each name, else as much as a season needs to be seen. */
const rowsOfPicture = ({ kind }: ReportChart, count: number): number =>
  kind === "bar" ? Math.ceil(Math.min(Math.max(count, 3), 30) * 1.5) + 5 : 14;

/** How wide each printed column must and would be, in letters: its longest word, and its longest cell. */
function wishes({ columns, rows }: PageTable): { readonly least: number; readonly wished: number }[] {
  const printed = columns.filter(({ quiet }) => !quiet);
  return printed.map((column) => {
    const at = columns.indexOf(column);
    const cells = rows.map((row) => shown(row[at] ?? null, column));
    const isEmpty = cells.every((cell) => cell === "");
    const longestWord = Math.max(...[column.heading, ...cells].flatMap((text) => text.split(/[ \n]+/)).map(lengthOf));
    const longest = Math.max(column.heading.length / 2, ...cells.map(lengthOf), isEmpty ? pencilLetters : 0);
    return { least: longestWord, wished: Math.max(longestWord, Math.min(longest, 60)) };
  });
}

/** Columns of the grid that so many letters take. */
const unitsOf = (letters: number): number =>
  Math.max(1, Math.ceil((letters * tableSize * letterWidth + padding) / gridColumnWidth));

/** Shares a width, in columns of the grid, among the columns of a table; none is narrower than its longest word. */
function layColumns(table: PageTable, width: number): LaidColumn[] {
  const { columns } = table;
  const printed = columns.filter(({ quiet }) => !quiet);
  const letters = wishes(table);
  const spans = letters.map(({ least }) => unitsOf(least));
  const total = () => spans.reduce((sum, span) => sum + span, 0);
  // Where the words alone are too wide, the widest give way.
  while (total() > width) spans[spans.indexOf(Math.max(...spans))]!--;
  while (total() < width) {
    const needs = letters.map(({ wished }, index) => unitsOf(wished) / spans[index]!);
    spans[needs.indexOf(Math.max(...needs))]!++;
  }
  let start = 0;
  let outside = gridColumns + 1;
  return columns.map((column): LaidColumn => {
    const at = printed.indexOf(column);
    if (at < 0) return { column, start: outside++, span: 1 };
    const laid = { column, start, span: spans[at]! };
    start += laid.span;
    return laid;
  });
}

/** In letters; a square is twice as wide as one. */
const lengthOf = (text: string): number => text.length + text.replace(/[^■]/g, "").length;

function shown(value: ReportValue, { format }: ReportColumn): string {
  if (value === null) return "";
  if (typeof value === "string") return value;
  const decimals = /\.(0+)/.exec(format ?? "")?.[1]?.length;
  return decimals === undefined && format?.includes("0") !== true
    ? String(value)
    : `${value.toFixed(decimals ?? 0)}${format?.startsWith("+") ? "+" : ""}`;
}
