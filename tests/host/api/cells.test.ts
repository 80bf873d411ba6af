import { errorOf, onSheet, openHost, valuesAt } from "./openHost";

/**
 * Pages: excel/excel-add-ins-ranges-checkboxes, excel-add-ins-ranges-group, excel-add-ins-ranges-precedents-dependents,
 * excel-add-ins-ranges-clear-delete, excel-add-ins-ranges-set-format, and of the reference Range.hyperlink.
 */
const opened = openHost();

describe("hyperlinks (Range.hyperlink)", () => {
  const link = { address: "https://example.org/plan", screenTip: "The plan", textToDisplay: "Plan" };

  test("a link shows its text, looks like a link, and is told with its parts", () =>
    onSheet(opened.host, async (sheet, context) => {
      const cell = sheet.getRange("B2");
      cell.hyperlink = link;
      cell.load("hyperlink,values,format/font/underline,style");
      await context.sync();
      expect(cell.hyperlink).toEqual(link);
      expect([cell.values, cell.format.font.underline, cell.style]).toEqual([[["Plan"]], "Single", "Hyperlink"]);
    }));

  test("a link moves with its cell; clearing links leaves look and text, removing them the text alone", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1").hyperlink = { documentReference: "Sheet1!A9", textToDisplay: "Below" };
      sheet.getRange("A2").hyperlink = link;
      sheet.getRange("1:1").insert("Down");
      sheet.getRange("A2").clear("Hyperlinks");
      sheet.getRange("A3").clear("RemoveHyperlinks");
      const cells = ["A2", "A3"].map((address) =>
        sheet.getRange(address).load("hyperlink,values,format/font/underline"),
      );
      await context.sync();
      expect(cells.map((cell) => [cell.hyperlink, cell.values[0]![0], cell.format.font.underline])).toEqual([
        [null, "Below", "Single"],
        [null, "Plan", "None"],
      ]);
    }));

  test("a link to nowhere is refused", async () => {
    const error = await errorOf(
      onSheet(opened.host, async (sheet) => {
        sheet.getRange("A1").hyperlink = { textToDisplay: "Nowhere" };
      }),
    );
    expect(error.code).toBe("InvalidArgument");
  });
});

describe("tick boxes (Range.control)", () => {
  test("boxes are added and taken away; the truth values stay", () =>
    onSheet(opened.host, async (sheet, context) => {
      const range = sheet.getRange("A1:A2");
      range.values = [[true], [false]];
      range.control = { type: "Checkbox" } as Excel.CheckboxCellControl;
      range.load("control");
      await context.sync();
      expect(range.control).toEqual({ type: "Checkbox" });
      range.control = { type: "Empty" } as Excel.EmptyCellControl;
      range.load("control,values");
      await context.sync();
      expect([range.control, range.values]).toEqual([{ type: "Empty" }, [[true], [false]]]);
    }));

  test("clearOrResetContents unticks first, and takes the boxes once nothing is ticked", async () => {
    await onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:B1").values = [[true, "x"]];
      sheet.getRange("A1").control = { type: "Checkbox" } as Excel.CheckboxCellControl;
      sheet.getRange("A1:B1").clearOrResetContents();
      await context.sync();
    });
    expect(await valuesAt(opened.host, "A1:B1")).toEqual([[false, ""]]);
    await onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:B1").clearOrResetContents();
      const box = sheet.getRange("A1").load("control,values");
      await context.sync();
      expect([box.control, box.values]).toEqual([{ type: "Empty" }, [[""]]]);
    });
  });
});

describe("groups", () => {
  const hidden = async (addresses: readonly string[]): Promise<boolean[]> =>
    onSheet(opened.host, async (sheet, context) => {
      const ranges = addresses.map((address) => sheet.getRange(address).load("rowHidden,columnHidden"));
      await context.sync();
      return ranges.map((range, index) => (/\d/.test(addresses[index]!) ? range.rowHidden : range.columnHidden));
    });

  test("levels are shown and hidden, for rows and columns", async () => {
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("4:9").group("ByRows");
      sheet.getRange("4:5").group("ByRows");
      sheet.getRange("C:F").group("ByColumns");
      sheet.showOutlineLevels(2, 1);
    });
    expect(await hidden(["3:3", "4:5", "6:9", "B:B", "C:F"])).toEqual([false, true, false, false, true]);
    await onSheet(opened.host, async (sheet) => sheet.showOutlineLevels(1, 0));
    expect(await hidden(["3:3", "4:9", "C:F"])).toEqual([false, true, true]);
    await onSheet(opened.host, async (sheet) => sheet.showOutlineLevels(8, 8));
    expect(await hidden(["4:9", "C:F"])).toEqual([false, false]);
  });

  test("the group a row is in is hidden whole; ungrouped rows have no levels", async () => {
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("2:4").group("ByRows");
      sheet.getRange("3:3").hideGroupDetails("ByRows");
    });
    expect(await hidden(["1:1", "2:4", "5:5"])).toEqual([false, true, false]);
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("3:3").showGroupDetails("ByRows");
      sheet.getRange("A1:A9").ungroup("ByRows");
      sheet.showOutlineLevels(1, 1);
    });
    expect(await hidden(["2:4"])).toEqual([false]);
  });

  test("a ninth level is refused", async () => {
    const error = await errorOf(
      onSheet(opened.host, async (sheet) => {
        for (let level = 0; level < 8; level += 1) sheet.getRange("2:3").group("ByRows");
      }),
    );
    expect(error.code).toBe("InvalidOperation");
  });
});

