import fc from "fast-check";
import { typicalError } from "../../../src/engine/reliability/typicalError";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";
import { measurement } from "../measurements";

describe("typical error", () => {
  // Source: R 4.2.2 analysis of variance and qchisq.
  test.each(reliabilitySets)("with session shift removed and kept: $name", ({ results, reference }) => {
    for (const [sessionShift, key] of [
      ["removed", "TE_two_way"],
      ["kept", "SEM_one_way"],
    ] as const) {
      const { error, degreesOfFreedom } = unwrap(typicalError(results, { confidence: 0.95, sessionShift }));
      expect(degreesOfFreedom).toBe(reference[key].df);
      expectRelative(error.value, reference[key].value, 1e-10);
      expectRelative(error.low, reference[key].ci_low, 1e-9);
      expectRelative(error.high, reference[key].ci_high, 1e-9);
    }
  });

  const table = fc.array(fc.array(measurement(-1000, 1000), { minLength: 3, maxLength: 3 }), {
    minLength: 4,
    maxLength: 8,
  });

  test("scales with the unit, ignores a shift of any session, wider confidence encloses narrower", () => {
    fc.assert(
      fc.property(table, measurement(0.1, 10), measurement(-100, 100), (results, factor, shift) => {
        const one = typicalError(results, { confidence: 0.95 });
        if (!one.ok) return;
        const moved = results.map(([a, b, c]) => [a! * factor, b! * factor + shift, c! * factor]);
        const other = unwrap(typicalError(moved, { confidence: 0.8 })).error;
        expectRelative(other.value, one.value.error.value * factor, 1e-7);
        expect(other.low).toBeGreaterThan(one.value.error.low * factor);
        expect(other.high).toBeLessThan(one.value.error.high * factor);
      }),
    );
  });

  test("confidence in percent is refused beside the data's own reasons", () => {
    expect(typicalError([[1, 2]], { confidence: 95 })).toMatchObject({
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        { code: "tooFew", facts: { what: "athletes with every result" } },
      ],
    });
  });

  test("confidence in percent is refused though the data are good", () => {
    expect(typicalError(reliabilitySets[0]!.results, { confidence: 95 })).toMatchObject({
      reasons: [{ code: "outOfRange", facts: { what: "confidence" } }],
    });
  });

  test("athletes with a missing result change nothing but the count", () => {
    const results = reliabilitySets[0]!.results;
    const more = unwrap(typicalError([[null, 1, 2, 3], ...results, [null, null, null, null]], { confidence: 0.9 }));
    expect(more).toEqual({ ...unwrap(typicalError(results, { confidence: 0.9 })), leftOut: 2 });
  });
});
