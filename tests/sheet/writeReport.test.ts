import type { Host } from "../../src/host";
import { findPlace } from "../../src/sheet/findPlace";
import { takeBack } from "../../src/sheet/takeBack";
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

  it("takes new columns in beside the last and empties those no longer given; they come back where they were", async () => {
    await writeReport(report, "key");
    const chartLeft = () =>
      Excel.run(async (context) => {
        const chart = context.workbook.worksheets.getItem("Sample").charts.getItemAt(0).load("left");
        await context.sync();
        return chart.left;
      });
    const before = await chartLeft();
    const { table } = report;
    const day = { key: "day", heading: "Day", meaning: "When." };
    const [athlete, value] = [table.columns[0]!, table.columns[1]!];
    const rows = [
      ["A", "Mon", 151],
      ["B", "Tue", 161],
    ];
    const syncs = host.syncs;
    await writeReport({ ...report, table: { ...table, columns: [athlete, day, value], rows } }, "key");
    expect(host.syncs - syncs).toBeLessThanOrEqual(3);
    const cells = () => valuesAt("Sample", `A${header}:D${header + 2}`);
    expect(await cells()).toEqual([
      ["Athlete", "Value (cm)", "Verdict", "Day"],
      ["A", 151, "", "Mon"],
      ["B", 161, "", "Tue"],
    ]);
    expect(await tablesOn("Sample")).toEqual([`Tapeline_Sample A${header}:D${header + 2}`]);
    expect(await chartLeft()).toBeGreaterThan(before);

    await writeReport(report, "key");
    expect(await cells()).toEqual([
      ["Athlete", "Value (cm)", "Verdict", "Day"],
      ["A", 150.25, "x", ""],
      ["B", 160, "y", ""],
    ]);
    await host.type(`Sample!E${header + 1}`, "mine");
    const more = { ...table, columns: [...table.columns, { ...day, key: "role", heading: "Role" }] };
    expect(
      await writeReport({ ...report, table: { ...more, rows: table.rows.map((row) => [...row, "r"]) } }, "key"),
    ).toMatchObject({
      ...{ kind: "conflict", reason: "beside", address: `E${header + 1}` },
    });
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

describe("writeReport(report, key) around the table", () => {
  const leftOut = [{ cell: "B3", why: "Not a number." }];
  const noted = reportOf(report.table.rows, { provenance: { ...report.provenance, leftOut } });
  const columnA = async () => (await valuesAt("Sample", "A1:A60")).flat();
  const notes = async () => {
    const cells = await columnA();
    return cells.slice(cells.indexOf("How it was computed")).filter((cell) => cell !== "");
  };

  it("puts the notes below table and chart, and renews them where they stand", async () => {
    await writeReport(report, "key");
    const first = (await columnA()).indexOf("How it was computed");
    expect(first).toBeGreaterThan(header + 12);
    expect(await notes()).toEqual(["How it was computed", "By hand.", "Keep in mind", "• Mind this."]);
    await writeReport(noted, "key");
    expect((await columnA()).indexOf("How it was computed")).toBe(first);
    expect(await notes()).toEqual([
      "How it was computed",
      "By hand.",
      "Keep in mind",
      "• Mind this.",
      "Left out (1)",
      "• B3: Not a number.",
    ]);
    await writeReport(report, "key");
    expect(await notes()).toHaveLength(4);
  });

  it("moves them down where the table grows over them", async () => {
    await writeReport(report, "key");
    const many = Array.from({ length: 24 }, (_, row) => [`Athlete ${row}`, row, ""] as const);
    expect(await writeReport(reportOf(many), "key")).toMatchObject({ updated: true });
    const cells = await columnA();
    expect(cells.filter((cell) => cell === "How it was computed")).toHaveLength(1);
    expect(cells.slice(header, header + 26)).toEqual([...many.map(([name]) => name), "", "How it was computed"]);
  });

  it("leaves a note the coach has rewritten, and writes around it", async () => {
    await writeReport(report, "key");
    const row = (await columnA()).indexOf("By hand.") + 1;
    await host.type(`Sample!A${row}`, "Measured by Ingrid.");
    await writeReport(noted, "key");
    expect((await columnA())[row - 1]).toBe("Measured by Ingrid.");
    expect(await notes()).toEqual([
      "How it was computed",
      "Measured by Ingrid.",
      "By hand.",
      "Keep in mind",
      "• Mind this.",
      "Left out (1)",
      "• B3: Not a number.",
    ]);
  });

  it("does not write again the notes a coach has deleted", async () => {
    await writeReport(report, "key");
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sample").getRange("A15:A60").clear("Contents");
      await context.sync();
    });
    await writeReport(noted, "key");
    expect(await columnA()).not.toContain("How it was computed");
  });
});

