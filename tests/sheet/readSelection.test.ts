import type { Host } from "../../src/host";
import type { Selection } from "../../src/sheet/readSelection";
import { readAgain, readSelection } from "../../src/sheet/readSelection";
import { addSheet, openWorkbook } from "./openWorkbook";

let host: Host;

beforeEach(async () => {
  host = openWorkbook();
  await addSheet("Hop test", [
    ["Single-leg hop"],
    [],
    ["Athlete", "Left (cm)", "Right (cm)"],
    ["A", 150, "DNS"],
    ["B", "=1/0", 155],
    ["C", true, ""],
  ]);
});

afterEach(() => host.dispose());

async function gridAt(address: string) {
  host.select(address);
  const selection = await readSelection();
  if (selection.kind !== "cells") throw new Error(`Nothing at ${address}.`);
  return selection;
}

describe("readSelection()", () => {
  it("reads cells by their kind: empty, number, text, error, true", async () => {
    const { grid, grownFrom } = await gridAt("'Hop test'!A3:C6");
    expect(grid).toMatchObject({ sheet: "Hop test", firstRow: 2, firstColumn: 0, hiddenRows: [], mergedAreas: [] });
    expect(grid.cells).toEqual([
      ["Athlete", "Left (cm)", "Right (cm)"],
      ["A", 150, "DNS"],
      ["B", { error: "#DIV/0!" }, 155],
      ["C", true, null],
    ]);
    expect(grownFrom).toBeNull();
  });

  it("reads only the used part of whole columns", async () => {
    const { grid } = await gridAt("'Hop test'!A:C");
    expect(grid.cells).toHaveLength(6);
  });

  it("grows a single cell to the block of cells it stands in", async () => {
    const { grid, grownFrom } = await gridAt("'Hop test'!B5");
    expect(grid.firstRow).toBe(2);
    expect(grid.cells).toHaveLength(4);
    expect(grownFrom).toBe("B5");
  });

  it("reads several areas as the rectangle around them, and says what was not selected", async () => {
    const { grid } = await gridAt("'Hop test'!A3:A6,'Hop test'!C3:C6");
    expect(grid.unselectedColumns).toEqual([1]);
    expect(grid.cells[0]).toHaveLength(3);
  });

  it("says so where nothing stands", async () => {
    host.select("'Hop test'!H1:J9");
    expect(await readSelection()).toEqual({ kind: "empty", sheet: "Hop test", address: "H1:J9" });
    host.select("'Hop test'!H9");
    expect(await readSelection()).toMatchObject({ kind: "empty" });
  });

  it("tells hidden rows and merged cells", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Hop test");
      sheet.getRange("A5").rowHidden = true;
      sheet.getRange("A1:C1").merge();
      await context.sync();
    });
    const { grid } = await gridAt("'Hop test'!A1:C6");
    expect(grid.hiddenRows).toEqual([4]);
    expect(grid.mergedAreas).toEqual(["A1:C1"]);
  });

  it("takes two round trips, whatever is selected", async () => {
    for (const address of [
      "'Hop test'!A3:C6",
      "'Hop test'!A:C",
      "'Hop test'!B5",
      "'Hop test'!A3:A6,'Hop test'!C3:C6",
    ]) {
      host.select(address);
      const before = host.syncs;
      await readSelection();
      expect(host.syncs - before).toBeLessThanOrEqual(2);
    }
  });
});

describe("readAgain(selection)", () => {
  it("reads the same cells after an edit", async () => {
    const selection: Selection & { kind: "cells" } = await gridAt("'Hop test'!A3:C6");
    await host.type("'Hop test'!C4", 151);
    const again = await readAgain(selection);
    expect(again).toMatchObject({ kind: "cells", grid: { firstRow: 2 } });
    expect(again.kind === "cells" && again.grid.cells[1]).toEqual(["A", 150, 151]);
  });
});
