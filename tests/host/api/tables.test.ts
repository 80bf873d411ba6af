import { errorOf, onSheet, openHost, valuesAt } from "./openHost";

/** Pages: excel/excel-add-ins-tables; support.microsoft.com "Using structured references with Excel tables". */
const opened = openHost();

const squad = [
  ["Player", "Load (kg)", "Hop #1"],
  ["Ada", 40, 1.5],
  ["Eva", 60, 2],
];

const addSquad = (sheet: Excel.Worksheet, name = "My_Squad"): Excel.Table => {
  sheet.getRange("A1:C3").values = squad;
  const table = sheet.tables.add("A1:C3", true);
  table.name = name;
  return table;
};

describe("tables (excel/excel-add-ins-tables)", () => {
  test("are found by name in any letter case, and tell their parts", () =>
    onSheet(opened.host, async (sheet, context) => {
      addSquad(sheet);
      const table = context.workbook.tables.getItem("my_squad");
      table.load("name,showBandedRows,showTotals,style");
      const parts = [table.getRange(), table.getHeaderRowRange(), table.getDataBodyRange()];
      for (const part of parts) part.load("address");
      table.columns.load("items/name");
      await context.sync();
      expect(table).toMatchObject({
        name: "My_Squad",
        showBandedRows: true,
        showTotals: false,
        style: "TableStyleMedium2",
      });
      expect(parts.map((part) => part.address)).toEqual(["Sheet1!A1:C3", "Sheet1!A1:C1", "Sheet1!A2:C3"]);
      expect(table.columns.items.map((column) => column.name)).toEqual(squad[0]);
    }));

  test.each([
    ["overlaps another", "InvalidArgument", (sheet: Excel.Worksheet) => sheet.tables.add("C3:D4", true)],
    [
      "has a name with a space",
      "InvalidArgument",
      (_sheet: Excel.Worksheet, table: Excel.Table) => renamed(table, "My squad"),
    ],
    [
      "has a name like a cell",
      "InvalidArgument",
      (_sheet: Excel.Worksheet, table: Excel.Table) => renamed(table, "AB12"),
    ],
    [
      "moves its heading row",
      "InvalidArgument",
      (_sheet: Excel.Worksheet, table: Excel.Table) => table.resize("A2:C5"),
    ],
    [
      "has another's name",
      "ItemAlreadyExists",
      (sheet: Excel.Worksheet) => renamed(sheet.tables.add("F1:F2", true), "MY_SQUAD"),
    ],
  ] as const)("a table that %s is refused", async (_what, code, attempt) => {
    const error = await errorOf(
      onSheet(opened.host, async (sheet, context) => {
        const table = addSquad(sheet);
        await context.sync();
        attempt(sheet, table);
        await context.sync();
      }),
    );
    expect(error.code).toBe(code);
  });

  test("headings are completed as Excel does: text, none empty, none twice", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:D1").values = [["Jump", "", "jump", 2026]];
      const table = sheet.tables.add("A1:D2", true);
      table.columns.load("items/name");
      const heading = table.getHeaderRowRange().load("values");
      await context.sync();
      expect(table.columns.items.map((column) => column.name)).toEqual(["Jump", "Column2", "jump2", "2026"]);
      expect(heading.values).toEqual([["Jump", "Column2", "jump2", "2026"]]);
    }));

  test("an edited heading renames its column, and formulas follow", async () => {
    await onSheet(opened.host, async (sheet, context) => {
      addSquad(sheet);
      sheet.getRange("E1").formulas = [["=SUM(My_Squad[Load (kg)])"]];
      sheet.getRange("B1").values = [["Weight [kg]"]];
      const formula = sheet.getRange("E1").load("formulas,values");
      await context.sync();
      expect(formula.formulas).toEqual([["=SUM(My_Squad[Weight '[kg']])"]]);
      expect(formula.values).toEqual([[100]]);
    });
  });

  test("rows are added behind the last and anywhere, and what is below makes room", async () => {
    await onSheet(opened.host, async (sheet, context) => {
      const table = addSquad(sheet);
      sheet.getRange("A4").values = [["below"]];
      table.rows.add(undefined, [["Ida", 55, 1.8]]);
      table.rows.add(0, [["Åse", 50, 1.7]]);
      table.rows.getItemAt(1).delete();
      table.rows.load("count");
      await context.sync();
      expect(table.rows.count).toBe(3);
    });
    expect(await valuesAt(opened.host, "A1:C5")).toEqual([
      squad[0],
      ["Åse", 50, 1.7],
      squad[2],
      ["Ida", 55, 1.8],
      ["below", "", ""],
    ]);
  });

  test("a table of headings alone has no rows, and the first added fills its empty one", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:B1").values = [["Player", "Load"]];
      const table = sheet.tables.add("A1:B1", true);
      const before = table.rows.getCount();
      table.rows.add(undefined, [
        ["Ada", 1],
        ["Eva", 2],
      ]);
      const after = table.rows.getCount();
      const body = table.getDataBodyRange().load("address");
      await context.sync();
      expect([before.value, after.value, body.address]).toEqual([0, 2, "Sheet1!A2:B3"]);
    }));

  test("columns are added with a name and values", () =>
    onSheet(opened.host, async (sheet, context) => {
      const table = addSquad(sheet);
      sheet.getRange("E1").formulas = [["=SUM(My_Squad[Hop '#1])"]];
      table.columns.add(1, [["Side"], ["left"], ["right"]]);
      const range = table.getRange().load("values,address");
      // Cells beside the table's rows make room.
      const moved = sheet.getRange("F1").load("formulas,values");
      await context.sync();
      expect(range.address).toBe("Sheet1!A1:D3");
      expect(range.values).toEqual([
        ["Player", "Side", "Load (kg)", "Hop #1"],
        ["Ada", "left", 40, 1.5],
        ["Eva", "right", 60, 2],
      ]);
      expect([moved.formulas[0]![0], moved.values[0]![0]]).toEqual(["=SUM(My_Squad[Hop '#1])", 3.5]);
    }));

  test("a resized table keeps its columns in order, from the first column of the sheet too", () =>
    onSheet(opened.host, async (sheet, context) => {
      const table = addSquad(sheet);
      sheet.getRange("F1").formulas = [["=SUM(My_Squad[Hop '#1])"]];
      table.resize("A1:D4");
      table.columns.load("items/name");
      const sum = sheet.getRange("F1").load("formulas,values");
      await context.sync();
      expect(table.columns.items.map((column) => column.name)).toEqual([...squad[0]!, "Column4"]);
      expect([sum.formulas[0]![0], sum.values[0]![0]]).toEqual(["=SUM(My_Squad[Hop '#1])", 3.5]);
    }));

  test("a table made a range leaves cells and formulas that give the same", () =>
    onSheet(opened.host, async (sheet, context) => {
      const table = addSquad(sheet);
      sheet.getRange("E1").formulas = [["=SUM(My_Squad[Load (kg)])"]];
      table.convertToRange();
      const formula = sheet.getRange("E1").load("formulas,values");
      const gone = sheet.tables.getItemOrNullObject("My_Squad");
      await context.sync();
      expect([formula.formulas[0]![0], formula.values[0]![0]]).toEqual(["=SUM(Sheet1!$B$2:$B$3)", 100]);
      expect(gone.isNullObject).toBe(true);
    }));

  test("totals stand below the data and are no data", () =>
    onSheet(opened.host, async (sheet, context) => {
      const table = addSquad(sheet);
      sheet.getRange("E1").formulas = [["=COUNTA(My_Squad[Player])"]];
      table.showTotals = true;
      const totals = table.getTotalRowRange().load("values,address");
      const body = table.getDataBodyRange().load("address");
      const count = sheet.getRange("E1").load("values");
      await context.sync();
      expect(totals).toMatchObject({ address: "Sheet1!A4:C4", values: [["Total", "", 3.5]] });
      expect([body.address, count.values[0]![0]]).toEqual(["Sheet1!A2:C3", 2]);
    }));

  test("sorting and filtering work on the rows of data", () =>
    onSheet(opened.host, async (sheet, context) => {
      const table = addSquad(sheet);
      table.sort.apply([{ key: 1, ascending: false }]);
      table.columns.getItem("Load (kg)").filter.applyCustomFilter(">50");
      const body = table.getDataBodyRange().load("values");
      const visible = table.getDataBodyRange().getVisibleView().load("values");
      await context.sync();
      expect(body.values.map(([name]) => name)).toEqual(["Eva", "Ada"]);
      expect(visible.values.map(([name]) => name)).toEqual(["Eva"]);
      table.clearFilters();
      const again = table.getDataBodyRange().getVisibleView().load("rowCount");
      await context.sync();
      expect(again.rowCount).toBe(2);
    }));
});

