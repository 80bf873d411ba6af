import fc from "fast-check";
import {
  type IntraclassForm,
  intraclassCorrelation,
  intraclassForms,
} from "../../../src/engine/reliability/intraclassCorrelation";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, groups, rows } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";
import { cases, cell, measurement, notFinitePaths } from "../measurements";

const forms = Object.keys(intraclassForms) as IntraclassForm[];

describe("intraclass correlation", () => {
  // Source: psych::ICC (R 4.2.2, psych 2.2.9).
  test.each(reliabilitySets)("all six forms with 95 % limits: $name", ({ results, reference }) => {
    for (const form of forms) {
      const { correlation } = unwrap(intraclassCorrelation(results, { form, confidence: 0.95 }));
      const { value, ci_low, ci_high } = reference.icc[intraclassForms[form].label];
      expectRelative(correlation.value, value, 1e-9);
      expectRelative(correlation.low, ci_low, 1e-7);
      expectRelative(correlation.high, ci_high, 1e-7);
    }
  });

  // Source: lme4::Dyestuff, batches as athletes.
  test("Dyestuff, one-way", () => {
    const batches = groups("dyestuff_long", "batch", "yield");
    const { correlation } = unwrap(intraclassCorrelation(batches, { form: "oneWaySingle", confidence: 0.95 }));
    const { value, ci_low, ci_high } = expected("dyestuff_long").icc["ICC(1,1)"];
    expectRelative(correlation.value, value, 1e-10);
    expectRelative(correlation.low, ci_low, 1e-8);
    expectRelative(correlation.high, ci_high, 1e-8);
  });

  const shroutFleiss = rows("shrout_fleiss", ["J1", "J2", "J3", "J4"]);

  // Source: Shrout & Fleiss 1979, table 4: .17, .29, .71, .44, .62, .91.
  test.each([
    ["oneWaySingle", 0.17],
    ["agreementSingle", 0.29],
    ["consistencySingle", 0.71],
    ["oneWayMean", 0.44],
    ["agreementMean", 0.62],
    ["consistencyMean", 0.91],
  ] as const)("Shrout & Fleiss print %s as %d", (form, printed) => {
    expect(unwrap(intraclassCorrelation(shroutFleiss, { form, confidence: 0.95 })).correlation.value).toBeCloseTo(
      printed,
      2,
    );
  });

  // Source: the formulas of McGraw & Wong with scipy 1.17.1 stats.f.ppf at 0.95.
  test("limits at 90 %", () => {
    const consistency = unwrap(intraclassCorrelation(shroutFleiss, { form: "consistencySingle", confidence: 0.9 }));
    expectRelative(consistency.correlation.low, 0.41183413091904414, 1e-9);
    expectRelative(consistency.correlation.high, 0.9258328076802794, 1e-9);
    const agreement = unwrap(intraclassCorrelation(shroutFleiss, { form: "agreementSingle", confidence: 0.9 }));
    expectRelative(agreement.correlation.low, 0.04290119154053985, 1e-9);
    expectRelative(agreement.correlation.high, 0.6910706066183566, 1e-9);
  });

  test("copied columns, equal athletes and too few athletes are refused", () => {
    const options = { form: "consistencySingle", confidence: 0.95 } as const;
    const refusal = (results: (number | null)[][]) => intraclassCorrelation(results, options);
    expect(
      refusal([
        [1.1, 1.1],
        [2.3, 2.3],
        [3.7, 3.7],
      ]),
    ).toMatchObject({ reasons: [{ code: "noSpread", facts: { what: "repeated results" } }] });
    expect(
      refusal([
        [1.1, 1.4],
        [2.3, 2.6],
        [3.7, 4],
      ]),
    ).toMatchObject({ reasons: [{ code: "noSpread", facts: { what: "repeated results" } }] });
    expect(
      refusal([
        [1, 2],
        [2, 1],
        [1, 2],
      ]),
    ).toMatchObject({ reasons: [{ code: "noSpread", facts: { what: "athletes' means" } }] });
    expect(
      refusal([
        [1, 2],
        [3, null],
        [5, 6],
      ]),
    ).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "athletes with every result", needed: 3, got: 2 } }],
    });
  });

  test("every form has a label of its own and says what it means", () => {
    expect(forms.map((form) => intraclassForms[form].label)).toEqual([
      "ICC(1,1)",
      "ICC(2,1)",
      "ICC(3,1)",
      "ICC(1,k)",
      "ICC(2,k)",
      "ICC(3,k)",
    ]);
    for (const form of forms)
      expect(intraclassForms[form].meaning).toMatch(form.endsWith("Mean") ? /mean of k/ : /one result/);
  });

  test("confidence in percent is refused beside the data's own reasons", () => {
    expect(intraclassCorrelation([[1, 2]], { form: "oneWaySingle", confidence: 95 })).toMatchObject({
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        { code: "tooFew", facts: { what: "athletes with every result" } },
      ],
    });
  });

  test("athletes with a missing result are left out and counted", () => {
    const correlation = unwrap(
      intraclassCorrelation([...shroutFleiss, [1, null, 3, 4]], { form: "oneWaySingle", confidence: 0.95 }),
    );
    expect(correlation).toMatchObject({ athletes: 6, sessions: 4, leftOut: 1 });
    expectRelative(correlation.correlation.value, 0.165741768, 1e-8);
  });

  const table = fc
    .tuple(fc.integer({ min: 2, max: 4 }), fc.integer({ min: 3, max: 8 }))
    .chain(([k, n]) =>
      fc.array(fc.array(measurement(-1000, 1000), { minLength: k, maxLength: k }), { minLength: n, maxLength: n }),
    );

  test("never above 1, limits around the value, and wider limits enclose narrower ones", () => {
    fc.assert(
      fc.property(table, fc.constantFrom(...forms), (results, form) => {
        const wide = intraclassCorrelation(results, { form, confidence: 0.95 });
        if (!wide.ok) return;
        const { value, low, high } = wide.value.correlation;
        expect(value).toBeLessThanOrEqual(1);
        expect(low).toBeLessThanOrEqual(value);
        expect(high).toBeGreaterThanOrEqual(value);
        const narrow = unwrap(intraclassCorrelation(results, { form, confidence: 0.8 })).correlation;
        expect(narrow.low).toBeGreaterThanOrEqual(low);
        expect(narrow.high).toBeLessThanOrEqual(high);
      }),
    );
  });

  test("another unit and another zero change nothing", () => {
    fc.assert(
      fc.property(table, measurement(0.1, 10), measurement(-1000, 1000), (results, factor, shift) => {
        const one = intraclassCorrelation(results, { form: "agreementSingle", confidence: 0.9 });
        const scaled = results.map((row) => row.map((value) => value * factor + shift));
        const other = intraclassCorrelation(scaled, { form: "agreementSingle", confidence: 0.9 });
        if (!one.ok || !other.ok) return;
        expect(other.value.correlation.value).toBeCloseTo(one.value.correlation.value, 5);
      }),
    );
  });

  test("dirty input gives finite numbers or a refusal", () => {
    const dirty = fc.array(
      fc.array(fc.oneof(cell(-1e15, 1e15), fc.constantFrom(0, 1, 1e12, 1e12 + 1)), { minLength: 2, maxLength: 2 }),
      {
        maxLength: 6,
      },
    );
    fc.assert(
      fc.property(dirty, fc.constantFrom(...forms), (results, form) => {
        expect(notFinitePaths(intraclassCorrelation(results, { form, confidence: 0.999 }))).toEqual([]);
      }),
      { numRuns: cases(1000) },
    );
  });
});
