import { errorOf, onSheet, openHost } from "./openHost";

/** Pages: develop/application-specific-api-model, testing/application-specific-api-error-handling. */
const opened = openHost();

describe("load and sync (develop/application-specific-api-model)", () => {
  test("a property read before load and sync is refused", () =>
    onSheet(opened.host, async (sheet, context) => {
      expect(() => sheet.name).toThrow(expect.objectContaining({ code: "PropertyNotLoaded" }));
      sheet.load("name");
      expect(() => sheet.name).toThrow(expect.objectContaining({ code: "PropertyNotLoaded" }));
      await context.sync();
      expect(sheet.name).toBe("Sheet1");
      expect(() => sheet.position).toThrow(expect.objectContaining({ code: "PropertyNotLoaded" }));
    }));

  test.each([
    ["text", "address, format/fill/color"],
    ["an array", ["address", "format/fill/color"]],
    ["an object", { address: true, format: { fill: { color: true } } }],
    ["select and expand", { select: "address", expand: "format/fill" }],
  ])("the option may be %s", (_form, option) =>
    onSheet(opened.host, async (sheet, context) => {
      const range = sheet.getRange("B2:C3");
      range.format.fill.color = "#FFF2CC";
      range.load(option as string);
      await context.sync();
      expect(range.address).toBe("Sheet1!B2:C3");
      expect(range.format.fill.color).toBe("#FFF2CC");
    }),
  );

  test("items of a collection, by either path", () =>
    onSheet(opened.host, async (_sheet, context) => {
      const { worksheets } = context.workbook;
      worksheets.add("Second");
      worksheets.load("items/name");
      await context.sync();
      expect(worksheets.items.map((one) => one.name)).toEqual(["Sheet1", "Second"]);
      expect(() => worksheets.items[0]!.visibility).toThrow(expect.objectContaining({ code: "PropertyNotLoaded" }));
      worksheets.load("visibility");
      await context.sync();
      expect(worksheets.items.map((one) => one.visibility)).toEqual(["Visible", "Visible"]);
    }));

  test("a load sees the workbook as it is at its place in the queue", () =>
    onSheet(opened.host, async (sheet, context) => {
      const range = sheet.getRange("A1");
      range.values = [[1]];
      const first = sheet.getRange("A1").load("values");
      range.values = [[2]];
      const second = sheet.getRange("A1").load("values");
      await context.sync();
      expect([first.values, second.values]).toEqual([[[1]], [[2]]]);
    }));

  test("formulas are calculated before a later load of the same batch", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:B1").values = [[20, "=A1*2"]];
      const result = sheet.getRange("B1").load("values");
      await context.sync();
      expect(result.values).toEqual([[40]]);
    }));

  test("nothing reaches the workbook before sync", async () => {
    await onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1").values = [[1]];
      expect(opened.host.book.workbook.getActiveSheet()?.getCellMatrix().getValue(0, 0)).toBeUndefined();
      await context.sync();
      expect(opened.host.book.workbook.getActiveSheet()?.getCellMatrix().getValue(0, 0)?.v).toBe(1);
    });
  });

  test("Excel.run goes on with the context of an object, and hands on the result", async () => {
    const sheet = await onSheet(opened.host, async (found, context) => {
      found.load("name");
      await context.sync();
      return found;
    });
    const name = await opened.host.Excel.run(sheet, async (context) => {
      expect(context).toBe(sheet.context);
      return sheet.name;
    });
    expect(name).toBe("Sheet1");
  });

  test("a value of a ClientResult is there after sync only", () =>
    onSheet(opened.host, async (_sheet, context) => {
      const count = context.workbook.worksheets.getCount();
      expect(() => count.value).toThrow(expect.objectContaining({ code: "ValueNotLoaded" }));
      await context.sync();
      expect(count.value).toBe(1);
    }));
});

