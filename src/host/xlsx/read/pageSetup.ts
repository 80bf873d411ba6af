import { parseRectangle, splitAreas, splitSheet } from "../../engine/addresses";
import { isEntireColumn, isEntireRow, type Rectangle } from "../../engine/area";
import { freshPageSetup, type HeaderAndFooter, type PageSetup } from "../../engine/pageSetup";
import { childOf, childrenOf, numberOf, truthOf, type XmlElement } from "../package/xml";
import {
  headerElements,
  orientations,
  printAreaName,
  printComments,
  printErrors,
  printOrders,
  printTitlesName,
} from "../pageSetups";

/** What the file says of printing a sheet; `undefined` where it says nothing but what is so anyway. */
export function readPageSetup(sheet: XmlElement, names: PrintNames | undefined): PageSetup | undefined {
  const options = childOf(sheet, "printOptions");
  const page = childOf(sheet, "pageSetup");
  const headerFooter = childOf(sheet, "headerFooter");
  const setup: PageSetup = {
    ...freshPageSetup,
    ...names,
    orientation: wordOf(orientations, page, "orientation", freshPageSetup.orientation),
    paper: numberOf(page, "paperSize") ?? freshPageSetup.paper,
    zoom: readZoom(sheet, page),
    margins: readMargins(childOf(sheet, "pageMargins")),
    centerHorizontally: truthOf(options, "horizontalCentered"),
    centerVertically: truthOf(options, "verticalCentered"),
    printHeadings: truthOf(options, "headings"),
    printGridlines: truthOf(options, "gridLines"),
    blackAndWhite: truthOf(page, "blackAndWhite"),
    draftMode: truthOf(page, "draft"),
    firstPageNumber: truthOf(page, "useFirstPageNumber") ? (numberOf(page, "firstPageNumber") ?? 1) : null,
    printComments: wordOf(printComments, page, "cellComments", freshPageSetup.printComments),
    printErrors: wordOf(printErrors, page, "errors", freshPageSetup.printErrors),
    printOrder: wordOf(printOrders, page, "pageOrder", freshPageSetup.printOrder),
    headers: {
      odd: readSections(headerFooter, headerElements.odd),
      even: readSections(headerFooter, headerElements.even),
      first: readSections(headerFooter, headerElements.first),
    },
    differentFirst: truthOf(headerFooter, "differentFirst"),
    differentOddEven: truthOf(headerFooter, "differentOddEven"),
    headersFollowScale: truthOf(headerFooter, "scaleWithDoc", true),
    headersFollowMargins: truthOf(headerFooter, "alignWithMargins", true),
    rowBreaks: readBreaks(childOf(sheet, "rowBreaks")),
    columnBreaks: readBreaks(childOf(sheet, "colBreaks")),
  };
  return JSON.stringify(setup) === JSON.stringify(freshPageSetup) ? undefined : setup;
}

/** What a sheet prints, and which lines on every page. */
export type PrintNames = Partial<Pick<PageSetup, "printArea" | "titleRows" | "titleColumns">>;

/** Of each sheet, by its place in the workbook's list, what the names kept for printing say. */
export function readPrintNames(workbook: XmlElement): ReadonlyMap<number, PrintNames> {
  const found = new Map<number, PrintNames>();
  for (const source of childrenOf(childOf(workbook, "definedNames"), "definedName")) {
    const { name = "" } = source.attributes;
    const place = numberOf(source, "localSheetId");
    if (place === undefined) continue;
    const areas = splitAreas(source.text).flatMap((part): Rectangle[] => {
      const area = parseRectangle(splitSheet(part).rest);
      return area ? [area] : [];
    });
    if (name === printAreaName) found.set(place, { ...found.get(place), printArea: areas });
    if (name !== printTitlesName) continue;
    const rows = areas.find(isEntireRow);
    const columns = areas.find(isEntireColumn);
    found.set(place, {
      ...found.get(place),
      ...(rows && { titleRows: { start: rows.row, count: rows.rowCount } }),
      ...(columns && { titleColumns: { start: columns.column, count: columns.columnCount } }),
    });
  }
  return found;
}

function readZoom(sheet: XmlElement, page: XmlElement | undefined): PageSetup["zoom"] {
  if (truthOf(childOf(childOf(sheet, "sheetPr"), "pageSetUpPr"), "fitToPage")) {
    const pages = (name: string) => numberOf(page, name) ?? 1;
    return { across: pages("fitToWidth") || null, down: pages("fitToHeight") || null };
  }
  const scale = numberOf(page, "scale") ?? 100;
  return { scale: scale >= 10 && scale <= 400 ? scale : 100 };
}

function readMargins(source: XmlElement | undefined): PageSetup["margins"] {
  const points = (name: keyof PageSetup["margins"]) => {
    const inches = numberOf(source, name);
    return inches === undefined ? freshPageSetup.margins[name] : Math.round(inches * 72 * 1e6) / 1e6;
  };
  return {
    top: points("top"),
    bottom: points("bottom"),
    left: points("left"),
    right: points("right"),
    header: points("header"),
    footer: points("footer"),
  };
}

/** The word of the API for a word of the file. */
function wordOf<Word extends string>(
  words: Readonly<Record<Word, string>>,
  source: XmlElement | undefined,
  attribute: string,
  standard: Word,
): Word {
  const found = (Object.keys(words) as Word[]).find((word) => words[word] === source?.attributes[attribute]);
  return found ?? standard;
}

const readBreaks = (source: XmlElement | undefined): number[] =>
  childrenOf(source, "brk")
    .flatMap((each) => numberOf(each, "id") ?? [])
    .filter((line) => line > 0)
    .sort((one, other) => one - other);

function readSections(source: XmlElement | undefined, [header, footer]: readonly [string, string]): HeaderAndFooter {
  const above = sections(childOf(source, header)?.text ?? "");
  const below = sections(childOf(source, footer)?.text ?? "");
  return {
    leftHeader: above.L,
    centerHeader: above.C,
    rightHeader: above.R,
    leftFooter: below.L,
    centerFooter: below.C,
    rightFooter: below.R,
  };
}

/** Takes one text apart at "&L", "&C" and "&R"; "&&" is a sign of its own. What is before them stands in the centre. */
function sections(text: string): Record<"L" | "C" | "R", string> {
  const found = { L: "", C: "", R: "" };
  let section: keyof typeof found = "C";
  for (const piece of text.match(/&[\s\S]|[^&]+|&$/g) ?? []) {
    const letter = piece[1]?.toUpperCase();
    if (piece.startsWith("&") && (letter === "L" || letter === "C" || letter === "R")) section = letter;
    else found[section] += piece;
  }
  return found;
}
