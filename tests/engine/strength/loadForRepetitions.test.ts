import { unwrap } from "../../../src/engine/result";
import { loadForRepetitions } from "../../../src/engine/strength/loadForRepetitions";
import { expected, expectRelative } from "../../reference/reference";

describe("the load for a number of repetitions", () => {
  // Source: R 4.2.2 arithmetic on the inverted equations, maximum 100 kg.
  test.each([
    ["epley", "Epley"],
    ["brzycki", "Brzycki"],
    ["lander", "Lander"],
    ["lombardi", "Lombardi"],
    ["mayhew", "Mayhew"],
    ["oConner", "OConner"],
    ["wathan", "Wathan"],
  ] as const)("by %s agrees with R", (equation, key) => {
    const { reps, load_for_reps_from_1RM_100: loads } = expected("e1rm_inputs");
    reps.forEach((repetitions: number, index: number) => {
      if (repetitions === 1 || repetitions > 15) return;
      const { load, percentOfMaximum } = unwrap(loadForRepetitions(100, repetitions, { equation }));
      expectRelative(load, loads[key][index], 1e-11);
      expectRelative(percentOfMaximum, loads[key][index], 1e-11);
    });
  });

  test("one repetition is the maximum itself, and reserve lowers the load", () => {
    expect(unwrap(loadForRepetitions(120, 1))).toEqual({ load: 120, percentOfMaximum: 100, cautions: [] });
    const withReserve = unwrap(loadForRepetitions(120, 3, { repetitionsInReserve: 2 }));
    expectRelative(withReserve.load, unwrap(loadForRepetitions(120, 5)).load, 1e-15);
    expect(withReserve.cautions.map(({ code }) => code)).toEqual(["estimatedFromReserve"]);
  });

  test("a maximum that is not positive, and too many repetitions, are refused", () => {
    expect(loadForRepetitions(0, 5).ok).toBe(false);
    expect(loadForRepetitions(0, 14, { repetitionsInReserve: 2 })).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "maximum", value: 0 } },
        { code: "outOfRange", facts: { what: "repetitions with those in reserve", value: 16 } },
      ],
    });
  });
});
