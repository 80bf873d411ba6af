import type { IStyleData } from "@univerjs/core";
import type { Area } from "./area";
import type { Book } from "./book";
import { builtInStyles } from "./builtInStyles";
import type { CellMarks } from "./cellMarks";
import { mark } from "./markCells";
import { sheetsOf } from "./sheets";
import { applyStyle } from "./styles";

/** The parts of a look that a style sets; of the others a cell keeps its own. */
export type StyleParts = {
  readonly alignment: boolean;
  readonly border: boolean;
  readonly font: boolean;
  readonly number: boolean;
  readonly patterns: boolean;
  readonly protection: boolean;
};

export type NamedStyle = {
  readonly name: string;
  readonly isBuiltIn: boolean;
  readonly look: IStyleData;
  readonly marks: CellMarks;
  readonly parts: StyleParts;
};

type Change = {
  readonly look?: IStyleData;
  readonly marks?: { readonly [Key in keyof CellMarks]?: CellMarks[Key] | null };
  readonly parts?: Partial<StyleParts>;
};

/** What each part is made of, with what stands there when a style says nothing of it. */
const plain = {
  alignment: { ht: null, vt: null, tb: null, tr: null, pd: null },
  border: { bd: null },
  font: { ff: null, fs: 11, bl: 0, it: 0, ul: null, st: null, cl: null, va: null },
  number: { n: null },
  patterns: { bg: null },
} as const;

const marksOfParts: Partial<Record<keyof StyleParts, readonly (keyof CellMarks)[]>> = {
  alignment: ["autoIndent", "readingOrder", "shrinkToFit", "horizontalAlignment", "verticalAlignment"],
  patterns: ["fillPattern", "fillPatternColor", "fillPatternTint", "fillTint"],
  font: ["fontTint"],
  border: ["borderTint"],
  protection: ["locked", "formulaHidden"],
};

const every: StyleParts = {
  alignment: true,
  border: true,
  font: true,
  number: true,
  patterns: true,
  protection: true,
};

/** A built-in style sets what it has something to say of. */
function partsOf(look: IStyleData): StyleParts {
  const says = (part: keyof typeof plain) => Object.keys(plain[part]).some((key) => key in look);
  return {
    alignment: says("alignment"),
    border: says("border"),
    font: says("font"),
    number: says("number"),
    patterns: says("patterns"),
    protection: false,
  };
}

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** The cell styles of the workbook: Excel's own, and those that are added. Undo does not cover what they say. */
export class NamedStyles {
  readonly #book: Book;
  readonly #styles: NamedStyle[];

  constructor(book: Book) {
    this.#book = book;
    this.#styles = Object.entries(builtInStyles).map(([name, look]) => ({
      name,
      isBuiltIn: true,
      look,
      marks: {},
      parts: name === "Normal" ? every : partsOf(look),
    }));
  }

  list(): readonly NamedStyle[] {
    return this.#styles;
  }

  named(name: string): NamedStyle | null {
    return this.#styles.find((style) => same(style.name, name)) ?? null;
  }

  /** A new style says nothing yet: it looks as Normal does. */
  add(name: string): void {
    this.#styles.push({ name, isBuiltIn: false, look: {}, marks: {}, parts: every });
  }

  /** Changes what a style says, and with it every cell that has the style. */
  change(style: NamedStyle, { look = {}, marks = {}, parts = {} }: Change): void {
    const changed = {
      ...style,
      look: { ...style.look, ...look, ...(look.bd ? { bd: { ...style.look.bd, ...look.bd } } : {}) },
      marks: Object.fromEntries(Object.entries({ ...style.marks, ...marks }).filter(([, value]) => value !== null)),
      parts: { ...style.parts, ...parts },
    };
    this.#styles[this.#styles.indexOf(style)] = changed;
    const areas = this.#cellsOf(style.name);
    if (Object.keys(look).length > 0) applyStyle(areas, () => look);
    if (Object.keys(marks).length > 0) mark(areas, marks);
  }

  /** Takes a style away; cells that had it are Normal again. */
  remove(style: NamedStyle): void {
    this.#styles.splice(this.#styles.indexOf(style), 1);
    this.apply(this.#cellsOf(style.name), this.named("Normal")!);
  }

  /** Gives cells the look of a style. */
  apply(areas: readonly Area[], { name, look, marks, parts }: NamedStyle): void {
    const set: Record<string, unknown> = {};
    const marked: Record<string, unknown> = { style: name === "Normal" ? null : name };
    for (const [part, isSet] of Object.entries(parts) as [keyof StyleParts, boolean][]) {
      if (!isSet) continue;
      for (const [key, standard] of Object.entries(plain[part as keyof typeof plain] ?? {})) {
        set[key] = look[key as keyof IStyleData] ?? standard;
      }
      for (const key of marksOfParts[part] ?? []) marked[key] = marks[key] ?? null;
    }
    applyStyle(areas, () => set as IStyleData);
    mark(areas, marked);
  }

  #cellsOf(name: string): Area[] {
    const book = this.#book;
    return sheetsOf(book).flatMap(({ id }) => {
      const cells: Area[] = [];
      book
        .worksheet(id)
        .getCellMatrix()
        .forValue((row, column, cell) => {
          if ((cell?.custom as CellMarks | undefined)?.style === name) {
            cells.push({ book, sheetId: id, row, column, rowCount: 1, columnCount: 1 });
          }
        });
      return cells;
    });
  }
}
