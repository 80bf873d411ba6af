import type { Host } from "../../src/host";
import { insertExample } from "../../src/sheet/insertExample";
import { takeBack } from "../../src/sheet/takeBack";
import { addSheet, valuesAt } from "./openWorkbook";
import { formulasAt, openWithFunctions } from "./withFunctions";

let host: Host;

beforeEach(async () => {
  host = await openWithFunctions();
  await addSheet("Notes", [["My squad"], [], ["", "", "mine"]]);
});

afterEach(() => host.dispose());

const rank = "=TAPELINE.SQUADRANK({31.2;28.4;35})";

it("writes into an empty cell with room below, says where, and can be taken back", async () => {
  host.select("Notes!E2");
  const outcome = await insertExample(rank, { rows: 3, columns: 1 });
  expect(outcome).toMatchObject({ kind: "written", address: "Notes!E2:E4" });
  expect(await valuesAt("Notes", "E2:E4")).toEqual([[2], [3], [1]]);
  if (outcome.kind !== "written") throw new Error("Not written.");
  expect(await takeBack(outcome.deed)).toEqual({ kind: "takenBack", gone: [] });
  expect(await valuesAt("Notes", "E2:E4")).toEqual([[""], [""], [""]]);
});

it("is a formula also in a cell kept for text", async () => {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Notes").getRange("E2").numberFormat = [["@"]];
    await context.sync();
  });
  host.select("Notes!E2");
  await insertExample("=TAPELINE.TRIALSCORE({171,174})", { rows: 1, columns: 1 });
  expect(await valuesAt("Notes", "E2")).toEqual([[174]]);
});

it.each([
  ["the cell itself", "Notes!A1", "Notes!A1"],
  ["a cell it would spill into", "Notes!C1", "Notes!C3"],
])("writes nothing where %s is taken, and says so", async (_, selected, address) => {
  host.select(selected);
  expect(await insertExample(rank, { rows: 3, columns: 1 })).toEqual({ kind: "inTheWay", what: "cells", address });
  expect(await valuesAt("Notes", "A1:C3")).toEqual([
    ["My squad", "", ""],
    ["", "", ""],
    ["", "", "mine"],
  ]);
});

it("writes nothing over the edge of the sheet, into merged cells, or spilling in a table", async () => {
  host.select("Notes!E1048575");
  expect(await insertExample(rank, { rows: 3, columns: 1 })).toMatchObject({ kind: "inTheWay", what: "edge" });

  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Notes");
    sheet.getRange("E2:E3").merge();
    sheet.getRange("G1").values = [["Rank"]];
    sheet.tables.add("G1:G5", true).name = "Ranks";
    await context.sync();
  });
  host.select("Notes!E2");
  expect(await insertExample(rank, { rows: 3, columns: 1 })).toMatchObject({ kind: "inTheWay", what: "merged" });
  host.select("Notes!G2");
  expect(await insertExample(rank, { rows: 3, columns: 1 })).toEqual({
    kind: "inTheWay",
    what: "table",
    address: "Ranks",
  });
  expect(await formulasAt("Notes", "G2")).toEqual([[""]]);
});

it("takes three round trips", async () => {
  host.select("Notes!E2");
  const before = host.syncs;
  await insertExample(rank, { rows: 3, columns: 1 });
  expect(host.syncs - before).toBeLessThanOrEqual(4);
});
