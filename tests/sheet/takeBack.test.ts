import type { Host } from "../../src/host";
import { HostRefusal } from "../../src/sheet/hostRefusal";
import { takeBack } from "../../src/sheet/takeBack";
import { type Outcome, writeReport } from "../../src/sheet/writeReport";
import { failAt } from "./failAt";
import { addSheet, openWorkbook, valuesAt } from "./openWorkbook";
import { reportOf } from "./reportOf";
import { workbookImage } from "./workbookImage";

let host: Host;
beforeEach(async () => {
  host = openWorkbook();
  await addSheet("Hops", [
    ["Athlete", "Left (cm)"],
    ["A", 150],
    ["B", "=B2+10"],
  ]);
});
afterEach(() => host.dispose());

const first = reportOf([
  ["A", 150.25, "x"],
  ["B", 160, "y"],
  ["=C1", 170, "z"],
]);
const header = 6;

const leftOut = [
  { cell: "B3", why: "Empty: taken as a missing trial." },
  { cell: "B9", why: "Not a number." },
];
const more = reportOf(
  [
    ["D", 1, "new"],
    ["B", 161, "y"],
    ["=C1", 171, "z"],
    ["A", 151, "x"],
    ["E", 2, "new"],
  ],
  { summary: ["One.", "Two."], provenance: { ...first.provenance, leftOut } },
);
const fewer = reportOf([["B", 161, "y"]], { cautions: [] });
/** One column more between ours, and none for the verdict. */
const otherColumns = (of: typeof first): typeof first => ({
  ...of,
  table: {
    ...of.table,
    columns: [...of.table.columns.slice(0, 1), { key: "day", heading: "Day", meaning: "When." }, of.table.columns[1]!],
    rows: of.table.rows.map(([athlete, value]) => [athlete!, "=1", value!]),
  },
});

/** What a coach has done to the first table, by name; then the table is renewed. */
const situations: Record<string, { readonly prepare?: () => Promise<unknown>; readonly next: typeof first }> = {
  "a table with more rows": { next: more },
  "a table with fewer rows": { next: fewer },
  "a table of the same rows": { next: first },
  "a table with other columns": { next: otherColumns(more) },
  "a table with other columns and fewer rows": { next: otherColumns(fewer) },
  "a table with other columns and a coach's own": { prepare: addOwnColumn, next: otherColumns(more) },
  "a table with a coach's own column": { prepare: addOwnColumn, next: more },
  "a table a coach has sorted": {
    prepare: () =>
      Excel.run(async (context) => {
        context.workbook.tables.getItem("Tapeline_Sample").sort.apply([{ key: 1, ascending: false }]);
        await context.sync();
      }),
    next: more,
  },
  "a table whose look, lines and notes a coach has changed": { prepare: dressUp, next: more },
  "a table a coach has moved down": {
    prepare: () =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Sample");
        sheet.getRange("1:2").insert("Down");
        // In Excel a chart follows the cells it shows; the embedded host's does not.
        const series = sheet.charts.getItem("Tapeline_Sample chart").series.getItemAt(0);
        series.setValues(sheet.getRange(`B${header + 3}:B${header + 5}`));
        series.setXAxisValues(sheet.getRange(`A${header + 3}:A${header + 5}`));
        await context.sync();
      }),
    next: more,
  },
};

async function addOwnColumn() {
  await host.type(`Sample!D${header}`, "My note");
  await Excel.run(async (context) => {
    context.workbook.tables.getItem("Tapeline_Sample").resize(`A${header}:D${header + 3}`);
    await context.sync();
  });
  await host.type(`Sample!D${header + 1}`, `=B${header + 1}*2`);
  await host.type(`Sample!D${header + 2}`, "mine");
}

