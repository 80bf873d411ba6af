import { type SprintsRow, sprints } from "../../src/analyses/sprints/sprints";
import { isTurnTest } from "../../src/analyses/sprints/turnNames";
import { unwrap } from "../../src/engine/result";
import type { MeasureKey } from "../../src/reading/measures";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";
import type { SquadMember } from "../../src/store/squad";
import { column, expected, expectRelative, labels } from "../reference/reference";

type Said = Partial<TestResult>;
type Times = Partial<Record<5 | 10 | 15 | 20 | 30 | 40, number>>;

const run = (athlete: string, times: Times, said: Said = {}): TestResult[] =>
  Object.entries(times).map(([metres, value], index) => {
    const cell = `${"CDEFGH".charAt(index)}2`;
    return testResult({
      athlete,
      test: "Sprint",
      measure: `time${metres}` as MeasureKey,
      unit: "s",
      value,
      cell,
      ...said,
    });
  });

const turn = (athlete: string, side: "left" | "right" | null, value: number, said: Said = {}) =>
  testResult({ athlete, test: "505", side, value, unit: "s", cell: "K2", ...said });

const answer = (results: readonly TestResult[], settings: object = {}, squad: readonly SquadMember[] = []) =>
  unwrap(sprints.compute(results, sprints.settings.parse(settings), { ...noBackground, squad }));

const member = (athlete: string, bodyMass: number | null, stature: number | null): SquadMember => ({
  ...{ athlete, bodyMass, stature, role: null, group: null, dominantSide: null, birthYear: null, notes: null },
});

const rowOf = (rows: readonly SprintsRow[], athlete: string) => rows.find((one) => one.athlete === athlete)!;

describe("the curve of a sprint", () => {
  const { fits, "force_velocity_A_mass80_h1.80": forces } = expected("sprint_splits");
  const distances = [5, 10, 15, 20, 30, 40] as const;
  const timesOf = (athlete: string, which: "time_noisy_s" | "time_exact_s"): Times => {
    const athletes = labels("sprint_splits", "athlete");
    const own = column("sprint_splits", which).filter((_, index) => athletes[index] === athlete);
    return Object.fromEntries(distances.map((distance, index) => [distance, own[index]!]));
  };

  // Source: R 4.2.2 nls(d ~ V * (t - tau * (1 - exp(-t / tau)))), six splits with noise.
  it.each(["A", "B", "C", "D"])("of athlete %s agrees with R", (athlete) => {
    const reference = fits[athlete].noisy.distance_ls;
    const [row] = answer(run(athlete, timesOf(athlete, "time_noisy_s"))).rows;
    expectRelative(row!.maximal!, reference.Vmax, 1e-7);
    expectRelative(row!.constant!, reference.tau, 1e-7);
    expectRelative(row!.acceleration!, reference.Vmax / reference.tau, 1e-7);
    expect(row!.verdict).toBe("");
  });

  // Source: R 4.2.2, Wald limits with Student's t on 4 degrees of freedom.
  it("has R's limits", () => {
    const [row] = answer(run("A", { 5: 1.38, 10: 2.11, 15: 2.72, 20: 3.33, 30: 4.48, 40: 5.57 })).rows;
    expectRelative(row!.maximalLow!, 9.044514, 1e-6);
    expectRelative(row!.maximalHigh!, 9.372574, 1e-6);
  });

  // Source: R 4.2.2 lm(force ~ velocity) for the curve 9.2 m/s, 1.25 s, 80 kg and 1.80 m, air included.
  it("gives force and power where body mass and stature are known", () => {
    const squad = [member("A", 80, 180), member("B", 80, null)];
    const results = [...run("A", timesOf("A", "time_exact_s")), ...run("B", timesOf("A", "time_exact_s"))];
    const { rows, cautions } = answer(results, {}, squad);
    const wanted = forces.with_air_regression_1001pts_0_to_tend;
    expectRelative(rowOf(rows, "A").force!, wanted.F0_rel, 1e-6);
    expectRelative(rowOf(rows, "A").power!, wanted.Pmax_rel, 1e-6);
    expect(rowOf(rows, "B")).toMatchObject({ force: null, power: null, momentum: expect.any(Number) });
    expect(cautions).toContain("Force and power need body mass and stature: missing, or not usable, for 1 of 2.");
  });

  it("says why there is none, and where it is a guess", () => {
    const { rows, cautions } = answer([
      ...run("A", { 10: 1.8, 20: 3.05 }),
      ...run("B", { 5: 1.371197, 10: 2.131319, 20: 3.468847 }),
      ...run("C", { 5: 1.1, 10: 2.2, 20: 4.4, 30: 6.6 }),
    ]);
    expect(rowOf(rows, "A")).toMatchObject({ maximal: null, fastest: expect.closeTo(8, 10) });
    expect(rowOf(rows, "A").verdict).toBe("No curve: At least 3 splits are needed; there are 2.");
    expect(rowOf(rows, "B").maximal).toBeCloseTo(8, 3);
    expect(rowOf(rows, "B").verdict).toBe("Maximal speed is extrapolated: the run ends at 20 m.");
    expect(cautions).toContain("With fewer than 5 gates the limits of the maximal speed are rough.");
    expect(rowOf(rows, "C").verdict).toMatch(/^No curve: /);
  });
});

