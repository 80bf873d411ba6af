import { errorOf, onSheet, openHost, valuesAt } from "./openHost";

const opened = openHost();

describe("names (excel/excel-add-ins-named-items: NamedItemCollection)", () => {
  test("of a range, a constant and a formula", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:A2").values = [[3], [4]];
      const range = context.workbook.names.add("Loads", sheet.getRange("A1:A2"), "kg");
      const constant = context.workbook.names.add("Limit", "=10");
      sheet.getRange("C1").formulas = [["=SUM(Loads)+Limit"]];
      range.load("name,type,value,formula,scope,comment");
      constant.load("type,value");
      const area = range.getRange().load("address");
      const sum = sheet.getRange("C1").load("values");
      await context.sync();
      expect(range).toMatchObject({
        name: "Loads",
        type: "Range",
        value: "Sheet1!A1:A2",
        formula: "=Sheet1!$A$1:$A$2",
        scope: "Workbook",
        comment: "kg",
      });
      expect([constant.type, constant.value, area.address, sum.values[0]![0]]).toEqual([
        "Integer",
        10,
        "Sheet1!A1:A2",
        17,
      ]);
      range.formula = "=Sheet1!$A$1";
      const changed = sheet.getRange("C1").load("values");
      await context.sync();
      expect(changed.values).toEqual([[13]]);
    }));

  test.each([
    ["1st", "InvalidArgument"],
    ["two words", "InvalidArgument"],
    ["A1", "InvalidArgument"],
    ["loads", "ItemAlreadyExists"],
  ])("%s is refused", async (name, code) => {
    const error = await errorOf(
      onSheet(opened.host, async (sheet, context) => {
        context.workbook.names.add("Loads", sheet.getRange("A1"));
        context.workbook.names.add(name, sheet.getRange("A1"));
        await context.sync();
      }),
    );
    expect(error.code).toBe(code);
  });
});

describe("what add-ins keep (develop/persisting-add-in-state-and-settings)", () => {
  test("settings come back as JSON does, and are saved with the workbook", () =>
    onSheet(opened.host, async (_sheet, context) => {
      const { settings } = context.workbook;
      settings.add("report", { version: 1, tables: ["T1"] });
      const found = settings.getItemOrNullObject("report").load("value");
      const missing = settings.getItemOrNullObject("other");
      await context.sync();
      expect(found.value).toEqual({ version: 1, tables: ["T1"] });
      expect(missing.isNullObject).toBe(true);
      expect(opened.host.book.state.save().settings).toEqual({ report: { version: 1, tables: ["T1"] } });
      found.delete();
      const gone = settings.getItemOrNullObject("report");
      await context.sync();
      expect(gone.isNullObject).toBe(true);
    }));

  test("XML parts are found by their namespace", () =>
    onSheet(opened.host, async (_sheet, context) => {
      context.workbook.customXmlParts.add('<squad xmlns="urn:fjordvik">26</squad>');
      context.workbook.customXmlParts.add("<other/>");
      const part = context.workbook.customXmlParts.getByNamespace("urn:fjordvik").getOnlyItemOrNullObject();
      const xml = part.getXml();
      part.load("namespaceUri");
      await context.sync();
      expect([xml.value, part.namespaceUri]).toEqual(['<squad xmlns="urn:fjordvik">26</squad>', "urn:fjordvik"]);
    }));

  test("properties of the document and of a sheet", () =>
    onSheet(opened.host, async (sheet, context) => {
      context.workbook.properties.title = "Pre-season";
      context.workbook.properties.custom.add("Squad", "U18");
      sheet.customProperties.add("layout", "wide");
      const custom = context.workbook.properties.custom.getItem("squad").load("value,type");
      const own = sheet.customProperties.getItem("LAYOUT").load("value");
      context.workbook.properties.load("title");
      await context.sync();
      expect([context.workbook.properties.title, custom.value, custom.type, own.value]).toEqual([
        "Pre-season",
        "U18",
        "String",
        "wide",
      ]);
    }));
});

