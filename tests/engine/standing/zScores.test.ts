import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { modifiedZScores, outlierLimit } from "../../../src/engine/standing/modifiedZScores";
import { tScores } from "../../../src/engine/standing/tScores";
import { zScores } from "../../../src/engine/standing/zScores";
import { expectRelative } from "../../reference/reference";
import { standingSets } from "../../reference/standingSets";
import { cell, measurement, notFinitePaths } from "../measurements";

describe("z, T and modified z scores", () => {
  // Source: R 4.2.2 mean, sd, median, mad.
  test.each(standingSets)("$name", ({ scores, direction, inOrder }) => {
    for (const [compute, key] of [
      [zScores, "z"],
      [tScores, "T_score"],
      [modifiedZScores, "modified_z"],
    ] as const) {
      const reference = inOrder(key);
      unwrap(compute(scores, { direction })).forEach((score, index) => {
        expect(Math.abs(score! - reference[index]!)).toBeLessThan(1e-9 * Math.max(1, Math.abs(reference[index]!)));
      });
    }
  });

  // Source: R 4.2.2 on HSAUR3 heptathlon: the slowest hurdler has a modified z of -5.62785938.
  test("an outlier is marked", () => {
    const { scores, direction } = standingSets[0]!;
    const outliers = unwrap(modifiedZScores(scores, { direction })).filter((score) => Math.abs(score!) > outlierLimit);
    expect(outliers.length).toBe(1);
    expectRelative(outliers[0]!, -5.62785938, 1e-8);
  });

  test("equal scores and tiny squads are refused", () => {
    const options = { direction: "higher" } as const;
    expect(zScores([0.1, 0.1, 0.1], options)).toMatchObject({
      reasons: [{ code: "noSpread", facts: { what: "scores" } }],
    });
    expect(zScores([1, 2, null], options)).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "scores", needed: 3, got: 2 } }],
    });
    expect(zScores([1, 2, 3], options).ok).toBe(true);
  });

  test("another unit and another zero change nothing, a turned direction turns the sign, missing scores stay missing", () => {
    fc.assert(
      fc.property(
        fc.array(measurement(-100, 100), { minLength: 3, maxLength: 20 }),
        measurement(0.1, 10),
        measurement(-100, 100),
        (scores, factor, shift) => {
          const z = zScores(scores, { direction: "higher" });
          if (!z.ok) return;
          const moved = [null, ...scores.map((score) => score * factor + shift)];
          const turned = unwrap(zScores(moved, { direction: "lower" }));
          expect(turned[0]).toBeNull();
          z.value.forEach((score, index) => {
            expect(turned[index + 1]!).toBeCloseTo(-score!, 6);
          });
        },
      ),
    );
  });

  test("dirty input gives finite numbers or a refusal", () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(cell(-1e6, 1e6), fc.constantFrom(1e12, 1e12 + 1)), { maxLength: 8 }), (scores) => {
        for (const compute of [zScores, tScores, modifiedZScores]) {
          expect(notFinitePaths(compute(scores, { direction: "lower" }))).toEqual([]);
        }
      }),
    );
  });
});