describe("structured references (support.microsoft.com: using structured references)", () => {
  test.each([
    ["=SUM(my_squad[LOAD (KG)])", "=SUM(My_Squad[Load (kg)])", 100],
    ["=SUM(My_Squad[Hop '#1])", "=SUM(My_Squad[Hop '#1])", 3.5],
    ["=COUNTA(My_Squad)", "=COUNTA(My_Squad)", 6],
    ["=COUNTA(My_Squad[#All])", "=COUNTA(My_Squad[#All])", 9],
    ["=My_Squad[[#Headers],[Load (kg)]]", "=My_Squad[[#Headers],[Load (kg)]]", "Load (kg)"],
    ["=SUM(My_Squad[[Load (kg)]:[Hop '#1]])", "=SUM(My_Squad[[Load (kg)]:[Hop '#1]])", 103.5],
    [
      '=_xlfn.XLOOKUP("Eva",My_Squad[Player],My_Squad[Load (kg)])',
      '=XLOOKUP("Eva",My_Squad[Player],My_Squad[Load (kg)])',
      60,
    ],
    ['="My_Squad[Player]"', '="My_Squad[Player]"', "My_Squad[Player]"],
  ])("%s", (typed, shown, value) =>
    onSheet(opened.host, async (sheet, context) => {
      addSquad(sheet);
      const cell = sheet.getRange("E5");
      cell.formulas = [[typed]];
      cell.load("formulas,values");
      await context.sync();
      expect([cell.formulas[0]![0], cell.values[0]![0]]).toEqual([shown, value]);
    }),
  );

  test.each([
    ["=[@[Load (kg)]]*2", "=[@[Load (kg)]]*2", 80],
    ["=My_Squad[@[Load (kg)]]*2", "=[@[Load (kg)]]*2", 80],
    ["=My_Squad[[#This Row],[Load (kg)]]", "=[@[Load (kg)]]", 40],
    ["=[@Player]", "=[@Player]", "Ada"],
  ])("in a row of the table: %s", (typed, shown, value) =>
    onSheet(opened.host, async (sheet, context) => {
      addSquad(sheet);
      const cell = sheet.getRange("C2");
      cell.formulas = [[typed]];
      cell.load("formulas,values");
      await context.sync();
      expect([cell.formulas[0]![0], cell.values[0]![0]]).toEqual([shown, value]);
    }),
  );

  test("this row outside the table's rows is #VALUE!, and reads back as typed", () =>
    onSheet(opened.host, async (sheet, context) => {
      addSquad(sheet);
      const cell = sheet.getRange("E9");
      cell.formulas = [["=My_Squad[@Player]"]];
      cell.load("formulas,values,valueTypes");
      await context.sync();
      expect([cell.formulas[0]![0], cell.values[0]![0], cell.valueTypes[0]![0]]).toEqual([
        "=My_Squad[@Player]",
        "#VALUE!",
        "Error",
      ]);
    }));

  test("what is typed by hand is translated too, and undone as one step", async () => {
    await onSheet(opened.host, async (sheet) => {
      addSquad(sheet);
    });
    await opened.host.type("Sheet1!E1", "=SUM(my_squad[load (kg)])");
    expect(await valuesAt(opened.host, "E1")).toEqual([[100]]);
    opened.host.book.api.getActiveWorkbook()!.undo();
    expect(await valuesAt(opened.host, "E1")).toEqual([[""]]);
  });

  test("a renamed table is renamed in formulas", () =>
    onSheet(opened.host, async (sheet, context) => {
      const table = addSquad(sheet);
      sheet.getRange("E1").formulas = [["=ROWS(My_Squad)"]];
      table.name = "Seniors";
      const cell = sheet.getRange("E1").load("formulas,values");
      await context.sync();
      expect([cell.formulas[0]![0], cell.values[0]![0]]).toEqual(["=ROWS(Seniors)", 2]);
    }));
});

