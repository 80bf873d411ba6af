import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { reduceTrials } from "../../../src/engine/trials/reduceTrials";
import { reductions } from "../../../src/engine/trials/reduction";
import { expected, expectRelative, labels, rows } from "../../reference/reference";
import { measurement } from "../measurements";

describe("the score of a set of trials", () => {
  // Source of the values: R 4.2.2 max, min, mean, median, sort.
  test.each([
    ["best", "higher", [41.2, 42.8, 40.9], 42.8],
    ["mean", "higher", [41.2, 42.8, 40.9], 41.6333333333333],
    ["median", "higher", [41.2, 42.8, 40.9], 41.2],
    ["meanOfBestTwo", "higher", [41.2, 42.8, 40.9], 42.0],
    ["best", "lower", [1.84, 1.79, 1.81], 1.79],
    ["mean", "lower", [1.84, 1.79, 1.81], 1.81333333333333],
    ["median", "lower", [1.84, 1.79, 1.81], 1.81],
    ["meanOfBestTwo", "lower", [1.84, 1.79, 1.81], 1.8],
  ] as const)("%s, %s is better, of %j is %d", (reduction, direction, trials, expected) => {
    expect(unwrap(reduceTrials(trials, { reduction, direction })).score).toBeCloseTo(expected, 12);
  });

  // Source: R 4.2.2 min, mean, median, sort on lme4 sleepstudy, where lower is better.
  test.each([
    ["best", "best"],
    ["mean", "mean"],
    ["median", "median"],
    ["meanOfBestTwo", "mean_best_two"],
  ] as const)("%s of three days of reaction times", (reduction, key) => {
    const reference = expected("sleepstudy_day0_2").trial_reduction[key];
    const days = rows("sleepstudy_day0_2", ["day0", "day1", "day2"]);
    labels("sleepstudy_day0_2", "id").forEach((athlete, index) => {
      const { score } = unwrap(reduceTrials(days[index]!, { reduction, direction: "lower" }));
      expectRelative(score, reference[athlete], 1e-11);
    });
  });

  test("a missing trial is left out, not counted as zero", () => {
    expect(unwrap(reduceTrials([null, 41.2, null, 42.8], { reduction: "mean", direction: "higher" }))).toEqual({
      score: 42,
      count: 2,
    });
  });

  test("no trial is refused, and so is one trial for the mean of the best two", () => {
    expect(reduceTrials([null], { reduction: "best", direction: "higher" })).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { what: "trials", needed: 1, got: 0 } }],
    });
    expect(reduceTrials([3, null], { reduction: "meanOfBestTwo", direction: "higher" })).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { needed: 2, got: 1 } }],
    });
  });

  test("a number that no measurement gives is a programming error", () => {
    expect(() => reduceTrials([Number.NaN], { reduction: "best", direction: "higher" })).toThrow(RangeError);
  });

  test("a tie on paper is a tie here, whatever the unit; the best stays the trial it is, to the last digit", () => {
    for (const times of [1, 10, 0.01, 1 / 2.54]) {
      const score = (values: readonly number[], reduction: "mean" | "best") =>
        unwrap(
          reduceTrials(
            values.map((value) => value * times),
            { reduction, direction: "higher" },
          ),
        ).score;
      expect(score([50, 50.1, 50.5], "mean")).toBe(score([50.2], "mean"));
      expect(score([347.042], "best")).toBe(347.042 * times);
    }
  });

  const trials = fc.array(measurement(-1e6, 1e6), { minLength: 2, maxLength: 8 });

  test("turning all values round turns the score round when the direction turns too", () => {
    fc.assert(
      fc.property(trials, fc.constantFrom(...reductions), (values, reduction) => {
        const higher = unwrap(reduceTrials(values, { reduction, direction: "higher" })).score;
        const turned = values.map((value) => -value);
        expect(unwrap(reduceTrials(turned, { reduction, direction: "lower" })).score).toBeCloseTo(-higher, 9);
      }),
    );
  });

  test("the best is at least the mean of the best two, which is at least the mean", () => {
    fc.assert(
      fc.property(trials, (values) => {
        const score = (reduction: "best" | "meanOfBestTwo" | "mean") =>
          unwrap(reduceTrials(values, { reduction, direction: "higher" })).score;
        expect(score("best")).toBeGreaterThanOrEqual(score("meanOfBestTwo"));
        expect(score("meanOfBestTwo")).toBeGreaterThanOrEqual(score("mean") - 1e-9);
      }),
    );
  });
});
