import { readdirSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { analyses } from "../../src/analyses";
import { columnsOf, describe as describeAnswer } from "../../src/analyses/describe";
import type { Report } from "../../src/analyses/report";
import { unwrap } from "../../src/engine/result";
import type { ColumnUse } from "../../src/reading/columns";
import { isMeasureKey } from "../../src/reading/measures";
import type { Reading } from "../../src/reading/readResults";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";

/** Laws that every analysis is handed to; they complement its own examples. */

const folders = readdirSync(join(__dirname, "../../src/analyses"), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

it("every folder of src/analyses is in the list, and nothing else", () => {
  expect(analyses.map((analysis) => analysis.id).sort()).toEqual(folders.sort());
});

describe.each(analyses.map((analysis) => [analysis.id, analysis] as const))("%s", (_, analysis) => {
  function report(results: readonly TestResult[], settings: object = analysis.example.settings): Report | null {
    const reading: Reading = { results, athletes: [], tests: [""], remarks: [] };
    const asked = {
      analysis,
      reading,
      uses: new Set(analysis.needs[0]!.filter((need): need is ColumnUse => !isMeasureKey(need))),
      test: "",
      settings: { ...settings },
      background: noBackground,
      source: "Sheet!A1:B2",
      date: "2026-08-11",
    };
    const described = describeAnswer(asked);
    return described.ok ? described.value : null;
  }

  const cellsOf = ({ table }: Report) =>
    new Map(
      table.rows.map((row) => [
        row[table.columns.findIndex((column) => column.key === table.rowKey)],
        Object.fromEntries(table.columns.map((column, index) => [column.key, row[index]])),
      ]),
    );

  const squads = fc
    .array(
      fc.tuple(
        fc.integer({ min: 0, max: 7 }),
        fc.constantFrom("left", "right"),
        fc.double({ min: 50, max: 400, noNaN: true }),
      ),
      {
        minLength: 1,
        maxLength: 60,
      },
    )
    .map((attempts) => {
      const counts = new Map<string, number>();
      return attempts.map(([athlete, side, value]): TestResult => {
        const attempt = (counts.get(`${athlete}${side}`) ?? 0) + 1;
        counts.set(`${athlete}${side}`, attempt);
        return testResult({ athlete: `Athlete ${athlete}`, side: side as "left", attempt, value, unit: "cm" });
      });
    });

  it("gives what its example says", () => {
    const { rows } = unwrap(
      analysis.compute(analysis.example.results, analysis.settings.parse(analysis.example.settings), noBackground),
    );
    analysis.example.gives.forEach((row, index) => {
      for (const [key, value] of Object.entries(row)) {
        if (typeof value === "number") expect(rows[index]![key]).toBeCloseTo(value, 9);
        else expect(rows[index]![key]).toBe(value);
      }
    });
  });

  it("has words for everything a coach sees", () => {
    for (const { heading, meaning } of columnsOf(analysis.gives, "cm", 1)) {
      expect(heading).not.toBe("");
      expect(meaning).toMatch(/\.$/);
    }
    expect(analysis.question).toMatch(/\?$/);
    expect(analysis.cautions.length).toBeGreaterThan(0);
    expect(analysis.method.source).not.toBe("");
  });

  it("answers every squad without NaN or infinity, and leaves its input as it was", () => {
    fc.assert(
      fc.property(squads, (results) => {
        const before = structuredClone(results);
        const answer = report(results);
        expect(results).toEqual(before);
        for (const value of answer?.table.rows.flat() ?? []) {
          if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
        }
      }),
    );
  });

  it("does not care in which order the results stand, but for the order of its rows", () => {
    fc.assert(
      fc.property(squads, (results) => {
        const plain = report(results);
        const turned = report([...results].reverse());
        fc.pre(plain !== null && turned !== null);
        const other = cellsOf(turned!);
        for (const [athlete, cells] of cellsOf(plain!)) expectAlike(other.get(athlete)!, cells, () => 1);
      }),
    );
  });

  it("scales what is measured with the unit, and leaves percentages and counts alone", () => {
    fc.assert(
      fc.property(squads, fc.constantFrom(0.01, 10, 1 / 2.54), (results, times) => {
        const plain = report(results);
        const scaled = report(results.map((result) => ({ ...result, value: result.value * times })));
        fc.pre(plain !== null && scaled !== null);
        const inUnit = new Set(
          plain!.table.columns.filter((column) => column.heading.includes("(cm)")).map(({ key }) => key),
        );
        const other = cellsOf(scaled!);
        for (const [athlete, cells] of cellsOf(plain!)) {
          expectAlike(other.get(athlete)!, cells, (key) => (inUnit.has(key) ? times : 1));
        }
      }),
    );
  });

  function expectAlike(actual: object, expected: object, times: (key: string) => number): void {
    for (const [key, value] of Object.entries(expected)) {
      const other = (actual as Record<string, unknown>)[key];
      if (typeof value === "number") expect(other).toBeCloseTo(value * times(key), 6);
      else expect(other).toBe(value);
    }
  }
});
