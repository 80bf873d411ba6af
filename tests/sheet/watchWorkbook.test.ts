import type { Host } from "../../src/host";
import { watchWorkbook } from "../../src/sheet/watchWorkbook";
import { addSheet, openWorkbook } from "./openWorkbook";

let host: Host;

beforeEach(async () => {
  host = openWorkbook();
  await addSheet("Hops", [["A", 1]]);
  await addSheet("Other", [["B", 2]]);
});

afterEach(() => host.dispose());

/** Events come after the gesture, in their own time. */
const soon = () => new Promise((resolve) => setTimeout(resolve, 20));

describe("watchWorkbook(watch)", () => {
  it("tells of selections on any sheet, of going to a sheet, and of edits, until it is stopped", async () => {
    const told: string[] = [];
    const stop = await watchWorkbook({ onSelect: () => told.push("select"), onEdit: () => told.push("edit") });
    host.select("Hops!A1:B1");
    await soon();
    expect(told).toContain("select");

    told.length = 0;
    await host.type("Hops!B1", 5);
    await soon();
    expect(told).toContain("edit");

    told.length = 0;
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Hops").getRange("A1").rowHidden = true;
      await context.sync();
    });
    await soon();
    expect(told).toContain("edit");

    await stop();
    told.length = 0;
    host.select("Other!A1");
    await host.type("Other!A1", "x");
    await soon();
    expect(told).toEqual([]);
  });
});
