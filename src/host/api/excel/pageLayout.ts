import type { Area } from "../../engine/area";
import { isEntireColumn, isEntireRow } from "../../engine/area";
import type { HeaderPages, Lines, PageSetup } from "../../engine/pageSetup";
import { wholeSheet } from "../../engine/references";
import type { Sheet } from "../../engine/sheets";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass, type Scalar } from "../proxies/proxyClass";
import { enumerations } from "../published/enumerations";
import { oneOf, wholeNumber } from "./arguments";
import { areaOf, areasOf, Range } from "./range";
import { RangeAreas } from "./rangeAreas";

const setupOf = ({ book, id }: Sheet): PageSetup => book.pageSetups.of(id);
const change = ({ book, id }: Sheet, given: Partial<PageSetup>): void => book.pageSetups.change(id, given);

type FlagName = {
  [K in keyof PageSetup]: PageSetup[K] extends boolean ? K : never;
}[keyof PageSetup];

const truth = (value: unknown): boolean =>
  typeof value === "boolean" ? value : refuse("InvalidArgument", "true or false is wanted.");

const flag = (name: FlagName): Scalar<Sheet, boolean> => ({
  get: (sheet) => setupOf(sheet)[name],
  set: (sheet, value) => change(sheet, { [name]: truth(value) }),
});

/** A property that is one of a list of words. */
const choice = <Name extends "orientation" | "printComments" | "printErrors" | "printOrder">(
  name: Name,
  enumeration: string,
  // biome-ignore lint/suspicious/noExplicitAny: an enumeration and its words are two types in the published typings.
): Scalar<Sheet, any> => ({
  get: (sheet) => setupOf(sheet)[name],
  set: (sheet, value) =>
    change(sheet, { [name]: oneOf(value, Object.values(enumerations[enumeration] ?? {}).map(String), "The property") }),
});

/** Longer margins than this no paper has. */
const longestMargin = 72 * 49;

const length = (value: unknown): number =>
  typeof value === "number" && value >= 0 && value <= longestMargin
    ? value
    : refuse("InvalidArgument", "A margin is a length, not below 0.");

const margin = (name: keyof PageSetup["margins"]): Scalar<Sheet, number> => ({
  get: (sheet) => setupOf(sheet).margins[name],
  set: (sheet, value) => change(sheet, { margins: { ...setupOf(sheet).margins, [name]: length(value) } }),
});

const pointsPerUnit = { Points: 1, Inches: 72, Centimeters: 72 / 2.54 } as const;

/** The names of the sizes of paper, whose order is that of their numbers in the file format, from 1. */
const papers: readonly string[] = Object.values(enumerations.PaperType ?? {}).map(String);

const pages = (value: unknown): number | null =>
  value === undefined || value === null ? null : wholeNumber(value, "A number of pages", 1);

function readZoom(sheet: Sheet): Excel.PageLayoutZoomOptions {
  const { zoom } = setupOf(sheet);
  // What does not apply is null (reference of PageLayoutZoomOptions), which the published typings leave out.
  const read =
    "scale" in zoom
      ? { horizontalFitToPages: null, scale: zoom.scale, verticalFitToPages: null }
      : { horizontalFitToPages: zoom.across, scale: null, verticalFitToPages: zoom.down };
  return read as unknown as Excel.PageLayoutZoomOptions;
}

function writeZoom(sheet: Sheet, given: Excel.PageLayoutZoomOptions): void {
  const { scale, horizontalFitToPages, verticalFitToPages } = given ?? {};
  const [across, down] = [pages(horizontalFitToPages), pages(verticalFitToPages)];
  const fits = across !== null || down !== null;
  if (scale === undefined || scale === null) {
    if (!fits) refuse("InvalidArgument", "A zoom is a scale, or a number of pages to fit on.");
    change(sheet, { zoom: { across, down } });
    return;
  }
  // ASSUMPTION: a scale and pages to fit on exclude each other, as in Excel's own dialogue.
  if (fits) refuse("InvalidArgument", "A zoom is either a scale or a number of pages to fit on.");
  if (scale < 10 || scale > 400) refuse("InvalidArgument", "A scale is from 10 to 400.");
  change(sheet, { zoom: { scale } });
}

