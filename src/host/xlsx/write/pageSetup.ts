import { absoluteAddress, quotedSheet } from "../../engine/addresses";
import { sheetColumns, sheetRows } from "../../engine/area";
import { freshPageSetup, type HeaderAndFooter, type PageSetup } from "../../engine/pageSetup";
import {
  headerElements,
  orientations,
  printAreaName,
  printComments,
  printErrors,
  printOrders,
  printTitlesName,
} from "../pageSetups";
import { escaped, tag, textTag } from "./markup";

/** How a sheet is printed, in the order the format prescribes, from `printOptions` to `colBreaks`. */
export function pageMarkup(setup: PageSetup = freshPageSetup): string {
  const inches = (points: number) => Math.round((points / 72) * 1e6) / 1e6;
  const margins = Object.fromEntries(Object.entries(setup.margins).map(([name, points]) => [name, inches(points)]));
  const { left, right, top, bottom, header, footer } = margins;
  return [
    tagIfAny("printOptions", {
      horizontalCentered: setup.centerHorizontally,
      verticalCentered: setup.centerVertically,
      headings: setup.printHeadings,
      gridLines: setup.printGridlines,
    }),
    tag("pageMargins", { left, right, top, bottom, header, footer }),
    pageTag(setup),
    headersMarkup(setup),
    breaksMarkup("rowBreaks", setup.rowBreaks, sheetColumns),
    breaksMarkup("colBreaks", setup.columnBreaks, sheetRows),
  ].join("");
}

/** Where pages are fitted the sheet says so in its own properties. */
export const fitMarkup = (setup: PageSetup = freshPageSetup): string =>
  "scale" in setup.zoom ? "" : tag("pageSetUpPr", { fitToPage: true });

/** The names under which the file keeps what a sheet prints, and which lines on every page. */
export function printNames(setup: PageSetup, sheetName: string, place: number): string[] {
  const onSheet = (address: string) => `${quotedSheet(sheetName)}!${address}`;
  const { titleRows, titleColumns } = setup;
  const titles = [
    titleColumns && { row: 0, rowCount: sheetRows, column: titleColumns.start, columnCount: titleColumns.count },
    titleRows && { row: titleRows.start, rowCount: titleRows.count, column: 0, columnCount: sheetColumns },
  ].filter((area) => area !== null);
  const named = (name: string, areas: PageSetup["printArea"]) =>
    areas.length === 0
      ? []
      : [
          tag(
            "definedName",
            { name, localSheetId: place },
            escaped(areas.map((area) => onSheet(absoluteAddress(area))).join(",")),
          ),
        ];
  return [...named(printAreaName, setup.printArea), ...named(printTitlesName, titles)];
}

function pageTag(setup: PageSetup): string {
  const { zoom } = setup;
  return tagIfAny("pageSetup", {
    paperSize: setup.paper === freshPageSetup.paper ? undefined : setup.paper,
    ...("scale" in zoom
      ? { scale: zoom.scale === 100 ? undefined : zoom.scale }
      : // One page is what the format means by nothing; as many as it takes is 0.
        { fitToWidth: zoom.across === 1 ? undefined : (zoom.across ?? 0), fitToHeight: zoom.down ?? 0 }),
    firstPageNumber: setup.firstPageNumber ?? undefined,
    pageOrder: setup.printOrder === "DownThenOver" ? undefined : printOrders[setup.printOrder],
    orientation: setup.orientation === "Portrait" ? undefined : orientations[setup.orientation],
    blackAndWhite: setup.blackAndWhite,
    draft: setup.draftMode,
    cellComments: setup.printComments === "NoComments" ? undefined : printComments[setup.printComments],
    useFirstPageNumber: setup.firstPageNumber !== null,
    errors: setup.printErrors === "AsDisplayed" ? undefined : printErrors[setup.printErrors],
  });
}

function headersMarkup(setup: PageSetup): string {
  const texts = Object.entries(headerElements).flatMap(([pages, [header, footer]]) => {
    const own = setup.headers[pages as keyof typeof headerElements];
    return [textIfAny(header, sections(own, "Header")), textIfAny(footer, sections(own, "Footer"))];
  });
  const attributes = {
    differentOddEven: setup.differentOddEven,
    differentFirst: setup.differentFirst,
    scaleWithDoc: setup.headersFollowScale ? undefined : 0,
    alignWithMargins: setup.headersFollowMargins ? undefined : 0,
  };
  const isSet = Object.values(attributes).some(Boolean) || attributes.scaleWithDoc === 0;
  return texts.join("") === "" && !isSet && attributes.alignWithMargins === undefined
    ? ""
    : tag("headerFooter", attributes, texts);
}

/** The three sections in one text: left after "&L", centre after "&C", right after "&R". */
const sections = (own: HeaderAndFooter, kind: "Header" | "Footer"): string =>
  (
    [
      ["L", own[`left${kind}`]],
      ["C", own[`center${kind}`]],
      ["R", own[`right${kind}`]],
    ] as const
  )
    .map(([letter, text]) => (text === "" ? "" : `&${letter}${text}`))
    .join("");

const textIfAny = (name: string, text: string): string => (text === "" ? "" : textTag(name, text));

function breaksMarkup(name: string, lines: readonly number[], length: number): string {
  if (lines.length === 0) return "";
  const breaks = lines.map((id) => tag("brk", { id, max: length - 1, man: true }));
  return tag(name, { count: lines.length, manualBreakCount: lines.length }, breaks);
}

function tagIfAny(name: string, attributes: Parameters<typeof tag>[1] & object): string {
  const isSet = Object.values(attributes).some((value) => value !== undefined && value !== false);
  return isSet ? tag(name, attributes) : "";
}
