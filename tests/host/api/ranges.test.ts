import fc from "fast-check";
import { errorOf, onSheet, openHost, valuesAt } from "./openHost";

const opened = openHost();

describe("addresses (excel/excel-add-ins-ranges-get)", () => {
  test.each([
    ["B2", "Sheet1!B2", 1, 1],
    ["$B$2:D4", "Sheet1!B2:D4", 3, 3],
    ["d4:b2", "Sheet1!B2:D4", 3, 3],
    ["A:C", "Sheet1!A:C", 3, 1_048_576],
    ["2:5", "Sheet1!2:5", 16_384, 4],
    ["Sheet1!A1", "Sheet1!A1", 1, 1],
  ])("%s", (address, full, columnCount, rowCount) =>
    onSheet(opened.host, async (sheet, context) => {
      const range = sheet.getRange(address).load("address,columnCount,rowCount");
      await context.sync();
      expect(range).toMatchObject({ address: full, columnCount, rowCount });
    }),
  );

  test("a sheet's name is quoted where the grammar asks for it", () =>
    onSheet(opened.host, async (_sheet, context) => {
      const names = ["Hop test", "Q1", "O'Neil", "2026", "Plain_1"];
      const ranges = names.map((name) => context.workbook.worksheets.add(name).getRange("A1").load("address"));
      await context.sync();
      expect(ranges.map((range) => range.address)).toEqual([
        "'Hop test'!A1",
        "'Q1'!A1",
        "'O''Neil'!A1",
        "'2026'!A1",
        "Plain_1!A1",
      ]);
    }));

  test.each(["A0", "XFE1", "A1048577", "A1:B2:C3", "Other!A1", "no such name", "A1B2"])(
    "%s is refused",
    async (address) => {
      const error = await errorOf(
        onSheet(opened.host, async (sheet, context) => {
          sheet.getRange(address);
          await context.sync();
        }),
      );
      expect(error.code).toBe("InvalidArgument");
    },
  );

  test("cells, rows, offsets and intersections lie where the reference says", () =>
    onSheet(opened.host, async (sheet, context) => {
      const range = sheet.getRange("B2:D4");
      const found = {
        cell: range.getCell(0, 1),
        outside: range.getCell(5, 5),
        row: range.getRow(1),
        column: range.getColumn(2),
        lastCell: range.getLastCell(),
        offset: range.getOffsetRange(1, -1),
        resized: range.getResizedRange(1, -1),
        entire: range.getEntireColumn(),
        shared: range.getIntersectionOrNullObject("C3:F9"),
        bounding: range.getBoundingRect("F9"),
        nothing: range.getIntersectionOrNullObject("G1"),
      };
      for (const one of Object.values(found)) one.load("address");
      await context.sync();
      const addresses = Object.fromEntries(Object.entries(found).map(([name, one]) => [name, one.address]));
      expect(addresses).toEqual({
        cell: "Sheet1!C2",
        outside: "Sheet1!G7",
        row: "Sheet1!B3:D3",
        column: "Sheet1!D2:D4",
        lastCell: "Sheet1!D4",
        offset: "Sheet1!A3:C5",
        resized: "Sheet1!B2:C5",
        entire: "Sheet1!B:D",
        shared: "Sheet1!C3:D4",
        bounding: "Sheet1!B2:F9",
        nothing: undefined,
      });
      expect(found.nothing.isNullObject).toBe(true);
    }));
});

