import { holdsResults, layoutOf, unitOfResults, withUnit, withUse } from "../../src/reading/columns";
import type { Cell, Grid } from "../../src/reading/grid";
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
    expect(map.columns.map((column) => column.use)).toEqual([
      "athlete",
      "none",
      "bodyMass",
      "result",
      "result",
      "none",
    ]);
    expect(map.columns.map((column) => column.test).slice(3, 5)).toEqual(["CMJ", "CMJ"]);
    expect(unitOfResults(map)).toBe("cm");
  });
});

/** Each column of results as "use test, measure in unit". */
const series = (rows: readonly (readonly Cell[])[], more: Partial<Grid> = {}) =>
  recogniseColumns(gridOf(rows, more))
    .columns.filter(holdsResults)
    .map(({ use, test, measure, unit }) => `${use}: ${test}|${measure ?? ""}|${unit ?? ""}`);

describe("recogniseColumns(grid) on sheets of several tests", () => {
  it("gives each column the unit of its own test", () => {
    expect(
      series([
        ["Athlete", "Hop L 1 (cm)", "Hop R 1", "CMJ 1 (cm)", "CMJ 2 (cm)", "505 left 1 (s)", "505 right 1 (s)", "Grip"],
        ["A", 150, 152, 31.2, 30.4, 2.41, 2.45, 38],
      ]),
    ).toEqual([
      "left: Hop||cm",
      "right: Hop||cm",
      "result: CMJ||cm",
      "result: CMJ||cm",
      "left: 505||s",
      "right: 505||s",
    ]);
  });

  it("tells measures by their words, and names the test by the rest", () => {
    expect(
      series([
        [
          "Athlete",
          "Back squat load (kg)",
          "Back squat reps",
          "DJ contact 1 (ms)",
          "DJ flight 1 (s)",
          "CMJ height (cm)",
        ],
        ["A", 80, 5, 212, 0.51, 31],
      ]),
    ).toEqual([
      "result: Back squat|load|kg",
      "result: Back squat|repetitions|reps",
      "result: DJ|contactTime|ms",
      "result: DJ|flightTime|s",
      "result: CMJ|jumpHeight|cm",
    ]);
  });

  it.each([
    [["Sprint 10 m (s)", "Sprint 30 m (s)"], "Sprint"],
    [["10 m sprint (s)", "30 m sprint (s)"], "Sprint"],
    [["10m (s)", "30m (s)"], "Sprint"],
    [["10-m sprint [s]", "sprint 30m (sec)"], "Sprint"],
    [["Lauf 10 m (s)", "30 m (s)"], "Lauf"],
    [["10 m", "30 m"], "Sprint"],
    [["0-10 m (s)", "0-30 m (s)"], "Sprint"],
    [["10 m time (s)", "30 m time (s)"], "Sprint"],
  ])("%j are two splits of one sprint", (headings, test) => {
    expect(
      series([
        ["Athlete", ...headings],
        ["A", 1.86, 4.52],
      ]),
    ).toEqual([`result: ${test}|time10|s`, `result: ${test}|time30|s`]);
  });

  it("takes no split from a flying start, a shuttle run, a stretch between two marks, or a hop", () => {
    expect(
      series([
        ["Athlete", "Flying 10 m (s)", "20 m shuttle run", "10-20 m (s)", "5 m hop left (s)"],
        ["A", 1.2, 62, 1.3, 2.4],
        ["B", 1.3, 60, 1.3, 2.5],
      ]),
    ).toEqual(["result: Flying 10 m||s", "result: 10-20 m||s", "left: 5 m hop||s"]);
  });

  it("numbers trials apart from numbers that belong to a name", () => {
    expect(
      series([
        [
          "Athlete",
          "Sprint 10 m 1 (s)",
          "Sprint 10 m 2 (s)",
          "Drop jump 40 cm",
          "5-10-5 (s)",
          "30-15 level (km/h)",
          "CMJ T1 (cm)",
        ],
        ["A", 1.86, 1.84, 212, 5.1, 18.5, 31],
      ]),
    ).toEqual([
      "result: Sprint|time10|s",
      "result: Sprint|time10|s",
      "result: 5-10-5||s",
      "result: 30-15 level||km/h",
      "result: CMJ||cm",
    ]);
  });

  it("keeps the whole name of a single-leg test", () => {
    expect(
      series([
        ["Athlete", "Single-leg hop left leg 1 (cm)", "Leg press (kg)"],
        ["A", 150, 180],
      ]),
    ).toEqual(["left: Single-leg hop||cm", "result: Leg press||kg"]);
  });

  it("takes kilograms and repetitions of one test for load and repetitions, and lone repetitions for its number", () => {
    expect(
      series([
        ["Athlete", "Squat (kg)", "Squat (reps)", "Push-ups (reps)"],
        ["A", 80, 5, 22],
      ]),
    ).toEqual(["result: Squat|load|kg", "result: Squat|repetitions|reps", "result: Push-ups||reps"]);
  });

  it("leaves out what a coach computed from the trials beside it", () => {
    expect(
      series([
        ["Athlete", "Hop L 1 (cm)", "Hop L 2 (cm)", "Hop L best (cm)", "Hop L mean (cm)", "LSI (%)"],
        ["A", 150, 152, 152, 151, 98],
      ]),
    ).toEqual(["left: Hop||cm", "left: Hop||cm"]);
  });

  it("reads names of tests alone, where nothing else heads the columns", () => {
    expect(
      series([
        ["Athlete", "Birth year", "Grip", "Plank"],
        ["A", 2004, 38, 94],
      ]),
    ).toEqual(["result: Grip||", "result: Plank||"]);
  });

  it("prefers, for a unit, the heading, then the siblings, then what was typed, then what all others share", () => {
    const rows = [
      ["Athlete", "Hop L 1 (cm)", "Hop R 1", "Ball throw 1", "Ball throw 2", "Reach"],
      ["A", 150, 152, "6.1 m", 6.2, 40],
    ];
    expect(series(rows).map((one) => one.split("|")[2])).toEqual(["cm", "cm", "m", "m"]);
    const shared = [
      ["Athlete", "Hop L 1 (cm)", "Hop R 1 (cm)", "Triple hop L 1", "Triple hop R 1"],
      ["A", 150, 152, 480, 482],
    ];
    expect(series(shared).map((one) => one.split("|")[2])).toEqual(["cm", "cm", "cm", "cm"]);
  });

  it("does not take one slip in metres for the unit of a column of centimetres", () => {
    expect(
      series([
        ["Athlete", "Left", "Right"],
        ["A", 182, 180],
        ["B", "1.8 m", 178],
      ]),
    ).toEqual(["left: ||", "right: ||"]);
  });
});

