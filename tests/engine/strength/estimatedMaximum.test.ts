import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { type StrengthEquationName, strengthEquations } from "../../../src/engine/strength/equations";
import { estimatedMaximum } from "../../../src/engine/strength/estimatedMaximum";
import { loadForRepetitions } from "../../../src/engine/strength/loadForRepetitions";
import { expected, expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

const keys: Readonly<Record<StrengthEquationName, string>> = {
  epley: "Epley",
  brzycki: "Brzycki",
  brzyckiDecimal: "Brzycki_decimal",
  lander: "Lander",
  lombardi: "Lombardi",
  mayhew: "Mayhew",
  oConner: "OConner",
  wathan: "Wathan",
};
const names = strengthEquations.map(({ name }) => name);

describe("the estimated one-repetition maximum", () => {
  // Source: R 4.2.2 arithmetic on the published equations, 100 kg lifted 2 to 12 and 15 times.
  test.each(names)("by %s agrees with R", (equation) => {
    const { reps, e1RM } = expected("e1rm_inputs");
    reps.forEach((repetitions: number, index: number) => {
      if (repetitions === 1 || repetitions > 15) return;
      const { maximum } = unwrap(estimatedMaximum(100, repetitions, { equation }));
      expectRelative(maximum, e1RM[keys[equation]][index], 1e-11);
    });
  });

  // Source: the published equations worked by hand for 80 kg x 5.
  test.each([
    ["epley", 93.3333333333333],
    ["brzycki", 90],
    ["oConner", 90],
    ["lombardi", 93.96951544],
  ] as const)("of 80 kg x 5 by %s is %d kg", (equation, kilograms) => {
    expectRelative(unwrap(estimatedMaximum(80, 5, { equation })).maximum, kilograms, 1e-9);
  });

  test.each(names)("a completed single is the maximum itself, measured, by %s too", (equation) => {
    expect(unwrap(estimatedMaximum(100, 1, { equation }))).toEqual({
      maximum: 100,
      origin: "measured",
      lowest: 100,
      highest: 100,
      repetitions: 1,
      cautions: [],
    });
  });

  test("a single with some in reserve is an estimate", () => {
    const value = unwrap(estimatedMaximum(100, 1, { repetitionsInReserve: 2 }));
    expect(value).toMatchObject({ origin: "estimated", repetitions: 3, cautions: [{ code: "estimatedFromReserve" }] });
    expectRelative(value.maximum, 110, 1e-12);
  });

  // Source: lowest and highest of the eight published equations in R, 100 kg x 10.
  test("carries the range over all equations", () => {
    const { lowest, highest } = unwrap(estimatedMaximum(100, 10));
    expectRelative(lowest, 125, 1e-12);
    expectRelative(highest, 134.746699482, 1e-11);
  });

  test.each([
    [10, 0, []],
    [11, 0, ["rough"]],
    [15, 0, ["rough"]],
    [8, 3, ["estimatedFromReserve", "rough"]],
    [5, 4, ["estimatedFromReserve", "reserveIsAGuess"]],
    [5.7, 0, ["incompleteRepetition"]],
    [5, 0.5, ["estimatedFromReserve"]],
  ])("%d repetitions with %d in reserve: cautions %j", (done, repetitionsInReserve, codes) => {
    const { cautions } = unwrap(estimatedMaximum(100, done, { repetitionsInReserve }));
    expect(cautions.map(({ code }) => code)).toEqual(codes);
  });

  test.each([
    [100, 0, 0],
    [100, 16, 0],
    [100, 13, 3],
    [100, 5, -1],
    [0, 5, 0],
    [-20, 5, 0],
    [Number.NaN, 5, 0],
    [100, Number.POSITIVE_INFINITY, 0],
    [100, 5, Number.NaN],
  ])("%d kg x %d with %d in reserve is refused", (load, done, repetitionsInReserve) => {
    expect(estimatedMaximum(load, done, { repetitionsInReserve }).ok).toBe(false);
  });

  test("every reason is given at once", () => {
    expect(estimatedMaximum(-1, 20, { repetitionsInReserve: -2 })).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "load", value: -1 } },
        { code: "outOfRange", facts: { what: "repetitions done", value: 20 } },
        { code: "negative", facts: { what: "repetitions in reserve", value: -2 } },
      ],
    });
  });

  const anEquation = fc.constantFrom(...names);
  const aLoad = fc.double({ min: 1, max: 500, noNaN: true });

  test("the load for the same repetitions of the estimated maximum is the load lifted", () => {
    fc.assert(
      fc.property(aLoad, fc.integer({ min: 1, max: 15 }), anEquation, (load, repetitions, equation) => {
        const { maximum } = unwrap(estimatedMaximum(load, repetitions, { equation }));
        expectRelative(unwrap(loadForRepetitions(maximum, repetitions, { equation })).load, load, 1e-12);
      }),
    );
  });

  test("scales with the unit of the load", () => {
    fc.assert(
      fc.property(aLoad, fc.integer({ min: 1, max: 15 }), anEquation, (load, repetitions, equation) => {
        const kilograms = unwrap(estimatedMaximum(load, repetitions, { equation })).maximum;
        const pounds = unwrap(estimatedMaximum(load / 0.45359237, repetitions, { equation })).maximum;
        expectRelative(pounds * 0.45359237, kilograms, 1e-12);
      }),
    );
  });

  test("rises with every further repetition, and lies within its range", () => {
    fc.assert(
      fc.property(aLoad, fc.integer({ min: 1, max: 14 }), anEquation, (load, repetitions, equation) => {
        const fewer = unwrap(estimatedMaximum(load, repetitions, { equation }));
        const more = unwrap(estimatedMaximum(load, repetitions + 1, { equation }));
        expect(more.maximum).toBeGreaterThan(fewer.maximum);
        expect(more.lowest).toBeLessThanOrEqual(more.maximum);
        expect(more.highest).toBeGreaterThanOrEqual(more.maximum);
      }),
    );
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), anEquation, (load, done, repetitionsInReserve, equation) => {
        expect(notFinitePaths(estimatedMaximum(load, done, { equation, repetitionsInReserve }))).toEqual([]);
        expect(notFinitePaths(loadForRepetitions(load, done, { equation, repetitionsInReserve }))).toEqual([]);
      }),
    );
  });
});
