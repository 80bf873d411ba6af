import type { LaidPage } from "./layPage";

export type Paper = "a4" | "letter";

/** In points. */
const margin = 40;
const footerMargin = 20;
const heights = { a4: 842, letter: 792 } as const;
/** A page a little too long is made smaller rather than spread over two; this much, and its type is still read well. */
const smallestScale = 0.75;

/** Prints a page upright, one page wide; on one page where it nearly fits, else on as many as it takes. */
export function printPage(
  sheet: Excel.Worksheet,
  { heights: rows, widths }: LaidPage,
  paper: Paper,
  title: string,
): void {
  const page = sheet.pageLayout;
  page.orientation = "Portrait";
  page.paperSize = paper === "a4" ? "A4" : "Letter";
  page.leftMargin = margin;
  page.rightMargin = margin;
  page.topMargin = margin;
  page.bottomMargin = margin + footerMargin / 2;
  page.footerMargin = footerMargin;
  page.centerHorizontally = true;
  page.printGridlines = false;
  const long = rows.reduce((sum, height) => sum + height, 0);
  const room = heights[paper] - 2 * margin - footerMargin / 2;
  page.setPrintArea(sheet.getRangeByIndexes(0, 0, rows.length, widths.length));
  const isOnePage = long <= room / smallestScale;
  page.zoom = isOnePage ? { horizontalFitToPages: 1, verticalFitToPages: 1 } : { horizontalFitToPages: 1 };
  // "&" begins a code in a footer, which holds 255 characters.
  page.headersFooters.defaultForAllPages.leftFooter = title.slice(0, 120).replace(/&/g, "&&");
  if (!isOnePage) page.headersFooters.defaultForAllPages.rightFooter = "&P / &N";
}
