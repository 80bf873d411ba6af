import { dirtyHopTest, firstDirtyRow, mergedTrials } from "../../sample-workbooks/dirtyHopTest";
import { hopTest } from "../../sample-workbooks/hopTest";
import { implausible, overdue, slips, swappedSides } from "../../sample-workbooks/plantedTruths";
import { testDays } from "../../sample-workbooks/testDays";
import { type RetestRow, retest } from "../../src/analyses/retest/retest";
import { unwrap } from "../../src/engine/result";
import type { Cell } from "../../src/reading/grid";
import { type Reading, readResults } from "../../src/reading/readResults";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { type Background, noBackground } from "../../src/store/background";
import { gridOf } from "../reading/gridOf";
import { batteryTest } from "./batteryTest";

const ask = (
  { results, remarks }: Pick<Reading, "results" | "remarks">,
  settings: object = {},
  background: Background = noBackground,
  today = "2026-11-20",
) => unwrap(retest.compute(results, retest.settings.parse(settings), background, { today, remarks }));

const of = (results: readonly TestResult[], settings: object = {}, background: Background = noBackground) =>
  ask({ results, remarks: [] }, settings, background);

const hopHeadings = [
  "Athlete",
  "Role",
  ...["Left", "Right"].flatMap((side) => [1, 2, 3].map((n) => `${side} ${n} (cm)`)),
];

const cellOf = (cell: ReturnType<typeof dirtyHopTest>[number]["trials"][number]): Cell =>
  typeof cell === "object" && cell !== null ? { error: cell.error } : cell;

const read = (rows: readonly (readonly Cell[])[], more: object = {}, date: string | null = null): Reading => {
  const grid = gridOf([...rows.map((row) => [...row])], more);
  return readResults(grid, { ...recogniseColumns(grid), date });
};

const cleanSheet = (date: string | null = null) =>
  read(
    [hopHeadings, ...hopTest().map(({ athlete, left, right }) => [athlete.name, athlete.role, ...left, ...right])],
    {},
    date,
  );

const dirtySheet = (date: string | null = null) =>
  read(
    [hopHeadings, ...dirtyHopTest().map(({ athlete, role, trials }) => [athlete, role, ...trials.map(cellOf)])],
    { firstRow: firstDirtyRow - 2, mergedAreas: [mergedTrials] },
    date,
  );

describe("the sample's hop test", () => {
  it("names no more than two things on the clean sheet, where nothing is wrong but one lucky trial", () => {
    const { rows } = ask(cleanSheet());
    expect(rows.map(({ athlete }) => athlete)).toContain("Gudvi Solgangsbris");
    expect(rows.length).toBeLessThanOrEqual(2);
  });

  it("finds what was planted on the dirty sheet, cell by cell", () => {
    const { rows } = ask(dirtySheet());
    const cells = (pattern: RegExp) =>
      rows.filter(({ why }) => pattern.test(why)).flatMap(({ cell }) => cell.split(", "));
    expect(cells(/another unit, or a slip of the comma/)).toEqual(expect.arrayContaining(["F6", "E15"]));
    expect(cells(/shows the error/)).toContain("H11");
    expect(cells(/merged/)).toContain("D8");
    expect(cells(/also stands in/)).toEqual(["A16", "A18"]);
    const missing = rows.find(({ why }) => why.includes("no result of the right side"))!;
    expect(missing).toMatchObject({
      athlete: dirtyHopTest()[13 - firstDirtyRow]!.athlete,
      action: "Test the missing side",
    });
    // Absences and blanks are no mistakes.
    for (const cell of ["E7", "G9", "H9", "D10"])
      expect(rows.flatMap((row) => row.cell.split(", "))).not.toContain(cell);
  });

  it("finds the athlete whose sides were swapped, beside the clean sheet of an earlier day", () => {
    const [before, now] = [cleanSheet("2026-08-11"), dirtySheet("2026-08-18")];
    const { rows } = ask({ results: [...before.results, ...now.results], remarks: [] });
    const swapped = rows.filter(({ why }) => why.includes("swapped"));
    expect(swapped.map(({ athlete }) => athlete)).toEqual([dirtyHopTest()[22 - firstDirtyRow]!.athlete]);
  });
});

/** The season's test days as a coach has them on the sheets, each with its day. */
const season = (): Pick<Reading, "results" | "remarks"> => {
  const readings = testDays().map(({ sheet, date, headings, rows }) => {
    const reading = read(
      [
        ["Athlete", "Role", "Team", ...headings],
        ...rows.map(({ typed, athlete, cells }) => [typed, athlete.role, athlete.team, ...cells]),
      ],
      {},
      date.toISOString().slice(0, 10),
    );
    const named = <Placed extends { readonly cell: string }>(placed: Placed): Placed => ({
      ...placed,
      cell: `'${sheet}'!${placed.cell}`,
    });
    return { results: reading.results.map(named), remarks: reading.remarks.map(named) };
  });
  return {
    results: readings.flatMap(({ results }) => results),
    remarks: readings.flatMap(({ remarks }) => remarks),
  };
};

