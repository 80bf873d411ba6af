import type { AnyAnalysis } from "../../src/analyses/analysis";
import { asymmetry } from "../../src/analyses/asymmetry/asymmetry";
import { describe as describeAnswer } from "../../src/analyses/describe";
import { standing } from "../../src/analyses/standing/standing";
import { strength } from "../../src/analyses/strength/strength";
import { unwrap } from "../../src/engine/result";
import type { Host } from "../../src/host";
import { gridAddress } from "../../src/reading/address";
import { usesOf } from "../../src/reading/columns";
import { readResults } from "../../src/reading/readResults";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { readSelection } from "../../src/sheet/readSelection";
import { writeReport } from "../../src/sheet/writeReport";
import { noBackground } from "../../src/store/background";
import { addSheet } from "./openWorkbook";
import { squadMember } from "./storeRows";
import { openWithFunctions } from "./withFunctions";

let host: Host;

beforeEach(async () => {
  host = await openWithFunctions();
});

afterEach(() => host.dispose());

const wide = [
  ["Athlete", "Left 1 (cm)", "Left 2 (cm)", "Right 1 (cm)", "Right 2 (cm)"],
  ["Alva", 150, 152.5, 160, 161],
  ["Berit", 140, 141, 139, "DNS"],
  ["Cille", "1.82 m", 180, 200, 204],
  ["Dagny", 170, 168, "", ""],
];

const long = [
  ["Athlete", "Side", "Distance (cm)"],
  ["Alva", "left", 150],
  ["Berit", "right", 139],
  ["Alva", "left", 152.5],
  ["Alva", "right", 160],
  ["Berit", "left", 140],
  ["Alva", "right", 161],
  ["Berit", "left", 141],
];

/** The answer for the selected cells, its table of values or live. */
async function report(analysis: AnyAnalysis, settings: object, isLive: boolean) {
  const selection = await readSelection();
  if (selection.kind !== "cells") throw new Error("Nothing selected.");
  const { grid } = selection;
  const map = recogniseColumns(grid);
  const reading = readResults(grid, map);
  return unwrap(
    describeAnswer({
      analysis,
      reading,
      uses: usesOf(map),
      test: reading.tests[0]!,
      settings: { ...settings },
      background: { ...noBackground, squad: [squadMember("Alva", { bodyMass: 70 })] },
      source: gridAddress(grid),
      date: "2026-08-11",
      ...(isLive ? { live: { grid, map } } : {}),
    }),
  );
}

const tableAt = (sheet: string) =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).tables.getItemAt(0).getRange();
    range.load("values,formulas");
    await context.sync();
    const [headings, ...rows] = range.values;
    return {
      formulas: range.formulas,
      cell: (athlete: string, heading: string) =>
        rows.find((row) => row[0] === athlete)![headings!.findIndex((one) => String(one).startsWith(heading))],
      values: range.values,
    };
  });

async function written(analysis: AnyAnalysis, settings: object, isLive: boolean) {
  const outcome = await writeReport(await report(analysis, settings, isLive), isLive ? "live" : "values");
  if (outcome.kind !== "written") throw new Error(outcome.kind);
  await host.settle();
  return { sheet: outcome.sheet, ...(await tableAt(outcome.sheet)) };
}

describe.each([
  ["wide", wide],
  ["long", long],
])("a live table of asymmetry from a %s sheet", (layout, rows) => {
  beforeEach(async () => {
    await addSheet("Hop test", rows);
    host.select(`'Hop test'!A1:${layout === "wide" ? "E5" : "C8"}`);
  });

  it.each([{ reduction: "best" }, { reduction: "mean" }, { reduction: "median", direction: "lower" }])(
    "shows the numbers of the table of values, scored by %j",
    async (settings) => {
      const plain = await written(asymmetry, settings, false);
      host.select(`'Hop test'!A1:${layout === "wide" ? "E5" : "C8"}`);
      const live = await written(asymmetry, settings, true);
      expect(live.formulas.flat().filter((formula) => String(formula).includes("TAPELINE."))).not.toHaveLength(0);
      live.values.forEach((row, r) => {
        row.forEach((value, c) => {
          const other = plain.values[r]![c];
          if (typeof value === "number") expect(value).toBeCloseTo(other as number, 9);
          else expect(value).toBe(other);
        });
      });
    },
  );

  it("follows an edited trial, and knows when the results were sorted", async () => {
    const live = await written(asymmetry, {}, true);
    expect(live.cell("Alva", "Left (cm)")).toBe(152.5);
    await host.type(layout === "wide" ? "'Hop test'!C2" : "'Hop test'!C4", 170);
    const edited = await tableAt(live.sheet);
    expect(edited.cell("Alva", "Left (cm)")).toBe(170);
    expect(edited.cell("Alva", "Asymmetry")).toBeCloseTo((-100 * (170 - 161)) / 170, 9);
    expect(edited.cell("Alva", "Stronger side")).toBe("Left");
    expect(edited.cell("Alva", "Verdict")).toBe(live.cell("Alva", "Verdict"));
    expect(edited.cell("Berit", "Left (cm)")).toBe(141);

    await host.type("'Hop test'!A2", "Berit");
    expect((await tableAt(live.sheet)).cell("Alva", "Left (cm)")).toBe("#N/A");
  });
});

