import { isLift, type TestKey, testOf } from "../../sample-workbooks/battery";
import { improver, lucky } from "../../sample-workbooks/plantedTruths";
import { squad } from "../../sample-workbooks/squad";
import { change } from "../../src/analyses/change/change";
import { nameOf, seriesOf } from "../../src/analyses/seriesOf";
import { unwrap } from "../../src/engine/result";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";
import { dayOf, trialsOf } from "./scores";

/** The season's results of one test as any reading gives them: sets by load and repetitions, all else by trials. */
function resultsOf(key: TestKey): TestResult[] {
  const { heading: test, unit } = testOf(key);
  return [0, 1, 2].flatMap((occasion) => {
    const date = dayOf(key, occasion).date.toISOString().slice(0, 10);
    return squad.flatMap(({ name: athlete }) =>
      trialsOf(key, occasion, athlete).flatMap((value, index) => {
        if (value === null) return [];
        const set =
          index === 0
            ? ({ measure: "load", unit: "kg" } as const)
            : ({ measure: "repetitions", unit: "reps" } as const);
        return [testResult({ athlete, test, date, value, ...(isLift(key) ? set : { attempt: index + 1, unit }) })];
      }),
    );
  });
}

/** The answer about a test; about the estimated maximum where it is a lift. */
function answer(key: TestKey, settings: object = {}) {
  const { results, tests } = seriesOf(change, { results: resultsOf(key), bodies: [] }, noBackground);
  const test = isLift(key) ? tests.find((one) => one.endsWith("estimated maximum"))! : tests[0]!;
  const own = results.filter((result) => nameOf(result) === test);
  return unwrap(
    change.compute(own, change.settings.parse({ direction: testOf(key).better, ...settings }), noBackground),
  );
}

describe("the question whether the season's changes are real", () => {
  it.each(Object.keys(improver.changes) as TestKey[])("finds the improver clearly better in %s", (key) => {
    const { rows, method } = answer(key);
    expect(method).toContain("two earlier sessions within a fortnight");
    const row = rows.find(({ athlete }) => athlete === improver.athlete)!;
    expect(row.verdict).toBe("Clear improvement");
    expect(row.days).toMatch(/^2026-08-2\d to 2026-10-2\d$/);
  });

  it.each(["best", "mean"])("does not call the lucky one better by the %s of her trials", (reduction) => {
    const { rows } = answer(lucky.test, { reduction });
    const row = rows.find(({ athlete }) => athlete === lucky.athlete)!;
    expect(row.low!).toBeLessThan(0);
    expect(row.high!).toBeGreaterThan(0);
    expect(row.verdict).not.toMatch(/improvement/i);
  });
});
