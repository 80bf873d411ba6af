import { daySerial } from "../../src/reading/days";
import { testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";
import { fromKept, mergeKept, readKept, resultsTable, toKept } from "../../src/store/keptResults";
import { keptResult, squadMember } from "../sheet/storeRows";
import { cellsOf, typedCells } from "./cellsOf";

const hop = testResult({
  athlete: "Ane Berg",
  test: "Single-leg hop",
  side: "left",
  value: 171.5,
  unit: "cm",
  cell: "C4",
});

describe("toKept", () => {
  it("gives each result its day and the full address of its cell", () => {
    const { kept, refused } = toKept([hop, { ...hop, attempt: 2, date: "2026-08-12", cell: "'Other day'!D4" }], {
      sheet: "Hop test",
      day: "2026-08-11",
    });
    expect(refused).toEqual([]);
    expect(kept).toEqual([
      keptResult({ source: "'Hop test'!C4" }),
      keptResult({ trial: 2, date: "2026-08-12", source: "'Other day'!D4" }),
    ]);
  });

  it("refuses, with the reason, what names no test or no day", () => {
    const { kept, refused } = toKept([{ ...hop, test: " " }, hop], { sheet: "Hops", day: null });
    expect(kept).toEqual([]);
    expect(refused).toEqual([
      { cell: "Hops!C4", why: "Nothing says which test this is; give its column the name of a test." },
      { cell: "Hops!C4", why: "Nothing says on which day this was tested." },
    ]);
  });
});

describe("mergeKept", () => {
  const standing = [keptResult(), keptResult({ trial: 2, value: 168, source: null })];

  it("knows a trial again whatever the case of its names and the unit of its value", () => {
    const fresh = [
      keptResult({ athlete: " ane  BERG", test: "single-leg Hop", value: 1.715, unit: "m", source: "X!A1" }),
    ];
    expect(mergeKept(standing, fresh)).toMatchObject({ added: [], changed: [], clashes: [], same: fresh });
  });

  it.each([
    ["day", { date: "2026-08-18" }],
    ["athlete", { athlete: "Kari Dahl" }],
    ["test", { test: "Triple hop" }],
    ["measure", { measure: "contactTime" as const }],
    ["side", { side: "right" as const }],
    ["trial", { trial: 3 }],
  ])("adds what differs in its %s", (_, other) => {
    const fresh = [keptResult({ ...other, value: 1 })];
    expect(mergeKept(standing, fresh)).toEqual({ added: fresh, changed: [], same: [], clashes: [] });
  });

  it("renews a row whose own cell reads otherwise now, and no row that was typed in or came from elsewhere", () => {
    const renewed = keptResult({ value: 177 });
    expect(mergeKept(standing, [renewed]).changed).toEqual([{ standing: standing[0], fresh: renewed }]);
    const typedIn = keptResult({ trial: 2, value: 177, source: null });
    expect(mergeKept(standing, [typedIn])).toMatchObject({ changed: [], clashes: [{ standing: standing[1] }] });
    const elsewhere = keptResult({ value: 177, source: "Hops!Z9" });
    expect(mergeKept(standing, [elsewhere])).toMatchObject({ changed: [], clashes: [{ fresh: elsewhere }] });
  });

  it("keeps one of two fresh values for one trial, and tells the other", () => {
    const first = keptResult({ trial: 5, value: 150, source: "A!A1" });
    const second = keptResult({ trial: 5, value: 160, source: "A!A2" });
    expect(mergeKept([], [first, second, first])).toEqual({
      ...{ added: [first], changed: [], same: [first] },
      clashes: [{ standing: first, fresh: second }],
    });
  });

  it("takes a value in a unit of another kind as another value", () => {
    expect(mergeKept(standing, [keptResult({ unit: "kg", source: "X!A1" })]).clashes).toHaveLength(1);
  });

  it("does the same whatever was kept: keeping twice is keeping once", () => {
    const fresh = [1, 2, 3].map((trial) => keptResult({ trial, value: 150 + trial }));
    const once = mergeKept([], fresh).added;
    expect(mergeKept(once, fresh)).toEqual({ added: [], changed: [], same: fresh, clashes: [] });
  });
});

describe("the table of results", () => {
  it("gives back what was written", () => {
    const rows = [
      keptResult(),
      keptResult({ measure: "flightTime", side: null, unit: "ms", source: null, value: 512 }),
    ];
    const { results, remarks } = readKept(cellsOf(resultsTable, rows));
    expect(remarks).toEqual([]);
    expect(results).toEqual(rows.map((row, offset) => ({ ...row, offset, cell: `Results!G${offset + 5}` })));
  });

  it("counts trials without a number on from the highest of their kind, and tells one that stands twice", () => {
    const row = (trial: number | null, value: number) => [
      "2026-08-11",
      "Ane",
      "Hop",
      null,
      "L",
      trial,
      value,
      "cm",
      null,
    ];
    const { results, remarks } = readKept(
      typedCells(resultsTable, [row(null, 150), row(2, 151), row(null, 152), row(2, 9)]),
    );
    expect(results.map(({ trial, value }) => [trial, value])).toEqual([
      [3, 150],
      [2, 151],
      [4, 152],
    ]);
    expect(remarks).toEqual([
      {
        sheet: "Results",
        cell: "A8",
        why: "Trial 2 of “Ane” in this test also stands in A6; only the first row counts.",
      },
    ]);
  });

  // Serial numbers of days as spreadsheets count them: ECMA-376 part 1, 18.17.4.1 (1900 date base), day 1 is 1900-01-01
  // and 1900-02-29 is counted; 2008-01-01 is 39448 (from memory).
  it("writes days as the spreadsheet's serial numbers", () => {
    expect(daySerial("2008-01-01")).toBe(39448);
    expect(daySerial("1900-03-01")).toBe(61);
  });

  it("reads 50,000 rows in seconds", () => {
    const rows = Array.from({ length: 50_000 }, (_, index) =>
      keptResult({ athlete: `Athlete ${index % 100}`, trial: 1 + Math.floor(index / 100) }),
    );
    const cells = cellsOf(resultsTable, rows);
    const start = performance.now();
    const { results } = readKept(cells);
    expect(performance.now() - start).toBeLessThan(20_000);
    expect(results).toHaveLength(50_000);
    expect(mergeKept(results, rows).same).toHaveLength(50_000);
  });
});

test("fromKept gives analyses the role from the squad, and the cell the value came from or stands in", () => {
  const { results } = readKept(cellsOf(resultsTable, [keptResult(), keptResult({ trial: 2, source: null })]));
  const background = { ...noBackground, squad: [squadMember("ANE BERG", { role: "Back" })] };
  expect(fromKept(results, background)).toEqual([
    { ...hop, date: "2026-08-11", group: "Back", cell: "Hops!C4" },
    { ...hop, date: "2026-08-11", group: "Back", attempt: 2, cell: "Results!G6" },
  ]);
});
