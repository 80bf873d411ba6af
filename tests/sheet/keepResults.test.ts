import type { Host } from "../../src/host";
import { keepResults } from "../../src/sheet/keepResults";
import { readKeptResults } from "../../src/sheet/readKeptResults";
import { setUp } from "../../src/sheet/setUp";
import { rowsAtOnce } from "../../src/sheet/storeTables";
import { takeBack } from "../../src/sheet/takeBack";
import { addSheet, openWorkbook, valuesAt } from "./openWorkbook";
import { keptResult } from "./storeRows";

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

const hops = [
  keptResult({ value: 171.5, source: "Hops!C4" }),
  keptResult({ value: 168, trial: 2, source: "Hops!D4" }),
  keptResult({ value: 165.5, side: "right", source: "Hops!E4" }),
  keptResult({ athlete: "Kari Dahl", value: 150, source: "Hops!C5" }),
];

const inTable = async () =>
  (await readKeptResults())!.results.map(({ athlete, side, trial, value }) => `${athlete} ${side} ${trial}: ${value}`);

const tableAddress = () =>
  Excel.run(async (context) => {
    const range = context.workbook.tables.getItem("Tapeline_Results").getRange();
    range.load("address");
    await context.sync();
    return range.address.split("!")[1];
  });

const act = (change: (table: Excel.Table, sheet: Excel.Worksheet) => void) =>
  Excel.run(async (context) => {
    const table = context.workbook.tables.getItem("Tapeline_Results");
    change(table, table.worksheet);
    await context.sync();
  });

const rows = ["Ane Berg left 1: 171.5", "Ane Berg left 2: 168", "Ane Berg right 1: 165.5", "Kari Dahl left 1: 150"];

describe("keepResults(fresh)", () => {
  it("makes the table where there is none, and gives back what it was given", async () => {
    const before = host.syncs;
    const outcome = await keepResults(hops);
    expect(host.syncs - before).toBeLessThanOrEqual(3);
    expect(outcome).toMatchObject({ added: 4, changed: 0, same: 0, clashes: [], inTheWay: null });
    expect(outcome.deed.what).toBe("Kept 4 results on Results.");
    const reading = host.syncs;
    const kept = await readKeptResults();
    expect(host.syncs - reading).toBeLessThanOrEqual(2);
    expect(kept!.remarks).toEqual([]);
    expect(kept!.results).toEqual(hops.map((hop, offset) => ({ ...hop, cell: `Results!G${offset + 5}`, offset })));
    expect(await tableAddress()).toBe("A4:I8");
  });

  it("fills the blank row of an empty table first, then grows it, in three round trips", async () => {
    await setUp({});
    const before = host.syncs;
    expect(await keepResults(hops.slice(0, 3))).toMatchObject({ added: 3 });
    expect(host.syncs - before).toBeLessThanOrEqual(3);
    expect(await tableAddress()).toBe("A4:I7");
    expect(await keepResults(hops)).toMatchObject({ added: 1, same: 3 });
    expect(await inTable()).toEqual(rows);
  });

  it("keeps a trial once: the same again is skipped, a corrected cell renews its row, another origin clashes", async () => {
    await keepResults(hops);
    expect(await keepResults(hops)).toMatchObject({ added: 0, changed: 0, same: 4, deed: { steps: [] } });
    const corrected = keptResult({ value: 177, source: "Hops!C4" });
    const elsewhere = keptResult({ value: 199, trial: 2, source: "Typed!B2" });
    const outcome = await keepResults([corrected, elsewhere]);
    expect(outcome).toMatchObject({ added: 0, changed: 1, same: 0 });
    expect(outcome.clashes).toMatchObject([{ standing: { value: 168 }, fresh: { value: 199, source: "Typed!B2" } }]);
    expect(await inTable()).toEqual(["Ane Berg left 1: 177", ...rows.slice(1)]);
  });

  it("works on with a table renamed, sorted, filtered, with columns moved and added by the coach", async () => {
    await keepResults(hops);
    await act((table) => table.columns.add(-1, [["Mood"], ["a"], ["b"], ["c"], ["d"]]));
    await act((table) => table.columns.add(0, [["No"], [4], [3], [2], [1]]));
    await act((table) => {
      table.sort.apply([{ key: 0, ascending: true }]);
      table.columns.getItem("Athlete").filter.applyValuesFilter(["Kari Dahl"]);
      table.name = "Everything";
    });
    const outcome = await keepResults([
      keptResult({ value: 177, source: "Hops!C4" }),
      keptResult({ value: 180, trial: 3, source: "Hops!F4" }),
    ]);
    expect(outcome).toMatchObject({ added: 1, changed: 1, inTheWay: null });
    expect(await valuesAt("Results", "A5:K9")).toMatchObject([
      [1, expect.anything(), "Kari Dahl", expect.anything(), "", "left", 1, 150, "cm", "Hops!C5", "d"],
      [2, expect.anything(), "Ane Berg", expect.anything(), "", "right", 1, 165.5, "cm", "Hops!E4", "c"],
      [3, expect.anything(), "Ane Berg", expect.anything(), "", "left", 2, 168, "cm", "Hops!D4", "b"],
      [4, expect.anything(), "Ane Berg", expect.anything(), "", "left", 1, 177, "cm", "Hops!C4", "a"],
      ["", expect.anything(), "Ane Berg", expect.anything(), "", "left", 3, 180, "cm", "Hops!F4", ""],
    ]);
  });

  it("writes nothing over cells below the table, a row of totals, or a formula of the coach's", async () => {
    await keepResults(hops);
    await host.type("Results!B10", "my note");
    const more = [5, 6].map((trial) => keptResult({ trial, value: 170, source: `Hops!H${trial}` }));
    expect(await keepResults(more.slice(0, 1))).toMatchObject({ added: 1, inTheWay: null });
    expect(await keepResults(more)).toMatchObject({ added: 0, inTheWay: { sheet: "Results", cell: "B10" } });
    expect(await valuesAt("Results", "B10")).toEqual([["my note"]]);
    await host.type("Results!G5", "=170+1.5");
    expect(await keepResults([keptResult({ value: 172 })])).toMatchObject({ changed: 0, clashes: [{}] });
    await act((table) => {
      table.showTotals = true;
    });
    expect(await keepResults(more)).toMatchObject({ added: 0, inTheWay: { cell: "A10" } });
    expect((await inTable()).length).toBe(5);
  });

  it("says which column is missing, and writes nothing", async () => {
    await keepResults(hops);
    await act((table) => table.columns.getItem("Trial").delete());
    expect((await keepResults([keptResult({ trial: 9 })])).inTheWay?.why).toContain("“Trial”");
  });

  it("leaves the workbook as it was where the sheet is protected", async () => {
    await keepResults(hops);
    await act((_, sheet) => sheet.protection.protect());
    await expect(keepResults([keptResult({ value: 1 }), keptResult({ trial: 7 })])).rejects.toMatchObject({
      name: "HostRefusal",
    });
    expect(await inTable()).toEqual(rows);
    expect(await tableAddress()).toBe("A4:I8");
  });

  it("begins anew where the coach has deleted the table", async () => {
    await keepResults(hops);
    await act((_, sheet) => sheet.delete());
    expect(await readKeptResults()).toBeNull();
    expect(await keepResults(hops)).toMatchObject({ added: 4 });
    expect(await inTable()).toEqual(rows);
  });

  describe("with more results than are written at once", () => {
    const many = Array.from({ length: 2300 }, (_, index) => keptResult({ trial: index + 1, value: 100 + index / 100 }));

    beforeEach(async () => {
      await keepResults(hops.slice(1, 2));
    });

    it("tells how far it is, and keeps all, to be taken back as a whole", async () => {
      const told: string[] = [];
      const outcome = await keepResults(many, { onProgress: (done, of) => told.push(`${done} of ${of}`) });
      expect(outcome).toMatchObject({ added: 2299, cancelled: false, clashes: [{}] });
      expect(told).toEqual(["2222 of 2299"]);
      expect(await tableAddress()).toBe("A4:I2304");
      expect(await valuesAt("Results", "F2304:G2304")).toEqual([[2300, 122.99]]);
      await takeBack(outcome.deed);
      expect(await inTable()).toEqual([rows[1]]);
      expect(await tableAddress()).toBe("A4:I5");
    });

    it("can be stopped, and then has kept nothing", async () => {
      const stop = new AbortController();
      const outcome = await keepResults(many, { signal: stop.signal, onProgress: () => stop.abort() });
      expect(outcome).toMatchObject({ added: 0, changed: 0, cancelled: true, deed: { steps: [] } });
      expect(await inTable()).toEqual([rows[1]]);
      expect(await tableAddress()).toBe("A4:I5");
      expect((await valuesAt("Results", "A6:I2304")).flat().every((cell) => cell === "")).toBe(true);
    });
  });

  it("can be taken back: the rows added, the value renewed, the table made", async () => {
    await addSheet("Hops", [["mine"]]);
    const first = await keepResults(hops);
    const second = await keepResults([keptResult({ value: 177 }), keptResult({ trial: 8, value: 150 })]);
    await takeBack(second.deed);
    expect(await inTable()).toEqual(rows);
    expect(await tableAddress()).toBe("A4:I8");
    await takeBack(first.deed);
    expect(await readKeptResults()).toBeNull();
  });
});

