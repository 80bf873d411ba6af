import type { Host } from "../../src/host";
import { findPlace } from "../../src/sheet/findPlace";
import { writeReport } from "../../src/sheet/writeReport";
import { addSheet, openWorkbook, valuesAt } from "./openWorkbook";
import { reportOf } from "./reportOf";

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

const report = reportOf([
  ["A", 150.25, "x"],
  ["B", 160, "y"],
]);
const linesCount = 5;
const header = linesCount + 1;

const tablesOn = (sheet: string) =>
  Excel.run(async (context) => {
    const { tables } = context.workbook.worksheets.getItem(sheet);
    tables.load("items/name");
    await context.sync();
    const ranges = tables.items.map((table) => table.getRange().load("address"));
    await context.sync();
    return tables.items.map((table, index) => `${table.name} ${ranges[index]!.address.split("!")[1]}`);
  });

describe("writeReport(report, key) on a new sheet", () => {
  it("writes a named table with headings, formats, frozen headings and a chart", async () => {
    const outcome = await writeReport(report, "key");
    expect(outcome).toMatchObject({
      kind: "written",
      sheet: "Sample",
      address: `A${header}:C${header + 2}`,
      updated: false,
    });
    expect(await valuesAt("Sample", `A${header}:C${header + 2}`)).toEqual([
      ["Athlete", "Value (cm)", "Verdict"],
      ["A", 150.25, "x"],
      ["B", 160, "y"],
    ]);
    expect(await tablesOn("Sample")).toEqual([`Tapeline_Sample A${header}:C${header + 2}`]);
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sample");
      const value = sheet.getRange(`B${header + 1}`);
      value.load("text,numberFormat");
      const frozen = sheet.freezePanes.getLocationOrNullObject();
      frozen.load("address");
      sheet.charts.load("items/name");
      await context.sync();
      expect(value.numberFormat).toEqual([["0.0"]]);
      expect(value.text[0]![0]).toMatch(/^150\.[23]$/);
      expect(frozen.address).toContain(`1:${header}`);
      expect(sheet.charts.items.map((chart) => chart.name)).toEqual(["Tapeline_Sample chart"]);
    });
  });

  it("takes a free name beside a coach's sheet of that name, and leaves theirs alone", async () => {
    await addSheet("Sample", [["mine"]]);
    expect(await writeReport(report, "key")).toMatchObject({ sheet: "Sample 2" });
    expect(await valuesAt("Sample", "A1")).toEqual([["mine"]]);
  });

  it("writes names that look like formulas as text", async () => {
    const names = ["=1+1", "+A1", "-5", "@SUM(A1)", "2026-08-11", "'quoted"];
    await writeReport(reportOf(names.map((name) => [name, 1, ""])), "key");
    expect((await valuesAt("Sample", `A${header + 1}:A${header + names.length}`)).flat()).toEqual(names);
  });

  it("takes three round trips, first and again", async () => {
    for (const expected of [false, true]) {
      const before = host.syncs;
      expect(await writeReport(report, "key")).toMatchObject({ updated: expected });
      expect(host.syncs - before).toBeLessThanOrEqual(3);
    }
  });
});

describe("writeReport(report, key) a second time", () => {
  it("renews the table in place", async () => {
    await writeReport(report, "key");
    const outcome = await writeReport(
      reportOf([
        ["B", 161, "z"],
        ["A", 150, "x"],
        ["C", 170, "w"],
      ]),
      "key",
    );
    expect(outcome).toMatchObject({
      kind: "written",
      sheet: "Sample",
      address: `A${header}:C${header + 3}`,
      updated: true,
    });
    expect(await valuesAt("Sample", `A${header + 1}:C${header + 3}`)).toEqual([
      ["A", 150, "x"],
      ["B", 161, "z"],
      ["C", 170, "w"],
    ]);
    expect(await tablesOn("Sample")).toEqual([`Tapeline_Sample A${header}:C${header + 3}`]);
  });

  it("shrinks the table and leaves no cell of the old one behind", async () => {
    await writeReport(report, "key");
    await writeReport(reportOf([["B", 161, "z"]]), "key");
    expect(await tablesOn("Sample")).toEqual([`Tapeline_Sample A${header}:C${header + 1}`]);
    expect((await valuesAt("Sample", `A${header + 2}:C${header + 2}`)).flat()).toEqual(["", "", ""]);
  });

  it("gives another key a sheet of its own", async () => {
    await writeReport(report, "key");
    expect(await writeReport(report, "other")).toMatchObject({ sheet: "Sample 2", updated: false });
    expect(await findPlace("key", "Sample")).toEqual({ sheet: "Sample", renews: true });
    expect(await findPlace("third", "Sample")).toEqual({ sheet: "Sample 3", renews: false });
  });

  it("finds its table again when the coach has renamed sheet and table", async () => {
    await writeReport(report, "key");
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sample");
      sheet.name = "August";
      sheet.tables.getItem("Tapeline_Sample").name = "August_hops";
      await context.sync();
    });
    expect(await writeReport(report, "key")).toMatchObject({ sheet: "August", updated: true });
    expect(await tablesOn("August")).toHaveLength(1);
  });

  it("writes anew when the coach has deleted the table's sheet", async () => {
    await writeReport(report, "key");
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sample").delete();
      await context.sync();
    });
    expect(await writeReport(report, "key")).toMatchObject({ sheet: "Sample", updated: false });
  });

  it("keeps a coach's own column and their formulas beside the right athletes", async () => {
    await writeReport(report, "key");
    await host.type(`Sample!D${header}`, "My note");
    await Excel.run(async (context) => {
      const table = context.workbook.tables.getItem("Tapeline_Sample");
      table.resize(`A${header}:D${header + 2}`);
      await context.sync();
    });
    await host.type(`Sample!D${header + 1}`, "mine");
    await host.type(`Sample!D${header + 2}`, `=B${header + 2}*2`);
    await writeReport(
      reportOf([
        ["B", 161, "z"],
        ["C", 170, "w"],
      ]),
      "key",
    );
    expect(await valuesAt("Sample", `A${header + 1}:D${header + 3}`)).toEqual([
      ["A", "", "", "mine"],
      ["B", 161, "z", 322],
      ["C", 170, "w", ""],
    ]);
  });

  it("writes nothing where a coach's cells are in the way below", async () => {
    await writeReport(report, "key");
    await host.type(`Sample!B${header + 3}`, "mine");
    const outcome = await writeReport(
      reportOf([
        ["A", 1, ""],
        ["B", 2, ""],
        ["C", 3, ""],
      ]),
      "key",
    );
    expect(outcome).toEqual({ kind: "conflict", reason: "below", address: `B${header + 3}`, sheet: "Sample" });
    expect(await valuesAt("Sample", `A${header + 1}:C${header + 3}`)).toEqual([
      ["A", 150.25, "x"],
      ["B", 160, "y"],
      ["", "mine", ""],
    ]);
    expect(await writeReport(report, "key", true)).toMatchObject({ sheet: "Sample 2", updated: false });
  });

  it("leaves a line above the table that the coach has rewritten", async () => {
    await writeReport(report, "key");
    await host.type("Sample!A1", "Our hops in August");
    await writeReport(report, "key");
    expect(await valuesAt("Sample", "A1:A2")).toEqual([["Our hops in August"], ["One sentence."]]);
  });

  it("touches nothing in a workbook of a newer version", async () => {
    await Excel.run(async (context) => {
      context.workbook.settings.add("Tapeline.writtenReports", { version: 2, reports: {} });
      await context.sync();
    });
    expect(await writeReport(report, "key")).toEqual({ kind: "unknownState" });
  });
});