async function dressUp() {
  await host.type("Sample!A1", "Our hops in August");
  await host.type(`Sample!B${header + 1}`, "'2026-08-11");
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sample");
    const cells = sheet.getRange(`A${header + 2}:B${header + 5}`);
    cells.format.fill.color = "#FFEE00";
    cells.format.font.color = "#AA0000";
    cells.format.font.bold = true;
    cells.format.horizontalAlignment = "Center";
    sheet.getRange(`B${header + 1}:B${header + 3}`).numberFormat = [["0.000"], ["General"], ["0%"]];
    sheet.notes.add(`A${header + 1}`, "mine");
    sheet.getRange("A30").values = [["my own line"]];
    await context.sync();
  });
}

async function deedOf(outcome: Promise<Outcome>) {
  const written = await outcome;
  if (written.kind !== "written") throw new Error(written.kind);
  return written.deed;
}

describe("takeBack(deed)", () => {
  it("removes a new sheet and leaves the workbook byte for byte as it was", async () => {
    const before = await workbookImage(host);
    const deed = await deedOf(writeReport(first, "key"));
    expect(await workbookImage(host)).not.toBe(before);
    expect(await takeBack(deed)).toEqual({ kind: "takenBack", gone: [] });
    expect(await workbookImage(host)).toBe(before);
  });

  it.each(Object.entries(situations))("puts back %s byte for byte", async (_, { prepare, next }) => {
    await writeReport(first, "key");
    await prepare?.();
    const before = await workbookImage(host);
    const deed = await deedOf(writeReport(next, "key"));
    expect(deed.what).toMatch(/^Renewed Sample!A\d+:[C-E]\d+$/);
    if (next !== first) expect(await workbookImage(host)).not.toBe(before);
    const syncs = host.syncs;
    expect(await takeBack(JSON.parse(JSON.stringify(deed)))).toEqual({ kind: "takenBack", gone: [] });
    expect(host.syncs - syncs).toBeLessThanOrEqual(4);
    expect(await workbookImage(host)).toBe(before);
  });

  it("forgets one report and keeps what was remembered of others since", async () => {
    const deed = await deedOf(writeReport(first, "one"));
    await writeReport(first, "two");
    await takeBack(deed);
    expect(await writeReport(first, "two")).toMatchObject({ updated: true, sheet: "Sample 2" });
    expect(await writeReport(first, "one")).toMatchObject({ updated: false, sheet: "Sample" });
  });

  it("does nothing where the coach has changed cells since, and says which", async () => {
    const created = await deedOf(writeReport(first, "key"));
    const renewed = await deedOf(writeReport(more, "key"));
    await host.type(`Sample!B${header + 2}`, 999);
    await host.type("Sample!F3", "mine");
    const before = await workbookImage(host);
    expect(await takeBack(renewed)).toEqual({ kind: "changedSince", cells: [`Sample!B${header + 2}`] });
    expect(await takeBack(created)).toMatchObject({
      kind: "changedSince",
      cells: expect.arrayContaining(["Sample!F3", `Sample!B${header + 2}`]),
    });
    expect(await workbookImage(host)).toBe(before);
    expect(await takeBack(renewed, { anyway: true })).toEqual({ kind: "takenBack", gone: [] });
    expect(await valuesAt("Sample", `A${header + 2}:B${header + 2}`)).toEqual([["B", 160]]);
    expect(await valuesAt("Sample", "F3")).toEqual([["mine"]]);
  });

  it("does not take a column the coach has added since out of the table", async () => {
    await writeReport(first, "key");
    const deed = await deedOf(writeReport(more, "key"));
    await Excel.run(async (context) => {
      context.workbook.tables.getItem("Tapeline_Sample").resize(`A${header}:D${header + 5}`);
      await context.sync();
    });
    expect(await takeBack(deed)).toEqual({ kind: "changedSince", cells: [`Sample!A${header}:D${header + 5}`] });
  });

  it("tells what is gone, and restores the rest", async () => {
    const created = await deedOf(writeReport(first, "key"));
    const renewed = await deedOf(writeReport(more, "key"));
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sample");
      sheet.tables.getItem("Tapeline_Sample").convertToRange();
      sheet.charts.getItem("Tapeline_Sample chart").delete();
      await context.sync();
    });
    expect(await takeBack(renewed)).toEqual({ kind: "takenBack", gone: ["table", "chart"] });
    expect(await valuesAt("Sample", `A${header + 1}:A${header + 4}`)).toEqual([["A"], ["B"], ["=C1"], [""]]);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sample").delete();
      await context.sync();
    });
    expect(await takeBack(created)).toEqual({ kind: "takenBack", gone: ["sheet"] });
    expect(await workbookImage(host)).not.toContain("writtenReports");
  });

  it("follows a table that has moved since", async () => {
    await writeReport(first, "key");
    const deed = await deedOf(writeReport(more, "key"));
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sample").getRange("1:3").insert("Down");
      await context.sync();
    });
    expect(await takeBack(deed)).toEqual({ kind: "takenBack", gone: [] });
    expect(await valuesAt("Sample", `A${header + 3}:B${header + 7}`)).toEqual([
      ["Athlete", "Value (cm)"],
      ["A", 150.25],
      ["B", 160],
      ["=C1", 170],
      ["", ""],
    ]);
  });
});