describe("the sample's season", () => {
  const { results, remarks } = season();
  const battery = [
    batteryTest({
      test: results.find(({ test }) => /hop/i.test(test))!.test,
      unit: "cm",
      sides: 2,
      retestAfterWeeks: 10,
    }),
  ];
  const { rows } = ask({ results, remarks }, {}, { ...noBackground, battery });
  const of = (athlete: string): RetestRow[] => rows.filter((row) => row.athlete === athlete);

  it.each(slips.map((slip) => [slip.athlete, slip] as const))("finds the slip of %s", (athlete, { sheet }) => {
    expect(of(athlete).some(({ cell, action }) => cell.includes(sheet) && /unit/.test(action))).toBe(true);
  });

  it("finds the flight time that nobody has", () => {
    expect(
      of(implausible.athlete).some(
        ({ cell, why }) =>
          cell.includes(implausible.sheet) && why === "968 ms is outside what is plausible: 200 to 850 ms.",
      ),
    ).toBe(true);
  });

  it("asks about the sides that were swapped on one day, and about nobody else's", () => {
    const swapped = rows.filter(({ why }) => why.includes("swapped"));
    expect([...new Set(swapped.map(({ athlete }) => athlete))]).toEqual([swappedSides.athlete]);
  });

  it("names the athlete who missed the retest as due, and not those who were there", () => {
    const dueRows = rows.filter(({ why }) => why.includes("was planned"));
    expect(dueRows.map(({ athlete }) => athlete)).toContain(overdue.athlete);
    expect(dueRows.length).toBeLessThanOrEqual(3);
  });

  it("names at most one set of trials in two hundred as too far apart, as its threshold says", () => {
    const sets = new Set(
      results.map(({ athlete, test, measure, side, date }) => [athlete, test, measure, side, date].join()),
    );
    const wide = rows.filter(({ why }) => why.includes("noise hardly makes"));
    expect(wide.length / sets.size).toBeLessThan(0.005);
  });
});

describe("a result to look at again", () => {
  const trials = (athlete: string, ...values: number[]): TestResult[] =>
    values.map((value, index) =>
      testResult({ athlete, test: "Jump", unit: "cm", attempt: index + 1, value, cell: `${athlete}${index + 1}` }),
    );
  const even = ["A", "B", "C", "D", "E", "F"].flatMap((athlete, index) =>
    trials(athlete, 40 + index, 41 + index, 40.5 + index),
  );

  it("is a trial that stands apart, marked in its cell with the reason", () => {
    const { rows, marks } = of([...even, ...trials("G", 42, 42.5, 55)]);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ what: "G: Jump", cell: "G3", reasons: 2 });
    expect(rows[0]!.why).toContain("Trial 3 (55 cm) stands apart.");
    expect(marks!.map(({ cell }) => cell)).toEqual(["G3"]);
  });

  it("can be taken more leniently", () => {
    const wide = [...even, ...trials("G", 42, 42.5, 44.5)];
    const named = (spread: number) => of(wide, { spread, outliers: "no" }).rows.map(({ athlete }) => athlete);
    expect(named(1)).toEqual(["G"]);
    expect(named(3)).toEqual([]);
  });

  it("lies outside the battery's range, in whatever unit the range is", () => {
    const named = (unit: string, lowest: number, highest: number) =>
      of(even, {}, { ...noBackground, battery: [batteryTest({ test: "Jump", unit, lowest, highest })] }).rows.map(
        ({ athlete }) => athlete,
      );
    expect(named("cm", 20, 45.7)).toEqual(["F"]);
    expect(named("m", 0.2, 0.457)).toEqual(["F"]);
    expect(named("cm", 20, 60)).toEqual([]);
  });

  it("is due by the battery's interval, else by the form's, and not before", () => {
    const dated = [testResult({ athlete: "A", test: "Jump", date: "2026-10-09", value: 40 })];
    const due = (weeks: number, today: string, retestAfterWeeks: number | null = null) =>
      ask(
        { results: dated, remarks: [] },
        { weeks },
        { ...noBackground, battery: [batteryTest({ test: "Jump", retestAfterWeeks })] },
        today,
      ).rows.map(({ action }) => action);
    expect(due(0, "2026-11-20")).toEqual([]);
    expect(due(6, "2026-11-20")).toEqual([]);
    expect(due(6, "2026-11-21")).toEqual(["Test again"]);
    expect(due(0, "2026-11-20", 4)).toEqual(["Test again"]);
    expect(due(6, "2026-10-01")).toEqual(["Check the date"]);
  });

  it("can be one that is not there at all", () => {
    const member = {
      role: null,
      group: null,
      dominantSide: null,
      birthYear: null,
      bodyMass: null,
      stature: null,
      notes: null,
    };
    const background = { ...noBackground, squad: ["a", "Zoe"].map((athlete) => ({ ...member, athlete })) };
    expect(of(even, {}, background).rows).toEqual([]);
    expect(of(even, { untested: "yes" }, background).rows.map(({ what }) => what)).toEqual(["Zoe: Jump"]);
  });

  it("says so where there is nothing", () => {
    expect(of(even).summary).toEqual(["Nothing to look at again was found."]);
  });
});

it("says of which tests no plausible range is known, by the battery or by the measure", () => {
  const results = [
    testResult({ athlete: "Ane", test: "Throw", value: 8, unit: "m", cell: "B2" }),
    testResult({ athlete: "Ane", test: "Hop", value: 150, unit: "cm", cell: "C2" }),
    testResult({ athlete: "Ane", test: "Jump", measure: "jumpHeight", value: 30, unit: "cm", cell: "D2" }),
  ];
  const told = (battery: Background["battery"]) =>
    of(results, {}, { ...noBackground, battery }).cautions.filter((caution) => caution.includes("plausible range"));
  expect(told([])).toEqual([expect.stringContaining("Throw, Hop:")]);
  expect(told([batteryTest({ test: "Hop", unit: "cm", lowest: 30, highest: 300 })])).toEqual([
    expect.stringContaining("of Throw:"),
  ]);
});
