import { percentDifference } from "../../../src/engine/asymmetry/percentDifference";
import { squadAsymmetry } from "../../../src/engine/asymmetry/squadAsymmetry";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, fullColumn } from "../../reference/reference";

describe("asymmetry of a squad", () => {
  // Data: MASS::shoes; values: R 4.2.2 mean, sd, median.
  test("ten pairs of shoes", () => {
    const right = fullColumn("shoes_pairs", "right_B");
    const signed = fullColumn("shoes_pairs", "left_A").map((left, index) => percentDifference(left, right[index]!));
    const squad = unwrap(squadAsymmetry([...signed, null], { threshold: 5 }));
    const reference = expected("shoes_pairs").asymmetry.group;
    expectRelative(squad.meanSize, reference.mean_abs_pct_max_ref, 1e-10);
    expectRelative(squad.standardDeviationOfSize, reference.sd_abs, 1e-10);
    expectRelative(squad.medianSize, reference.median_abs, 1e-10);
    expectRelative(squad.meanSigned, reference.mean_signed, 1e-10);
    expect(squad).toMatchObject({ count: 10, rightLarger: 8, leftLarger: 2, equal: 0, beyondThreshold: 4 });
  });

  test("equal sides are on neither side, and a size at the threshold is not beyond it", () => {
    expect(unwrap(squadAsymmetry([0, -5, 5], { threshold: 5 }))).toMatchObject({
      rightLarger: 1,
      leftLarger: 1,
      equal: 1,
      beyondThreshold: 0,
    });
  });

  test("one athlete is not a squad, two are", () => {
    expect(squadAsymmetry([4, null], { threshold: 10 })).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { what: "athletes with both sides", needed: 2, got: 1 } }],
    });
    expect(squadAsymmetry([4, 6], { threshold: 10 }).ok).toBe(true);
  });
});
