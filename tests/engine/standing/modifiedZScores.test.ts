import { unwrap } from "../../../src/engine/result";
import { modifiedZScores, outlierLimit } from "../../../src/engine/standing/modifiedZScores";
import { expectRelative } from "../../reference/reference";
import { standingSets } from "../../reference/standingSets";

describe("modified z scores", () => {
  // Source: R 4.2.2 median and mad(constant = 1).
  test.each(standingSets)("$name", ({ scores, direction, inOrder }) => {
    const reference = inOrder("modified_z");
    unwrap(modifiedZScores(scores, { direction })).forEach((score, index) => {
      expect(score).toBeCloseTo(reference[index]!, 9);
    });
  });

  // Source: R 4.2.2 on HSAUR3 heptathlon: the slowest hurdler has a modified z of -5.62785938.
  test("an outlier is marked", () => {
    const { scores, direction } = standingSets[0]!;
    const outliers = unwrap(modifiedZScores(scores, { direction })).filter((score) => Math.abs(score!) > outlierLimit);
    expect(outliers.length).toBe(1);
    expectRelative(outliers[0]!, -5.62785938, 1e-8);
  });

  test("one wild value does not move the others' scores much, as it does z", () => {
    const calm = unwrap(modifiedZScores([10, 11, 12, 13, 14], { direction: "higher" }));
    const wild = unwrap(modifiedZScores([10, 11, 12, 13, 1400], { direction: "higher" }));
    expect(wild.slice(0, 4)).toEqual(calm.slice(0, 4));
  });

  test("more than half equal is refused", () => {
    expect(modifiedZScores([1, 1, 1, 5], { direction: "higher" })).toMatchObject({
      reasons: [{ code: "mostEqual", facts: { what: "scores" } }],
    });
  });

  test("two scores are too few", () => {
    expect(modifiedZScores([1, 2, null], { direction: "higher" })).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "scores", needed: 3, got: 2 } }],
    });
    expect(modifiedZScores([1, 2, 4], { direction: "higher" }).ok).toBe(true);
  });
});
