import { BooleanNumber, type IBorderData, type IStyleData, type Nullable, WrapStrategy } from "@univerjs/core";
import type { CellMarks } from "../../engine/cellMarks";
import { indentLevel } from "../../engine/styles";
import {
  horizontalAlignments,
  markedHorizontal,
  markedVertical,
  readingOrders,
  verticalAlignments,
} from "../alignments";
import { borderLines } from "../borders";
import { fillPatterns } from "../fillPatterns";
import { builtInFormats } from "../numberFormats";
import { fileColour } from "./colours";
import { counted, main, part, tag } from "./markup";

/** A list in which each thing stands once and is known by its place. */
class Numbered {
  readonly items: string[] = [];
  readonly #places = new Map<string, number>();

  constructor(...first: readonly string[]) {
    for (const item of first) this.place(item);
  }

  place(item: string): number {
    const known = this.#places.get(item);
    if (known !== undefined) return known;
    this.#places.set(item, this.items.length);
    return this.items.push(item) - 1;
  }
}

const reversed = <Key extends string | number>(names: { readonly [name: string]: Key }) =>
  new Map(
    Object.entries(names)
      .map(([name, key]) => [key, name] as const)
      .reverse(),
  );
const lineNames = reversed(borderLines);
const horizontalNames = reversed(horizontalAlignments);
const verticalNames = reversed(verticalAlignments);
const markedHorizontalNames = reversed(markedHorizontal);
const markedVerticalNames = reversed(markedVertical);
const builtInIds = new Map(Object.entries(builtInFormats).map(([id, code]) => [code, Number(id)]));
/** Numbers from here on are for a file's own formats. */
const firstOwnFormat = 164;

/** Collects the looks of a workbook while its sheets are written, then becomes its style part. */
export class StyleSheet {
  readonly #fonts: Numbered;
  // The first two fills are the format's own, whatever a workbook does with them.
  readonly #fills = new Numbered(solidless("none"), solidless("gray125"));
  readonly #borders = new Numbered(borderTag(undefined));
  readonly #formats = new Numbered();
  readonly #cells: Numbered;
  readonly #conditional = new Numbered();
  readonly #plain: IStyleData;
  readonly #known = new Map<IStyleData, Map<string, number>>();

  constructor(plain: IStyleData) {
    this.#plain = { ff: "Calibri", fs: 11, ...plain };
    this.#fonts = new Numbered(fontTag(this.#plain));
    this.#cells = new Numbered(tag("xf", { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0, xfId: 0 }));
  }

