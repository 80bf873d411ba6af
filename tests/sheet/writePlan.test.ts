import type { Host } from "../../src/host";
import { readProgramme } from "../../src/sheet/readProgramme";
import { takeBack } from "../../src/sheet/takeBack";
import { writePlan } from "../../src/sheet/writePlan";
import { failAt } from "./failAt";
import { addSheet, openWorkbook, valuesAt } from "./openWorkbook";
import { plannedRow } from "./plannedRows";
import { workbookImage } from "./workbookImage";

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

const plan = [
  plannedRow("Ane Berg", "Back squat"),
  plannedRow("Ane Berg", "Bounding", { load: null, total: 24, repetitions: "8 contacts" }),
  plannedRow("Kari Dahl", "Back squat", { load: 62.5 }),
];

const act = (change: (table: Excel.Table, sheet: Excel.Worksheet) => void) =>
  Excel.run(async (context) => {
    const table = context.workbook.tables.getItem("Tapeline_Plan");
    change(table, table.worksheet);
    await context.sync();
  });

const inTable = async () =>
  (await readProgramme()).plan.map(({ athlete, exercise, sets, load }) => `${athlete}, ${exercise}: ${sets} x ${load}`);

const bodyOfTable = () =>
  Excel.run(async (context) => {
    const range = context.workbook.tables.getItem("Tapeline_Plan").getDataBodyRange();
    range.load("values");
    await context.sync();
    return range.values;
  });

