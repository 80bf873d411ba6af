import { onSheet, openHost } from "./openHost";

/** Pages: develop/persisting-add-in-state-and-settings, excel/excel-add-ins-worksheets, -worksheet-display, -events. */
const opened = openHost();

const answered = <T>(
  call: (callback: (result: Office.AsyncResult<T>) => void) => void,
): Promise<Office.AsyncResult<T>> => new Promise((resolve) => call(resolve));

test("settings reach the workbook with saveAsync, and the workbook's event tells of them", async () => {
  const { settings } = opened.host.Office.context.document;
  const told: unknown[] = [];
  await onSheet(opened.host, async (_sheet, context) => {
    context.workbook.settings.onSettingsChanged.add(async (args) => {
      const setting = args.settings.getItem("NeedsReview").load("value");
      await args.settings.context.sync();
      told.push(setting.value);
    });
    await context.sync();
  });
  settings.set("NeedsReview", true);
  expect(settings.get("NeedsReview")).toBe(true);
  const stored = () =>
    onSheet(opened.host, async (_sheet, context) => {
      const setting = context.workbook.settings.getItemOrNullObject("NeedsReview").load("value");
      await context.sync();
      return setting.isNullObject ? null : setting.value;
    });
  expect(await stored()).toBeNull();
  await answered((callback) => settings.saveAsync(callback));
  expect(await stored()).toBe(true);
  expect(told).toEqual([true]);
});

test("the selection is read as text and as rows, and written", async () => {
  const { document } = opened.host.Office.context;
  const { CoercionType } = opened.host.Office;
  await onSheet(opened.host, async (sheet) => {
    sheet.getRange("A1:B2").values = [
      [1, "a"],
      [2, "b"],
    ];
  });
  opened.host.select("A1:B2");
  const text = await answered((callback) => document.getSelectedDataAsync(CoercionType.Text, callback));
  const matrix = await answered((callback) => document.getSelectedDataAsync(CoercionType.Matrix, callback));
  expect([text.status, text.value, matrix.value]).toEqual([
    "succeeded",
    "1\ta\r\n2\tb",
    [
      [1, "a"],
      [2, "b"],
    ],
  ]);
  const html = await answered((callback) => document.getSelectedDataAsync(CoercionType.Html, callback));
  expect([html.status, html.error.message]).toEqual(["failed", expect.stringContaining("html")]);
});

test("headings and data type icons are switched (excel-add-ins-worksheet-display)", () =>
  onSheet(opened.host, async (sheet, context) => {
    sheet.showHeadings = false;
    sheet.load("showHeadings,showDataTypeIcons,showGridlines");
    await context.sync();
    expect([sheet.showHeadings, sheet.showDataTypeIcons, sheet.showGridlines]).toEqual([false, true, true]);
  }));

describe("events", () => {
  const listen = (told: unknown[]) =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.onChanged.add(async ({ changeType, address, changeDirectionState }) => {
        told.push([changeType, address, changeDirectionState]);
      });
      sheet.onFormulaChanged.add(async ({ formulaDetails }) => void told.push(formulaDetails));
      sheet.onSingleClicked.add(async ({ address, offsetX, offsetY }) => void told.push([address, offsetX, offsetY]));
      await context.sync();
    });

  test("cells that are moved are told once, with the way they went", async () => {
    const told: unknown[] = [];
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("A1:A4").values = [[1], [2], [3], [4]];
    });
    await listen(told);
    await onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A2").delete("Up");
      sheet.getRange("A1").insert("Right");
      sheet.getRange("2:2").insert("Down");
      await context.sync();
    });
    expect(told).toEqual([
      ["CellDeleted", "A2", { deleteShiftDirection: "Up" }],
      ["CellInserted", "A1", { insertShiftDirection: "Right" }],
      ["RowInserted", "2:2", { insertShiftDirection: "Down" }],
    ]);
  });

  test("a changed formula is told with the one before it", async () => {
    const told: unknown[] = [];
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("B1").formulas = [["=A1+1"]];
    });
    await listen(told);
    await opened.host.type("B1", "=A1+2");
    expect(told).toContainEqual([{ cellAddress: "B1", previousFormula: "=A1+1" }]);
  });

  test("a click is told with its place in the cell", async () => {
    const told: unknown[] = [];
    await listen(told);
    opened.host.click("C3:D9", { x: 4, y: 2 });
    await Promise.resolve();
    expect(told).toEqual([["C3", 4, 2]]);
  });
});
