import { minimalDetectableChange } from "../../../src/engine/reliability/minimalDetectableChange";
import { typicalError } from "../../../src/engine/reliability/typicalError";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";

describe("minimal detectable change", () => {
  // Source: R 4.2.2, 1.96 and 1.645 times sqrt(2) times the typical error.
  test.each(reliabilitySets)("at 95 and 90 %: $name", ({ results, reference }) => {
    const error = unwrap(typicalError(results, { confidence: 0.95 })).error.value;
    expectRelative(
      unwrap(minimalDetectableChange({ typicalError: error, confidence: 0.95 })),
      reference.MDC95_from_TE,
      1e-9,
    );
    expectRelative(
      unwrap(minimalDetectableChange({ typicalError: error, confidence: 0.9 })),
      reference.MDC90_from_TE,
      1e-9,
    );
  });

  // Source: scipy 1.17.1 stats.t.ppf(.975, df) * sqrt(2).
  test.each([
    [9, 3.199173339848663],
    [17, 2.9837298042779037],
  ])("with %d degrees of freedom it is %d typical errors", (degreesOfFreedom, multiple) => {
    expectRelative(
      unwrap(minimalDetectableChange({ typicalError: 1, confidence: 0.95, degreesOfFreedom })),
      multiple,
      1e-10,
    );
  });

  test("grows with confidence; no error and no degrees of freedom are refused", () => {
    const at = (confidence: number): number => unwrap(minimalDetectableChange({ typicalError: 1, confidence }));
    expect([0.8, 0.9, 0.94, 0.95, 0.96].map(at)).toEqual(
      [...[0.8, 0.9, 0.94, 0.95, 0.96].map(at)].sort((a, b) => a - b),
    );
    expect(minimalDetectableChange({ typicalError: 0, confidence: 95, degreesOfFreedom: 0 })).toMatchObject({
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        { code: "notPositive", facts: { what: "the typical error", value: 0 } },
        { code: "notPositive", facts: { what: "the degrees of freedom", value: 0 } },
      ],
    });
  });
});
