import fc from "fast-check";
import { trialSpread } from "../../../src/engine/flags/trialSpread";
import { normalNoise } from "../measurements";

describe("trials that lie too far apart", () => {
  // Source: 95 % points of the studentized range, scipy 1.17.1 studentized_range.ppf(0.95, k, inf).
  test.each([
    [2, 2.771808],
    [3, 3.314493],
    [4, 3.63316],
    [5, 3.857656],
    [6, 4.030092],
    [7, 4.169554],
    [8, 4.286309],
    [9, 4.386511],
    [10, 4.474124],
  ])("%d trials: the limit is %d typical errors", (count, limit) => {
    const trials = (range: number) => Array.from({ length: count }, (_, index) => 100 + (index === 0 ? range : 0));
    expect(trialSpread(trials(limit - 0.002), 1)).toBeNull();
    expect(trialSpread(trials(limit + 0.002), 1)).toMatchObject({ code: "trialSpread", facts: { trials: count } });
  });

  test("more than ten trials have the limit of ten", () => {
    const eleven = (range: number) => [100 + range, ...new Array(10).fill(100)];
    expect(trialSpread(eleven(4.472), 1)).toBeNull();
    expect(trialSpread(eleven(4.476), 1)).toMatchObject({ facts: { limit: 4.474, trials: 11 } });
  });

  test("names the trial that stands apart by its number, missing ones counted", () => {
    // Source: by hand: range 32, limit 3.314 x 3 = 9.942; the median is 180, the last trial 30 from it.
    expect(trialSpread([180, null, 182, 150], 3)).toEqual({
      code: "trialSpread",
      reason:
        "The trials are 32 apart; the test's own noise keeps them within 9.94 in 95 of 100 cases. Trial 4 stands apart from the others.",
      facts: { range: 32, limit: expect.closeTo(9.942, 9), trials: 3, oddTrial: 4 },
    });
    expect(trialSpread([180, null, 180, 190, 171], 3)).toMatchObject({ facts: { oddTrial: 4 } });
  });

  test("names none of two, and none within three typical errors of the median", () => {
    const pair = trialSpread([180, 150], 3)!;
    expect(pair.facts).not.toHaveProperty("oddTrial");
    expect(pair.reason).toMatch(/in 95 of 100 cases\.$/);
    expect(trialSpread([171, 180, 189], 3)!.facts).not.toHaveProperty("oddTrial");
  });

  test("a range as large as the limit is within it", () => {
    expect(trialSpread([0, 2.772], 1)).toBeNull();
  });

  test("without noise to compare with, or with one trial, there is no flag", () => {
    expect(trialSpread([180, 120], null)).toBeNull();
    expect(trialSpread([180, 120], 0)).toBeNull();
    expect(trialSpread([180, null], 3)).toBeNull();
  });

  test("flags about five of a hundred sets of trials that differ by noise only", () => {
    const noise = normalNoise(20260101);
    const flagged = Array.from({ length: 20000 }, () => trialSpread([noise(), noise(), noise()], 1)).filter(Boolean);
    // Binomial standard error sqrt(0.05 x 0.95 / 20000) = 0.0015; four of them on either side.
    expect(Math.abs(flagged.length / 20000 - 0.05)).toBeLessThan(0.0062);
  });

  test("the unit does not matter", () => {
    const trials = fc.array(fc.integer({ min: 50, max: 300 }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(trials, fc.constantFrom(2, 0.5, 4), (list, factor) => {
        const scaled = trialSpread(
          list.map((trial) => trial * factor),
          7 * factor,
        );
        expect(scaled?.code).toBe(trialSpread(list, 7)?.code);
      }),
    );
  });
});