describe("objects that may not be there (*OrNullObject)", () => {
  test("say so after sync, and pass over what is asked of them", () =>
    onSheet(opened.host, async (_sheet, context) => {
      const missing = context.workbook.worksheets.getItemOrNullObject("Nowhere");
      const below = missing.getRange("A1");
      missing.load("name");
      missing.delete();
      await context.sync();
      expect(missing.isNullObject).toBe(true);
      expect(below.isNullObject).toBe(true);
    }));

  test("getItem of nothing fails with ItemNotFound", async () => {
    const error = await errorOf(
      onSheet(opened.host, async (_sheet, context) => {
        context.workbook.worksheets.getItem("Nowhere");
        await context.sync();
      }),
    );
    expect(error).toBeInstanceOf(opened.host.OfficeExtension.Error);
    expect(error).toMatchObject({
      code: "ItemNotFound",
      debugInfo: { code: "ItemNotFound", errorLocation: "WorksheetCollection.getItem" },
    });
    expect(error.message).toContain("The requested resource doesn't exist.");
  });
});

describe("a batch that fails (testing/application-specific-api-error-handling)", () => {
  test("stops at the failing call; what stood before it is done", async () => {
    const error = await errorOf(
      onSheet(opened.host, async (sheet, context) => {
        sheet.getRange("A1").values = [["done"]];
        sheet.getRange("B1:B2").values = [["one row too few"]];
        sheet.getRange("C1").values = [["never"]];
        await context.sync();
      }),
    );
    expect(error).toMatchObject({ code: "InvalidArgument", debugInfo: { errorLocation: "Range.values" } });
    await onSheet(opened.host, async (sheet, context) => {
      const cells = sheet.getRange("A1:C1").load("values");
      await context.sync();
      expect(cells.values).toEqual([["done", "", ""]]);
    });
  });

  test("an object whose place failed cannot be used again", async () => {
    await onSheet(opened.host, async (_sheet, context) => {
      const missing = context.workbook.worksheets.getItem("Nowhere");
      await expect(context.sync()).rejects.toMatchObject({ code: "ItemNotFound" });
      missing.load("name");
      await expect(context.sync()).rejects.toMatchObject({ code: "InvalidObjectPath" });
    });
  });

  test("objects of one context are refused in another", async () => {
    const foreign = await onSheet(opened.host, async (sheet) => sheet.getRange("A1"));
    await onSheet(opened.host, async (sheet) => {
      expect(() => sheet.getRange("B1").getBoundingRect(foreign)).toThrow(
        expect.objectContaining({ code: "InvalidRequestContext" }),
      );
    });
  });

  test("a load path the API does not have is passed over; the right property is then not loaded", () =>
    onSheet(opened.host, async (sheet, context) => {
      const range = sheet.getRange("A1").load("value");
      await context.sync();
      expect(() => range.values).toThrow(expect.objectContaining({ code: "PropertyNotLoaded" }));
    }));

  test("the count of a collection comes with its items, and * asks for all plain properties below", () =>
    onSheet(opened.host, async (sheet, context) => {
      const range = sheet.getRange("A1").load("format/*");
      const borders = range.format.borders.load("items");
      await context.sync();
      expect([range.format.wrapText, borders.count, borders.items.length > 0]).toEqual([false, 8, true]);
    }));

  test("what the host does not offer says so by name, as a member and as a load path", async () => {
    await onSheet(opened.host, async (sheet, context) => {
      expect(() => sheet.pivotTables).toThrow(
        expect.objectContaining({ code: "NotImplemented", message: expect.stringContaining("Worksheet.pivotTables") }),
      );
      sheet.load("slicers/name");
      await expect(context.sync()).rejects.toMatchObject({
        code: "NotImplemented",
        message: expect.stringContaining("Worksheet.slicers"),
      });
    });
  });
});

describe("batches at the same time", () => {
  test("reach the workbook one after the other, in the order of their syncs", async () => {
    const { Excel } = opened.host;
    const outer = Excel.run(async (context) => {
      context.workbook.worksheets.add("Sample");
      // Not waited for: it begins when the batch around it has been sent.
      const inner = Excel.run(async (other) => {
        const sheet = other.workbook.worksheets.getItem("Sample").load("name");
        await other.sync();
        return sheet.name;
      });
      await context.sync();
      return inner;
    });
    await expect(outer).resolves.toBe("Sample");
  });
});
