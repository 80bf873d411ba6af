import { derivedResults } from "../../src/analyses/derivedResults";
import type { MeasureKey } from "../../src/reading/measures";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";
import { expected, expectRelative } from "../reference/reference";

const one = (
  test: string,
  measure: MeasureKey | null,
  value: number,
  unit: string | null,
  said: Partial<TestResult> = {},
) => testResult({ athlete: "A", test, measure, value, unit, date: "2026-08-11", group: "Wing", attempt: 2, ...said });

const mass = one("", "bodyMass", 75, "kg", { cell: "Z1" });

describe("derived results", () => {
  // Source: R 4.2.2 arithmetic on the printed equation, 100 kg five times.
  it("of a set are the estimated maximum and the strength per body mass, at the set's first cell", () => {
    const set = [
      one("Back squat", "repetitions", 5, "reps", { cell: "C4" }),
      one("Back squat", "load", 100, "kg", { cell: "B4" }),
    ];
    const common = {
      athlete: "A",
      test: "Back squat",
      date: "2026-08-11",
      group: "Wing",
      attempt: 2,
      side: null,
      cell: "B4",
    };
    expect(derivedResults([...set, mass], noBackground)).toEqual([
      { ...common, measure: "estimatedMaximum", value: expect.closeTo(116.6667, 4), unit: "kg" },
      { ...common, measure: "relativeStrength", value: expect.closeTo(1.5556, 4), unit: null },
    ]);
    expect(derivedResults(set, noBackground).map(({ measure }) => measure)).toEqual(["estimatedMaximum"]);
  });

  // Source: R 4.2.2 arithmetic: 0.5 s of flight and 0.2 s of contact; 40 cm and 75 kg by the first equation.
  it("of jumps are the height by the time in the air, the reactive strength index and the peak power", () => {
    const results = [
      one("Drop jump", "flightTime", 500, "ms"),
      one("Drop jump", "contactTime", 200, "ms"),
      one("CMJ", null, 40, "cm"),
      mass,
    ];
    expect(derivedResults(results, noBackground)).toMatchObject([
      { test: "Drop jump", measure: "jumpHeight", value: expect.closeTo(30.65625, 10), unit: "cm" },
      { test: "Drop jump", measure: "reactiveStrengthIndex", value: expect.closeTo(1.5328125, 10), unit: "m/s" },
      { test: "CMJ", measure: "peakPower", value: expect.closeTo(3770.5, 8), unit: "W" },
    ]);
  });

  it("add no height by flight to a test with measured heights: the two do not compare", () => {
    const results = [
      one("CMJ", "flightTime", 500, "ms", { attempt: 1 }),
      one("CMJ", "jumpHeight", 33, "cm", { attempt: 2 }),
    ];
    expect(derivedResults(results, noBackground)).toEqual([]);
  });

  // Source: R 4.2.2 nls on the splits of athlete A; the deficit by hand.
  it("of sprints and turns are the maximal speed and the deficit", () => {
    const times: [MeasureKey, number][] = [
      ["time5", 1.38],
      ["time10", 2.11],
      ["time15", 2.72],
      ["time20", 3.33],
      ["time30", 4.48],
      ["time40", 5.57],
    ];
    const results = [
      ...times.map(([measure, value]) => one("Sprint", measure, value, "s")),
      one("505", null, 2.76, "s", { side: "right", attempt: 1, cell: "K4" }),
    ];
    const [speed, deficit, ...more] = derivedResults(results, noBackground);
    expect(more).toEqual([]);
    expect(speed).toMatchObject({ test: "Sprint", measure: "maximalSpeed", unit: "m/s", attempt: 2 });
    expectRelative(speed!.value, expected("sprint_splits").fits.A.noisy.distance_ls.Vmax, 1e-7);
    expect(deficit).toMatchObject({
      test: "505",
      measure: "deficit",
      side: "right",
      unit: "s",
      attempt: 1,
      cell: "K4",
    });
    expect(deficit!.value).toBeCloseTo(0.65, 10);
  });

  it("are not there where nothing follows, and do not hang on the order", () => {
    expect(derivedResults([one("Hop", null, 180, "cm"), one("Back squat", "load", 80, "kg")], noBackground)).toEqual(
      [],
    );
    const results = [
      one("Back squat", "load", 100, "kg", { cell: "B4" }),
      one("Back squat", "repetitions", 5, "reps", { cell: "C4" }),
      one("Back squat", "repetitions", 6, "reps", { cell: "C5" }),
    ];
    expect(derivedResults([...results].reverse(), noBackground)).toEqual(derivedResults(results, noBackground));
  });
});
