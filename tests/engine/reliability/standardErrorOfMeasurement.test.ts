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
      reasons: [{ code: "negative" }, { code: "outOfRange" }],
    });
  });
});