describe("recogniseColumns(grid) on rows of headings above each other", () => {
  const expected = ["left: Hop||cm", "right: Hop||cm", "result: Sprint|time10|s", "result: Sprint|time30|s"];

  it.each<[string, Cell[][], Partial<Grid>]>([
    [
      "spread over the columns",
      [
        [null, "Hop", null, "Sprint", null],
        ["Athlete", "L 1 (cm)", "R 1 (cm)", "10 m (s)", "30 m (s)"],
      ],
      {},
    ],
    [
      "merged",
      [
        ["Athlete", "Hop (cm)", null, "Sprint (s)", null],
        [null, "Left", "Right", "10 m", "30 m"],
      ],
      { mergedAreas: ["A1:A2", "B1:C1", "D1:E1"] },
    ],
    [
      "with units in a row of their own",
      [
        [null, "Hop", null, "Sprint", null],
        ["Athlete", "Left", "Right", "10 m", "30 m"],
        [null, "cm", "cm", "s", "s"],
      ],
      {},
    ],
  ])("%s", (_, headings, more) => {
    expect(series([...headings, ["A", 150, 152, 1.86, 4.52]], more)).toEqual(expected);
    expect(recogniseColumns(gridOf([...headings, ["A", 150, 152, 1.86, 4.52]], more)).firstDataRow).toBe(
      headings.length,
    );
  });

  it("carries a group's name up to a column that has a name of its own, unless all its columns have", () => {
    const first = ["A", 150, 152, 40, 41];
    expect(
      series([[null, "Hop", null, null, null], ["Athlete", "Left (cm)", "Right (cm)", "Grip (kg)", "CMJ (cm)"], first]),
    ).toEqual(["left: Hop||cm", "right: Hop||cm", "result: Grip||kg", "result: CMJ||cm"]);
    expect(
      series([[null, "Gym", null, null, null], ["Athlete", "Hop (cm)", "Reach (cm)", "Grip (kg)", "CMJ (cm)"], first]),
    ).toEqual(["result: Gym Hop||cm", "result: Gym Reach||cm", "result: Gym Grip||kg", "result: Gym CMJ||cm"]);
  });

  it("reads test over side over trial", () => {
    const rows = [
      ["Athlete", "Hop (cm)", null, null, null, "CMJ (cm)", null],
      [null, "Left", null, "Right", null, null, null],
      [null, 1, 2, 1, 2, 1, 2],
      ["A", 150, 152, 149, 155, 31, 32],
    ];
    expect(series(rows, { mergedAreas: ["B1:E1", "F1:G1", "B2:C2", "D2:E2"] })).toEqual([
      ...["left: Hop||cm", "left: Hop||cm", "right: Hop||cm", "right: Hop||cm"],
      ...["result: CMJ||cm", "result: CMJ||cm"],
    ]);
  });

  it("carries no group over the columns that speak of the athlete", () => {
    const rows = [
      [null, "Hop", null, null, null],
      ["Athlete", "L (cm)", "R (cm)", "Body mass (kg)", "Role"],
      ["A", 150, 152, 68, "Wing"],
    ];
    expect(recogniseColumns(gridOf(rows)).columns.map(({ use }) => use)).toEqual([
      ...["athlete", "left", "right", "bodyMass", "group"],
    ]);
  });

  it("takes titles, notes and dates above the headings for no group", () => {
    for (const above of [["Single-leg hop"], [null, "Hall: north"], [null, "11.08.2026"], [null, null, 46_245]]) {
      expect(series([above, ["Athlete", "Left (cm)", "Right (cm)"], ["A", 150, 152]])).toEqual([
        "left: ||cm",
        "right: ||cm",
      ]);
    }
  });
});