describe("writePlan(fresh)", () => {
  it("makes the table and gives back what was planned, in three and two round trips", async () => {
    const before = host.syncs;
    const outcome = await writePlan(plan);
    expect(host.syncs - before).toBeLessThanOrEqual(3);
    expect(outcome).toMatchObject({ sheet: "Plan", written: 3, coachs: 0, inTheWay: null });
    expect(outcome.deed.what).toBe("Wrote 3 rows on Plan.");
    const reading = host.syncs;
    const { plan: read, remarks, present } = await readProgramme();
    expect(host.syncs - reading).toBeLessThanOrEqual(2);
    expect(remarks).toEqual([]);
    expect([...present]).toEqual(["plan"]);
    expect(read).toEqual(plan.map((row) => ({ ...row, asPlanned: expect.any(String) })));
  });

  it("writes nothing where nothing has changed", async () => {
    await writePlan(plan);
    expect(await writePlan(plan)).toMatchObject({ written: 3, coachs: 0, deed: { steps: [] } });
  });

  it("renews in place, fills rows given up and adds the rest, in three round trips", async () => {
    await writePlan(plan);
    const before = host.syncs;
    const next = [
      plannedRow("Ane Berg", "Back squat", { load: 82.5 }),
      plannedRow("Kari Dahl", "Back squat", { load: 65 }),
      plannedRow("Kari Dahl", "Split squat", { load: null }),
      plannedRow("Liv Aas", "=Sum", { load: null }),
    ];
    expect(await writePlan(next)).toMatchObject({ written: 4, coachs: 0 });
    expect(host.syncs - before).toBeLessThanOrEqual(3);
    expect(await inTable()).toEqual([
      "Ane Berg, Back squat: 4 x 82.5",
      "Kari Dahl, Split squat: 4 x null",
      "Kari Dahl, Back squat: 4 x 65",
      "Liv Aas, =Sum: 4 x null",
    ]);
    expect((await readProgramme()).plan.every(({ repetitions }) => repetitions === "5")).toBe(true);
  });

  it("keeps the coach's changed row, own row, own columns and sorting", async () => {
    await writePlan(plan);
    await host.type("Plan!F5", "2");
    await act((table) => {
      table.rows.add(-1, [[1, 46265, 1, "Kari Dahl", "Swim", 1, "20 min", "easy", "", "", "She likes it", ""]]);
      table.columns.add(-1, [["Felt"], ["a"], ["b"], ["c"], ["d"]]);
      table.columns.add(-1, [["Twice"], ["=1+1"], ["=1+1"], ["=1+1"], ["=1+1"]]);
      table.sort.apply([{ key: 3, ascending: false }]);
    });
    const next = plan.map((row) => (row.load === null ? row : { ...row, load: row.load + 5 }));
    const outcome = await writePlan(next.filter(({ exercise }) => exercise !== "Bounding"));
    expect(outcome).toMatchObject({ written: 1, coachs: 2 });
    expect(outcome.deed.what).toBe("Wrote 1 row on Plan, and left 2 of yours as they were.");
    const body = (await bodyOfTable()).map((row) => [row[3], row[4], row[5], row[8], row[12], row[13]]);
    expect(body).toEqual([
      ["Kari Dahl", "Back squat", 4, 67.5, "c", 2],
      ["Kari Dahl", "Swim", 1, "", "d", 2],
      ["Ane Berg", "Back squat", 2, 80, "a", 2],
      // No longer planned: our cells are empty, the coach's note stays.
      ["", "", "", "", "b", 2],
    ]);
    // A new row goes below, never beside a note about another.
    expect(await writePlan([...next.slice(0, 1), next[2]!, plannedRow("Ane Berg", "Press-up")])).toMatchObject({
      written: 2,
    });
    expect((await bodyOfTable()).map((row) => [row[4], row[12]])).toEqual([
      ...[
        ["Back squat", "c"],
        ["Swim", "d"],
        ["Back squat", "a"],
        ["", "b"],
      ],
      ["Press-up", ""],
    ]);
  });

  it("leaves a row whose load the coach computes, or that cannot be read, as it is", async () => {
    await writePlan(plan);
    await host.type("Plan!I5", "=60+20");
    await host.type("Plan!A7", "soon");
    const outcome = await writePlan(plan.map((row) => ({ ...row, load: 100 })));
    expect(outcome).toMatchObject({ coachs: 2, written: 2 });
    expect((await bodyOfTable()).map((row) => [row[0], row[8]])).toEqual([
      [1, 80],
      [1, 100],
      ["soon", 62.5],
      [1, 100],
    ]);
  });

  it("keeps number formats of the coach's", async () => {
    await writePlan(plan);
    await act((_, sheet) => {
      sheet.getRange("I5").numberFormat = [["0.00"]];
    });
    await writePlan(plan.map((row) => ({ ...row, load: 90 })));
    const format = await Excel.run(async (context) => {
      const cells = context.workbook.worksheets.getItem("Plan").getRange("G5:I5").load("numberFormat");
      await context.sync();
      return cells.numberFormat;
    });
    expect(format).toEqual([["@", "@", "0.00"]]);
  });

  it("leaves the weeks of an earlier block as a record, and plans its rows anew in the next", async () => {
    await writePlan([...plan, plannedRow("Ane Berg", "Back squat", { week: 2, begins: "2026-09-07" })]);
    await host.type("Plan!F5", "2");
    const next = plan.map((row) => ({ ...row, begins: "2026-09-14" }));
    expect(await writePlan(next, { today: "2026-09-13" })).toMatchObject({ written: 3, coachs: 0 });
    const rows = async () => (await readProgramme()).plan.map(({ begins, week, sets }) => `${begins} ${week} ${sets}`);
    // The week that is under way gives way to the new block; what is over stays, changed by the coach or not.
    expect(await rows()).toEqual([
      ...["2026-08-31 1 2", "2026-08-31 1 4", "2026-08-31 1 4"],
      ...Array(3).fill("2026-09-14 1 4"),
    ]);
    // Begun later than first thought: nothing was over, so nothing of the earlier wish stays.
    const later = next.map((row) => ({ ...row, begins: "2026-09-28" }));
    expect(await writePlan(later, { today: "2026-09-13" })).toMatchObject({ written: 3, coachs: 0 });
    expect((await rows()).slice(3)).toEqual(Array(3).fill("2026-09-28 1 4"));
  });

  it("can be taken back, also when it grew the table", async () => {
    await addSheet("Mine", [["a"]]);
    const empty = await workbookImage(host, "A1:N20");
    const first = await writePlan(plan);
    const before = await workbookImage(host, "A1:N7");
    const second = await writePlan([...plan.slice(1), plannedRow("Liv Aas", "Bounding"), plannedRow("Liv Aas", "Run")]);
    await takeBack(second.deed);
    expect(await workbookImage(host, "A1:N7")).toBe(before);
    expect(await valuesAt("Plan", "A8:L9")).toEqual(Array(2).fill(Array(12).fill("")));
    await takeBack(first.deed);
    expect(await workbookImage(host, "A1:N20")).toBe(empty);
  });

  it("writes nothing over a row of totals or cells below, and says what is in the way", async () => {
    await writePlan(plan);
    await host.type("Plan!B9", "mine");
    const more = [...plan, plannedRow("Liv Aas", "Run"), plannedRow("Liv Aas", "Bounding")];
    expect(await writePlan(more)).toMatchObject({ written: 0, inTheWay: { sheet: "Plan", cell: "B9" } });
    expect(await writePlan(more.slice(0, 4))).toMatchObject({ written: 4, inTheWay: null });
    await host.type("Plan!B9", "");
    await act((table) => {
      table.showTotals = true;
    });
    expect(await writePlan(more)).toMatchObject({ written: 0, inTheWay: { cell: "A9" } });
    await act((table) => {
      table.showTotals = false;
      table.columns.getItem("Sets").delete();
    });
    expect((await writePlan(more)).inTheWay?.why).toContain("“Sets”");
  });

  it("leaves everything as it was where the sheet is protected, or a call fails half way", async () => {
    await writePlan(plan);
    const before = await workbookImage(host, "A1:N9");
    const next = [...plan.map((row) => ({ ...row, load: 40 })), plannedRow("Liv Aas", "Run")];
    await act((_, sheet) => sheet.protection.protect());
    await expect(writePlan(next)).rejects.toMatchObject({ name: "HostRefusal" });
    await act((_, sheet) => sheet.protection.unprotect());
    expect(await workbookImage(host, "A1:N9")).toBe(before);
    let calls = 0;
    for (let n = 1; n < 200; n += 7) {
      const { member, error } = await failAt(n, "instead", () => writePlan(next));
      if (member === null) break;
      calls += 1;
      expect(error).toMatchObject({ name: "HostRefusal" });
      expect((await readProgramme()).plan.map(({ load }) => load)).toEqual([80, null, 62.5]);
    }
    expect(calls).toBeGreaterThan(5);
  });

  it("stands beside a sheet of the coach's with that name", async () => {
    await addSheet("Plan", [["mine"]]);
    expect((await writePlan(plan)).sheet).toBe("Plan 2");
    expect(await valuesAt("Plan", "A1")).toEqual([["mine"]]);
  });
});