describe("spill references and implicit intersection", () => {
  test("G1# is all that G1 spilled into, and follows it", async () => {
    await onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:A3").values = [[1], [2], [3]];
      sheet.getRange("C1").formulas = [["=A1:A3*2"]];
      sheet.getRange("E1:E2").formulas = [["=SUM(C1#)"], ["=ROWS(C1#)"]];
      const cells = sheet.getRange("E1:E2").load("formulas,values");
      await context.sync();
      expect(cells.formulas).toEqual([["=SUM(C1#)"], ["=ROWS(C1#)"]]);
      expect(cells.values).toEqual([[12], [3]]);
      sheet.getRange("A2").values = [[20]];
      cells.load("values");
      const spilled = sheet.getRange("C1").getSpillingToRangeOrNullObject().load("address");
      await context.sync();
      expect(cells.values[0]![0]).toBe(48);
      expect(spilled.address).toBe("Sheet1!C1:C3");
    });
  });

  test("a cell without a spill is #REF! after #", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1").values = [[1]];
      const cell = sheet.getRange("B1");
      cell.formulas = [["=SUM(A1#)"]];
      cell.load("values");
      await context.sync();
      expect(cell.values).toEqual([["#REF!"]]);
    }));

  test("@ takes the cell of the formula's own row", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1:A3").values = [[1], [2], [3]];
      const cell = sheet.getRange("C2");
      cell.formulas = [["=@A1:A3*10"]];
      cell.load("formulas,values");
      await context.sync();
      expect([cell.formulas[0]![0], cell.values[0]![0]]).toEqual(["=@A1:A3*10", 20]);
    }));
});

const renamed = (table: Excel.Table, name: string) => {
  table.name = name;
};