type When = Parameters<typeof failAt>[1];

/** Makes every call that the action causes fail, one after the other, until there is none left to fail. */
async function failEverywhere(
  when: When,
  action: () => Promise<unknown>,
  check: (where: string, failed: unknown) => Promise<void>,
) {
  const members: string[] = [];
  for (let n = 1; ; n++) {
    const { member, error } = await failAt(n, when, action);
    if (member === null) return members;
    members.push(member);
    await check(`call ${n}, ${member}`, error);
  }
}

describe.each(["instead", "after"] as const)("a write of which a call fails (%s)", (when) => {
  /** All that these tests write; looking at it is what takes the time. */
  const written = "A1:D28";
  const next = reportOf([...more.table.rows.slice(0, 3), ["E", 2, "new"]], { cautions: [] });

  const leavesAsItWas = async (action: () => Promise<unknown>) => {
    const before = await workbookImage(host, written);
    const members = await failEverywhere(when, action, async (where, error) => {
      expect({ where, refused: error instanceof HostRefusal }).toEqual({ where, refused: true });
      expect({ where, image: await workbookImage(host, written) }).toEqual({ where, image: before });
    });
    expect(await workbookImage(host, written)).not.toBe(before);
    return members;
  };

  it("leaves no new sheet behind, whichever call it is", async () => {
    expect(await leavesAsItWas(() => writeReport(first, "key"))).toEqual(
      expect.arrayContaining(["WorksheetCollection.add", "TableCollection.add", "Range.values", "ChartCollection.add"]),
    );
  }, 120_000);

  it("leaves a renewed table as it was, with all that a coach has changed, whichever call it is", async () => {
    await writeReport(first, "key");
    await addOwnColumn();
    await dressUp();
    expect(await leavesAsItWas(() => writeReport(next, "key"))).toEqual(
      expect.arrayContaining(["Table.resize", "Range.values", "SettingCollection.add"]),
    );
  }, 120_000);
});

it("takes a write back though a call of the take-back fails, whichever it is", async () => {
  const seen = "A1:D28";
  await writeReport(first, "key");
  const before = await workbookImage(host, seen);
  const deed = await deedOf(writeReport(fewer, "key"));
  const members = await failEverywhere(
    "instead",
    async () => {
      expect(await takeBack(deed)).toEqual({ kind: "takenBack", gone: [] });
    },
    async (where, error) => {
      expect({ where, error }).toEqual({ where, error: null });
      expect({ where, image: await workbookImage(host, seen) }).toEqual({ where, image: before });
      await writeReport(fewer, "key");
    },
  );
  expect(members).toContain("Range.formulas");
}, 120_000);
