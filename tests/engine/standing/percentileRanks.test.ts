import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { percentileMethods, percentileRanks } from "../../../src/engine/standing/percentileRanks";
import { expectRelative } from "../../reference/reference";
import { standingSets } from "../../reference/standingSets";
import { cell, measurement } from "../measurements";

describe("percentile rank", () => {
  // Source: R 4.2.2 counts; scipy percentileofscore (mean, weak) agrees.
  test.each(standingSets)("all four: $name", ({ scores, direction, inOrder }) => {
    for (const [method, key] of [
      ["inclusive", "pr_inc"],
      ["exclusive", "pr_exc"],
      ["midrank", "pr_midrank_hazen"],
      ["weak", "pr_weak_le"],
    ] as const) {
      const reference = inOrder(key);
      unwrap(percentileRanks(scores, { direction, method })).forEach((percentile, index) => {
        expectRelative(percentile!, reference[index]!, 1e-10);
      });
    }
  });

  // Source: the worked example of the spreadsheet's help on PERCENTRANK.INC (from memory): 2 -> .333, 4 -> .555, 8 -> .666 truncated.
  test("the spreadsheet's own example", () => {
    const scores = [13, 12, 11, 8, 4, 3, 2, 1, 1, 1];
    const ranks = unwrap(percentileRanks(scores, { direction: "higher", method: "inclusive" }));
    expect([2, 4, 8].map((score) => Math.floor(ranks[scores.indexOf(score)]! * 10) / 1000)).toEqual([
      0.333, 0.555, 0.666,
    ]);
  });

  test("a missing score stays missing and changes nobody else", () => {
    const scores = [10, 20, 20, 30, 40];
    const plain = unwrap(percentileRanks(scores, { direction: "higher" }));
    expect(plain).toEqual([10, 40, 40, 70, 90]);
    expect(unwrap(percentileRanks([null, ...scores, null], { direction: "higher" }))).toEqual([null, ...plain, null]);
  });

  test("ties are judged at the recorded resolution", () => {
    const scores = [41.2, 41.200000001, 40];
    expect(unwrap(percentileRanks(scores, { direction: "higher", method: "weak", resolution: 0.1 }))[0]).toBe(100);
    expect(unwrap(percentileRanks(scores, { direction: "higher", method: "weak" }))[0]).not.toBe(100);
  });

  test("a better score never has a lower percentile, and all lie from 0 to 100", () => {
    fc.assert(
      fc.property(
        fc.array(cell(-100, 100), { minLength: 2, maxLength: 30 }),
        fc.constantFrom(...percentileMethods),
        fc.constantFrom("higher" as const, "lower" as const),
        (scores, method, direction) => {
          const ranks = percentileRanks(scores, { direction, method });
          if (!ranks.ok) return;
          const pairs = scores.flatMap((score, index) =>
            score === null ? [] : [{ score, rank: ranks.value[index]! }],
          );
          pairs.sort((a, b) => (direction === "higher" ? a.score - b.score : b.score - a.score));
          pairs.slice(1).forEach(({ rank }, index) => {
            expect(rank).toBeGreaterThanOrEqual(pairs[index]!.rank);
          });
          for (const { rank } of pairs) expect(rank >= 0 && rank <= 100).toBe(true);
        },
      ),
    );
  });

  test("midranks of a squad have a mean of 50 and mirror when the direction turns", () => {
    fc.assert(
      fc.property(fc.array(measurement(-9, 9), { minLength: 2, maxLength: 30 }), (scores) => {
        const higher = unwrap(percentileRanks(scores, { direction: "higher" }));
        const lower = unwrap(percentileRanks(scores, { direction: "lower" }));
        expect(higher.reduce<number>((sum, rank) => sum + rank!, 0) / scores.length).toBeCloseTo(50, 9);
        higher.forEach((rank, index) => {
          expect(rank! + lower[index]!).toBeCloseTo(100, 9);
        });
      }),
    );
  });

  test("one athlete has no percentile", () => {
    expect(percentileRanks([5, null], { direction: "higher" })).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "scores", needed: 2, got: 1 } }],
    });
    expect(unwrap(percentileRanks([5, 6], { direction: "higher" }))).toEqual([25, 75]);
  });
});
