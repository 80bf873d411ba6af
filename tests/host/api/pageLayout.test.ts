import { errorOf, onSheet, openHost } from "./openHost";

const opened = openHost();

/** Documentation: excel-add-ins-worksheets, "Page layout and print settings", and the reference of Excel.PageLayout. */
describe("the page layout of a worksheet", () => {
  it("is upright on plain paper until it is set, and afterwards what was set", async () => {
    await onSheet(opened.host, async ({ pageLayout }, context) => {
      pageLayout.load();
      await context.sync();
      expect(pageLayout.orientation).toBe("Portrait");
      expect(pageLayout.zoom).toEqual({ horizontalFitToPages: null, scale: 100, verticalFitToPages: null });
      // Excel's margins of a new sheet: 0.75, 0.7 and 0.3 inches.
      expect([pageLayout.topMargin, pageLayout.leftMargin, pageLayout.headerMargin]).toEqual([54, 50.4, 21.6]);
      pageLayout.set({
        orientation: "Landscape",
        paperSize: "A4",
        centerHorizontally: true,
        printGridlines: true,
        blackAndWhite: true,
        printOrder: "OverThenDown",
        firstPageNumber: 3,
      });
      pageLayout.zoom = { horizontalFitToPages: 1 };
      pageLayout.load();
      await context.sync();
      expect(pageLayout.toJSON()).toMatchObject({
        orientation: "Landscape",
        paperSize: "A4",
        centerHorizontally: true,
        centerVertically: false,
        printGridlines: true,
        printHeadings: false,
        blackAndWhite: true,
        printOrder: "OverThenDown",
        firstPageNumber: 3,
        zoom: { horizontalFitToPages: 1, scale: null, verticalFitToPages: null },
      });
    });
  });

  it("takes margins in other units, and leaves those that are not given", async () => {
    await onSheet(opened.host, async ({ pageLayout }, context) => {
      pageLayout.setPrintMargins("Centimeters", { left: 2.54, right: 1.27 });
      pageLayout.load("leftMargin, rightMargin, topMargin");
      await context.sync();
      expect([pageLayout.leftMargin, pageLayout.rightMargin, pageLayout.topMargin]).toEqual([72, 36, 54]);
    });
  });

  it("prints an area of several ranges, with title rows and columns on each page", async () => {
    await onSheet(opened.host, async (sheet, context) => {
      const { pageLayout } = sheet;
      const none = [
        pageLayout.getPrintAreaOrNullObject(),
        pageLayout.getPrintTitleRowsOrNullObject(),
        pageLayout.getPrintTitleColumnsOrNullObject(),
      ];
      await context.sync();
      expect(none.map(({ isNullObject }) => isNullObject)).toEqual([true, true, true]);
      pageLayout.setPrintArea("A1:C30,E1:G30");
      pageLayout.setPrintTitleRows("$3:$3");
      pageLayout.setPrintTitleColumns(sheet.getRange("A:B"));
      const area = pageLayout.getPrintArea().load("address");
      const rows = pageLayout.getPrintTitleRows().load("address");
      const columns = pageLayout.getPrintTitleColumns().load("address");
      await context.sync();
      expect([area.address, rows.address, columns.address]).toEqual([
        "Sheet1!A1:C30,Sheet1!E1:G30",
        "Sheet1!3:3",
        "Sheet1!A:B",
      ]);
    });
  });

  it("follows rows and columns that come and go", async () => {
    await onSheet(opened.host, async (sheet, context) => {
      const { pageLayout } = sheet;
      pageLayout.setPrintArea("B2:D10");
      pageLayout.setPrintTitleRows("3:4");
      sheet.horizontalPageBreaks.add("A6");
      sheet.getRange("1:2").insert("Down");
      sheet.getRange("A:A").delete("Left");
      sheet.getRange("5:5").delete("Up");
      const area = pageLayout.getPrintArea().load("address");
      const titles = pageLayout.getPrintTitleRows().load("address");
      const broken = sheet.horizontalPageBreaks.getItem(0).getCellAfterBreak().load("address");
      await context.sync();
      expect([area.address, titles.address, broken.address]).toEqual(["Sheet1!A4:C11", "Sheet1!5:5", "Sheet1!A7"]);
    });
  });

  it("keeps headers and footers by the kind of pages they are for", async () => {
    await onSheet(opened.host, async ({ pageLayout: { headersFooters } }, context) => {
      headersFooters.defaultForAllPages.set({ leftHeader: "&A", centerFooter: "&P of &N" });
      headersFooters.state = "FirstAndDefault";
      headersFooters.firstPage.centerHeader = "Fjordvik HK";
      headersFooters.load("state, defaultForAllPages/leftHeader, firstPage/centerHeader, evenPages/leftHeader");
      await context.sync();
      expect(headersFooters.state).toBe("FirstAndDefault");
      expect(headersFooters.defaultForAllPages.leftHeader).toBe("&A");
      expect(headersFooters.firstPage.centerHeader).toBe("Fjordvik HK");
      expect(headersFooters.evenPages.leftHeader).toBe("");
    });
  });

  it("goes along with a copy of the sheet", async () => {
    await onSheet(opened.host, async (sheet, context) => {
      sheet.pageLayout.orientation = "Landscape";
      const copied = sheet.copy().pageLayout.load("orientation");
      await context.sync();
      expect(copied.orientation).toBe("Landscape");
    });
  });

  it.each([
    ["a scale beyond 10 to 400", (page: Excel.PageLayout) => (page.zoom = { scale: 500 })],
    ["no zoom at all", (page: Excel.PageLayout) => (page.zoom = {})],
    ["half a page", (page: Excel.PageLayout) => (page.zoom = { horizontalFitToPages: 0.5 })],
    ["a margin below nothing", (page: Excel.PageLayout) => (page.topMargin = -1)],
    ["unknown paper", (page: Excel.PageLayout) => (page.paperSize = "A7" as "A4")],
    ["titles that are no whole rows", (page: Excel.PageLayout) => page.setPrintTitleRows("A1:C1")],
    ["an area on no sheet", (page: Excel.PageLayout) => page.setPrintArea("Nope!A1")],
  ])("refuses %s", async (_, change) => {
    const error = await errorOf(
      onSheet(opened.host, async ({ pageLayout }, context) => {
        change(pageLayout);
        await context.sync();
      }),
    );
    expect(error.code).toBe("InvalidArgument");
  });
});

/** Documentation: the reference of Excel.PageBreakCollection. */
describe("page breaks", () => {
  it("stand before the cells they were added at, in order, until they are removed", async () => {
    await onSheet(opened.host, async ({ horizontalPageBreaks, verticalPageBreaks }, context) => {
      horizontalPageBreaks.add("A41");
      horizontalPageBreaks.add("A21:B21");
      horizontalPageBreaks.add("A21");
      verticalPageBreaks.add("F1");
      horizontalPageBreaks.load("items/rowIndex");
      verticalPageBreaks.load("items/columnIndex");
      await context.sync();
      expect(horizontalPageBreaks.items.map(({ rowIndex }) => rowIndex)).toEqual([20, 40]);
      expect(verticalPageBreaks.items.map(({ columnIndex }) => columnIndex)).toEqual([5]);
      horizontalPageBreaks.getItem(0).delete();
      verticalPageBreaks.removePageBreaks();
      const left = [horizontalPageBreaks.getCount(), verticalPageBreaks.getCount()];
      await context.sync();
      expect(left.map(({ value }) => value)).toEqual([1, 0]);
    });
  });
});
