import { meanChange } from "../../../src/engine/reliability/meanChange";
import { unwrap } from "../../../src/engine/result";
import { expectRelative, rows } from "../../reference/reference";

describe("mean change between two sessions", () => {
  const results = rows("sleepstudy_day0_2", ["day0", "day1", "day2"]);

  // Source: R 4.2.2 t.test(paired = TRUE) on lme4 sleepstudy, days 0 and 1.
  test("reaction time from day 0 to day 1", () => {
    const change = unwrap(meanChange(results, { confidence: 0.95 }));
    expect(change).toMatchObject({ athletes: 18, degreesOfFreedom: 17 });
    expectRelative(change.change.value, 7.84395, 1e-9);
    expectRelative(change.change.low, -4.00025382, 1e-8);
    expectRelative(change.change.high, 19.68815382, 1e-8);
    expectRelative(change.t, 1.39724781, 1e-8);
    expectRelative(change.p, 0.180310651, 1e-8);
  });

  test("turning the sessions round turns the sign", () => {
    const there = unwrap(meanChange(results, { earlier: 0, later: 2, confidence: 0.9 })).change;
    const back = unwrap(meanChange(results, { earlier: 2, later: 0, confidence: 0.9 })).change;
    expect(back.low).toBeCloseTo(-there.high, 9);
  });

  test("two athletes and equal changes are refused", () => {
    expect(
      meanChange(
        [
          [1, 2],
          [3, 5],
          [4, null],
        ],
        { confidence: 0.95 },
      ),
    ).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "athletes with both results", needed: 3, got: 2 } }],
    });
    expect(
      meanChange(
        [
          [1.1, 1.4],
          [2.2, 2.5],
          [4.7, 5],
        ],
        { confidence: 0.95 },
      ),
    ).toMatchObject({
      reasons: [{ code: "noSpread", facts: { what: "changes" } }],
    });
  });
});
