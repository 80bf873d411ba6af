import fc from "fast-check";
import { intraclassCorrelation } from "../../../src/engine/reliability/intraclassCorrelation";
import { mixedModel } from "../../../src/engine/reliability/mixedModel";
import { typicalError } from "../../../src/engine/reliability/typicalError";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, rows } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";
import { cases, cell, normalNoise, notFinitePaths } from "../measurements";

describe("reliability from all results when some are missing", () => {
  const ages = ["age8", "age10", "age12", "age14"];

  // Source: lme4 1.1-31 lmer(y ~ factor(trial) + (1 | id)), REML; statsmodels 0.15.0 MixedLM agrees to 1e-6.
  test.each([
    ["orthodont_missing", "mixed_model_all_data"],
    ["orthodont", "mixed_model_complete_data_check"],
  ])("%s", (dataset, key) => {
    const reference = expected("orthodont_missing")[key];
    const model = unwrap(mixedModel(rows(dataset, ages), { confidence: 0.95 }));
    expect(model).toMatchObject({ athletes: reference.n_athletes, resultCount: reference.n_obs });
    expectRelative(model.varianceBetween, reference.var_between, 1e-7);
    expectRelative(model.varianceWithin, reference.var_within, 1e-7);
    expectRelative(model.typicalError.value, reference.TE, 1e-7);
    expectRelative(model.intraclassCorrelation, reference.ICC31_type, 1e-7);
  });

  // Outside check: for complete data the estimates are those of the analysis of variance (Searle, Casella & McCulloch 1992, from memory).
  test.each(reliabilitySets.filter(({ name }) => !name.includes("missing")))(
    "equals the analysis of variance: $name",
    ({ results }) => {
      const model = unwrap(mixedModel(results, { confidence: 0.9 }));
      const { error, degreesOfFreedom } = unwrap(typicalError(results, { confidence: 0.9 }));
      const { correlation } = unwrap(intraclassCorrelation(results, { form: "consistencySingle", confidence: 0.9 }));
      expect(model.degreesOfFreedom).toBe(degreesOfFreedom);
      expectRelative(model.typicalError.value, error.value, 1e-10);
      expectRelative(model.typicalError.low, error.low, 1e-10);
      expectRelative(model.intraclassCorrelation, correlation.value, 1e-10);
    },
  );

  // Outside check: simulation of 600 squads of 12 with a fifth of the results missing, true error 1,
  // between-athlete SD 2; fewer squads only where few cases are asked for.
  test("the limits of the typical error hold their confidence", () => {
    const draw = normalNoise(77);
    const squads = Math.min(cases(600), 600);
    let held = 0;
    for (let squad = 0; squad < squads; squad++) {
      const results = Array.from({ length: 12 }, (_, athlete) => {
        const truth = 2 * draw();
        return [0, 1, 2].map((session) =>
          (athlete + 5 * session + squad) % 5 === 0 ? null : truth + session + draw(),
        );
      });
      const { low, high } = unwrap(mixedModel(results, { confidence: 0.9 })).typicalError;
      if (low <= 1 && high >= 1) held++;
    }
    const standardError = Math.sqrt((0.9 * 0.1) / squads);
    expect(Math.abs(held / squads - 0.9)).toBeLessThan(3 * standardError);
  });

  test("athletes without any result and sessions without any result change nothing", () => {
    const results = rows("orthodont_missing", ages);
    const padded = [...results.map((row) => [...row, null]), [null, null, null, null, null]];
    expect(mixedModel(padded, { confidence: 0.95 })).toEqual(mixedModel(results, { confidence: 0.95 }));
  });

  test("no difference between athletes beyond noise is a correlation of 0", () => {
    const model = unwrap(
      mixedModel(
        [
          [1, 5],
          [5, 1.5],
          [3, 2],
          [2, 4],
        ],
        { confidence: 0.95 },
      ),
    );
    expect(model).toMatchObject({ varianceBetween: 0, intraclassCorrelation: 0 });
  });

  test("copied columns and too few repeated athletes are refused", () => {
    expect(
      mixedModel(
        [
          [1.1, 1.1],
          [2.3, 2.3],
          [3.7, 3.7],
          [4, null],
        ],
        { confidence: 0.95 },
      ),
    ).toMatchObject({
      reasons: [{ code: "noSpread", facts: { what: "repeated results" } }],
    });
    expect(
      mixedModel(
        [
          [1, 2],
          [2, null],
          [3, 5],
        ],
        { confidence: 0.95 },
      ),
    ).toMatchObject({ reasons: [{ code: "tooFew", facts: { what: "athletes with two results", needed: 3, got: 2 } }] });
  });

  test("equal results of everybody, and confidence in percent, are refused", () => {
    const equal = new Array(4).fill([2.5, 2.5]);
    expect(mixedModel(equal, { confidence: 0.95 })).toMatchObject({
      reasons: [{ code: "noSpread", facts: { what: "results" } }],
    });
    expect(mixedModel(equal, { confidence: 95 })).toMatchObject({
      reasons: [{ code: "outOfRange", facts: { what: "confidence" } }],
    });
  });

  // Source: by hand: six results of three athletes in four sessions leave 6 - 3 - 4 + 1 = 0 degrees of freedom.
  test("results too thinly spread over the sessions are refused", () => {
    const thin = [
      [1, 2, null, null],
      [null, 3, 5, null],
      [null, null, 4, 7],
    ];
    expect(mixedModel(thin, { confidence: 0.95 })).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "repeated results", needed: 7, got: 6 } }],
    });
  });

  test("a large constant costs no digits", () => {
    const results = rows("orthodont_missing", ages);
    const shifted = results.map((row) => row.map((value) => (value === null ? null : value + 1e9)));
    const [one, other] = [results, shifted].map((table) => unwrap(mixedModel(table, { confidence: 0.95 })));
    expectRelative(other!.varianceWithin, one!.varianceWithin, 1e-9);
  });

  test("dirty input gives finite numbers or a refusal", () => {
    const value = fc.oneof(cell(-1e9, 1e9), fc.constantFrom(null, 0, 1, 1e12, 1e12 + 1));
    const dirty = fc
      .integer({ min: 1, max: 4 })
      .chain((k) => fc.array(fc.array(value, { minLength: k, maxLength: k }), { maxLength: 7 }));
    fc.assert(
      fc.property(dirty, (results) => {
        expect(notFinitePaths(mixedModel(results, { confidence: 0.95 }))).toEqual([]);
      }),
      { numRuns: cases(400) },
    );
  });
});
