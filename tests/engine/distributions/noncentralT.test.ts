import {
  noncentralityOf,
  noncentralTCumulative,
  noncentralTQuantile,
} from "../../../src/engine/distributions/noncentralT";
import { studentTCumulative } from "../../../src/engine/distributions/studentT";
import { expectRelative } from "../../reference/reference";

describe("the noncentral t distribution", () => {
  // Source: scipy 1.17.1 stats.nct.cdf.
  test.each([
    [1, 1, 0.5, 0.5927477364400293],
    [2.5, 2, 1, 0.7816134762721604],
    [4.06, 9, 4, 0.47976119375658755],
    [-3, 5, -1, 0.08373824402719357],
    [0, 7, 1.2, 0.11506967022170833],
    [20, 30, 18, 0.7433764967082259],
    [62, 1000, 61, 0.7172339991426651],
  ])("P(T <= %d), df %d, noncentrality %d", (t, degreesOfFreedom, noncentrality, probability) => {
    expectRelative(noncentralTCumulative(t, degreesOfFreedom, noncentrality), probability, 1e-11);
  });

  test("without noncentrality it is Student's t", () => {
    for (const t of [-2.5, 0, 0.7, 12]) expectRelative(noncentralTCumulative(t, 6, 0), studentTCumulative(t, 6), 1e-12);
  });

  // Source: scipy 1.17.1 stats.nct.ppf.
  test.each([
    [0.025, 16, 8.081138594408092, 5.422005049367787],
    [0.975, 16, 8.081138594408092, 12.980655776499592],
    [0.975, 3, 3.9, 15.348453835768721],
    [0.025, 199, 27.7, 24.602637354002105],
  ])("quantile at %d, df %d, noncentrality %d", (p, degreesOfFreedom, noncentrality, t) => {
    expectRelative(noncentralTQuantile(p, degreesOfFreedom, noncentrality), t, 1e-11);
  });

  // Source: scipy 1.17.1 optimize.brentq over stats.nct.cdf.
  test.each([
    [4.06212768, 9, 0.025, 6.697756301597775],
    [4.06212768, 9, 0.975, 1.3111680889587136],
    [-2.5, 4, 0.975, -4.994767348854753],
    [0, 11, 0.025, 1.9599639845400543],
  ])("noncentrality of t = %d, df %d, at %d", (t, degreesOfFreedom, p, noncentrality) => {
    expectRelative(noncentralityOf(t, degreesOfFreedom, p), noncentrality, 1e-11);
  });

  // Source: NIST/SEMATECH e-Handbook 1.3.6.7.4, upper 2.5 % point of chi-square with 9 degrees of freedom 19.023: so far out
  // t is the noncentrality over the square root of chi-square over its degrees of freedom, and summing would not end.
  test("of a t as far out as copied data give it", () => {
    expectRelative(noncentralityOf(1e9, 9, 0.025), 1e9 * Math.sqrt(19.023 / 9), 1e-5);
    expectRelative(noncentralityOf(-1e9, 9, 0.975), -1e9 * Math.sqrt(19.023 / 9), 1e-5);
  });

  test("the form for extreme t meets the exact one", () => {
    for (const t of [-200, 200]) {
      for (const p of [0.025, 0.975])
        expectRelative(noncentralityOf(t * 1.0001, 9, p) / 1.0001, noncentralityOf(t, 9, p), 1e-7);
    }
  });
});