describe("readKeptResults()", () => {
  it("tells what it cannot read, by its cell, and goes on with the rest", async () => {
    await keepResults(hops);
    await host.type("Results!E5", "both");
    await host.type("Results!G6", "far");
    await host.type("Results!F7", "");
    await host.type("Results!A8", "soon");
    const { results, remarks } = (await readKeptResults())!;
    expect(results).toHaveLength(1);
    expect(results[0]).toMatchObject({ side: "right", trial: 1, value: 165.5 });
    expect(remarks).toEqual([
      { sheet: "Results", cell: "E5", why: "“both” is neither left nor right. The row was left out." },
      { sheet: "Results", cell: "G6", why: "“far” is text; a number is needed. The row was left out." },
      { sheet: "Results", cell: "A8", why: "“soon” is not a date. The row was left out." },
    ]);
  });

  it("reads a table beyond the rows of one answer in one round trip more", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.add("Results");
      const headings = ["Date", "Athlete", "Test", "Measure", "Side", "Trial", "Value", "Unit", "Source"];
      const rows = Array.from({ length: 30 }, (_, index) => [
        ...["2026-08-11", "Ane Berg", "Hop", "", "left", index + 1, 150 + index, "cm", ""],
      ]);
      const area = sheet.getRangeByIndexes(rowsAtOnce - 11, 0, 31, 9);
      area.values = [headings, ...rows];
      sheet.tables.add(area, true).name = "Tapeline_Results";
      await context.sync();
    });
    const before = host.syncs;
    const { results, remarks } = (await readKeptResults())!;
    expect(host.syncs - before).toBe(3);
    expect(remarks).toEqual([]);
    expect(results.map(({ value }) => value)).toEqual(Array.from({ length: 30 }, (_, index) => 150 + index));
    expect(results.at(-1)!.cell).toBe(`Results!G${rowsAtOnce + 20}`);
  });
});
