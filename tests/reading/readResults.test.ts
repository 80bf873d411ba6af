import fc from "fast-check";
import { dirtyHopTest, firstDirtyRow, mergedTrials } from "../../sample-workbooks/dirtyHopTest";
import { holdsResults, isBodyUse } from "../../src/reading/columns";
import { type Cell, type Grid, isCellError, textOf } from "../../src/reading/grid";
import { measureOf, seriesName } from "../../src/reading/measures";
import { type Reading, readResults } from "../../src/reading/readResults";
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

  it("points at names that differ only in letters nobody sees", () => {
    const { remarks } = read(gridOf([headings, ["Moe", 150, 152, 149, 155], ["\u202eMoe\u200b", 140, 142, 139, 145]]));
    expect(remarks).toMatchObject([{ cell: "A3", code: "nearDuplicate" }]);
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
});

const brief = ({ results }: Reading) =>
  results.map(({ athlete, test, measure, side, attempt, value, unit }) =>
    [athlete, seriesName(test, measure), side?.charAt(0).toUpperCase() ?? "", attempt, `${value} ${unit ?? "?"}`]
      .filter((part) => part !== "")
      .join("; "),
  );

describe("readResults on several tests and measures", () => {
  it("gives each series in its own unit, and measures in theirs", () => {
    const reading = read(
      gridOf([
        ["Athlete", "Hop L (cm)", "Hop R (cm)", "DJ flight (s)", "DJ contact (ms)", "Squat load (lb)", "Squat reps"],
        // 1 lb is 0.45359237 kg exactly (international yard and pound agreement, 1959).
        ["A", 150, 152, 0.512, 212, 100, 5],
      ]),
    );
    expect(brief(reading)).toEqual([
      "A; Hop; L; 1; 150 cm",
      "A; Hop; R; 1; 152 cm",
      "A; DJ, flight time; 1; 512 ms",
      "A; DJ, contact time; 1; 212 ms",
      "A; Squat, load; 1; 45.359237 kg",
      "A; Squat, repetitions; 1; 5 reps",
    ]);
    expect(reading.remarks).toEqual([]);
  });

  it("reads the same from a long sheet that says test, measure and unit in each row", () => {
    const reading = read(
      gridOf([
        ["Athlete", "Test", "Measure", "Side", "Trial", "Value", "Unit"],
        ["A", "Hop", null, "L", 1, 1.5, "m"],
        ["A", "Hop", null, "R", 1, 152, "cm"],
        ["A", "Hop", null, "R", 2, 153, "cm"],
        ["A", "DJ", "Flight time", "L", 1, 0.512, "s"],
        ["A", "DJ", "Kontaktzeit", "L", 1, 212, "ms"],
      ]),
    );
    expect(brief(reading)).toEqual([
      "A; Hop; L; 1; 150 cm",
      "A; Hop; R; 1; 152 cm",
      "A; Hop; R; 2; 153 cm",
      "A; DJ, flight time; L; 1; 512 ms",
      "A; DJ, contact time; L; 1; 212 ms",
    ]);
  });

  it("finds splits among the names of a column of tests", () => {
    const reading = read(
      gridOf([
        ["Athlete", "Test", "Result", "Unit"],
        ["A", "10 m sprint", 1.86, "s"],
        ["A", "Sprint 30 m", 4.52, "s"],
        ["A", "505", 2.41, "s"],
      ]),
    );
    expect(brief(reading)).toEqual(["A; Sprint, 10 m; 1; 1.86 s", "A; Sprint, 30 m; 1; 4.52 s", "A; 505; 1; 2.41 s"]);
  });

  it("keeps the load and the repetitions of a set together where another set lacks one", () => {
    const reading = read(
      gridOf([
        ["Athlete", "Exercise", "Load (kg)", "Reps"],
        ["A", "Squat", 60, 8],
        ["A", "Squat", null, 6],
        ["A", "Squat", 80, 4],
      ]),
    );
    expect(reading.results.map(({ measure, attempt, value }) => [measure, attempt, value])).toEqual([
      ["load", 1, 60],
      ["repetitions", 1, 8],
      ["repetitions", 2, 6],
      ["load", 3, 80],
      ["repetitions", 3, 4],
    ]);
  });

  it("takes the number of a trial that its column says, also where the column before it is gone", () => {
    const grid = gridOf([headings, ["A", 150, 152, 149, 155]]);
    const map = recogniseColumns(grid);
    const columns = map.columns.map((column) => ({
      ...column,
      attempt: column.offset === 0 ? undefined : ((column.offset + 1) % 2) + 1,
      use: column.offset === 1 ? ("none" as const) : column.use,
    }));
    const trials = (of: typeof map) =>
      readResults(grid, of).results.map(({ side, attempt, value }) => [side, attempt, value]);
    expect(trials({ ...map, columns })).toEqual([
      ["left", 2, 152],
      ["right", 1, 149],
      ["right", 2, 155],
    ]);
  });

  it("goes on counting over rows from the last trial that columns say", () => {
    const grid = gridOf([
      ["Athlete", "Leg", "Hop 1 (cm)", "Hop 3 (cm)"],
      ["A", "left", 150, 152],
      ["A", "left", 151, 153],
    ]);
    const map = recogniseColumns(grid);
    const columns = map.columns.map((column) => (column.offset === 3 ? { ...column, attempt: 3 } : column));
    const { results } = readResults(grid, { ...map, columns });
    expect(results.map(({ attempt }) => attempt)).toEqual([1, 3, 4, 6]);
  });

  it("keeps numbers of an unknown measure apart, and tells once", () => {
    const reading = read(
      gridOf([
        ["Athlete", "Test", "Measure", "Value"],
        ["A", "Pull", "Peak force", 2100],
        ["B", "Pull", "Peak force", 2200],
        ["A", "Pull", "Rate", 9000],
      ]),
    );
    expect(reading.tests).toEqual(["Pull, peak force", "Pull, rate"]);
    expect(reading.remarks.map(({ cell, code }) => [cell, code])).toEqual([
      ["C2", "measure"],
      ["C4", "measure"],
    ]);
  });

  it("leaves out what is in a unit of another kind, or in none where there are two", () => {
    const rows = [
      ["Athlete", "Test", "Value", "Unit"],
      ["A", "Hop", 150, "cm"],
      ["B", "Hop", 1.52, "m"],
      ["C", "Hop", 70, "kg"],
      ["D", "Hop", 151, null],
      ["E", "Jump", 31, null],
      ["F", "Plate", 31, "parsec"],
    ];
    const reading = read(gridOf(rows));
    expect(brief(reading)).toEqual(["A; Hop; 1; 150 cm", "B; Hop; 1; 152 cm", "E; Jump; 1; 31 ?", "F; Plate; 1; 31 ?"]);
    expect(reading.remarks.map(({ cell, code, leftOut }) => [cell, code, leftOut])).toEqual([
      ["C4", "unit", true],
      ["C5", "unit", true],
      ["D7", "unit", false],
    ]);
  });

  it("lets a count be zero, and nothing else", () => {
    const reading = read(
      gridOf([
        ["Athlete", "Squat load (kg)", "Squat reps", "Squat RIR", "Push-ups (reps)", "Hop (cm)"],
        ["A", 0, 0, 0, 0, 0],
        ["B", -5, -1, -1, -1, -1],
      ]),
    );
    expect(brief(reading)).toEqual([
      "A; Squat, repetitions; 1; 0 reps",
      "A; Squat, repetitions in reserve; 1; 0 reps",
      "A; Push-ups; 1; 0 reps",
    ]);
    expect(reading.remarks.map(({ cell }) => cell)).toEqual(["B2", "F2", "B3", "C3", "D3", "E3", "F3"]);
  });

  it("takes loads far apart, and repetitions, for no slip of the unit", () => {
    const rows = [1, 2, 2, 3, 3, 10].map((reps, i) => ["A", i < 5 ? 200 : 20, reps]);
    const reading = read(gridOf([["Athlete", "Load (kg)", "Reps"], ...rows]));
    expect(reading.remarks).toEqual([]);
  });

  it("gives the map's day to results of a sheet without a column of days, and to no others", () => {
    const days = (grid: Grid) =>
      readResults(grid, { ...recogniseColumns(grid), date: "2026-08-11" }).results.map(({ date }) => date);
    expect(
      days(
        gridOf([
          ["Athlete", "Hop (cm)", "CMJ (cm)"],
          ["A", 150, 31],
        ]),
      ),
    ).toEqual(["2026-08-11", "2026-08-11"]);
    expect(
      days(
        gridOf([
          ["Date", "Athlete", "Hop (cm)"],
          [46_245, "A", 150],
          ["8/9/2026", "A", 151],
        ]),
      ),
    ).toEqual(["2026-08-11", null]);
  });

  it("reads days typed in several ways, and lets one merged down count for each row", () => {
    const rows: Cell[][] = [
      ["Date", "Athlete", "Hop (cm)"],
      [46_245, "A", 150],
      [null, "B", 150],
      ["11.8.2026", "C", "150,5"],
      ["11. August 2026", "D", "150.5 cm"],
    ];
    const { results } = read(gridOf(rows, { mergedAreas: ["A2:A3"] }));
    expect(results.map(({ date }) => date)).toEqual(Array(4).fill("2026-08-11"));
    expect(results.map(({ value }) => value)).toEqual([150, 150, 150.5, 150.5]);
  });
});