describe("precedents and dependents", () => {
  const prepare = () =>
    onSheet(opened.host, async (sheet, context) => {
      const squad = context.workbook.worksheets.add("Squad");
      squad.getRange("A1:B2").values = [
        ["Load", "Double"],
        [40, "=A2*2"],
      ];
      const table = sheet.tables.add("D1:E3", true);
      table.name = "Loads";
      sheet.getRange("D1:E1").values = [["Load (kg)", "Share"]];
      sheet.getRange("D2:E3").values = [
        [10, "=[@[Load (kg)]]/SUM(Loads[Load (kg)])"],
        [20, "=[@[Load (kg)]]/SUM(Loads[Load (kg)])"],
      ];
      sheet.getRange("A1:B1").formulas = [["=Squad!B2+1", '=A1*2&"C9"']];
      await context.sync();
    });

  const addresses = (read: (sheet: Excel.Worksheet) => Excel.WorkbookRangeAreas) =>
    onSheet(opened.host, async (sheet, context) => {
      const found = read(sheet).load("addresses");
      await context.sync();
      return found.addresses;
    });

  test("what formulas read, directly and at all, across sheets; texts are no references", async () => {
    await prepare();
    expect(await addresses((sheet) => sheet.getRange("B1").getDirectPrecedents())).toEqual(["Sheet1!A1"]);
    expect(await addresses((sheet) => sheet.getRange("B1").getPrecedents())).toEqual(["Sheet1!A1", "Squad!A2:B2"]);
  });

  test("table references are the cells they stand for", async () => {
    await prepare();
    expect(await addresses((sheet) => sheet.getRange("E3").getDirectPrecedents())).toEqual(["Sheet1!D2:D3"]);
  });

  test("which formulas read a cell, directly and at all; areas come by sheet", async () => {
    await prepare();
    await onSheet(opened.host, async (_sheet, context) => {
      const load = context.workbook.worksheets.getItem("Squad").getRange("A2");
      const direct = load.getDirectDependents();
      const all = load.getDependents();
      direct.areas.load("address");
      all.areas.load("address");
      all.ranges.load("address");
      const ours = all.getRangeAreasBySheet("Sheet1").load("address");
      await context.sync();
      expect(direct.areas.items.map(({ address }) => address)).toEqual(["Squad!B2"]);
      expect(all.areas.items.map(({ address }) => address)).toEqual(["Squad!B2", "Sheet1!A1:B1"]);
      expect(all.ranges.items).toHaveLength(2);
      expect(ours.address).toBe("Sheet1!A1:B1");
    });
  });

  test("none is ItemNotFound", async () => {
    const error = await errorOf(addresses((sheet) => sheet.getRange("Z99").getDirectPrecedents()));
    expect(error.code).toBe("ItemNotFound");
  });
});

describe("formats beyond what the grid draws (RangeFormat, RangeFill, RangeFont)", () => {
  test("are kept, told again, copied and cleared", () =>
    onSheet(opened.host, async (sheet, context) => {
      const range = sheet.getRange("A1:B1");
      range.format.shrinkToFit = true;
      range.format.readingOrder = "RightToLeft";
      range.format.verticalAlignment = "Justify";
      range.format.horizontalAlignment = "CenterAcrossSelection";
      range.format.fill.pattern = "Gray25";
      range.format.fill.tintAndShade = 0.4;
      range.format.font.superscript = true;
      range.format.adjustIndent(2);
      sheet.getRange("C1").copyFrom("A1", "Formats");
      sheet.getRange("B1").clear("Formats");
      const cells = ["A1", "B1", "C1"].map((address) =>
        sheet
          .getRange(address)
          .load(
            "format/shrinkToFit,format/readingOrder,format/verticalAlignment,format/horizontalAlignment,format/indentLevel,format/fill/pattern,format/fill/tintAndShade,format/font/superscript",
          ),
      );
      range.load("format/shrinkToFit");
      await context.sync();
      const looks = cells.map(({ format }) => [
        format.shrinkToFit,
        format.readingOrder,
        format.verticalAlignment,
        format.horizontalAlignment,
        format.indentLevel,
        format.fill.pattern,
        format.fill.tintAndShade,
        format.font.superscript,
      ]);
      const set = [true, "RightToLeft", "Justify", "CenterAcrossSelection", 2, "Gray25", 0.4, true];
      const plain = [false, "Context", "Bottom", "General", 0, "None", 0, false];
      expect(looks).toEqual([set, plain, set]);
      expect(range.format.shrinkToFit).toBeNull();
    }));

  test("are told to differ wherever in the range they do", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A2400").format.shrinkToFit = true;
      const range = sheet.getRange("A1:A2500").load("format/shrinkToFit");
      await context.sync();
      expect(range.format.shrinkToFit).toBeNull();
    }));

  test("unlocked cells of a protected sheet may be written to, others not (FormatProtection.locked)", async () => {
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange().format.protection.locked = false;
      sheet.getRange("B:B").format.protection.locked = true;
      sheet.getRange("B2").format.protection.locked = false;
      sheet.protection.protect();
    });
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("A1").values = [[1]];
      sheet.getRange("B2").values = [[2]];
    });
    const error = await errorOf(
      onSheet(opened.host, async (sheet) => {
        sheet.getRange("B1").values = [[3]];
      }),
    );
    expect(error.code).toBe("AccessDenied");
    expect(await valuesAt(opened.host, "A1:B2")).toEqual([
      [1, ""],
      ["", 2],
    ]);
  });
});
