import { analyses } from "../../src/analyses";
import { describe as describeAnswer } from "../../src/analyses/describe";
import { seriesOf } from "../../src/analyses/seriesOf";
import { unwrap } from "../../src/engine/result";
import type { ColumnUse } from "../../src/reading/columns";
import type { MeasureKey } from "../../src/reading/measures";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { type Background, noBackground } from "../../src/store/background";
import { batteryTest } from "./batteryTest";

const called = (id: string) => analyses.find((one) => one.id === id)!;

/** Squats by load and repetitions, drop jumps by flight and contact, hops of two sides and body mass, of four athletes. */
const results: readonly TestResult[] = ["A", "B", "C", "D"].flatMap((athlete, index) => {
  const one = (test: string, measure: MeasureKey | null, value: number, unit: string, more: Partial<TestResult> = {}) =>
    testResult({ athlete, test, measure, value, unit, cell: `${"BCDEFGHIJ"[index]}${value}`, ...more });
  return [
    one("Squat", "load", 80 + 10 * index, "kg"),
    one("Squat", "repetitions", 3 + index, "reps"),
    one("Hop", null, 150 + index, "cm", { side: "left" }),
    one("Hop", null, 151 + index, "cm", { side: "right" }),
    one("Drop jump", "flightTime", 480 + 10 * index, "ms"),
    one("Drop jump", "contactTime", 200 + 10 * index, "ms"),
    one("", "bodyMass", 70 + index, "kg"),
  ];
});
const reading = { results, athletes: [], alike: [], bodies: [], tests: [], remarks: [] };
const offered = (id: string, background: Background = noBackground) => seriesOf(called(id), reading, background).tests;

const comparable = [
  ...["Squat, estimated maximum", "Squat, strength per body mass", "Hop"],
  ...["Drop jump, flight time", "Drop jump, contact time", "Drop jump, jump height"],
  "Drop jump, reactive strength index",
];

describe("which series an analysis is offered", () => {
  it("of one test at a time: all that compare, what formulas make of the results too, but no loads and no body mass", () => {
    expect(offered("standing")).toEqual(comparable);
    expect(offered("change")).toEqual(comparable);
  });

  it("of sides: tests with sides alone", () => {
    expect(offered("asymmetry")).toEqual(["Hop"]);
    expect(offered("capacity")).toEqual(["Hop"]);
  });

  it("of all tests at once: what formulas make of them only where the battery lists it", () => {
    expect(offered("reliability")).not.toContain("Squat, estimated maximum");
    const battery = [batteryTest({ test: "squat", measure: "estimatedMaximum" })];
    for (const id of ["reliability", "retest", "ranking"]) {
      expect(offered(id, { ...noBackground, battery })).toContain("Squat, estimated maximum");
      expect(offered(id, { ...noBackground, battery })).not.toContain("Squat, strength per body mass");
    }
  });

  it("that knows the formulas itself: the results as measured", () => {
    for (const id of ["strength", "jumps", "sprints"])
      expect(seriesOf(called(id), reading, noBackground).results).toEqual(results);
  });

  it("needs the body mass that stands on the sheet or in the squad", () => {
    const massless = results.filter(({ measure }) => measure !== "bodyMass");
    const names = (bodies: readonly { athlete: string; bodyMass: number | null; stature: number | null }[]) =>
      seriesOf(called("standing"), { results: massless, bodies }, noBackground).tests;
    expect(names([])).not.toContain("Squat, strength per body mass");
    expect(names([{ athlete: "A", bodyMass: 70, stature: null }])).toContain("Squat, strength per body mass");
  });
});

describe("an answer about a computed series", () => {
  const ask = (id: string, test: string, of: readonly TestResult[] = results) =>
    describeAnswer({
      analysis: called(id),
      reading: { ...reading, results: of },
      uses: new Set<ColumnUse>(["athlete", "result", "side"]),
      test,
      settings: {},
      background: noBackground,
      source: "Sheet!A1:B2",
      date: "2026-11-20",
    });

  // Source: Epley's equation by hand, 110 × (1 + 6 ÷ 30) = 132 kg and so on down to 80 × (1 + 3 ÷ 30) = 88.
  it("is that of the formula, in its unit", () => {
    const { table, title, provenance } = unwrap(ask("standing", "Squat, estimated maximum"));
    expect(title).toBe("Standing in the squad: Squat, estimated maximum");
    expect(provenance.used).toBe("4 athletes, 4 results");
    const at = table.columns.findIndex(({ key }) => key === "score");
    expect(table.columns[at]!.heading).toBe("Score (kg)");
    expect(table.rows.map((row) => Number(row[at]).toFixed(4))).toEqual([
      "132.0000",
      "116.6667",
      "102.0000",
      "88.0000",
    ]);
  });

  it("says how much of it was used, where that is not all", () => {
    const days = ["2026-08-20", "2026-10-29"].flatMap((date) => results.map((result) => ({ ...result, date })));
    const used = (id: string, test: string) => unwrap(ask(id, test, days)).provenance.used;
    expect(used("standing", "Squat, estimated maximum")).toBe(
      "4 athletes, 4 of 8 results, those of the days that count",
    );
    expect(used("asymmetry", "Hop")).toBe("4 athletes, 8 of 16 results, those of each athlete's latest day");
    expect(used("strength", "")).toBe("4 athletes, 4 of 8 sets, those of the latest day");
  });

  it("is refused in words where nothing has sides, or nothing compares", () => {
    const oneSided = results.filter(({ test }) => test === "Drop jump");
    expect(ask("asymmetry", "", oneSided)).toMatchObject({ ok: false, reasons: [{ code: "noSides" }] });
    const loads = results.filter(({ measure }) => measure === "load");
    expect(ask("standing", "", loads)).toMatchObject({ ok: false, reasons: [{ code: "noSeries" }] });
  });
});
