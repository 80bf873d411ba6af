import type { Host } from "../../src/host";
import { replaceByValues } from "../../src/sheet/replaceByValues";
import { takeBack } from "../../src/sheet/takeBack";
import { addSheet, valuesAt } from "./openWorkbook";
import { formulasAt, openWithFunctions } from "./withFunctions";

let host: Host;

const rows = [
  [
    31.2,
    "=TAPELINE.TRIALSCORE(A1:A3)",
    "=TAPELINE.SIDEDIFFERENCE(A1:A5,35)",
    "=SUM(A1:A3)",
    "=ROUND(TAPELINE.TRIALSCORE(A1:A3),0)+1",
  ],
  [28.4, "=TAPELINE.STRONGERSIDE(A1,A2)", "", '="TAPELINE.RSI("', "=TAPELINE.TRIALSCORE(D9:E9)"],
  [35, '=IF(TRUE,"+x",TAPELINE.RSI(1,2))', "", "", "=B1"],
  ["DNS", "", "", "", ""],
  ["n/a?", "", "", "", ""],
] as const;

beforeEach(async () => {
  host = await openWithFunctions();
  await addSheet("Jumps", rows as never);
  await addSheet("Other", [["=TAPELINE.TRIALSCORE({1,2})"]]);
  host.select("Jumps!A1");
});

afterEach(() => host.dispose());

/** What 35 is above it, in percent. */
const below = (left: number) => (100 * (35 - left)) / 35;

const before = [
  [31.2, 35, below(31.2), 94.6, 36],
  [28.4, "Left", below(28.4), "TAPELINE.RSI(", "#N/A"],
  [35, "+x", 0, "", 35],
  ["DNS", "", "", "", ""],
  ["n/a?", "", "#VALUE!", "", ""],
];

it("makes values of our formulas in the workbook, whole where they spill, and leaves all others", async () => {
  expect(await valuesAt("Jumps", "A1:E5")).toEqual(before);
  const replaced = await replaceByValues("workbook");
  expect(replaced.count).toBe(6);
  expect(replaced.cells).toEqual(["Jumps!C1:C5", "Jumps!B1:B3", "Jumps!E1", "Other!A1"]);
  expect(await valuesAt("Jumps", "A1:E5")).toEqual(before);
  expect(await formulasAt("Jumps", "B1:E3")).toEqual([
    [35, below(31.2), "=SUM(A1:A3)", 36],
    ["Left", below(28.4), '="TAPELINE.RSI("', "=TAPELINE.TRIALSCORE(D9:E9)"],
    ["+x", 0, "", "=B1"],
  ]);
  expect(await formulasAt("Other", "A1")).toEqual([[2]]);
});

it("leaves a formula that shows an error and tells it, and tells errors among values that spilt", async () => {
  expect((await replaceByValues("workbook")).errors).toEqual([
    { cell: "Jumps!C5", error: "#VALUE!", formulaLeft: false },
    { cell: "Jumps!E2", error: "#N/A", formulaLeft: true },
  ]);
});

it.each([
  ["a cell", "Jumps!B2", ["Jumps!B2"]],
  ["a cell that another spilt into", "Jumps!C3", ["Jumps!C1:C5"]],
  ["several areas", "Jumps!A1:B1,Jumps!E1:E3", ["Jumps!B1", "Jumps!E1"]],
  ["cells without any", "Jumps!D1:D3", []],
])("keeps to the selection: %s", async (_, selected, cells) => {
  host.select(selected);
  const replaced = await replaceByValues("selection");
  expect(replaced.cells).toEqual(cells);
  expect(await formulasAt("Other", "A1")).toEqual([["=TAPELINE.TRIALSCORE({1,2})"]]);
});

it("keeps to the sheet at hand", async () => {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Other").activate();
    await context.sync();
  });
  expect((await replaceByValues("sheet")).cells).toEqual(["Other!A1"]);
});

it("can be taken back, so that the formulas spill again", async () => {
  const { deed } = await replaceByValues("workbook");
  expect(deed.what).toBe("Replaced 6 formulas by values");
  expect(await takeBack(deed)).toEqual({ kind: "takenBack", gone: [] });
  expect(await valuesAt("Jumps", "A1:E5")).toEqual(before);
  expect((await formulasAt("Jumps", "C1"))[0]).toEqual(["=TAPELINE.SIDEDIFFERENCE(A1:A5,35)"]);
  await host.type("Jumps!A1", 40);
  expect(await valuesAt("Jumps", "C1:C3")).toEqual([[-12.5], [below(28.4)], [0]]);
});

it("takes as many round trips for many formulas as for few", async () => {
  await addSheet(
    "Long",
    Array.from({ length: 300 }, (_, index) => [index + 1, `=TAPELINE.TRIALSCORE(A${index + 1})`]),
  );
  const start = host.syncs;
  const replaced = await replaceByValues("workbook");
  expect(replaced.cells).toContain("Long!B1:B300");
  expect(host.syncs - start).toBeLessThanOrEqual(5);
});
