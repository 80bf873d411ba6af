import { twoGroups } from "../../../src/engine/change/twoGroups";
import { unwrap } from "../../../src/engine/result";
import { column, expected, expectRelative } from "../../reference/reference";

describe("two groups", () => {
  // Source: R 4.2.2 t.test and uniroot over pt(ncp).
  test("heights of singers", () => {
    const reference = expected("singer_alto1_vs_soprano1");
    const groups = unwrap(
      twoGroups([...column("singer_alto1", "height_in"), null], column("singer_soprano1", "height_in"), {
        confidence: 0.95,
      }),
    );
    expect(groups).toMatchObject({ firstCount: 35, secondCount: 36 });
    expectRelative(groups.difference.value, reference.diff, 1e-10);
    expect(groups.firstMean - groups.secondMean).toBe(groups.difference.value);
    expect(groups.firstMean).toBeGreaterThan(60);
    expectRelative(groups.difference.low, reference.welch.ci[0], 1e-9);
    expectRelative(groups.difference.high, reference.welch.ci[1], 1e-9);
    expectRelative(groups.welch.t, reference.welch.t, 1e-10);
    expectRelative(groups.welch.degreesOfFreedom, reference.welch.df, 1e-10);
    expectRelative(groups.welch.p, reference.welch.p, 1e-9);
    expectRelative(groups.cohenD.value, reference.cohen_d, 1e-10);
    expectRelative(groups.cohenD.low, reference.cohen_d_ci_noncentral_t[0], 1e-7);
    expectRelative(groups.hedgesG.value, reference.hedges_g, 1e-10);
    expectRelative(groups.hedgesG.low, reference.hedges_g_ci_noncentral_t[0], 1e-7);
    expectRelative(groups.hedgesG.high, reference.hedges_g_ci_noncentral_t[1], 1e-7);
  });

  test("tiny groups and groups without spread are refused", () => {
    expect(twoGroups([1, 2], [3, null], { confidence: 95 })).toMatchObject({
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        { code: "tooFew", facts: { what: "scores in the first group", needed: 3, got: 2 } },
        { code: "tooFew", facts: { what: "scores in the second group", needed: 3, got: 1 } },
      ],
    });
    expect(twoGroups([1, 1, 1], [2, 2, 2], { confidence: 0.95 })).toMatchObject({
      reasons: [{ code: "noSpread", facts: { what: "scores of each group" } }],
    });
    // What the last digits of large numbers leave is no spread either, however small the other group's numbers are.
    const copied = [1e20, 1e20 * (1 + 2 ** -52), 1e20];
    for (const [first, second] of [
      [copied, [0, 0, 0]],
      [[0, 0, 0], copied],
    ] as const) {
      expect(twoGroups(first, second, { confidence: 0.95 })).toMatchObject({ reasons: [{ code: "noSpread" }] });
    }
  });

  test("one group without spread is fine", () => {
    expect(unwrap(twoGroups([1, 1, 1], [2, 3, 2], { confidence: 0.95 })).welch.degreesOfFreedom).toBeCloseTo(2, 12);
  });
});
