import { layoutOf, unitOfResults, withUse } from "../../src/reading/columns";
import type { Cell } from "../../src/reading/grid";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { gridOf } from "./gridOf";

const uses = (rows: readonly (readonly Cell[])[]) => recogniseColumns(gridOf(rows)).columns.map((column) => column.use);

describe("recogniseColumns(grid) on wide sheets", () => {
  it.each([
    [["Athlete", "Left 1 (cm)", "Left 2 (cm)", "Right 1 (cm)", "Right 2 (cm)"]],
    [["Name", "L1", "L2", "R1", "R2"]],
    [["Player", "Hop L", "Hop L", "Hop R", "Hop R"]],
    [["Spielerin", "Links 1", "Links 2", "Rechts 1", "Rechts 2"]],
    [["Last name", "left_1", "left_2", "right_1", "right_2"]],
  ])("knows the headings %j", (headings) => {
    expect(uses([headings, ["A", 150, 152, 149, 155]])).toEqual(["athlete", "left", "left", "right", "right"]);
  });

  it("finds the heading row below titles and blank rows, and leaves other columns alone", () => {
    const rows = [
      ["Single-leg hop"],
      [],
      ["Athlete", "Role", "Left (cm)", "Right (cm)", "Note"],
      ["A", "Wing", 150, 149, "ok"],
    ];
    const map = recogniseColumns(gridOf(rows));
    expect(map.firstDataRow).toBe(3);
    expect(unitOfResults(map)).toBe("cm");
    expect(map.columns.map((column) => column.use)).toEqual(["athlete", "group", "left", "right", "none"]);
    expect(layoutOf(map)).toBe("wide");
  });

  it("joins a row of sides with the row of attempts under it", () => {
    const rows = [
      ["Athlete", "Left", null, "Right", null],
      [null, 1, 2, 1, 2],
      ["A", 150, 152, 149, 155],
    ];
    const map = recogniseColumns(gridOf(rows));
    expect(map.columns.map((column) => column.use)).toEqual(["athlete", "left", "left", "right", "right"]);
    expect(map.firstDataRow).toBe(2);
  });

  it("joins a row of sides above with a row of names below", () => {
    const rows = [
      [null, "Left", null, "Right", null],
      ["Athlete", "Trial 1", "Trial 2", "Trial 1", "Trial 2"],
      ["A", 150, 152, 149, 155],
    ];
    const map = recogniseColumns(gridOf(rows));
    expect(map.columns.map((column) => column.use)).toEqual(["athlete", "left", "left", "right", "right"]);
    expect(map.firstDataRow).toBe(2);
  });

  it("keeps tests apart by what their headings share", () => {
    const map = recogniseColumns(
      gridOf([
        ["Athlete", "Hop L1", "Hop R1", "Triple hop L1", "Triple hop R1"],
        ["A", 150, 149, 450, 455],
      ]),
    );
    expect(map.columns.map((column) => column.test)).toEqual(["Athlete", "Hop", "Hop", "Triple hop", "Triple hop"]);
  });

  it("does not take results typed as text for headings", () => {
    const map = recogniseColumns(
      gridOf([
        ["Athlete", "Left", "Right"],
        ["A", "182 cm", "180 cm"],
        ["B", "178 cm", "1.8 m"],
      ]),
    );
    expect(map.firstDataRow).toBe(1);
    expect(unitOfResults(map)).toBe("cm");
  });

  it("leaves out columns that were not selected", () => {
    const grid = gridOf(
      [
        ["Athlete", "Left 1", "Left 2", "Right 1"],
        ["A", 150, 152, 149],
      ],
      { unselectedColumns: [2] },
    );
    expect(recogniseColumns(grid).columns.map((column) => column.use)).toEqual(["athlete", "left", "none", "right"]);
  });
});

describe("recogniseColumns(grid) on long sheets", () => {
  it("knows a column of sides by its cells, and the result by its unit", () => {
    const rows = [
      ["Date", "Athlete", "Test", "Leg", "Attempt", "Distance (cm)"],
      [46_245, "A", "Hop", "L", 1, 150],
      [46_245, "A", "Hop", "R", 1, 149],
    ];
    const map = recogniseColumns(gridOf(rows));
    expect(map.columns.map((column) => column.use)).toEqual(["date", "athlete", "test", "side", "attempt", "result"]);
    expect(layoutOf(map)).toBe("long");
    expect(unitOfResults(map)).toBe("cm");
  });

  it("takes the last column of numbers for the result where no heading tells", () => {
    expect(
      uses([
        ["Name", "Side", "No", "x"],
        ["A", "left", 1, 150],
        ["A", "right", 2, 151],
      ]),
    ).toEqual(["athlete", "side", "attempt", "result"]);
  });
});

describe("recogniseColumns(grid) without headings", () => {
  it("takes the column of names for the athletes and leaves the rest to the coach", () => {
    const map = recogniseColumns(
      gridOf([
        ["Ann", 150, 149],
        ["Bea", 160, 158],
      ]),
    );
    expect(map.firstDataRow).toBe(0);
    expect(map.columns.map((column) => column.use)).toEqual(["athlete", "none", "none"]);
  });
});

describe("recogniseColumns(grid) without sides", () => {
  it("takes numbered and measured columns for results, and leaves body measures alone", () => {
    const rows = [
      ["Athlete", "Birth year", "Body mass (kg)", "CMJ 1 (cm)", "CMJ 2 (cm)", "Shirt"],
      ["A", 2004, 71.5, 30.1, 31.4, 7],
    ];
    const map = recogniseColumns(gridOf(rows));
    expect(map.columns.map((column) => column.use)).toEqual(["athlete", "none", "none", "result", "result", "none"]);
    expect(map.columns.map((column) => column.test).slice(3, 5)).toEqual(["CMJ", "CMJ"]);
    expect(unitOfResults(map)).toBe("cm");
  });
});

describe("withUse(map, offset, use)", () => {
  const map = recogniseColumns(
    gridOf([
      ["Athlete", "Coach", "Left", "Right"],
      ["A", "B", 150, 149],
    ]),
  );

  it("lets a second athlete column take over from the first", () => {
    expect(withUse(map, 1, "athlete").columns.map((column) => column.use)).toEqual([
      "none",
      "athlete",
      "left",
      "right",
    ]);
  });

  it("lets several columns hold left trials", () => {
    expect(withUse(map, 3, "left").columns.map((column) => column.use)).toEqual(["athlete", "none", "left", "left"]);
  });
});
