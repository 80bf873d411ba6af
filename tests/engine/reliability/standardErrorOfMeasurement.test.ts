import { betweenAthleteSpread } from "../../../src/engine/reliability/betweenAthleteSpread";
import { intraclassCorrelation } from "../../../src/engine/reliability/intraclassCorrelation";
import { standardErrorOfMeasurement } from "../../../src/engine/reliability/standardErrorOfMeasurement";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";

describe("standard error of measurement", () => {
  // Source: R 4.2.2; by algebra it is the typical error.
  test.each(reliabilitySets)("from the pooled SD and ICC(3,1): $name", ({ results, reference }) => {
    const { correlation } = unwrap(intraclassCorrelation(results, { form: "consistencySingle", confidence: 0.95 }));
    const error = unwrap(
      standardErrorOfMeasurement(unwrap(betweenAthleteSpread(results, "observed")), correlation.value),
    );
    expectRelative(error, reference.SEM_from_ICC31_pooled_SD, 1e-9);
    expectRelative(error, reference.TE_two_way.value, 1e-9);
  });

  test("a correlation above 1 and a negative spread are refused", () => {
    expect(standardErrorOfMeasurement(-1, 1.2)).toMatchObject({
      reasons: [
        { code: "negative", facts: { what: "the standard deviation", value: -1 } },
        { code: "outOfRange", facts: { what: "the intraclass correlation", low: -1, high: 1, value: 1.2 } },
      ],
    });
  });

  // Source: by hand, SD sqrt(1 - r).
  test("no spread and perfect correlation, either way, are fine", () => {
    expect(unwrap(standardErrorOfMeasurement(0, 0.5))).toBe(0);
    expect(unwrap(standardErrorOfMeasurement(2, 1))).toBe(0);
    expect(unwrap(standardErrorOfMeasurement(2, -1))).toBeCloseTo(2 * Math.SQRT2, 14);
  });
});
