import { type StrengthRow, strength } from "../../src/analyses/strength/strength";
import { unwrap } from "../../src/engine/result";
import type { MeasureKey } from "../../src/reading/measures";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";

type Set = Partial<TestResult> & { readonly reserve?: number };

let row = 1;
/** A set as three cells of one row. */
function set(athlete: string, load: number | null, repetitions: number | null, { reserve, ...said }: Set = {}) {
  row++;
  const cell = (letters: string, measure: MeasureKey, value: number | null | undefined): TestResult[] =>
    value == null
      ? []
      : [testResult({ athlete, test: "Back squat", measure, value, cell: `${letters}${row}`, attempt: row, ...said })];
  return [
    ...cell("B", "load", load),
    ...cell("C", "repetitions", repetitions),
    ...cell("D", "repetitionsInReserve", reserve),
  ];
}

const answer = (results: readonly TestResult[], settings: object = {}, background = noBackground) =>
  unwrap(strength.compute(results, strength.settings.parse(settings), background));

const rowOf = (rows: readonly StrengthRow[], athlete: string) => rows.find((one) => one.athlete === athlete)!;

describe("estimated strength", () => {
  // Source: R 4.2.2 arithmetic on the printed equations, 100 kg: the table's rows for 5 and 8 repetitions.
  it.each([
    ["epley", 116.6667, 126.6667],
    ["brzycki", 112.5, 124.1379],
    ["lander", 113.7089, 125.1092],
    ["lombardi", 117.4619, 123.1144],
    ["mayhew", 119.0107, 126.2863],
    ["oConner", 112.5, 120],
    ["wathan", 116.5825, 127.6714],
  ])("by %s is that of the published equation, between the least and the most of all", (equation, five, eight) => {
    const { rows } = answer([...set("A", 100, 5), ...set("B", 100, 8)], { equation });
    expect(rowOf(rows, "A").maximum).toBeCloseTo(five, 4);
    expect(rowOf(rows, "B").maximum).toBeCloseTo(eight, 4);
    expect(rowOf(rows, "A")).toMatchObject({ lowest: expect.closeTo(112.5, 4), highest: expect.closeTo(119.0107, 4) });
    expect(rowOf(rows, "B")).toMatchObject({ lowest: expect.closeTo(120, 4), highest: expect.closeTo(127.6714, 4) });
  });

  it("ranks a lift's athletes, strongest first, and keeps lifts and sides apart", () => {
    const { rows } = answer([
      ...set("A", 80, 5),
      ...set("B", 100, 5),
      ...set("C", 100, 5),
      ...set("A", 40, 6, { test: "Bench press" }),
      ...set("A", 20, 6, { test: "Split squat", side: "left" }),
    ]);
    expect(rows.map(({ row: name, rank }) => [name, rank])).toEqual([
      ["B: Back squat", 1],
      ["C: Back squat", 1],
      ["A: Back squat", 3],
      ["A: Bench press", 1],
      ["A: Split squat, left", 1],
    ]);
  });

  it("counts the highest estimate of the latest day, and rough ones only where there is no other", () => {
    const { rows } = answer([
      ...set("A", 120, 5, { date: "2026-08-11" }),
      ...set("A", 90, 5, { date: "2026-10-06" }),
      ...set("A", 95, 4, { date: "2026-10-06" }),
      ...set("A", 90, 14, { date: "2026-10-06" }),
      ...set("B", 60, 12),
    ]);
    expect(rowOf(rows, "A")).toMatchObject({ load: 95, repetitions: 4 });
    expect(rowOf(rows, "B").verdict).toContain("Rough: 12 repetitions say little about one.");
  });

  it("leaves out what the equations are not for, with the cell and the reason", () => {
    row = 1;
    const { rows, leftOut } = answer([
      ...set("A", 50, 18),
      ...set("B", 80, null),
      ...set("C", null, 5),
      ...set("D", 80, 0),
      ...set("E", 80, 5),
    ]);
    expect(leftOut).toEqual([
      { cell: "C2", why: "Repetitions done must be from 1 to 15; 18 is not." },
      { cell: "B3", why: "A load without repetitions: no maximum follows." },
      { cell: "C4", why: "Repetitions without a load: no maximum follows." },
      { cell: "C5", why: "Repetitions done must be from 1 to 15; 0 is not." },
    ]);
    expect(rows.map(({ athlete, rank, maximum }) => [athlete, rank, maximum === null])).toEqual([
      ["E", 1, false],
      ["A", null, true],
      ["B", null, true],
      ["C", null, true],
      ["D", null, true],
    ]);
    expect(rowOf(rows, "A").verdict).toBe("No answer: no set with a load and 1 to 15 repetitions.");
  });

  it("takes a single for the maximum itself, and counts repetitions in reserve", () => {
    const { rows } = answer([
      ...set("A", 100, 1),
      ...set("B", 100, 3, { reserve: 2 }),
      ...set("C", 100, 3, { reserve: 4 }),
    ]);
    expect(rowOf(rows, "A")).toMatchObject({ maximum: 100, lowest: 100, highest: 100 });
    expect(rowOf(rows, "A").verdict).toContain("Lifted once: measured, not estimated.");
    expect(rowOf(rows, "B").maximum).toBeCloseTo(116.6667, 4);
    expect(rowOf(rows, "B").verdict).toContain("the athlete's own count");
    expect(rowOf(rows, "C").verdict).toContain("go closer to failure");
  });

  it("divides by the body mass of the squad's table, and tells where there is none", () => {
    const member = { role: null, group: null, dominantSide: null, birthYear: null, stature: null, notes: null };
    const squad = [{ athlete: "A", bodyMass: 70, ...member }];
    const { rows, cautions } = answer([...set("A", 105, 1), ...set("B", 105, 1)], {}, { ...noBackground, squad });
    expect(rowOf(rows, "A").relative).toBeCloseTo(1.5, 12);
    expect(rowOf(rows, "B")).toMatchObject({ relative: null, verdict: expect.stringContaining("No body mass.") });
    expect(cautions).toContain("1 athlete has no body mass: strength per body mass is blank there.");
  });
});

