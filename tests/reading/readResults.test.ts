import fc from "fast-check";
import { dirtyHopTest, firstDirtyRow, mergedTrials } from "../../sample-workbooks/dirtyHopTest";
import type { Cell, Grid } from "../../src/reading/grid";
import { readResults } from "../../src/reading/readResults";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { gridOf } from "./gridOf";

const read = (grid: Grid) => readResults(grid, recogniseColumns(grid));
const headings = ["Athlete", "Left 1 (cm)", "Left 2 (cm)", "Right 1 (cm)", "Right 2 (cm)"];

describe("readResults(grid, map)", () => {
  it("gives each result with athlete, side and cell", () => {
    const { results, athletes, remarks } = read(gridOf([headings, ["A", 150, 152, 149, 155]]));
    expect(results).toHaveLength(4);
    expect(results[2]).toEqual({
      athlete: "A",
      test: "",
      measure: null,
      side: "right",
      date: null,
      group: null,
      attempt: 1,
      value: 149,
      unit: "cm",
      cell: "D2",
    });
    expect(athletes).toEqual(["A"]);
    expect(remarks).toEqual([]);
  });

  it("reads the same results from a long sheet", () => {
    const wide = read(gridOf([headings, ["A", 150, 152, 149, 155], ["B", 160, null, 161, 162]]));
    const long = read(
      gridOf([
        ["Athlete", "Leg", "Distance (cm)"],
        ...[
          ["A", "L", 150],
          ["A", "L", 152],
          ["A", "R", 149],
          ["A", "R", 155],
          ["B", "left", 160],
          ["B", "right", 161],
          ["B", "right", 162],
        ],
      ]),
    );
    const plain = ({ results }: typeof wide) => results.map(({ athlete, side, value }) => ({ athlete, side, value }));
    expect(plain(long)).toEqual(plain(wide));
  });

  it("names every cell it cannot use, and reads the rest", () => {
    const rows: Cell[][] = [
      headings,
      ["A", "DNS", 152, { error: "#N/A" }, 155],
      [null, 1, 2, 3, 4],
      ["B", 0, -3, 161, "soon"],
    ];
    const { results, remarks } = read(gridOf(rows));
    expect(results.map((result) => result.cell)).toEqual(["C2", "E2", "D4"]);
    expect(remarks.map(({ cell, code }) => [cell, code])).toEqual([
      ["B2", "absent"],
      ["D2", "error"],
      ["A3", "noAthlete"],
      ["B4", "notPositive"],
      ["C4", "notPositive"],
      ["E4", "text"],
    ]);
  });

  it("keeps rows of one name apart in a wide sheet, together in a long one", () => {
    const wide = read(gridOf([headings, ["A", 150, 152, 149, 155], ["A", 140, 142, 139, 145]]));
    expect(wide.athletes).toEqual(["A", "A (row 3)"]);
    expect(wide.remarks).toMatchObject([{ cell: "A3", code: "duplicate", leftOut: false }]);
    const long = read(
      gridOf([
        ["Athlete", "Leg", "Distance (cm)"],
        ["A", "L", 150],
        ["A", "R", 152],
      ]),
    );
    expect(long.athletes).toEqual(["A"]);
    expect(long.remarks).toEqual([]);
  });

  it("points at names that look alike, and never merges them", () => {
    const { athletes, remarks } = read(
      gridOf([headings, ["J. Moe", 150, 152, 149, 155], ["J Moe", 140, 142, 139, 145]]),
    );
    expect(athletes).toEqual(["J. Moe", "J Moe"]);
    expect(remarks).toMatchObject([{ cell: "A3", code: "nearDuplicate", leftOut: false }]);
  });

  it("leaves hidden rows out, and says so, unless they are asked for", () => {
    const grid = gridOf([headings, ["A", 150, 152, 149, 155], ["B", 140, 142, 139, 145]], { hiddenRows: [2] });
    expect(read(grid).athletes).toEqual(["A"]);
    expect(read(grid).remarks).toMatchObject([{ cell: "A3", code: "hiddenRow" }]);
    expect(readResults(grid, { ...recogniseColumns(grid), includeHiddenRows: true }).athletes).toEqual(["A", "B"]);
  });

  it("lets a name merged down over its attempts count for each of them", () => {
    const rows = [
      ["Athlete", "Leg", "Distance (cm)"],
      ["A", "L", 150],
      [null, "R", 152],
      ["B", "L", 140],
    ];
    const { results } = read(gridOf(rows, { mergedAreas: ["A2:A3"] }));
    expect(results.map(({ athlete }) => athlete)).toEqual(["A", "A", "B"]);
  });

  it("numbers the attempts by column, by the sheet's own numbers, or by their place", () => {
    const attempts = (grid: Grid) => read(grid).results.map((result) => result.attempt);
    expect(attempts(gridOf([headings, ["A", null, 152, 149, 155]]))).toEqual([2, 1, 2]);
    const numbered = [
      ["Athlete", "Leg", "Attempt", "Distance (cm)"],
      ["A", "L", 2, 150],
      ["A", "L", 1, 151],
    ];
    expect(attempts(gridOf(numbered))).toEqual([2, 1]);
    expect(attempts(gridOf(numbered.map(([athlete, leg, , distance]) => [athlete!, leg!, distance!])))).toEqual([1, 2]);
  });

  it("says what an unknown side is", () => {
    const { remarks } = read(
      gridOf([
        ["Athlete", "Leg", "Distance (cm)"],
        ["A", "L", 150],
        ["A", "R", 151],
        ["A", "both", 152],
        ["A", null, 153],
      ]),
    );
    expect(remarks.map(({ cell, why }) => `${cell} ${why}`)).toEqual([
      "B4 “both” is neither left nor right.",
      "B5 No side is given; left or right is needed.",
    ]);
  });

  it("leaves out a value typed in another unit, and keeps merely unusual ones", () => {
    const rows = [headings, ["A", 150, 152, 149, 155], ["B", 1.6, 160, 161, 90], ["C", 1620, 150, 151, 152]];
    const { remarks } = read(gridOf(rows));
    expect(remarks.map(({ cell, code }) => [cell, code])).toEqual([
      ["B3", "unitSlip"],
      ["B4", "unitSlip"],
    ]);
  });

  it("gives every cell of a dirty sheet a result or a remark, and never throws", () => {
    const cell: fc.Arbitrary<Cell> = fc.oneof(
      fc.double(),
      fc.string(),
      fc.boolean(),
      fc.constantFrom(null, "DNS", "1,82", "1.82 m", "L", "Left", "=1+1", "-", "Athlete", "cm"),
      fc.constantFrom("#DIV/0!", "#N/A").map((error) => ({ error })),
    );
    const rows = fc.array(fc.array(cell, { minLength: 5, maxLength: 5 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(rows, (data) => {
        const grid = gridOf([headings, ...data]);
        const map = recogniseColumns(grid);
        const { results, remarks } = readResults(grid, map);
        const named = new Set([...results, ...remarks].map((one) => one.cell));
        const rowsWithoutName = new Set(
          remarks.filter(({ code }) => code === "noAthlete").map((one) => one.cell.slice(1)),
        );
        grid.cells.forEach((row, r) => {
          if (
            r < map.firstDataRow ||
            row.every((value) => value === null || value === "" || (typeof value === "string" && value.trim() === ""))
          )
            return;
          for (const column of map.columns.filter(({ use }) => use === "left" || use === "right")) {
            const address = `${column.letters}${r + 1}`;
            expect(named.has(address) || rowsWithoutName.has(String(r + 1))).toBe(true);
          }
        });
        for (const { value } of results) expect(Number.isFinite(value) && value > 0).toBe(true);
      }),
    );
  });
});

describe("readResults on the sample's dirty sheet", () => {
  const rows = dirtyHopTest().map(({ athlete, role, trials }): Cell[] => [
    athlete,
    role,
    ...trials.map((trial) => (typeof trial === "object" && trial !== null ? { error: trial.error } : trial)),
  ]);
  const grid = gridOf(
    [["Athlete", "Role", ...["Left", "Right"].flatMap((side) => [1, 2, 3].map((n) => `${side} ${n} (cm)`))], ...rows],
    {
      firstRow: firstDirtyRow - 2,
      hiddenRows: [12 - firstDirtyRow + 1],
      mergedAreas: [mergedTrials],
    },
  );
  const { remarks, results } = read(grid);
  const codeAt = (cell: string) => remarks.find((remark) => remark.cell === cell)?.code;

  it.each([
    ["C5", "converted"],
    ["F6", "unitSlip"],
    ["E7", "absent"],
    ["D8", "merged"],
    ["G9", "absent"],
    ["H9", "absent"],
    ["D10", "empty"],
    ["H11", "error"],
    ["A12", "hiddenRow"],
    ["F13", "empty"],
    ["E15", "unitSlip"],
    ["A16", "duplicate"],
    ["A18", "duplicate"],
  ])("%s is told as %s", (cell, code) =>
    expect(remarks.filter((one) => one.cell === cell).map((one) => one.code)).toContain(code),
  );

  it("reads 1.82 m as 182 cm", () => {
    expect(results.find((result) => result.cell === "C5")?.value).toBe(182);
    expect(codeAt("C5")).toBe("converted");
  });
});