describe("readResults on body mass and stature", () => {
  it("keeps them beside the results, in kg and cm, the last value of each athlete", () => {
    const reading = read(
      gridOf([
        ["Date", "Athlete", "Body mass (kg)", "Height (m)", "CMJ (cm)"],
        [46_200, "A", 68, 1.74, 31],
        [46_245, "A", "69,5", null, 32],
        [46_245, "B", null, null, 33],
        [46_245, "C", 715, "tall", 34],
      ]),
    );
    expect(reading.bodies).toEqual([{ athlete: "A", bodyMass: 69.5, stature: 174 }]);
    expect(reading.tests).toEqual(["CMJ"]);
    expect(reading.remarks.map(({ cell, code, leftOut }) => [cell, code, leftOut])).toEqual([
      ["C3", "converted", false],
      ["C5", "implausible", false],
      ["D5", "text", false],
    ]);
  });

  it("finds them among the rows of a long sheet", () => {
    const reading = read(
      gridOf([
        ["Athlete", "Test", "Value", "Unit"],
        ["A", "Body mass", 150, "lb"],
        ["A", "Hop", 150, "cm"],
      ]),
    );
    expect(reading.bodies).toEqual([{ athlete: "A", bodyMass: 68.0388555, stature: null }]);
    expect(brief(reading)).toEqual(["A; Hop; 1; 150 cm"]);
  });

  it("does not guess the unit of a body mass", () => {
    const reading = read(
      gridOf([
        ["Athlete", "Body mass", "Hop (cm)"],
        ["A", 190, 150],
      ]),
    );
    expect(reading.bodies).toEqual([]);
    expect(reading.remarks).toMatchObject([{ cell: "B2", code: "unit", leftOut: false }]);
  });
});

