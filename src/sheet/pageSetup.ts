/** Margins in points: narrow, so that a wide sheet stays readable. */
const margin = 28;

/**
 * Prints a sheet across, one page wide and as many pages long as it takes, with its headings on each page.
 *
 * @param paper the program's own choice where it is not given.
 * @param titleRow row of the headings, zero-based.
 */
export function setUpPage(
  sheet: Excel.Worksheet,
  { paper, titleRow }: { readonly paper?: "a4" | "letter"; readonly titleRow: number },
): void {
  const page = sheet.pageLayout;
  page.orientation = "Landscape";
  if (paper) page.paperSize = paper === "a4" ? "A4" : "Letter";
  page.zoom = { horizontalFitToPages: 1 };
  page.leftMargin = margin;
  page.rightMargin = margin;
  page.topMargin = margin;
  page.bottomMargin = margin;
  page.centerHorizontally = true;
  page.setPrintTitleRows(`$${titleRow + 1}:$${titleRow + 1}`);
}