describe("notes (excel/excel-add-ins-notes)", () => {
  test("belong to their sheet, whichever sheet is active", () =>
    onSheet(opened.host, async (sheet, context) => {
      const other = context.workbook.worksheets.add("Other");
      other.notes.add("B2", "Ask her.");
      other.notes.getItem("B2").content = "Ask her again.";
      const note = other.notes.getItem("B2").load("content");
      const here = sheet.notes.getItemOrNullObject("B2").load("isNullObject");
      await context.sync();
      expect([note.content, here.isNullObject]).toEqual(["Ask her again.", true]);
    }));

  test("belong to one cell, which has at most one", () =>
    onSheet(opened.host, async (sheet, context) => {
      context.workbook.notes.add("Sheet1!B2", "Typical error of this test.");
      const note = sheet.notes.getItem("B2");
      note.content = "Noise of this test.";
      note.load("content");
      const place = note.getLocation().load("address");
      const count = sheet.notes.getCount();
      await context.sync();
      expect([note.content, place.address, count.value]).toEqual(["Noise of this test.", "Sheet1!B2", 1]);
      for (const address of ["B2", "C1:C2"]) {
        sheet.notes.add(address, "x");
        await expect(context.sync()).rejects.toMatchObject({ code: "InvalidArgument" });
      }
      note.delete();
      const gone = sheet.notes.getItemOrNullObject("B2");
      await context.sync();
      expect(gone.isNullObject).toBe(true);
    }));
});

describe("conditional formats (excel/excel-add-ins-conditional-formatting)", () => {
  test("are kept as set, and drawn by the engine", () =>
    onSheet(opened.host, async (sheet, context) => {
      const range = sheet.getRange("A1:A3");
      range.values = [[1], [5], [9]];
      const format = range.conditionalFormats.add("CellValue");
      format.cellValue.format.font.color = "#C00000";
      format.cellValue.format.fill.color = "#FFE5E5";
      format.cellValue.rule = { formula1: "=4", operator: "GreaterThan" };
      const scale = range.conditionalFormats.add("ColorScale");
      scale.colorScale.criteria = {
        minimum: { type: "LowestValue", color: "#FFFFFF" },
        maximum: { type: "HighestValue", color: "#1F6F78" },
      };
      range.conditionalFormats.load("items/type,items/priority");
      format.load("cellValue/rule,cellValue/format/font/color");
      const other = format.colorScaleOrNullObject;
      other.load("threeColorScale");
      scale.load("colorScale/threeColorScale");
      await context.sync();
      // The newest has the first say.
      expect(range.conditionalFormats.items.map((item) => item.type)).toEqual(["ColorScale", "CellValue"]);
      expect(format.cellValue.rule).toEqual({ formula1: "=4", operator: "GreaterThan" });
      expect(format.cellValue.format.font.color).toBe("#C00000");
      expect([other.isNullObject, scale.colorScale.threeColorScale]).toEqual([true, false]);
      const sheetId = opened.host.book.workbook.getActiveSheet()!.getSheetId();
      const drawn = opened.host.book.api
        .getActiveWorkbook()!
        .getSheetBySheetId(sheetId)!
        .getConditionalFormattingRules();
      expect(drawn.map(({ rule }) => rule.type)).toEqual(["colorScale", "highlightCell"]);
      range.conditionalFormats.clearAll();
      const count = range.conditionalFormats.getCount();
      await context.sync();
      expect(count.value).toBe(0);
    }));

  test("a formula is written for the first cell; what is no formula is refused", () =>
    onSheet(opened.host, async (sheet, context) => {
      const format = sheet.getRange("B2:B9").conditionalFormats.add("Custom");
      format.custom.rule.formula = "=B2>$A$1";
      format.custom.format.font.bold = true;
      format.load("custom/rule/formula,custom/rule/formulaR1C1");
      await context.sync();
      expect([format.custom.rule.formula, format.custom.rule.formulaR1C1]).toEqual(["=B2>$A$1", "=RC>R1C1"]);
      format.custom.rule.formula = "=B2>";
      await expect(context.sync()).rejects.toMatchObject({ code: "InvalidArgument" });
    }));
});