describe("writeReport(report, key) with formulas", () => {
  const live = reportOf(
    [
      ["A", 3, "x"],
      ["B", 5, "y"],
    ],
    {},
  );
  const withFormulas = {
    ...live,
    table: {
      ...live.table,
      formulas: [
        ["=1+1", "=1+2", null],
        [null, null, '=UPPER("y")'],
      ],
    },
  };

  it("writes a formula instead of the value, but never of what tells the rows apart; first and again", async () => {
    for (const updated of [false, true]) {
      expect(await writeReport(withFormulas, "key")).toMatchObject({ updated });
      expect(await valuesAt("Sample", `A${header + 1}:C${header + 2}`)).toEqual([
        ["A", 3, "x"],
        ["B", 5, "Y"],
      ]);
      const formulas = await Excel.run(async (context) => {
        const cells = context.workbook.worksheets.getItem("Sample").getRange(`A${header + 1}:C${header + 2}`);
        cells.load("formulas");
        await context.sync();
        return cells.formulas;
      });
      expect(formulas).toEqual([
        ["A", "=1+2", "x"],
        ["B", 5, '=UPPER("y")'],
      ]);
    }
  });
});

/** What a sheet of a stranger may hold where a name or a remark is read; none of it may come to life in ours. */
const hostile = [
  '=HYPERLINK("https://example.org","click")',
  "+1+1",
  "-2+3",
  "@SUM(A1:A9)",
  "\t=1+1",
  "\n=1+1",
  "'=1+1",
  "=cmd|' /C calc'!A0",
  "a\u0007b\u0000c",
  "\u202Eelpmas\u202C",
  "<img src=x onerror=alert(1)>",
  "&amp; <b>bold</b>",
  "TRUE",
  "1e5",
  "2026-08-11",
  "x".repeat(32_767),
];

describe("writeReport(report, key) of text that looks like something else", () => {
  const written = reportOf(
    hostile.map((name) => [name, 1, name]),
    {
      title: hostile[0]!,
      summary: hostile,
      cautions: hostile,
      provenance: {
        source: hostile[0]!,
        date: "2026-08-11",
        method: hostile[0]!,
        used: "",
        leftOut: hostile.map((why) => ({ cell: "A1", why })),
      },
      chart: { ...report.chart!, title: hostile[10]! },
    },
  );

  it("keeps every cell, line and title to the letter, as text, first and again", async () => {
    for (const updated of [false, true]) {
      expect(await writeReport(written, "key")).toMatchObject({ updated });
      await Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Sample");
        const used = sheet.getUsedRange().load("formulas,values,valueTypes");
        const table = sheet.tables.getItemAt(0).getDataBodyRange().load("values,valueTypes");
        const title = sheet.charts.getItemAt(0).title.load("text");
        await context.sync();
        expect(table.values.map((row) => row[0])).toEqual(hostile);
        expect(table.values.map((row) => row[2])).toEqual(hostile);
        expect(new Set(table.valueTypes.flatMap((row) => [row[0], row[2]]))).toEqual(new Set(["String"]));
        expect(title.text).toBe(hostile[10]);
        expect(used.values[0]![0]).toBe(hostile[0]);
        // A formula would read otherwise than its value.
        expect(used.formulas).toEqual(used.values);
      });
    }
  });

  it("can be taken back", async () => {
    const outcome = await writeReport(written, "key");
    if (outcome.kind !== "written") throw new Error(outcome.kind);
    const again = await writeReport(reportOf([["A", 1, ""]]), "key");
    if (again.kind !== "written") throw new Error(again.kind);
    expect(await takeBack(again.deed)).toEqual({ kind: "takenBack", gone: [] });
    expect(await takeBack(outcome.deed)).toEqual({ kind: "takenBack", gone: [] });
  });
});
