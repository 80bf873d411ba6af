import { firstCell, measuredAttempts, ofLatestDay } from "../../src/analyses/measuredAttempts";
import { type TestResult, testResult } from "../../src/reading/testResult";

const squat = (measure: TestResult["measure"], value: number, said: Partial<TestResult> = {}): TestResult =>
  testResult({ athlete: "A", test: "Back squat", measure, value, ...said });

describe("results as attempts", () => {
  it("joins what was measured in one attempt, and keeps athletes, sides, days and attempts apart", () => {
    const results = [
      squat("load", 80, { cell: "B2" }),
      squat("repetitions", 5, { cell: "C2" }),
      squat("load", 85, { attempt: 2 }),
      squat("load", 80, { athlete: "B" }),
      squat("load", 40, { side: "left" }),
      squat("load", 82, { date: "2026-08-11" }),
      testResult({ athlete: "A", test: "Hop", value: 180, unit: "cm" }),
    ];
    const { attempts, leftOut } = measuredAttempts(results);
    expect(leftOut).toEqual([]);
    expect(attempts).toHaveLength(5);
    expect(attempts[0]).toMatchObject({
      values: { load: 80, repetitions: 5 },
      cells: { load: "B2", repetitions: "C2" },
    });
    expect(firstCell(attempts[0]!)).toBe("B2");
  });

  // Source: the international pound is 0.45359237 kg by definition.
  it("gives each number in the unit of its measure", () => {
    const { attempts } = measuredAttempts([
      squat("load", 100, { unit: "lb" }),
      testResult({ athlete: "A", test: "CMJ", measure: "flightTime", value: 0.52, unit: "s" }),
    ]);
    expect(attempts[0]!.values.load).toBeCloseTo(45.359237, 10);
    expect(attempts[1]!.values.flightTime).toBeCloseTo(520, 10);
  });

  it("leaves out and tells a unit of another kind, an unlikely value, and a second one", () => {
    const flight = (value: number, unit: string | null, cell: string, attempt: number) =>
      testResult({ athlete: "A", test: "CMJ", measure: "flightTime", value, unit, cell, attempt });
    const { attempts, leftOut } = measuredAttempts([
      flight(50, "cm", "B2", 1),
      flight(0.52, null, "B3", 2),
      flight(520, null, "B5", 3),
      flight(530, null, "B4", 3),
      testResult({ athlete: "A", measure: "jumpHeight", value: 0.33, unit: "cm", cell: "B6", attempt: 4 }),
      flight(968, "ms", "B7", 5),
    ]);
    expect(leftOut).toEqual([
      { cell: "B2", why: "Flight time is wanted in ms; “cm” is another kind of unit." },
      { cell: "B3", why: "0.52 ms is no likely flight time; in s it would be. Say which unit it is." },
      { cell: "B5", why: "A second flight time for A's attempt 3: give each attempt its own number." },
      { cell: "B6", why: "0.33 is no likely jump height in cm; typed in metres it would be 33 cm." },
      { cell: "B7", why: "0.968 s is outside the 0.2 to 0.85 s that a flight time plausibly takes." },
    ]);
    expect(attempts.map(({ values }) => values)).toEqual([{ flightTime: 530 }]);
  });

  it("does not hang on the order of the results", () => {
    const results = [squat("load", 80, { cell: "B10" }), squat("load", 85, { cell: "B9" })];
    const values = [results, [...results].reverse()].map((order) => measuredAttempts(order).attempts[0]!.values);
    expect(values).toEqual([{ load: 85 }, { load: 85 }]);
  });
});

describe("the latest day", () => {
  it("is the last of those known, and no day at all only where none is", () => {
    const [none, early, late] = [{ date: null }, { date: "2026-08-11" }, { date: "2026-10-02" }];
    expect(ofLatestDay([late, none, early, late])).toEqual([late, late]);
    expect(ofLatestDay([none, none])).toEqual([none, none]);
    expect(ofLatestDay([])).toEqual([]);
  });
});
