import type { Host } from "../../src/host";
import { readBackground } from "../../src/sheet/readBackground";
import { setUp } from "../../src/sheet/setUp";
import { openWorkbook } from "./openWorkbook";
import { batteryTest, squadMember } from "./storeRows";

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

const squad = [
  squadMember("Ane Berg", { role: "Back", bodyMass: 71.5 }),
  squadMember("Kari Dahl", { role: "Wing" }),
  squadMember("Bo Lund", { role: "Pivot" }),
];
const battery = [
  batteryTest("Hop", { unit: "cm", sides: 2, trials: 3 }),
  batteryTest("Sprint", { direction: "lower" }),
];
const weights = [{ quality: "Speed", role: "Wing", weight: 2 }];

const act = (change: (workbook: Excel.Workbook) => void) =>
  Excel.run(async (context) => {
    change(context.workbook);
    await context.sync();
  });

describe("readBackground()", () => {
  it("is empty in a workbook where nothing was set up", async () => {
    expect(await readBackground()).toEqual({
      background: { squad: [], battery: [], weights: [] },
      remarks: [],
      present: new Set(),
    });
  });

  it("reads tables that a coach has renamed, moved, sorted, filtered and given columns of their own", async () => {
    await setUp({ squad, battery, weights });
    await act(({ tables }) => {
      const table = tables.getItem("Tapeline_Squad");
      table.columns.add(0, [["Locker"], [3], [1], [2]]);
      table.sort.apply([{ key: 0, ascending: true }]);
      table.columns.getItem("Role").filter.applyValuesFilter(["Wing"]);
      table.name = "Our_people";
      table.worksheet.name = "People";
    });
    const before = host.syncs;
    const { background, remarks } = await readBackground();
    expect(host.syncs - before).toBeLessThanOrEqual(2);
    expect(remarks).toEqual([]);
    expect(background.squad).toEqual([squad[1], squad[2], squad[0]]);
    expect(background.battery).toEqual(battery);
    expect(background.weights).toEqual(weights);
  });

  it("reads rows and roles that a coach adds, with blank rows between and a row of totals below", async () => {
    await setUp({ squad, battery, weights });
    await act(({ tables }) => {
      tables.getItem("Tapeline_Squad").resize("A4:H10");
      tables.getItem("Tapeline_Weights").columns.add(-1, [["Libero"], [0.5]]);
    });
    await host.type("Squad!A10", "  Sol Vik ");
    await host.type("Squad!F10", "68,5 kg");
    await act(({ tables }) => {
      tables.getItem("Tapeline_Squad").showTotals = true;
    });
    const { background, remarks } = await readBackground();
    expect(remarks).toEqual([]);
    expect(background.squad).toEqual([...squad, squadMember("Sol Vik", { bodyMass: 68.5 })]);
    expect(background.weights).toEqual([...weights, { quality: "Speed", role: "Libero", weight: 0.5 }]);
  });

  it("tells each wrong word by sheet and cell, and goes on", async () => {
    await setUp({ squad, battery, weights });
    await act(({ worksheets }) => {
      worksheets.getItem("Battery").getRange("E5").values = [["hi"]];
      worksheets.getItem("Battery").getRange("H6").values = [["highest"]];
      worksheets.getItem("Squad").getRange("F6").formulas = [["=1/0"]];
      worksheets.getItem("Squad").getRange("A7").values = [["kari dahl"]];
    });
    const { background, remarks } = await readBackground();
    expect(remarks.map(({ sheet, cell, why }) => `${sheet}, ${cell}: ${why}`)).toEqual([
      "Squad, F6: The cell shows the error #DIV/0!.",
      "Squad, A7: “kari dahl” also stands in A6; only the first row counts.",
      "Battery, E5: “hi” is neither higher nor lower.",
      "Battery, H6: “highest” is no score; best, mean, median or mean of best two is needed.",
    ]);
    expect(background.squad).toEqual(squad.slice(0, 2));
    expect(background.battery).toEqual(battery);
  });

  it("finds tables by their names, and says so, where the memory was written by a newer version", async () => {
    await setUp({ squad, battery });
    await act(({ settings }) => settings.add("Tapeline.tables", { version: 2, tables: "else" }));
    const { background, remarks, present } = await readBackground();
    expect(background.squad).toEqual(squad);
    expect(remarks.map(({ sheet, cell }) => `${sheet}!${cell}`)).toEqual(["Squad!A4", "Battery!A4"]);
    expect(remarks[0]!.why).toContain("newer version");
    expect([...present].sort()).toEqual(["battery", "results", "squad"]);
    expect((await setUp({ weights })).deed.steps.map(({ kind }) => kind)).toEqual(["removeSheet"]);
    expect((await readBackground()).background.weights).toEqual(weights);
  });
});