describe("the sections of a sprint", () => {
  // By hand: first sections of 1.00, 1.02, 1.04, 1.10 s have the middle 1.03; second ones of 0.80, 0.78, 0.78, 0.70 s 0.78.
  const squad = [
    ...run("A", { 5: 1, 10: 1.8 }),
    ...run("B", { 5: 1.02, 10: 1.8 }),
    ...run("C", { 5: 1.04, 10: 1.82 }),
    ...run("D", { 5: 1.1, 10: 1.8 }),
  ];

  it("are held against the squad's middle; gaps below 0.03 s are not worth a word", () => {
    const { rows, summary } = answer(squad);
    expect(rowOf(rows, "D")).toMatchObject({ lost: "0 to 5 m: 0.07 s", won: "5 to 10 m: 0.08 s" });
    expect(rowOf(rows, "A")).toMatchObject({ lost: "", won: "0 to 5 m: 0.03 s" });
    expect(rowOf(rows, "B")).toMatchObject({ lost: "", won: "" });
    expect(summary).toEqual([
      "Over 10 m the fastest is A, 1.80 s; the middle of 4 athletes is 1.80 s.",
      "Of 4, most time on the squad's middle is lost from 0 to 5 m by 1.",
    ]);
  });

  it("are not held against fewer than four", () => {
    expect(answer(squad.slice(0, 6)).rows.every(({ lost, won }) => lost === "" && won === "")).toBe(true);
  });

  it("give a column of speeds each, blank where a gate is missing", () => {
    const { moreColumns, rows } = answer([...run("A", { 10: 1.8, 20: 3.05 }), ...run("B", { 20: 3.2 })]);
    expect(moreColumns!.map(({ heading }) => heading)).toEqual(["0 to 10 m (m/s)", "10 to 20 m (m/s)"]);
    expect(rows.map(({ athlete }) => athlete)).toEqual(["A", "B"]);
    expect(moreColumns![1]!.values[0]).toBeCloseTo(8, 10);
    expect(moreColumns![1]!.values[1]).toBeNull();
  });

  it("too fast to be true are marked at the gate, and told", () => {
    const { rows, marks } = answer(run("A", { 10: 1.8, 20: 2.3, 30: 4.4 }));
    expect(marks).toEqual([
      { cell: "D2", why: expect.stringContaining("From 10 to 20 m the athlete would have run 20.0") },
    ]);
    expect(rows[0]!.verdict).toContain("check the gate times");
  });
});

