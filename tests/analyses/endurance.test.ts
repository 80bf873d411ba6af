import { type EnduranceRow, endurance } from "../../src/analyses/endurance/endurance";
import { unwrap } from "../../src/engine/result";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";
import type { SquadMember } from "../../src/store/squad";

const result = (athlete: string, value: number, unit: string | null, said: Partial<TestResult> = {}) =>
  testResult({ athlete, test: "Run", value, unit, cell: "B2", ...said });

const member = (athlete: string, birthYear: number | null, bodyMass: number | null = null): SquadMember => ({
  ...{ athlete, birthYear, bodyMass, role: null, group: null, dominantSide: null, stature: null, notes: null },
});

const ask = (results: readonly TestResult[], settings: object, squad: readonly SquadMember[] = []) =>
  endurance.compute(
    results,
    endurance.settings.parse(settings),
    { ...noBackground, squad },
    { today: "2026-11-20", remarks: [] },
  );

const answer = (...asked: Parameters<typeof ask>) => unwrap(ask(...asked));
const rowOf = (rows: readonly EnduranceRow[], athlete: string) => rows.find((one) => one.athlete === athlete)!;

describe("endurance by its protocol", () => {
  // Source: R 4.2.2 arithmetic on the published equations; Stickland's lines by hand.
  it.each([
    ["recovery1", 1200, "m", {}, null, 46.48],
    ["recovery2", 600, "m", {}, null, 53.46],
    ["fitness3015", 19.5, "km/h", { sex: "male" }, 19.5, 52.3949],
    ["shuttleSpeed", 12.5, "km/h", {}, 12.5, 47.596],
    ["twoMinuteShuttle", 12.5, "km/h", {}, 12.5, 53.7545],
    ["shuttleStage", 10, null, { sex: "male" }, 13, 56.3],
    ["shuttleStage", 10.5, null, { sex: "female", firstStage: "at80" }, 12.5, 55.025],
    ["timedRun", 1500, "m", { runMinutes: 5 }, 18, null],
    ["timeTrial", 300, "s", { runMetres: 1500 }, 18, null],
  ] as const)("%s: %d %s", (protocol, value, unit, settings, speed, uptake) => {
    const [row] = answer([result("A", value, unit)], { protocol, ...settings }, [member("A", 2004, 75)]).rows;
    if (speed === null) expect(row!.speed).toBeNull();
    else expect(row!.speed).toBeCloseTo(speed, 10);
    if (uptake === null) expect(row!.uptake).toBeNull();
    else expect(row!.uptake).toBeCloseTo(uptake, 10);
  });

  // Source: R 4.2.2 arithmetic: 11 km/h at 14 years are 44.8254.
  it("uses the equation for the young below 18, at the age of the day of the test", () => {
    const run = result("A", 6, null, { date: "2024-06-01" });
    const [row] = answer([run], { protocol: "shuttleStage" }, [member("A", 2010)]).rows;
    expect(row!.speed).toBe(11);
    expect(row!.uptake).toBeCloseTo(44.8254, 10);
  });

  it("gives results and ranks alone where no protocol is named, a time better when shorter", () => {
    const { rows, cautions } = answer([result("A", 300, "s"), result("B", 290, "s")], {});
    expect(rows.map(({ athlete, rank, speed, uptake, run }) => [athlete, rank, speed, uptake, run])).toEqual([
      ["B", 1, null, null, null],
      ["A", 2, null, null, null],
    ]);
    expect(cautions).toContain("Say which protocol it was, and speeds, estimates and intervals follow.");
  });

  it("is read in the protocol's unit, and another kind of unit is left out", () => {
    const { rows, leftOut } = answer([result("A", 120000, "cm"), result("B", 19, "km/h", { cell: "B3" })], {
      protocol: "recovery1",
    });
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ result: 120000, uptake: expect.closeTo(46.48, 10) });
    expect(leftOut).toEqual([{ cell: "B3", why: "The protocol's results are in m; “km/h” is another kind of unit." }]);
  });

  it("takes a result without a unit for the protocol's, and says so", () => {
    const { cautions } = answer([result("A", 1200, null)], { protocol: "recovery1" });
    expect(cautions).toContain("No unit is said: the results were taken for m.");
  });

  it("refuses with the first reason where no result can be of the protocol", () => {
    const refused = ask([result("A", 1200, "m")], { protocol: "fitness3015" });
    expect(refused).toMatchObject({ ok: false, reasons: [{ code: "tooFew" }, { code: "noneOfProtocol" }] });
  });

  it("takes no stage and shuttle for a half-stage, and no impossible speed", () => {
    const stages = answer([result("A", 9.7, null), result("B", 9, null, { cell: "B3" })], { protocol: "shuttleStage" });
    expect(stages.leftOut[0]!.why).toMatch(/^9.7 is no whole or half stage/);
    const speeds = answer([result("A", 40, "km/h"), result("B", 19, "km/h")], { protocol: "fitness3015" });
    expect(speeds.leftOut[0]!.why).toBe("Final speed in km/h must be from 8 to 28; 40 is not.");
  });

  it("keeps speed and rank where birth year or body mass is missing, with the reason for the blank", () => {
    const { rows, cautions } = answer(
      [result("A", 19, "km/h"), result("B", 18, "km/h"), result("C", 17, "km/h")],
      { protocol: "fitness3015" },
      [member("A", 2004, 70), member("B", 2004)],
    );
    expect(rows.map(({ rank }) => rank)).toEqual([1, 2, 3]);
    expect(rowOf(rows, "A").verdict).toBe("");
    expect(rowOf(rows, "B")).toMatchObject({ speed: 18, uptake: null, verdict: "No estimate: Body mass is missing." });
    expect(rowOf(rows, "C").verdict).toBe("No estimate: Birth year is missing. Body mass is missing.");
    expect(cautions).toContain("2 of 3 without an estimate: see the verdict.");
  });

  it("names a distance that is no whole number of shuttles", () => {
    expect(answer([result("A", 1210, "m")], { protocol: "recovery1" }).rows[0]!.verdict).toContain(
      "whole shuttles of 40 m",
    );
  });
});

describe("intervals", () => {
  // By hand: 18 km/h are 5 m/s; 15 s at 100 % are 75 m, at 90 % 67.5 m.
  it.each([
    [100, 75],
    [90, 67.5],
  ])("at %d %% of 18 km/h for 15 s are %d m long", (intensity, metres) => {
    const settings = { protocol: "timedRun", runMinutes: 5, intensity };
    expect(answer([result("A", 1500, "m")], settings).rows[0]!.run).toBeCloseTo(metres, 10);
  });

  it("are not set from shuttle speeds, which turning slows", () => {
    expect(answer([result("A", 12.5, "km/h")], { protocol: "shuttleSpeed" }).rows[0]!.run).toBeNull();
  });
});

it("counts the best of the latest day, the shortest of times", () => {
  const times = [result("A", 280, "s", { date: "2026-08-01" }), result("A", 310, "s", { date: "2026-10-01" })];
  const again = result("A", 300, "s", { date: "2026-10-01", attempt: 2 });
  const { rows, summary } = answer([...times, again, result("B", 290, "s")], { protocol: "timeTrial" });
  expect(rows.map(({ athlete, result: time, rank }) => [athlete, time, rank])).toEqual([
    ["B", 290, 1],
    ["A", 300, 2],
  ]);
  expect(summary).toEqual([
    "Best of 2: B, 290; the middle is 295.",
    "Speeds: 18.0 to 18.6 km/h.",
    "At 100 % for 15 s that is 75 to 78 m a run.",
  ]);
});
