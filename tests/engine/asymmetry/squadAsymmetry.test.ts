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

  test("one athlete is not a squad", () => {
    expect(squadAsymmetry([4, null], { threshold: 10 })).toMatchObject({ ok: false, reasons: [{ code: "tooFew" }] });
  });
});