describe("recogniseColumns(grid) on long sheets of several tests", () => {
  it.each([
    [["Date", "Athlete", "Test", "Measure", "Side", "Trial", "Value", "Unit"]],
    [["Datum", "Spielerin", "Übung", "Messgröße", "Seite", "Versuch", "Wert", "Einheit"]],
  ])("knows %j", (headings) => {
    expect(uses([headings, [46_245, "A", "Drop jump", "Contact time", "L", 1, 212, "ms"]])).toEqual([
      ...["date", "athlete", "test", "measure", "side", "attempt", "result", "unit"],
    ]);
  });

  it("reads a training log of loads and repetitions", () => {
    expect(
      series([
        ["Date", "Athlete", "Exercise", "Set", "Weight (kg)", "Reps", "RIR"],
        [46_245, "A", "Back squat", 1, 80, 5, 2],
      ]),
    ).toEqual(["result: |load|kg", "result: |repetitions|reps", "result: |repetitionsInReserve|reps"]);
  });

  it("reads load and repetitions of each leg", () => {
    expect(
      series([
        ["Athlete", "Leg", "Load (kg)", "Reps"],
        ["A", "L", 30, 8],
      ]),
    ).toEqual(["result: |load|kg", "result: |repetitions|reps"]);
  });
});

describe("recogniseColumns(grid) on body mass and stature", () => {
  it.each([
    ["Body mass (kg)", 68, "bodyMass", "kg"],
    ["Weight", 68, "bodyMass", "kg"],
    ["Gewicht (kg)", 68, "bodyMass", "kg"],
    ["Weight (lb)", 150, "bodyMass", "lb"],
    ["Height (cm)", 174, "stature", "cm"],
    ["Height", 1.74, "stature", "m"],
    ["Größe", 174, "stature", "cm"],
    ["Height (cm)", 31, "result", "cm"],
  ])("%s of %d is %s in %s", (heading, value, use, unit) => {
    const { columns } = recogniseColumns(
      gridOf([
        ["Athlete", heading, "Hop L 1 (cm)"],
        ["A", value, 150],
      ]),
    );
    expect(columns[1]).toMatchObject({ use, unit });
  });
});

describe("recogniseColumns(grid) and the day above the headings", () => {
  const dateOf = (...above: Cell[][]) =>
    recogniseColumns(gridOf([...above, ["Athlete", "Left (cm)", "Right (cm)"], ["A", 150, 152]])).date;

  it.each<[Cell[], string | null]>([
    [["Test day: 11.08.2026"], "2026-08-11"],
    [["Hop test, 2026-08-11"], "2026-08-11"],
    [["Fjordvik HK seniors, 11 August 2026, in the hall."], "2026-08-11"],
    [["Testtag 11. Aug. 2026"], "2026-08-11"],
    [["Date", 46_245], "2026-08-11"],
    [["Testtag:", 46_245], "2026-08-11"],
    [["Licence", 46_245], null],
    [["From 11.08.2026 to 12.08.2026"], null],
    [["Day 8/9/2026"], null],
    [["Hop test"], null],
  ])("%j gives %p", (above, date) => {
    expect(dateOf(above)).toBe(date);
    expect(dateOf(above, [])).toBe(date);
  });

  it("is silent where a column says the day of each row", () => {
    const rows = [["Printed 11.08.2026"], ["Date", "Athlete", "Left (cm)"], [46_200, "A", 150]];
    expect(recogniseColumns(gridOf(rows)).date).toBeNull();
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

describe("withUnit(map, unit)", () => {
  it("changes no column whose measure cannot be in it", () => {
    const map = recogniseColumns(
      gridOf([
        ["Athlete", "Squat load (kg)", "Squat reps"],
        ["A", 80, 5],
      ]),
    );
    expect(withUnit(map, "lb").columns.map(({ unit }) => unit)).toEqual([null, "lb", "reps"]);
  });
});