describe("values (excel/excel-add-ins-ranges-set-get-values)", () => {
  test("numbers keep all their digits", async () => {
    await fc.assert(
      fc.asyncProperty(fc.double({ noNaN: true, noDefaultInfinity: true }), async (number) => {
        await onSheet(opened.host, async (sheet) => {
          sheet.getRange("A1").values = [[number]];
        });
        // Negative zero and zero are one number in a cell.
        expect((await valuesAt(opened.host, "A1"))[0]![0]).toBe(number + 0);
      }),
      { numRuns: 25 },
    );
  });

  test.each([
    ["text", "Ada", "Ada", "String"],
    ["a number as text", "1,234.5", 1234.5, "Double"],
    ["commas that part no thousands", "1,82", "1,82", "String"],
    ["per cent", "50%", 0.5, "Double"],
    ["a date", "1/2/2020", 43_832, "Double"],
    ["a truth value", "true", true, "Boolean"],
    ["an error", "#N/A", "#N/A", "Error"],
    ["a leading apostrophe", "'=1+1", "=1+1", "String"],
    ["text that is no number", "1.82 m", "1.82 m", "String"],
    ["a formula", "=1+1", 2, "Double"],
    ["a leading plus", "+1+1", 2, "Double"],
    ["a signed number", "-5", -5, "Double"],
    ["a leading at", "@SUM(1,2)", 3, "Double"],
    ["nothing", "", "", "Empty"],
  ])("%s", (_what, given, value, type) =>
    onSheet(opened.host, async (sheet, context) => {
      const cell = sheet.getRange("A1");
      cell.values = [[given]];
      cell.load("values,valueTypes");
      await context.sync();
      expect([cell.values[0]![0], cell.valueTypes[0]![0]]).toEqual([value, type]);
    }),
  );

  test("cells of format @ keep text as it is", () =>
    onSheet(opened.host, async (sheet, context) => {
      const cells = sheet.getRange("A1:B1");
      cells.numberFormat = [["@", "@"]];
      cells.values = [["=1+1", "0012"]];
      cells.load("values,valueTypes");
      await context.sync();
      expect(cells.values).toEqual([["=1+1", "0012"]]);
      expect(cells.valueTypes).toEqual([["String", "String"]]);
    }));

  test("null leaves a cell as it is, an empty text empties it, one value fills all", async () => {
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("A1:C1").values = [[1, 2, 3]];
      sheet.getRange("A1:C1").values = [[null, "", 9]];
      (sheet.getRange("A2:B3") as { values: unknown }).values = 7;
    });
    expect(await valuesAt(opened.host, "A1:C3")).toEqual([
      [1, "", 9],
      [7, 7, ""],
      [7, 7, ""],
    ]);
  });

  test.each(["=1+", "=SUM(", '="open'])("%s is no formula", async (formula) => {
    const error = await errorOf(
      onSheet(opened.host, async (sheet, context) => {
        sheet.getRange("A1").formulas = [[formula]];
        await context.sync();
      }),
    );
    expect(error.code).toBe("InvalidArgument");
  });

  test("text is what the cell shows", () =>
    onSheet(opened.host, async (sheet, context) => {
      const cells = sheet.getRange("A1:D1");
      cells.values = [[1234.567, 0.256, 43_831, true]];
      cells.numberFormat = [["#,##0.0", "0%", "yyyy-mm-dd", "General"]];
      cells.load("text");
      await context.sync();
      expect(cells.text).toEqual([["1,234.6", "26%", "2020-01-01", "TRUE"]]);
    }));
});

describe("unbounded ranges (excel/excel-add-ins-ranges-unbounded)", () => {
  test("have null for what belongs to cells, and refuse to be written", () =>
    onSheet(opened.host, async (sheet, context) => {
      const column = sheet.getRange("A:A").load("values,text,formulas,isEntireColumn,cellCount");
      await context.sync();
      expect(column).toMatchObject({ values: null, text: null, formulas: null, isEntireColumn: true });
      column.values = [[1]];
      await expect(context.sync()).rejects.toMatchObject({ code: "InvalidArgument" });
    }));
});

describe("limits (excel/performance, concepts/resource-limits-and-performance-optimization)", () => {
  test("more than five million cells answer null, without an error", () =>
    onSheet(opened.host, async (sheet, context) => {
      const large = sheet.getRange("A1:Z200000").load("values");
      await context.sync();
      expect(large.values).toBeNull();
    }));

  test("a request of more than 5 MB is refused", async () => {
    const error = await errorOf(
      onSheet(opened.host, async (sheet, context) => {
        sheet.getRange("A1:A600").values = Array.from({ length: 600 }, () => ["x".repeat(10_000)]);
        await context.sync();
      }),
    );
    expect(error.code).toBe("RequestPayloadSizeLimitExceeded");
  });
});

