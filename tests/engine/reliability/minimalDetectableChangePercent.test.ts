import { coefficientOfVariationFromLogs } from "../../../src/engine/reliability/coefficientOfVariationFromLogs";
import { minimalDetectableChangePercent } from "../../../src/engine/reliability/minimalDetectableChangePercent";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";

describe("minimal detectable change in percent", () => {
  // Source: R 4.2.2 exp(1.96 sqrt(2) s) with s the typical error of logarithms.
  test.each(reliabilitySets.filter(({ name }) => !name.startsWith("sleep_student")))(
    "$name",
    ({ results, reference }) => {
      const { logTypicalError } = unwrap(coefficientOfVariationFromLogs(results, { confidence: 0.95 }));
      const percent = unwrap(minimalDetectableChangePercent({ logTypicalError, confidence: 0.95 }));
      expectRelative(percent.up, reference.MDC95_percent_up, 1e-9);
      expectRelative(percent.down, reference.MDC95_percent_down, 1e-9);
    },
  );

  test("up and down undo each other, and few degrees of freedom widen both", () => {
    const known = unwrap(minimalDetectableChangePercent({ logTypicalError: 0.05, confidence: 0.9 }));
    expect((1 + known.up / 100) * (1 + known.down / 100)).toBeCloseTo(1, 12);
    const few = unwrap(minimalDetectableChangePercent({ logTypicalError: 0.05, confidence: 0.9, degreesOfFreedom: 5 }));
    expect(few.up).toBeGreaterThan(known.up);
    expect(few.down).toBeLessThan(known.down);
  });

  test("no error is refused", () => {
    expect(minimalDetectableChangePercent({ logTypicalError: 0, confidence: 0.9 })).toMatchObject({ ok: false });
  });
});