describe("runs", () => {
  it("that count are the longest of the latest day, and of these the fastest", () => {
    const { rows } = answer([
      ...run("A", { 10: 1.6, 20: 2.8 }, { date: "2026-08-11" }),
      ...run("A", { 10: 1.8, 20: 3.1 }, { date: "2026-10-06" }),
      ...run("A", { 10: 1.9, 20: 3.05 }, { date: "2026-10-06", attempt: 2 }),
      ...run("A", { 10: 1.7 }, { date: "2026-10-06", attempt: 3 }),
    ]);
    expect(rows[0]).toMatchObject({ distance: 20, time: 3.05 });
  });

  it("whose times do not rise are left out with the reason", () => {
    const { rows, leftOut } = answer([...run("A", { 10: 3.1, 20: 1.8 }), ...run("B", { 10: 1.8, 20: 3.1 })]);
    expect(leftOut).toEqual([{ cell: "C2", why: expect.stringContaining("must rise from split to split") }]);
    expect(rows.map(({ athlete, distance }) => [athlete, distance])).toEqual([
      ["B", 20],
      ["A", null],
    ]);
    expect(rowOf(rows, "A").verdict).toBe("No run with rising split times.");
  });

  // Source: 0.24 s as athletics adds it (as quoted by secondary pages).
  it("by stopwatch are made like those of gates, with a caution", () => {
    const { rows, cautions } = answer(run("A", { 10: 1.6, 20: 2.8 }), { timing: "stopwatch" });
    expect(rows[0]!.time).toBeCloseTo(3.04, 10);
    expect(cautions[0]).toMatch(/^Stopwatch: 0.24 s were added/);
  });

  it("need at least one, else the question is refused", () => {
    expect(sprints.compute([turn("A", "left", 2.4)], sprints.settings.parse({}), noBackground).ok).toBe(false);
  });
});

describe("the 505", () => {
  it.each([
    ["505", true],
    ["505 test", true],
    ["5-0-5", true],
    ["COD 505, turn", true],
    ["5-10-5", false],
    ["1505", false],
    ["Sprint", false],
  ])("is named by %s: %s", (test, isOne) => {
    expect(isTurnTest(test)).toBe(isOne);
  });

  // Source: R 4.2.2 arithmetic, 505 in 2.45 s, 10 m in 1.80 s and 20 m in 3.05 s.
  it.each([
    ["first 10 m", 0.65],
    ["10 to 20 m", 1.2],
  ])("less the %s is %d s", (straight, deficit) => {
    const { rows } = answer([...run("A", { 10: 1.8, 20: 3.05 }), turn("A", "left", 2.45)], { straight });
    expect(rows[0]!.deficitLeft).toBeCloseTo(deficit, 12);
    expect(rows[0]).toMatchObject({ left: 2.45, right: null, deficitRight: null });
  });

  it("counts with the fastest of a side, against the fastest straight 10 m of the same day", () => {
    const { rows, summary } = answer([
      ...run("A", { 10: 1.85, 20: 3.05 }),
      ...run("A", { 10: 1.8, 20: 3.1 }, { attempt: 2 }),
      turn("A", "left", 2.5),
      turn("A", "left", 2.45, { attempt: 2 }),
      turn("A", "right", 2600, { unit: "ms" }),
      ...run("B", { 10: 1.8, 20: 3.05 }, { date: "2026-08-11" }),
      turn("B", "left", 2.4, { date: "2026-08-18" }),
    ]);
    expect(rowOf(rows, "A").deficitLeft).toBeCloseTo(0.65, 12);
    expect(rowOf(rows, "A").deficitRight).toBeCloseTo(0.8, 12);
    expect(rowOf(rows, "B")).toMatchObject({ left: 2.4, deficitLeft: null });
    expect(rowOf(rows, "B").verdict).toContain("505: no 10 m time of the same day.");
    expect(summary.at(-1)).toBe("A 505 takes 0.65 to 0.80 s longer than the straight 10 m.");
  });

  it("without a side, or in another kind of unit, is left out and told", () => {
    const { leftOut } = answer([
      ...run("A", { 10: 1.8, 20: 3.05 }),
      turn("A", null, 2.45, { cell: "K3" }),
      turn("A", "left", 2.45, { unit: "cm", cell: "K4" }),
    ]);
    expect(leftOut).toEqual([
      { cell: "K3", why: "A 505 without a side: say left or right." },
      { cell: "K4", why: "A 505 is wanted in s; “cm” is another kind of unit." },
    ]);
  });

  it("no slower than the straight run is told", () => {
    const { rows } = answer([...run("A", { 10: 1.8, 20: 3.05 }), turn("A", "left", 1.7)]);
    expect(rows[0]!.verdict).toContain("one of the times must be wrong.");
  });
});