describe("used range, hidden rows, merges", () => {
  test("the used range may ask for values only", () =>
    onSheet(opened.host, async (sheet, context) => {
      expect((await usedAddresses(sheet, context)).valuesOnly).toBeUndefined();
      sheet.getRange("B2").values = [[1]];
      sheet.getRange("D5").format.fill.color = "#00FF00";
      expect(await usedAddresses(sheet, context)).toEqual({ all: "Sheet1!B2:D5", valuesOnly: "Sheet1!B2" });
    }));

  test("rows hidden in part give null", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("2:2").rowHidden = true;
      const ranges = ["A1:A3", "A2", "A1"].map((address) => sheet.getRange(address).load("rowHidden"));
      const visible = sheet.getRange("A1:A3").getSpecialCellsOrNullObject("Visible").load("address");
      await context.sync();
      expect(ranges.map((range) => range.rowHidden)).toEqual([null, true, false]);
      expect(visible.address).toBe("Sheet1!A1,Sheet1!A3");
    }));

  test("merged areas are told whole", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:B2").merge();
      const touched = sheet.getRange("B2:C3").getMergedAreasOrNullObject().load("address,areaCount");
      const free = sheet.getRange("D4").getMergedAreasOrNullObject();
      await context.sync();
      expect(touched).toMatchObject({ address: "Sheet1!A1:B2", areaCount: 1 });
      expect(free.isNullObject).toBe(true);
    }));

  async function usedAddresses(sheet: Excel.Worksheet, context: Excel.RequestContext) {
    const all = sheet.getUsedRangeOrNullObject().load("address");
    const valuesOnly = sheet.getUsedRangeOrNullObject(true).load("address");
    await context.sync();
    return { all: all.address, valuesOnly: valuesOnly.address };
  }
});

describe("inserting and deleting cells (excel/excel-add-ins-ranges-insert, -delete)", () => {
  test("what is below moves, and formulas follow", async () => {
    await onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:A3").values = [[1], [2], [3]];
      sheet.getRange("C1").formulas = [["=SUM(A1:A3)"]];
      sheet.getRange("A2").insert("Down").values = [[10]];
      await context.sync();
      const formula = sheet.getRange("C1").load("formulas,values");
      await context.sync();
      expect([formula.formulas[0]![0], formula.values[0]![0]]).toEqual(["=SUM(A1:A4)", 16]);
      sheet.getRange("A1").delete("Up");
      await context.sync();
    });
    expect(await valuesAt(opened.host, "A1:A4")).toEqual([[10], [2], [3], [""]]);
  });
});

describe("formats (excel/excel-add-ins-ranges-set-format)", () => {
  test("are read as they were set, and as null where cells differ", () =>
    onSheet(opened.host, async (sheet, context) => {
      const range = sheet.getRange("A1:B2");
      range.format.font.bold = true;
      range.format.fill.color = "#1F4E79";
      range.format.horizontalAlignment = "Center";
      range.format.wrapText = true;
      range.format.columnWidth = 72;
      range.format.borders.getItem("EdgeBottom").style = "Continuous";
      range.format.borders.getItem("EdgeBottom").color = "#FF0000";
      sheet.getRange("B2").format.font.bold = false;
      range.load("format/horizontalAlignment,format/wrapText,format/columnWidth,format/font/bold,format/fill/color");
      const bottom = range.format.borders.getItem("EdgeBottom").load("style,color,weight");
      const top = range.format.borders.getItem("EdgeTop").load("style");
      await context.sync();
      expect(range.format).toMatchObject({ horizontalAlignment: "Center", wrapText: true, columnWidth: 72 });
      expect(range.format.fill.color).toBe("#1F4E79");
      expect(range.format.font.bold).toBeNull();
      expect(bottom).toMatchObject({ style: "Continuous", color: "#FF0000", weight: "Thin" });
      expect(top.style).toBe("None");
    }));

  test("a look leaves the formula of its cell alone, before and after it was calculated", () =>
    onSheet(opened.host, async (sheet, context) => {
      const range = sheet.getRange("A2:A3");
      range.values = [["=1+1"], ["=SEQUENCE(1,2)"]];
      range.format.font.bold = true;
      await context.sync();
      range.format.borders.getItem("EdgeBottom").style = "Continuous";
      range.load("formulas,values");
      const spilled = sheet.getRange("B3").load("values");
      await context.sync();
      expect(range.formulas).toEqual([["=1+1"], ["=SEQUENCE(1,2)"]]);
      expect(range.values).toEqual([[2], [1]]);
      expect(spilled.values).toEqual([[2]]);
    }));

  test("properties of cells and rows come in the shape they are asked for", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1").format.fill.color = "#00FF00";
      sheet.getRange("2:2").rowHidden = true;
      const cells = sheet.getRange("A1:B1").getCellProperties({ address: true, format: { fill: { color: true } } });
      const rows = sheet.getRange("A1:B2").getRowProperties({ rowHidden: true });
      await context.sync();
      expect(cells.value).toEqual([
        [
          { address: "Sheet1!A1", format: { fill: { color: "#00FF00" } } },
          { address: "Sheet1!B1", format: { fill: { color: "#FFFFFF" } } },
        ],
      ]);
      expect(rows.value).toEqual([{ rowHidden: false }, { rowHidden: true }]);
    }));
});
