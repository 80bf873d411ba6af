import type { Host } from "../../src/host";
import { repairFormulas } from "../../src/sheet/repairFormulas";
import { takeBack } from "../../src/sheet/takeBack";
import { addSheet, valuesAt } from "./openWorkbook";
import { formulasAt, openWithFunctions } from "./withFunctions";

let host: Host;

const marked = (row: number) => `=_xldudf_TAPELINE_ASYMMETRY(A${row}:B${row},C${row}:D${row})`;

beforeEach(async () => {
  host = await openWithFunctions();
  await addSheet("Hop test", [
    [180, 178, 200, 196, marked(1)],
    [170, 171, 168, 169, marked(2)],
    [150, 155, 149, 150, "=IFERROR(_xldudf_TAPELINE_ASYMMETRY(A3:B3,C3:D3),0)"],
    [1, 2, 3, 4, "=NOBODYKNOWS(A4)"],
    [1, 2, 3, 4, "=TAPELINE.NOBODYKNOWS(A5)"],
  ]);
  await addSheet("Other", [["=TAPELINE.TRIALSCORE({1,2})", "=1+1", "=_xldudf_TAPELINE_RSI_FLIGHT(0.5,0.2)"]]);
});

afterEach(() => host.dispose());

it("writes marked formulas anew on every sheet, says how many and where, and touches no others", async () => {
  expect(await valuesAt("Hop test", "E1:E3")).toEqual([["#NAME?"], ["#NAME?"], [0]]);
  const repaired = await repairFormulas();
  expect(repaired.count).toBe(5);
  expect(repaired.cells).toEqual(["'Hop test'!E1:E3", "'Hop test'!E5", "Other!C1"]);
  expect(await formulasAt("Hop test", "E1:E5")).toEqual([
    ["=TAPELINE.ASYMMETRY(A1:B1,C1:D1)"],
    ["=TAPELINE.ASYMMETRY(A2:B2,C2:D2)"],
    ["=IFERROR(TAPELINE.ASYMMETRY(A3:B3,C3:D3),0)"],
    ["=NOBODYKNOWS(A4)"],
    ["=TAPELINE.NOBODYKNOWS(A5)"],
  ]);
  expect(await valuesAt("Hop test", "E1")).toEqual([[10]]);
  expect(await valuesAt("Other", "A1:C1")).toEqual([[2, 2, 2.5]]);
});

it("tells which of ours are not known after it either", async () => {
  expect((await repairFormulas()).still).toEqual(["'Hop test'!E5"]);
});

it("can be taken back", async () => {
  const { deed } = await repairFormulas();
  expect(deed.what).toBe("Repaired 5 formulas");
  expect(await takeBack(deed)).toEqual({ kind: "takenBack", gone: [] });
  const formulas = (await formulasAt("Hop test", "E1:E2")).flat();
  expect(formulas.map((formula) => String(formula).toUpperCase())).toEqual(
    [marked(1), marked(2)].map((formula) => formula.toUpperCase()),
  );
});

it("does nothing where all is well, and five round trips at most whatever the number", async () => {
  const before = host.syncs;
  await repairFormulas();
  expect(host.syncs - before).toBeLessThanOrEqual(5);
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Hop test").getRange("E5").clear();
    await context.sync();
  });
  expect(await repairFormulas()).toMatchObject({ count: 0, cells: [], still: [], deed: { steps: [] } });
});
