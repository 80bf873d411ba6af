import libraryQuantile from "@stdlib/stats-base-dists-t-quantile";
import fc from "fast-check";
import { studentTCumulative, studentTQuantile } from "../../../src/engine/distributions/studentT";

describe("studentTQuantile(p, degreesOfFreedom)", () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2 (upper critical values of Student's t).
  it.each([
    [0.975, 1, 12.706],
    [0.975, 4, 2.776],
    [0.95, 10, 1.812],
    [0.975, 30, 2.042],
    [0.99, 100, 2.364],
  ])("t(%d; %d) is %d", (p, degreesOfFreedom, table) => {
    expect(studentTQuantile(p, degreesOfFreedom)).toBeCloseTo(table, 3);
  });

  it("is exactly nothing in the middle", () => {
    expect(studentTQuantile(0.5, 7)).toBe(0);
  });

  it("agrees with the library's own quantile", () => {
    const share = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true });
    fc.assert(
      fc.property(share, fc.double({ min: 0.5, max: 1e5, noNaN: true }), (p, degreesOfFreedom) => {
        const expected = libraryQuantile(p, degreesOfFreedom);
        expect(Math.abs(studentTQuantile(p, degreesOfFreedom) - expected)).toBeLessThan(
          1e-9 * Math.max(1, Math.abs(expected)),
        );
      }),
    );
  });

  it("is undone by the distribution function, also far out", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-12, max: 0.5, noNaN: true }),
        fc.integer({ min: 1, max: 200 }),
        (p, degreesOfFreedom) => {
          expect(studentTCumulative(studentTQuantile(p, degreesOfFreedom), degreesOfFreedom) / p).toBeCloseTo(1, 8);
        },
      ),
    );
  });
});