/** Whole rows or whole columns of the sheet. */
function titleLines(sheet: Sheet, given: unknown, kind: "rows" | "columns"): Lines {
  const area = areaOf(given, wholeSheet(sheet));
  if (area.sheetId !== sheet.id) refuse("InvalidArgument", "The range is on another worksheet.");
  if (kind === "rows" ? !isEntireRow(area) : !isEntireColumn(area)) {
    refuse("InvalidArgument", `The titles to print are whole ${kind}.`);
  }
  return kind === "rows" ? { start: area.row, count: area.rowCount } : { start: area.column, count: area.columnCount };
}

function titleRows(sheet: Sheet): Area | null {
  const lines = setupOf(sheet).titleRows;
  return lines && { ...wholeSheet(sheet), row: lines.start, rowCount: lines.count };
}

function titleColumns(sheet: Sheet): Area | null {
  const lines = setupOf(sheet).titleColumns;
  return lines && { ...wholeSheet(sheet), column: lines.start, columnCount: lines.count };
}

function printArea(sheet: Sheet): Area[] | null {
  const areas = setupOf(sheet).printArea.map((rectangle) => ({ ...wholeSheet(sheet), ...rectangle }));
  return areas.length > 0 ? areas : null;
}

export const PageLayout: ProxyClass<Excel.PageLayout, Sheet> = proxyClass<Excel.PageLayout, Sheet>("PageLayout", {
  scalars: {
    blackAndWhite: flag("blackAndWhite"),
    bottomMargin: margin("bottom"),
    centerHorizontally: flag("centerHorizontally"),
    centerVertically: flag("centerVertically"),
    draftMode: flag("draftMode"),
    firstPageNumber: {
      get: (sheet) => setupOf(sheet).firstPageNumber ?? "",
      set: (sheet, value) =>
        change(sheet, {
          firstPageNumber: value === "" || value === null ? null : wholeNumber(value, "The first page's number"),
        }),
    },
    footerMargin: margin("footer"),
    headerMargin: margin("header"),
    leftMargin: margin("left"),
    orientation: choice("orientation", "PageOrientation"),
    paperSize: {
      get: (sheet) => (papers[setupOf(sheet).paper - 1] ?? null) as Excel.PaperType,
      set: (sheet, value) => change(sheet, { paper: papers.indexOf(oneOf(value, papers, "The paper's size")) + 1 }),
    },
    printComments: choice("printComments", "PrintComments"),
    printErrors: choice("printErrors", "PrintErrorType"),
    printGridlines: flag("printGridlines"),
    printHeadings: flag("printHeadings"),
    printOrder: choice("printOrder", "PrintOrder"),
    rightMargin: margin("right"),
    topMargin: margin("top"),
    zoom: { get: readZoom, set: writeZoom },
  },
  objects: { headersFooters: { of: () => HeaderFooterGroup, at: (sheet) => sheet } },
  methods: {
    getPrintArea: { of: () => RangeAreas, at: printArea },
    getPrintAreaOrNullObject: { of: () => RangeAreas, at: printArea },
    getPrintTitleColumns: { of: () => Range, at: titleColumns },
    getPrintTitleColumnsOrNullObject: { of: () => Range, at: titleColumns },
    getPrintTitleRows: { of: () => Range, at: titleRows },
    getPrintTitleRowsOrNullObject: { of: () => Range, at: titleRows },
    setPrintArea(sheet, given) {
      const areas = areasOf(given, wholeSheet(sheet));
      if (areas.some(({ sheetId }) => sheetId !== sheet.id)) {
        refuse("InvalidArgument", "The range is on another worksheet.");
      }
      const rectangles = areas.map(({ row, column, rowCount, columnCount }) => ({
        row,
        column,
        rowCount,
        columnCount,
      }));
      change(sheet, { printArea: rectangles });
    },
    setPrintMargins(sheet, unit, margins) {
      const points = pointsPerUnit[oneOf(unit, ["Points", "Inches", "Centimeters"] as const, "The unit")];
      const given = Object.entries(margins ?? {}).filter(([, value]) => value !== undefined && value !== null);
      const names = Object.keys(setupOf(sheet).margins);
      const changed = given.map(([name, value]) => [oneOf(name, names, "A margin"), length(value) * points]);
      change(sheet, { margins: { ...setupOf(sheet).margins, ...Object.fromEntries(changed) } });
    },
    setPrintTitleColumns: (sheet, given) => change(sheet, { titleColumns: titleLines(sheet, given, "columns") }),
    setPrintTitleRows: (sheet, given) => change(sheet, { titleRows: titleLines(sheet, given, "rows") }),
  },
});