describe("readResults on names that look alike", () => {
  const rows: Cell[][] = [
    headings,
    ["J. Moe", 150, 152, 149, 155],
    ["J Moe ", 140, 142, 139, 145],
    ["Ann", 1, 2, 3, 4],
    ["Ann", 1, 2, 3, 4],
  ];
  const grid = gridOf(rows);
  const readAs = (sameAthlete: Readonly<Record<string, string>>) =>
    readResults(grid, { ...recogniseColumns(grid), sameAthlete });

  it("gives them in groups with their cells, and merges none by itself", () => {
    const { alike, athletes } = readAs({});
    expect(alike).toEqual([
      { names: ["J. Moe", "J Moe"], cells: ["A2", "A3"] },
      { names: ["Ann", "Ann (row 5)"], cells: ["A4", "A5"] },
    ]);
    expect(athletes).toEqual(["J. Moe", "J Moe", "Ann", "Ann (row 5)"]);
  });

  it.each([
    [{ "J Moe": "J. Moe" }, "J. Moe", "A3"],
    [{ "J. Moe": "J Moe" }, "J Moe", "A2"],
  ])("reads them as one where the coach says so: %j", (sameAthlete, name, cell) => {
    const { athletes, results, remarks, alike } = readAs({ ...sameAthlete, "Ann (row 5)": "Ann" });
    expect(athletes).toEqual([name, "Ann"]);
    const left = results.filter((result) => result.athlete === name && result.side === "left");
    expect(left.map(({ attempt, value }) => [attempt, value])).toEqual([
      [1, 150],
      [2, 152],
      [3, 140],
      [4, 142],
    ]);
    expect(remarks.filter(({ code }) => code === "sameAthlete").map((remark) => remark.cell)).toEqual([cell, "A5"]);
    expect(remarks.some(({ code }) => code === "nearDuplicate" || code === "duplicate")).toBe(false);
    expect(alike).toHaveLength(2);
  });
});

