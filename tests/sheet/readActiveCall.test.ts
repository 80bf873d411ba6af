import type { Host } from "../../src/host";
import { constantOf, readActiveCall } from "../../src/sheet/readActiveCall";
import { addSheet } from "./openWorkbook";
import { openWithFunctions } from "./withFunctions";

let host: Host;

beforeEach(async () => {
  host = await openWithFunctions();
  await addSheet("Hop test", [
    ["A", 180, "DNS", "=1/0", "", '=TAPELINE.TRIALSCORE(B1:E1,"best")'],
    ["B", 170, 171, 168, 169, "=TAPELINE.JUMPHEIGHT($B$1:B3)"],
    ["C", 0.5, "", "", "", ""],
    ["D", "=TAPELINE.TRIALSCORE(B9:D9)", "=TAPELINE.TRIALSCORE(MAX(B1,B2))", "=SUM(B1:B2)", "x", ""],
  ]);
  await addSheet("Other", [["=1+TAPELINE.RSI('Hop test'!B3,B:B)", 0.2]]);
});

afterEach(() => host.dispose());

const callAt = (address: string) => {
  host.select(address);
  return readActiveCall();
};

const divided = { type: "Error", basicType: "Error", basicValue: "#DIV/0!" };

it("gives the function, its arguments with what their cells hold, and no error where there is none", async () => {
  expect(await callAt("'Hop test'!F1")).toEqual({
    address: "'Hop test'!F1",
    id: "TRIALSCORE",
    arguments: [
      { text: "B1:E1", cells: [[180, "DNS", divided, null]] },
      { text: '"best"', cells: [["best"]] },
    ],
    offset: { row: 0, column: 0 },
    error: null,
  });
});

it("finds the formula that spilt into the cell, and which of its answers the cell shows", async () => {
  const call = await callAt("'Hop test'!F3");
  expect(call).toMatchObject({ address: "'Hop test'!F3", id: "JUMPHEIGHT", offset: { row: 1, column: 0 } });
  expect(call?.arguments[0]).toEqual({ text: "$B$1:B3", cells: [[180], [170], [0.5]] });
});

it("tells the error a cell shows", async () => {
  expect(await callAt("'Hop test'!B4")).toMatchObject({ error: "#N/A", arguments: [{ cells: [[null, null, null]] }] });
});

it("reads other sheets and whole columns, and says of nested functions that it cannot", async () => {
  expect((await callAt("Other!A1"))?.arguments).toEqual([
    { text: "'Hop test'!B3", cells: [[0.5]] },
    { text: "B:B", cells: [[0.2]] },
  ]);
  expect((await callAt("'Hop test'!C4"))?.arguments).toEqual([{ text: "MAX(B1,B2)", cells: null }]);
});

it("gives nothing for other formulas, values and empty cells", async () => {
  for (const address of ["D4", "E4", "Z99"]) expect(await callAt(`'Hop test'!${address}`)).toBeNull();
});

it("takes two round trips", async () => {
  const before = host.syncs;
  await callAt("'Hop test'!F1");
  expect(host.syncs - before).toBeLessThanOrEqual(3);
});

describe("constantOf(text)", () => {
  it.each([
    ["", [[null]]],
    ["1.5", [[1.5]]],
    ["-2e3", [[-2000]]],
    ["95%", [[0.95]]],
    ["true", [[true]]],
    ['"a ""b"", c"', [['a "b", c']]],
    [
      "{1,2;3,-4}",
      [
        [1, 2],
        [3, -4],
      ],
    ],
    ['{"x;y";"z"}', [["x;y"], ["z"]]],
    ["Hops[Left]", null],
    ["1+1", null],
  ])("of %s", (text, cells) => expect(constantOf(text)).toEqual(cells));
});
