import fc from "fast-check";
import type { AnyAnalysis } from "../../src/analyses/analysis";
import { isMeasureKey, type MeasureKey, measureOf } from "../../src/reading/measures";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { type Background, noBackground } from "../../src/store/background";
import { batteryTest } from "./batteryTest";

/** Squads as a sheet can hold them, made by chance: what every analysis has to cope with. */

const days = ["2026-08-11", "2026-08-18", "2026-11-03"] as const;
const tests = ["Hop", "Jump", "Sprint"] as const;

/** The measures an analysis asks for in its first layout; none where it takes any results. */
export const measuresOf = ({ needs }: AnyAnalysis): MeasureKey[] => needs[0]!.filter(isMeasureKey);

export const squadsFor = (analysis: AnyAnalysis): fc.Arbitrary<TestResult[]> => {
  const measures = measuresOf(analysis);
  return measures.length > 0 ? measuredSquads(measures) : plainSquads(analysis.tests === "all");
};

const athletes = fc.integer({ min: 0, max: 7 }).map((athlete) => `Athlete ${athlete}`);

/** Sheets without days, and sheets where every result has one. */
const dayChoices = fc.boolean().chain((isDated) => fc.constant(isDated ? days : ([null] as const)));

/**
 * Numbers as instruments give them, many of them alike: differences in the sixteenth digit no sheet holds, ties it does.
 */
const measured = fc.oneof(
  fc.integer({ min: 50_000, max: 400_000 }).map((thousandths) => thousandths / 1000),
  fc.integer({ min: 500, max: 506 }).map((tenths) => tenths / 10),
);

/** A sheet of one or more tests, with or without sides and days; here and there an athlete has no trial. */
const plainSquads = (hasManyTests: boolean) =>
  fc
    .record({
      chosen: hasManyTests ? fc.subarray<string>([...tests], { minLength: 1 }) : fc.constant<string[]>([""]),
      sides: fc.constantFrom<readonly ("left" | "right" | null)[]>(["left", "right"], [null]),
      dates: fc.constantFrom<readonly (string | null)[]>([null], days.slice(0, 1), days.slice(0, 2), days),
      athletes: fc.integer({ min: 1, max: 8 }),
    })
    .chain(({ chosen, sides, dates, athletes }) => {
      const places = Array.from({ length: athletes }, (_, athlete) => `Athlete ${athlete}`).flatMap((athlete) =>
        chosen.flatMap((test) => dates.flatMap((date) => sides.map((side) => ({ athlete, test, date, side })))),
      );
      const trials = fc.array(measured, { maxLength: 3 });
      return fc.tuple(...places.map((place) => trials.map((values) => ({ place, values }))));
    })
    .map((sets) =>
      numbered(
        sets.flatMap(({ place, values }) => values.map((value) => [testResult({ ...place, value, unit: "cm" })])),
      ),
    )
    .filter((results) => results.length > 0);

/** One attempt at a time, with a sensible value for each measure; the splits of a sprint grow with the distance. */
const measuredSquads = (measures: readonly MeasureKey[]) =>
  dayChoices
    .chain((dates) =>
      fc.array(
        fc.record({
          athlete: athletes,
          date: fc.constantFrom(...dates),
          shares: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), {
            minLength: measures.length,
            maxLength: measures.length,
          }),
        }),
        { minLength: 1, maxLength: 40 },
      ),
    )
    .map((attempts) =>
      numbered(
        attempts.map(({ athlete, date, shares }) =>
          measures.map((measure, index) =>
            testResult({
              athlete,
              date,
              test: "Test",
              measure,
              unit: measureOf(measure).unit,
              value: sensibleValue(measure, measure.startsWith("time") ? shares[0]! : shares[index]!),
            }),
          ),
        ),
      ),
    );

/** Attempts numbered for each athlete, day, test and side; every result with a cell of its own. */
function numbered(attempts: readonly (readonly TestResult[])[]): TestResult[] {
  const counts = new Map<string, number>();
  return attempts.flatMap((results, row) => {
    const { athlete, date, test, side } = results[0]!;
    const key = [athlete, date, test, side].join("|");
    const attempt = (counts.get(key) ?? 0) + 1;
    counts.set(key, attempt);
    return results.map((result, column) => ({ ...result, attempt, cell: `${"CDEFGHIJ".charAt(column)}${row + 4}` }));
  });
}

function sensibleValue(measure: MeasureKey, share: number): number {
  const between = (low: number, high: number) => low + share * (high - low);
  switch (measure) {
    case "load":
      return between(20, 200);
    case "repetitions":
      return Math.round(between(1, 12));
    case "repetitionsInReserve":
      return Math.round(between(0, 4));
    case "barVelocity":
      return between(0.15, 1.5);
    case "flightTime":
      return between(280, 750);
    case "contactTime":
      return between(120, 450);
    case "jumpHeight":
      return between(12, 60);
    case "bodyMass":
      return between(45, 110);
    case "stature":
      return between(150, 200);
    default: {
      const distance = Number(/\d+$/.exec(measure)?.[0] ?? 10);
      return (0.6 + distance / 7.5) * between(0.85, 1.2);
    }
  }
}

/** A workbook where nothing was set up, and one where everything was. */
export const backgrounds: fc.Arbitrary<Background> = fc.constantFrom(noBackground, {
  squad: Array.from({ length: 10 }, (_, index) => ({
    athlete: `Athlete ${index}`,
    role: index % 2 === 0 ? "Wing" : "Back",
    group: null,
    dominantSide: null,
    birthYear: 2000 + index,
    bodyMass: 60 + index,
    stature: 165 + index,
    notes: null,
  })),
  battery: [
    batteryTest({ test: "Hop", quality: "Power", unit: "cm", sides: 2, lowest: 60, highest: 300, retestAfterWeeks: 6 }),
    batteryTest({ test: "Jump", quality: "Power", unit: "cm", reduction: "mean" }),
    batteryTest({ test: "Sprint", quality: "Speed", unit: "cm", direction: "lower", reduction: "meanOfBestTwo" }),
  ],
  weights: [
    { quality: "Power", role: "Wing", weight: 2 },
    { quality: "Speed", role: "Back", weight: 0 },
  ],
});
