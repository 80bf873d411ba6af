import { errorOf, onSheet, openHost, valuesAt } from "./openHost";

/** Pages: excel/excel-add-ins-ranges-* (copy, duplicates, find), snippets' topics of auto fill, styles and protection. */
const opened = openHost();

describe("filling (Range.autoFill)", () => {
  test.each([
    ["numbers with their step", [[1], [3]], "FillDefault", [[1], [3], [5], [7]]],
    ["text with a number", [["Week 1"]], "FillDefault", [["Week 1"], ["Week 2"], ["Week 3"], ["Week 4"]]],
    ["one number stays", [[5]], "FillDefault", [[5], [5], [5], [5]]],
    ["one number counts on as a series", [[5]], "FillSeries", [[5], [6], [7], [8]]],
    ["copies repeat", [[1], [3]], "FillCopy", [[1], [3], [1], [3]]],
  ] as const)("%s", async (_what, source, type, filled) => {
    await onSheet(opened.host, async (sheet) => {
      const range = sheet.getRange(`A1:A${source.length}`);
      range.values = source as unknown as unknown[][];
      range.autoFill("A1:A4", type);
    });
    expect(await valuesAt(opened.host, "A1:A4")).toEqual(filled);
  });

  test("formulas move along", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:B1").formulas = [[2, "=A1*$A$1"]];
      sheet.getRange("B1").autoFill("B1:B3");
      const filled = sheet.getRange("B1:B3").load("formulas");
      await context.sync();
      expect(filled.formulas).toEqual([["=A1*$A$1"], ["=A2*$A$1"], ["=A3*$A$1"]]);
    }));

  test("a destination that does not begin with the range is refused", async () => {
    const error = await errorOf(
      onSheet(opened.host, async (sheet, context) => {
        sheet.getRange("A1").autoFill("B1:B4");
        await context.sync();
      }),
    );
    expect(error.code).toBe("InvalidArgument");
  });
});

test("duplicates go, the first of each stays (Range.removeDuplicates)", async () => {
  await onSheet(opened.host, async (sheet, context) => {
    const range = sheet.getRange("A1:B5");
    range.values = [
      ["Player", "Load"],
      ["Ada", 1],
      ["Eva", 2],
      ["ada", 3],
      ["Ida", 4],
    ];
    const result = range.removeDuplicates([0], true).load("removed,uniqueRemaining");
    await context.sync();
    expect([result.removed, result.uniqueRemaining]).toEqual([1, 3]);
  });
  expect(await valuesAt(opened.host, "A1:B5")).toEqual([
    ["Player", "Load"],
    ["Ada", 1],
    ["Eva", 2],
    ["Ida", 4],
    ["", ""],
  ]);
});

test("copies repeat, move formulas along, transpose, and bring values or formats alone (Range.copyFrom)", async () => {
  await onSheet(opened.host, async (sheet) => {
    sheet.getRange("A1:B1").formulas = [[3, "=A1*2"]];
    sheet.getRange("A2:B3").copyFrom("A1:B1");
    sheet.getRange("D1").copyFrom("A1:B1", "Values");
    sheet.getRange("D3").copyFrom("A1:B1", "Values", false, true);
  });
  expect(await valuesAt(opened.host, "A1:E4")).toEqual([
    [3, 6, "", 3, 6],
    [3, 6, "", "", ""],
    [3, 6, "", 3, ""],
    ["", "", "", 6, ""],
  ]);
});

test("rows and columns are sorted, empty cells last, and it is told (Range.sort, onRowSorted)", async () => {
  const told: string[] = [];
  await onSheet(opened.host, async (sheet) => {
    sheet.onRowSorted.add(async ({ address }) => void told.push(address));
    sheet.onColumnSorted.add(async ({ address }) => void told.push(address));
    sheet.getRange("A1:C2").values = [
      ["b", "", "a"],
      [2, 9, 1],
    ];
    sheet.getRange("A1:C2").sort.apply([{ key: 0, ascending: true }], false, false, "Columns");
    sheet.getRange("A1:C2").sort.apply([{ key: 2, ascending: false }]);
  });
  expect(await valuesAt(opened.host, "A1:C2")).toEqual([
    [1, 2, 9],
    ["a", "b", ""],
  ]);
  expect(told).toEqual(["A1:C2", "A1:C2"]);
});

test("text is found and replaced, in any letter case unless asked otherwise (Range.find, replaceAll)", async () => {
  await onSheet(opened.host, async (sheet, context) => {
    sheet.getRange("A1:A3").values = [["Hop left"], ["hop right"], ["Jump"]];
    const found = sheet.getRange("A1:A3").findOrNullObject("HOP", { matchCase: false }).load("address");
    const none = sheet.getRange("A1:A3").findOrNullObject("HOP", { matchCase: true });
    const count = sheet.getRange("A1:A3").replaceAll("hop", "Leap", {});
    await context.sync();
    expect([found.address, none.isNullObject, count.value]).toEqual(["Sheet1!A1", true, 2]);
  });
  expect(await valuesAt(opened.host, "A1:A3")).toEqual([["Leap left"], ["Leap right"], ["Jump"]]);
});

test("a built-in style sets the look and is told by its name (Range.style)", () =>
  onSheet(opened.host, async (sheet, context) => {
    const range = sheet.getRange("A1:B1");
    range.style = opened.host.Excel.BuiltInStyle.good;
    range.load("style,format/fill/color,format/font/color");
    await context.sync();
    expect([range.style, range.format.fill.color, range.format.font.color]).toEqual(["Good", "#C6EFCE", "#006100"]);
    range.style = "No such style";
    await expect(context.sync()).rejects.toMatchObject({ code: "InvalidArgument" });
  }));

describe("protection (WorksheetProtection, WorkbookProtection)", () => {
  test("a protected sheet refuses what is written, until it is opened with its password", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.protection.protect({ allowFormatCells: true }, "secret");
      sheet.getRange("A1").format.font.bold = true;
      sheet.protection.load("protected,options");
      await context.sync();
      expect([sheet.protection.protected, sheet.protection.options.allowFormatCells]).toEqual([true, true]);
      sheet.getRange("A1").values = [[1]];
      await expect(context.sync()).rejects.toMatchObject({ code: "AccessDenied" });
      sheet.protection.unprotect("wrong");
      await expect(context.sync()).rejects.toMatchObject({ code: "AccessDenied" });
      sheet.protection.unprotect("secret");
      sheet.getRange("A1").values = [[1]];
      await context.sync();
    }));

  test("a protected workbook keeps its sheets", () =>
    onSheet(opened.host, async (_sheet, context) => {
      context.workbook.protection.protect();
      context.workbook.worksheets.add("More");
      await expect(context.sync()).rejects.toMatchObject({ code: "AccessDenied" });
    }));
});

test("only part of a table cannot be pushed aside (Range.insert)", async () => {
  const error = await errorOf(
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:B2").values = [
        ["a", "b"],
        [1, 2],
      ];
      sheet.tables.add("A1:B2", true);
      sheet.getRange("A1").insert("Down");
      await context.sync();
    }),
  );
  expect(error.code).toBe("InsertDeleteConflict");
});
