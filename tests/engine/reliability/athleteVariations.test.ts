import { athleteVariations } from "../../../src/engine/reliability/athleteVariations";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, rows } from "../../reference/reference";

describe("each athlete's coefficient of variation", () => {
  // Source: R 4.2.2 sd and mean on lme4 sleepstudy.
  test("smallest and largest of eighteen", () => {
    const variations = unwrap(athleteVariations(rows("sleepstudy_day0_2", ["day0", "day1", "day2"])));
    const reference = expected("sleepstudy_day0_2").reliability.CV_individual;
    expect(variations.length).toBe(18);
    expectRelative(Math.min(...variations), reference.min, 1e-10);
    expectRelative(Math.max(...variations), reference.max, 1e-10);
  });

  test("athletes with one result are left out; fewer than three with two are refused", () => {
    const results = [
      [10, 11],
      [20, 20],
      [30, 33],
      [40, null],
    ];
    expect(unwrap(athleteVariations(results)).length).toBe(3);
    expect(athleteVariations(results.slice(1))).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "athletes with two results", needed: 3, got: 2 } }],
    });
  });
});