it("writes values where a formula could not read what was used, and where there is no answer", async () => {
  await addSheet("Hop test", wide);
  host.select("'Hop test'!A1:E5");
  const { table, cautions } = await report(asymmetry, {}, true);
  const formula = (athlete: string, key: string) =>
    table.formulas![table.rows.findIndex((row) => row[0] === athlete)]![
      table.columns.findIndex((column) => column.key === key)
    ];
  expect(formula("Cille", "left")).toBeNull();
  expect(formula("Cille", "right")).toContain("TAPELINE.TRIALSCORE('Hop test'!$D$4:$E$4,");
  expect(formula("Cille", "asymmetry")).toBeNull();
  expect(formula("Dagny", "right")).toBeNull();
  expect(formula("Alva", "athlete")).toBeNull();
  expect(formula("Alva", "verdict")).toBeNull();
  expect(cautions[0]).toMatch(/^These columns follow your results: Left \(cm\), Right \(cm\), Asymmetry \(%\)/);
  expect(cautions[0]).toContain("2026-08-11");
});

it("has no formulas and no note where the coach wants values", async () => {
  await addSheet("Hop test", wide);
  host.select("'Hop test'!A1:E5");
  const { table, cautions } = await report(asymmetry, {}, false);
  expect(table.formulas).toBeUndefined();
  expect(cautions.join()).not.toContain("follow your results");
});

it.each([{ sides: "mean" }, { sides: "better" }, { sides: "weaker", reduction: "mean" }])(
  "of standing follows the score of two sides: %j",
  async (settings) => {
    await addSheet("Hop test", wide.slice(0, 4));
    host.select("'Hop test'!A1:E4");
    const plain = await report(standing, settings, false);
    const live = await written(standing, settings, true);
    for (const row of plain.table.rows) {
      const score = row[plain.table.columns.findIndex(({ key }) => key === "score")];
      expect(live.cell(String(row[0]), "Score")).toBeCloseTo(score as number, 9);
    }
    expect(live.formulas.flat().filter((formula) => String(formula).startsWith("=IF(TRIM("))).toHaveLength(2);
  },
);

describe("a live table of strength", () => {
  const sets = [
    ["Athlete", "Load (kg)", "Reps", "Reps in reserve"],
    ["Alva", 100, 5, 1],
    ["Alva", 110, 3, 0],
    ["Alva", 60, 12, 0],
    ["Berit", 70, 1, 0],
    ["Cille", 40, 14, 0],
    ["Dagny", 21, 5, 0],
  ];
  const select = async (rows: typeof sets) => {
    await addSheet("Gym", rows);
    host.select(`Gym!A1:D${rows.length}`);
  };
  const called = (formulas: unknown[][]) => formulas.flat().filter((formula) => String(formula).includes("TAPELINE."));

  it.each([{}, { equation: "brzycki", rounding: "nearest", repetitions: 3, reserve: 0 }])(
    "shows the numbers of the table of values: %j",
    async (settings) => {
      await select(sets);
      const plain = await written(strength, settings, false);
      host.select("Gym!A1:D7");
      const live = await written(strength, settings, true);
      // Of two sets: maximum, per body mass, working load, its share and plates; the set that counts may be another one.
      expect(called(live.formulas.filter(([athlete]) => athlete === "Alva"))).toHaveLength(5);
      live.values.forEach((row, r) => {
        row.forEach((value, c) => {
          const other = plain.values[r]![c];
          if (typeof value === "number") expect(value).toBeCloseTo(other as number, 9);
          else expect(value).toBe(other);
        });
      });
    },
  );

  it("follows an edited set down to the plates, and knows when another lift stands in its row", async () => {
    await select(sets.map((row, index) => [...row.slice(0, 3), index === 0 ? "Exercise" : "Squat"]));
    const live = await written(strength, {}, true);
    await host.type("Gym!B6", 60);
    await host.type("Gym!C6", 5);
    const edited = await tableAt(live.sheet);
    // Epley: 60 (1 + 5 / 30) = 70; for 5 repetitions with 2 in reserve 70 / (1 + 7 / 30) = 56.76, hence 55 on the bar.
    expect(edited.cell("Cille", "Estimated maximum")).toBeCloseTo(70, 9);
    expect(edited.cell("Cille", "Working load")).toBe(55);
    expect(edited.cell("Cille", "Plates per side")).toBe("10 + 5 + 2.5");
    expect(edited.cell("Cille", "Of the maximum")).toBeCloseTo((100 * 55) / 70, 9);
    await host.type("Gym!D6", "Bench press");
    expect((await tableAt(live.sheet)).cell("Cille", "Estimated maximum")).toBe("#N/A");
    expect((await tableAt(live.sheet)).cell("Alva", "Estimated maximum")).toBeCloseTo(121, 9);
  });

  it("keeps values where loads are in pounds, which the formula would take for kilograms", async () => {
    await select([["Athlete", "Load (lb)", "Reps", "Reps in reserve"], ...sets.slice(1)]);
    const { formulas } = await written(strength, {}, true);
    expect(called(formulas)).toEqual([]);
  });
});