/** The headers and footers of a kind of pages of a sheet. */
type HeadersTarget = { readonly sheet: Sheet; readonly pages: HeaderPages };

const section = (name: keyof PageSetup["headers"]["odd"]): Scalar<HeadersTarget, string> => ({
  get: ({ sheet, pages }) => setupOf(sheet).headers[pages][name],
  set: ({ sheet, pages }, value) => {
    // 255 characters are what Excel takes (page Excel specifications and limits).
    if (typeof value !== "string" || value.length > 255) {
      refuse("InvalidArgument", "A header or footer is a text of at most 255 characters.");
    }
    const { headers } = setupOf(sheet);
    change(sheet, { headers: { ...headers, [pages]: { ...headers[pages], [name]: value } } });
  },
});

export const HeaderFooter: ProxyClass<Excel.HeaderFooter, HeadersTarget> = proxyClass<
  Excel.HeaderFooter,
  HeadersTarget
>("HeaderFooter", {
  scalars: {
    centerFooter: section("centerFooter"),
    centerHeader: section("centerHeader"),
    leftFooter: section("leftFooter"),
    leftHeader: section("leftHeader"),
    rightFooter: section("rightFooter"),
    rightHeader: section("rightHeader"),
  },
});

const headersOf = (pages: HeaderPages) => ({
  of: () => HeaderFooter,
  at: (sheet: Sheet): HeadersTarget => ({ sheet, pages }),
});

const differences = {
  Default: { differentFirst: false, differentOddEven: false },
  FirstAndDefault: { differentFirst: true, differentOddEven: false },
  OddAndEven: { differentFirst: false, differentOddEven: true },
  FirstOddAndEven: { differentFirst: true, differentOddEven: true },
} as const;

export const HeaderFooterGroup: ProxyClass<Excel.HeaderFooterGroup, Sheet> = proxyClass<Excel.HeaderFooterGroup, Sheet>(
  "HeaderFooterGroup",
  {
    scalars: {
      state: {
        get: (sheet) => {
          const { differentFirst, differentOddEven } = setupOf(sheet);
          const name = `${differentFirst ? "First" : ""}${differentOddEven ? "OddAndEven" : ""}`;
          const states: Record<string, keyof typeof differences> = {
            "": "Default",
            First: "FirstAndDefault",
            OddAndEven: "OddAndEven",
            FirstOddAndEven: "FirstOddAndEven",
          };
          return states[name] as Excel.HeaderFooterState;
        },
        set: (sheet, value) => {
          const names = Object.keys(differences) as (keyof typeof differences)[];
          change(sheet, differences[oneOf(value, names, "The state")]);
        },
      },
      useSheetMargins: flag("headersFollowMargins"),
      useSheetScale: flag("headersFollowScale"),
    },
    objects: {
      // ASSUMPTION: those for all pages and those for odd ones are the same, as they are in the file.
      defaultForAllPages: headersOf("odd"),
      evenPages: headersOf("even"),
      firstPage: headersOf("first"),
      oddPages: headersOf("odd"),
    },
  },
);