describe("data validation (excel/excel-add-ins-data-validation)", () => {
  test("a list from a range, and what does not fit it", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("E1:E2").values = [["left"], ["right"]];
      const cells = sheet.getRange("A1:A2");
      cells.values = [["left"], ["middle"]];
      // The typings take a range here, though they name its address' type.
      cells.dataValidation.rule = { list: { inCellDropDown: true, source: sheet.getRange("E1:E2") } };
      cells.dataValidation.errorAlert = { showAlert: true, style: "Stop", title: "Side", message: "left or right" };
      cells.dataValidation.load("type,rule,valid,errorAlert");
      const wrong = cells.dataValidation.getInvalidCellsOrNullObject().load("address");
      await context.sync();
      expect(cells.dataValidation.type).toBe("List");
      expect(cells.dataValidation.rule).toEqual({ list: { inCellDropDown: true, source: "=Sheet1!$E$1:$E$2" } });
      expect([cells.dataValidation.valid, wrong.address]).toEqual([null, "Sheet1!A2"]);
      expect(cells.dataValidation.errorAlert.message).toBe("left or right");
      cells.dataValidation.clear();
      cells.dataValidation.load("type");
      await context.sync();
      expect(cells.dataValidation.type).toBe("None");
    }));

  test("a rule of two kinds, or a span of one end, is refused", async () => {
    for (const rule of [
      { list: { inCellDropDown: true, source: "a,b" }, custom: { formula: "=TRUE" } },
      { wholeNumber: { formula1: 1, operator: "Between" as const } },
    ]) {
      const error = await errorOf(
        onSheet(opened.host, async (sheet, context) => {
          sheet.getRange("A1").dataValidation.rule = rule;
          await context.sync();
        }),
      );
      expect(error.code).toBe("InvalidArgument");
    }
  });
});

describe("circular references (support.microsoft.com: remove or allow a circular reference)", () => {
  test("are told, and count as no number, nor does what depends on them", async () => {
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("A1:A3").formulas = [["=B1+1"], ["=A1*2"], [5]];
      sheet.getRange("B1").formulas = [["=A1+1"]];
    });
    expect(await valuesAt(opened.host, "A1:B3")).toEqual([
      ["#CYCLE!", "#CYCLE!"],
      ["#CYCLE!", ""],
      [5, ""],
    ]);
    expect([...opened.host.circularReferences].sort()).toEqual(["Sheet1!A1", "Sheet1!B1"]);
    await opened.host.type("B1", 1);
    expect(await valuesAt(opened.host, "A1:A2")).toEqual([[2], [4]]);
    expect(opened.host.circularReferences).toEqual([]);
  });

  test("a formula that names its own cell", async () => {
    await opened.host.type("A1", "=SUM(A1:A3)");
    expect(await valuesAt(opened.host, "A1")).toEqual([["#CYCLE!"]]);
  });
});

describe("the application", () => {
  test("tells its separators", () =>
    onSheet(opened.host, async (_sheet, context) => {
      const { numberFormat } = context.application.cultureInfo;
      numberFormat.load("numberDecimalSeparator,numberGroupSeparator");
      await context.sync();
      expect([numberFormat.numberDecimalSeparator, numberFormat.numberGroupSeparator]).toEqual([".", ","]);
    }));

  test("counts at the end of a batch whose calculation is suspended (excel/performance)", () =>
    onSheet(opened.host, async (sheet, context) => {
      context.application.suspendApiCalculationUntilNextSync();
      sheet.getRange("A1").formulas = [["=1+1"]];
      await context.sync();
      const cell = sheet.getRange("A1").load("values");
      await context.sync();
      expect(cell.values).toEqual([[2]]);
    }));
});
