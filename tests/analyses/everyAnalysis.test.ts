import { readdirSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import type { z } from "zod";
import { analyses } from "../../src/analyses";
import type { AnyAnalysis } from "../../src/analyses/analysis";
import { columnsOf, describe as describeAnswer } from "../../src/analyses/describe";
import { questions } from "../../src/analyses/questions";
import type { Report } from "../../src/analyses/report";
import { unwrap } from "../../src/engine/result";
import type { ColumnUse } from "../../src/reading/columns";
import { isMeasureKey } from "../../src/reading/measures";
import type { Reading } from "../../src/reading/readResults";
import type { TestResult } from "../../src/reading/testResult";
import { unitOf } from "../../src/reading/units";
import { type Background, noBackground } from "../../src/store/background";
import { backgrounds, measuresOf, squadsFor } from "./squads";

/** Laws that every analysis is handed to; they complement its own examples. */

const folders = readdirSync(join(__dirname, "../../src/analyses"), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

it("every folder of src/analyses is in the list, and nothing else", () => {
  expect(analyses.map((analysis) => analysis.id).sort()).toEqual(folders.sort());
});

it("every analysis is among the questions the pane offers, in the same order, and loads", async () => {
  expect(questions.map(({ id }) => id)).toEqual(analyses.map(({ id }) => id));
  expect(await Promise.all(questions.map(({ load }) => load()))).toEqual(analyses);
});

describe.each(analyses.map((analysis) => [analysis.id, analysis] as const))("%s", (_, analysis) => {
  const squads = squadsFor(analysis);

  function report(results: readonly TestResult[], background: Background = noBackground): Report | null {
    const reading: Reading = { results, athletes: [], alike: [], bodies: [], tests: [""], remarks: [] };
    const described = describeAnswer({
      analysis,
      reading,
      uses: new Set(analysis.needs[0]!.filter((need): need is ColumnUse => !isMeasureKey(need))),
      test: "",
      settings: { ...analysis.example.settings },
      background,
      source: "Sheet!A1:B2",
      date: "2026-11-20",
    });
    return described.ok ? described.value : null;
  }

  const keysOf = ({ table }: Report) => {
    const at = table.columns.findIndex((column) => column.key === table.rowKey);
    return table.rows.map((row) => row[at]);
  };

  const cellsOf = (given: Report) => {
    const keys = keysOf(given);
    return new Map(
      given.table.rows.map((row, place) => [
        keys[place],
        Object.fromEntries(given.table.columns.map((column, index) => [column.key, row[index]])),
      ]),
    );
  };

  it("gives what its example says", () => {
    const { rows } = unwrap(
      analysis.compute(analysis.example.results, analysis.settings.parse(analysis.example.settings), noBackground),
    );
    expect(rows.length).toBeGreaterThanOrEqual(analysis.example.gives.length);
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
      fc.property(squads, backgrounds, (results, background) => {
        const before = structuredClone({ results, background });
        const answer = report(results, background);
        expect({ results, background }).toEqual(before);
        for (const value of answer?.table.rows.flat() ?? []) {
          if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
        }
        for (const sentence of [...(answer?.summary ?? []), ...(answer?.cautions ?? [])]) {
          expect(sentence).not.toMatch(/NaN|Infinity|undefined|null/);
        }
      }),
    );
  });

  it("names every row once, so that a rerun finds it again, and marks only cells of its results", () => {
    fc.assert(
      fc.property(squads, backgrounds, (results, background) => {
        const answer = report(results, background);
        fc.pre(answer !== null);
        const keys = keysOf(answer!);
        expect(new Set(keys).size).toBe(keys.length);
        const cells = new Set(results.map(({ cell }) => cell));
        for (const { cell } of answer!.marks) expect(cells.has(cell)).toBe(true);
      }),
    );
  });

  it("does not care in which order the results stand, but for the order of its rows", () => {
    fc.assert(
      fc.property(squads, backgrounds, (results, background) => {
        const plain = report(results, background);
        const turned = report([...results].reverse(), background);
        fc.pre(plain !== null && turned !== null);
        const other = cellsOf(turned!);
        for (const [key, cells] of cellsOf(plain!)) {
          expectAlike(
            other.get(key)!,
            cells,
            () => 1,
            (words) => words,
          );
        }
      }),
    );
  });

  // A measure has a unit of its own, and what the battery says of a test holds in one unit.
  const law = measuresOf(analysis).length > 0 || hasUnitsOfItsOwn(analysis) ? it.skip : it;
  law("scales what is measured with the unit, and leaves percentages, counts and words alone", () => {
    fc.assert(
      fc.property(squads, fc.constantFrom(0.01, 10, 1 / 2.54), (results, times) => {
        const plain = report(results);
        const scaled = report(results.map((result) => ({ ...result, value: result.value * times })));
        fc.pre(plain !== null && scaled !== null);
        const inUnit = new Set(
          plain!.table.columns.filter((column) => column.heading.includes("(cm)")).map(({ key }) => key),
        );
        const other = cellsOf(scaled!);
        for (const [key, cells] of cellsOf(plain!)) {
          expectAlike(other.get(key)!, cells, (column) => (inUnit.has(column) ? times : 1), withoutNumerals);
        }
      }),
    );
  });

  function expectAlike(
    actual: object,
    expected: object,
    times: (column: string) => number,
    compared: (words: string) => string,
  ): void {
    for (const [column, value] of Object.entries(expected)) {
      const other = (actual as Record<string, unknown>)[column];
      if (typeof value === "number") expectClose(other, value * times(column));
      else if (typeof value === "string") expect(compared(String(other))).toBe(compared(value));
      else expect(other).toBe(value);
    }
  }
});

/** Whether answer or settings have quantities such as km/h: then a result in another unit is another result. */
function hasUnitsOfItsOwn({ gives, settings }: AnyAnalysis): boolean {
  return [...Object.values(gives.shape), ...Object.values(settings.shape)].some((field) => {
    const unit = (field as z.ZodType).meta()?.unit;
    return typeof unit === "string" && unit !== "%" && unitOf(unit) !== null;
  });
}

/** A spread of nothing comes out as the square root of what rounding leaves of numbers up to 4,000: some 1e-4. */
const expectClose = (actual: unknown, expected: number): void =>
  expect(actual).toBeCloseTo(expected, Math.abs(expected) < 5e-4 ? 3 : 6);

const withoutNumerals = (words: string): string => words.replace(/\d+(\.\d+)?(e-?\d+)?/g, "#");
