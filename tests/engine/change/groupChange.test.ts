import fc from "fast-check";
import { groupChange } from "../../../src/engine/change/groupChange";
import { smallSampleCorrection } from "../../../src/engine/change/smallSampleCorrection";
import { unwrap } from "../../../src/engine/result";
import { column, expected, expectRelative } from "../../reference/reference";
import { cases, cell, notFinitePaths } from "../measurements";

describe("a group's change", () => {
  // Source: R 4.2.2 t.test(paired = TRUE), uniroot over pt(ncp); metafor 3.8-1 escalc SMCC and SMCR for g_z and g_pre.
  test.each([
    ["sleepstudy_day0_2", "change_day0_day2", "day0", "day2"],
    ["sleep_student", "change", "drug1", "drug2"],
    ["shoes_pairs", "change", "left_A", "right_B"],
  ] as const)("%s", (dataset, key, earlierName, laterName) => {
    const { change, effect } = expected(dataset)[key];
    const [earlier, later] = [column(dataset, earlierName), column(dataset, laterName)];
    const group = unwrap(groupChange([...earlier, null, 3], [...later, 4, null], { confidence: 0.95 }));
    expect(group.athletes).toBe(change.n);
    expectRelative(group.change.value, change.mean, 1e-10);
    expectRelative(group.change.low, change.ci_low, 1e-8);
    expectRelative(group.change.high, change.ci_high, 1e-8);
    expectRelative(group.standardDeviation, change.sd, 1e-10);
    expectRelative(group.t, change.t, 1e-10);
    expectRelative(group.p, change.p, 1e-8);
    expectRelative(group.ofChanges.value, effect.d_z, 1e-10);
    expectRelative(group.ofChanges.low, effect.d_z_ci[0], 1e-7);
    expectRelative(group.ofChanges.high, effect.d_z_ci[1], 1e-7);
    expectRelative(group.ofAverageSpread.value, effect.d_av, 1e-10);
    expectRelative(group.ofAverageSpread.low, effect.d_av_ci_noncentral[0], 1e-7);
    expectRelative(group.ofAverageSpread.high, effect.d_av_ci_noncentral[1], 1e-7);
    expectRelative(group.ofEarlierSpread.value, effect.d_pre, 1e-10);
    expectRelative(group.corrected.ofChanges.value, effect.check_metafor_SMCC_gz, 1e-10);
    expectRelative(group.corrected.ofEarlierSpread.value, effect.check_metafor_SMCR_gpre, 1e-10);
    expectRelative(group.corrected.ofAverageSpread.value, effect.g_av, 1e-10);
    expectRelative(group.corrected.ofAverageSpread.low, effect.g_av_ci_noncentral[0], 1e-7);
    expectRelative(group.corrected.ofAverageSpread.high, effect.g_av_ci_noncentral[1], 1e-7);
    const lakens = unwrap(groupChange(earlier, later, { confidence: 0.95, correction: "2(n-1)" }));
    expectRelative(lakens.corrected.ofAverageSpread.value, effect.g_av_lakens_2n, 1e-10);
    expectRelative(smallSampleCorrection(change.df), effect.J_exact_df_n_minus_1, 1e-11);
  });

  test("few athletes, changes all equal, and lists of different length are refused", () => {
    const at = { confidence: 0.95 };
    expect(groupChange([1, 2, 3, 4], [2, 4, 3, 6], at)).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "athletes with both results", needed: 5, got: 4 } }],
    });
    expect(groupChange([1, 2, 3, 4, 5], [2, 4, 3, 6, 5], at).ok).toBe(true);
    expect(groupChange([1, 2, 3, 4, 5], [1.1, 2.1, 3.1, 4.1, 5.1], at)).toMatchObject({
      reasons: [{ code: "noSpread", facts: { what: "changes" } }],
    });
    expect(groupChange([3, 3, 3, 3, 3], [1, 2, 3, 4, 5], at)).toMatchObject({
      reasons: [{ code: "noSpread", facts: { what: "earlier scores" } }],
    });
    expect(groupChange([1], [], { confidence: 95 })).toMatchObject({
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        {
          code: "unequalLengths",
          facts: { first: "earlier scores", second: "later scores", firstCount: 1, secondCount: 0 },
        },
        { code: "tooFew", facts: { what: "athletes with both results", needed: 5, got: 0 } },
      ],
    });
  });

  test("wider confidence encloses narrower, swapping the sessions turns the sign, dirty input stays finite", () => {
    const scores = fc.array(fc.tuple(cell(-50, 50), cell(-50, 50)), { minLength: 3, maxLength: 9 });
    fc.assert(
      fc.property(scores, (pairs) => {
        const [earlier, later] = [pairs.map(([one]) => one), pairs.map(([, two]) => two)];
        const wide = groupChange(earlier, later, { confidence: 0.95 });
        expect(notFinitePaths(wide)).toEqual([]);
        if (!wide.ok) return;
        const narrow = unwrap(groupChange(earlier, later, { confidence: 0.8 }));
        expect(narrow.ofChanges.low).toBeGreaterThan(wide.value.ofChanges.low);
        expect(narrow.ofChanges.high).toBeLessThan(wide.value.ofChanges.high);
        const back = groupChange(later, earlier, { confidence: 0.95 });
        if (back.ok) expect(back.value.ofChanges.low).toBeCloseTo(-wide.value.ofChanges.high, 8);
      }),
      { numRuns: cases(30) },
    );
  });
});
