import { errorOf, onSheet, openHost } from "./openHost";

/** Pages: excel/co-authoring-in-excel-add-ins and, of the reference, Excel.Binding and Excel.BindingCollection. */
const opened = openHost();

test("a bound range follows inserted rows and gives range, text or table by its type", () =>
  onSheet(opened.host, async (sheet, context) => {
    sheet.getRange("A1:B2").values = [
      ["Player", "Load"],
      ["Ada", 40],
    ];
    const table = sheet.tables.add("A1:B2", true);
    table.name = "Loads";
    const { bindings } = context.workbook;
    bindings.add("D1:E2", "Range", "area");
    bindings.add("Sheet1!B2", "Text", "one");
    bindings.add(table.getRange(), "Table", "all");
    sheet.getRange("1:1").insert("Down");
    const range = bindings.getItem("area").getRange().load("address");
    const text = bindings.getItem("one").getText();
    const bound = bindings.getItem("all").getTable().load("name");
    bindings.load("items/id,items/type,count");
    await context.sync();
    expect([range.address, text.value, bound.name, bindings.count]).toEqual(["Sheet1!D2:E3", "40", "Loads", 3]);
    expect(bindings.items.map(({ id, type }) => [id, type])).toEqual([
      ["area", "Range"],
      ["one", "Text"],
      ["all", "Table"],
    ]);
  }));

test("data and selection events bring the binding along with its id", async () => {
  const told: unknown[] = [];
  await onSheet(opened.host, async (sheet, context) => {
    const binding = context.workbook.bindings.add(sheet.getRange("B2:C5"), "Range", "watched");
    binding.onDataChanged.add(async (args) => void told.push(["data", args.binding.id]));
    binding.onSelectionChanged.add(async ({ startRow, startColumn, rowCount, columnCount }) => {
      told.push([startRow, startColumn, rowCount, columnCount]);
    });
    await context.sync();
  });
  await opened.host.type("C3", 12);
  await opened.host.type("D9", 12);
  opened.host.select("C4:D9");
  await Promise.resolve();
  expect(told).toEqual([
    ["data", "watched"],
    [2, 1, 2, 1],
  ]);
});

test("a binding of another type does not answer, nor does one that is gone", async () => {
  const table = await errorOf(
    onSheet(opened.host, async (sheet, context) => {
      context.workbook.bindings.add(sheet.getRange("A1"), "Range", "x").getTable();
      await context.sync();
    }),
  );
  const gone = await errorOf(
    onSheet(opened.host, async (_sheet, context) => {
      context.workbook.bindings.getItem("x").delete();
      context.workbook.bindings.getItem("x");
      await context.sync();
    }),
  );
  expect([table.code, gone.code]).toEqual(["InvalidOperation", "ItemNotFound"]);
});