describe("the working load", () => {
  // Source: R 4.2.2: 87.3 on a bar of 20 with plates of 1.25 is 85 rounded down and 87.5 to the nearest.
  it.each([
    ["down", 85],
    ["nearest", 87.5],
  ])("is rounded %s to what the bar can carry", (rounding, load) => {
    const { rows } = answer(set("A", 87.3, 1), { repetitions: 1, reserve: 0, rounding });
    expect(rows[0]!.workingLoad).toBe(load);
    expect(rows[0]!.share).toBeCloseTo((100 * load) / 87.3, 10);
  });

  it("is made of plates no lighter than the coach has", () => {
    const plates = (smallestPlate: number) => answer(set("A", 87.3, 1), { repetitions: 1, reserve: 0, smallestPlate });
    expect(plates(1.25).rows[0]!.plates).toBe("20 + 10 + 2.5");
    expect(plates(5).rows[0]).toMatchObject({ workingLoad: 80, plates: "20 + 10" });
    expect(answer(set("A", 20, 1), { repetitions: 1, reserve: 0 }).rows[0]!.plates).toBe("none");
  });

  it("is none, with the reason, below the bar and beyond the repetitions the equations are for", () => {
    const light = answer(set("A", 18, 3)).rows[0]!;
    expect(light).toMatchObject({ workingLoad: null, share: null, plates: "" });
    expect(light.verdict).toContain("below the bar (20)");
    const many = answer(set("A", 80, 3), { repetitions: 14, reserve: 3 }).rows[0]!;
    expect(many.workingLoad).toBeNull();
    expect(many.verdict).toContain("Repetitions with those in reserve must be from 1 to 15; 17 is not.");
  });
});

it("says the strongest, how far the equations differ, and what goes on the bar", () => {
  const { summary } = answer([...set("A", 80, 5), ...set("B", 100, 5)]);
  expect(summary).toEqual([
    "Back squat: 2 athletes from 93.3 to 116.7 kg; highest B (112.5 to 119.0 kg by the choice of equation).",
    "Back squat, 5 repetitions with 2 in reserve: 75 to 92.5 kg on the bar.",
  ]);
});

it("refuses where there is no set at all", () => {
  expect(strength.compute([], strength.settings.parse({}), noBackground).ok).toBe(false);
});