  /** Number by which a cell refers to this look and to what the grid cannot show of it. */
  cell(style: IStyleData, marks: CellMarks = {}): number {
    const marked = this.#known.get(style) ?? new Map<string, number>();
    this.#known.set(style, marked);
    const key = JSON.stringify(marks);
    const known = marked.get(key);
    if (known !== undefined) return known;
    const protection = protectionTag(marks);
    const alignment = alignmentTag(style, marks);
    const fill = fillTag(style, marks);
    const font = this.#fonts.place(fontTag({ ...this.#plain, ...present(style) }));
    const fillId = fill === "" ? 0 : this.#fills.place(fill);
    const borderId = this.#borders.place(borderTag(style.bd));
    const format = this.#formatId(style.n?.pattern);
    const number = this.#cells.place(
      tag(
        "xf",
        {
          numFmtId: format,
          fontId: font,
          fillId,
          borderId,
          xfId: 0,
          applyNumberFormat: format !== 0,
          applyFont: font !== 0,
          applyFill: fillId !== 0,
          applyBorder: borderId !== 0,
          applyAlignment: alignment !== "",
          applyProtection: protection !== "",
        },
        alignment + protection,
      ),
    );
    marked.set(key, number);
    return number;
  }

  /** Number by which a conditional format refers to what it changes. */
  conditional(style: IStyleData): number {
    const fill = fileColour(style.bg?.rgb);
    const changesFont = style.bl || style.it || style.cl || style.st || style.ul;
    return this.#conditional.place(
      tag("dxf", {}, [
        changesFont ? fontTag(style) : "",
        fill
          ? tag(
              "fill",
              {},
              tag("patternFill", { patternType: "solid" }, [
                tag("fgColor", { rgb: fill }),
                tag("bgColor", { rgb: fill }),
              ]),
            )
          : "",
      ]),
    );
  }

  part(): Uint8Array {
    const formats = this.#formats.items.map((code, index) =>
      tag("numFmt", { numFmtId: firstOwnFormat + index, formatCode: code }),
    );
    return part(
      tag("styleSheet", { xmlns: main }, [
        counted("numFmts", formats),
        counted("fonts", this.#fonts.items),
        counted("fills", this.#fills.items),
        counted("borders", this.#borders.items),
        counted("cellStyleXfs", [tag("xf", { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0 })]),
        counted("cellXfs", this.#cells.items),
        counted("cellStyles", [tag("cellStyle", { name: "Normal", xfId: 0, builtinId: 0 })]),
        counted("dxfs", this.#conditional.items),
        tag("tableStyles", {
          count: 0,
          defaultTableStyle: "TableStyleMedium2",
          defaultPivotStyle: "PivotStyleLight16",
        }),
      ]),
    );
  }

  #formatId(code: string | undefined): number {
    if (!code || code === "General") return 0;
    return builtInIds.get(code) ?? firstOwnFormat + this.#formats.place(code);
  }
}

const solidless = (pattern: string) => tag("fill", {}, tag("patternFill", { patternType: pattern }));

const solid = (colour: string) =>
  tag(
    "fill",
    {},
    tag("patternFill", { patternType: "solid" }, [tag("fgColor", { rgb: colour }), tag("bgColor", { indexed: 64 })]),
  );

function fillTag({ bg }: IStyleData, { fillPattern, fillPatternColor }: CellMarks): string {
  const behind = fileColour(bg?.rgb);
  const patternType = fillPatterns[fillPattern as keyof typeof fillPatterns];
  if (!patternType) return behind === undefined ? "" : solid(behind);
  const front = fileColour(fillPatternColor);
  return tag(
    "fill",
    {},
    tag("patternFill", { patternType }, [
      front ? tag("fgColor", { rgb: front }) : "",
      behind ? tag("bgColor", { rgb: behind }) : "",
    ]),
  );
}

/** The order of these elements is prescribed. */
function fontTag({ bl, it, st, ul, cl, fs, ff }: IStyleData): string {
  const colour = fileColour(cl?.rgb);
  return tag("font", {}, [
    bl === BooleanNumber.TRUE ? tag("b") : "",
    it === BooleanNumber.TRUE ? tag("i") : "",
    st?.s === BooleanNumber.TRUE ? tag("strike") : "",
    ul?.s === BooleanNumber.TRUE ? tag("u") : "",
    fs ? tag("sz", { val: fs }) : "",
    colour ? tag("color", { rgb: colour }) : "",
    ff ? tag("name", { val: ff }) : "",
  ]);
}

function borderTag(sides: Nullable<IBorderData>): string {
  const side = (name: string, key: "l" | "r" | "t" | "b") => {
    const line = sides?.[key];
    const style = line && lineNames.get(line.s);
    if (!style) return tag(name);
    return tag(name, { style }, tag("color", { rgb: fileColour(line.cl.rgb) ?? "FF000000" }));
  };
  return tag("border", {}, [
    side("left", "l"),
    side("right", "r"),
    side("top", "t"),
    side("bottom", "b"),
    tag("diagonal"),
  ]);
}

function alignmentTag({ ht, vt, tb, tr, pd }: IStyleData, marks: CellMarks): string {
  const horizontal =
    markedHorizontalNames.get(marks.horizontalAlignment as "Fill") ?? (ht ? horizontalNames.get(ht) : undefined);
  const vertical =
    markedVerticalNames.get(marks.verticalAlignment as "Justify") ?? (vt ? verticalNames.get(vt) : undefined);
  const indent = Math.round((pd?.l ?? 0) / indentLevel);
  const reading = readingOrders.indexOf(marks.readingOrder as "Context");
  const angle = tr?.v === BooleanNumber.TRUE ? 255 : tr?.a ? (tr.a < 0 ? -tr.a : tr.a + 90) : undefined;
  const wrap = tb === WrapStrategy.WRAP;
  const attributes = {
    // LibreOffice takes a turned text that says nothing of this for one on the left.
    horizontal: horizontal ?? (angle === undefined ? undefined : "general"),
    vertical,
    textRotation: angle,
    wrapText: wrap,
    indent: indent || undefined,
    shrinkToFit: marks.shrinkToFit === true,
    readingOrder: reading > 0 ? reading : undefined,
  };
  return Object.values(attributes).some(Boolean) ? tag("alignment", attributes) : "";
}

function protectionTag({ locked, formulaHidden }: CellMarks): string {
  if (locked !== false && formulaHidden !== true) return "";
  return tag("protection", { locked: locked === false ? 0 : undefined, hidden: formulaHidden === true });
}

const present = (style: IStyleData): IStyleData =>
  Object.fromEntries(Object.entries(style).filter(([, value]) => value !== null && value !== undefined));