/** Cells as a hurried helper leaves them, and hostile ones. */
const dirtyCell: fc.Arbitrary<Cell> = fc.oneof(
  fc.double(),
  fc.integer({ min: -3, max: 300 }),
  fc.string(),
  fc.boolean(),
  fc.constantFrom(null, "DNS", "1,82", "1.82 m", "L", "Left", "=1+1", "-", "Athlete", "cm", "Load", "kg", "furlong"),
  fc.constantFrom("A", "B", " a ", "Body mass", "10 m sprint", "Flight time", "11.8.2026", "8/9/2026", 46_245),
  fc.constantFrom("#DIV/0!", "#N/A").map((error) => ({ error })),
);

const sheets: readonly (readonly string[])[] = [
  headings,
  ["Athlete", "Hop L 1 (cm)", "CMJ (cm)", "Sprint 10 m (s)", "Squat load (kg)", "Squat reps", "Body mass (kg)"],
  ["Date", "Athlete", "Test", "Measure", "Side", "Trial", "Value", "Unit"],
  ["Athlete", "Test", "Trial 1", "Trial 2", "Unit", "Group"],
  ["Athlete", "Leg", "Load (kg)", "Reps"],
];

describe("readResults on any sheet", () => {
  it.each(sheets.map((sheet) => [sheet]))("drops no cell without a word: %j", (sheet) => {
    const row = fc.array(dirtyCell, { minLength: sheet.length, maxLength: sheet.length });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), (data) => {
        const grid = gridOf([sheet, ...data]);
        const map = recogniseColumns(grid);
        const reading = readResults(grid, map);
        const told = new Set([...reading.results, ...reading.remarks].map(({ cell }) => cell));
        const rowsLeftOut = new Set(
          reading.remarks
            .filter(({ code }) => code === "noAthlete" || code === "unknownSide")
            .map(({ cell }) => cell.replace(/\D/g, "")),
        );
        const bodies = reading.bodies.map(({ athlete }) => athlete);
        grid.cells.slice(map.firstDataRow).forEach((cells, below) => {
          const row = map.firstDataRow + below;
          if (rowsLeftOut.has(String(row + 1))) return;
          const athlete = textOf(cells[map.columns.find(({ use }) => use === "athlete")?.offset ?? 0]!);
          for (const column of map.columns.filter((one) => holdsResults(one) || isBodyUse(one.use))) {
            const cell = cells[column.offset]!;
            if (!isCellError(cell) && textOf(cell) === "") continue;
            const address = `${column.letters}${row + 1}`;
            const saysBody = isBodyUse(column.use) || cells.includes("Body mass");
            const isUsed = told.has(address) || (saysBody && bodies.some((name) => name.startsWith(athlete)));
            expect({ address, isUsed }).toEqual({ address, isUsed: true });
          }
        });
        for (const { value, measure, unit } of reading.results) {
          expect(Number.isFinite(value)).toBe(true);
          const isCounted = unit === "reps" || (measure !== null && measureOf(measure).mayBeZero);
          expect(isCounted ? value >= 0 : value > 0).toBe(true);
        }
      }),
    );
  });

  it("gives each trial of an athlete a number of its own", () => {
    const row = fc.array(dirtyCell, { minLength: 5, maxLength: 5 });
    fc.assert(
      fc.property(fc.array(row, { maxLength: 12 }), (data) => {
        const { results } = read(gridOf([headings, ...data]));
        const keys = results.map(({ athlete, test, measure, side, date, attempt }) =>
          [athlete, test, measure, side, date, attempt].join("|"),
        );
        expect(new Set(keys).size).toBe(keys.length);
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
