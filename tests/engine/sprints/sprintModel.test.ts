import fc from "fast-check";
import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { unwrap } from "../../../src/engine/result";
import { timeToDistance } from "../../../src/engine/sprints/sprintCurve";
import { sprintModel } from "../../../src/engine/sprints/sprintModel";
import { column, expected, expectRelative, labels } from "../../reference/reference";
import { cases, cell, normalNoise, notFinitePaths } from "../measurements";

const gates = [5, 10, 15, 20, 30, 40];

function timesOf(athlete: string, name: "time_exact_s" | "time_noisy_s"): number[] {
  const athletes = labels("sprint_splits", "athlete");
  return column("sprint_splits", name).flatMap((time, index) => (athletes[index] === athlete ? [time!] : []));
}

describe("the mono-exponential sprint model", () => {
  const { fits, true_parameters: truths } = expected("sprint_splits");

  // Source: R 4.2.2 nls(d ~ V * (t - tau * (1 - exp(-t / tau)))), summary()$coefficients, deviance, sigma.
  test.each(["A", "B", "C", "D"])("of athlete %s agrees with R, residuals in distance", (athlete) => {
    const reference = fits[athlete].noisy.distance_ls;
    const model = unwrap(sprintModel(gates, timesOf(athlete, "time_noisy_s")));
    expectRelative(model.maximalVelocity.value, reference.Vmax, 1e-7);
    expectRelative(model.timeConstant.value, reference.tau, 1e-7);
    expectRelative(model.maximalVelocity.standardError, reference.se_Vmax, 1e-6);
    expectRelative(model.timeConstant.standardError, reference.se_tau, 1e-6);
    expectRelative(model.residualSumOfSquares, reference.rss, 1e-9);
    expectRelative(model.residualStandardDeviation, reference.sigma, 1e-9);
    expect(model.timeOffset).toBeNull();
    expect(model.degreesOfFreedom).toBe(4);
    expect(model.cautions).toEqual([]);
  });

  // Source: R 4.2.2 nls, distances inverted to times with uniroot.
  test.each(["A", "B", "C", "D"])("of athlete %s agrees with R, residuals in time", (athlete) => {
    const reference = fits[athlete].noisy.time_ls;
    const model = unwrap(sprintModel(gates, timesOf(athlete, "time_noisy_s"), { residualsIn: "time" }));
    expectRelative(model.maximalVelocity.value, reference.Vmax, 1e-5);
    expectRelative(model.timeConstant.value, reference.tau, 1e-5);
    expectRelative(model.residualSumOfSquares, reference.rss, 1e-8);
  });

  // Source: R 4.2.2 nls with t + b in place of t; nls stops at a relative offset of 1e-5, which shows in the standard errors.
  test.each(["A", "B", "C", "D"])("of athlete %s with a time offset agrees with R", (athlete) => {
    const reference = fits[athlete].noisy_offset.distance_ls_offset;
    const model = unwrap(sprintModel(gates, timesOf(athlete, "time_noisy_s"), { withTimeOffset: true }));
    const fitted = [model.maximalVelocity, model.timeConstant, model.timeOffset!];
    expectRelative(fitted[0]!.value, reference.Vmax, 1e-6);
    expectRelative(fitted[1]!.value, reference.tau, 1e-6);
    expectRelative(fitted[2]!.value, reference.offset_added_to_time, 1e-4);
    fitted.forEach(({ standardError }, index) => {
      expectRelative(standardError, reference.se[index], 1e-4);
    });
    expectRelative(model.residualSumOfSquares, reference.rss, 1e-9);
  });

  // Source: R 4.2.2 confint.default-style Wald limits, t with 4 degrees of freedom.
  test("of athlete A has R's Wald limits", () => {
    const { maximalVelocity, timeConstant, initialAcceleration } = unwrap(
      sprintModel(gates, [1.38, 2.11, 2.72, 3.33, 4.48, 5.57]),
    );
    expectRelative(maximalVelocity.low, 9.044514, 1e-6);
    expectRelative(maximalVelocity.high, 9.372574, 1e-6);
    expectRelative(timeConstant.low, 1.181101, 1e-6);
    expectRelative(timeConstant.high, 1.309302, 1e-6);
    expectRelative(initialAcceleration, 9.20854382 / 1.24520127, 1e-7);
  });

  test.each(["A", "B", "C", "D"])("of athlete %s without noise returns the curve", (athlete) => {
    const truth = truths.find((one: { athlete: string }) => one.athlete === athlete);
    for (const residualsIn of ["distance", "time"] as const) {
      const model = unwrap(sprintModel(gates, timesOf(athlete, "time_exact_s"), { residualsIn }));
      expectRelative(model.maximalVelocity.value, truth.V, 1e-6);
      expectRelative(model.timeConstant.value, truth.tau, 1e-6);
    }
  });

  // Source: the general solver ml-levenberg-marquardt 5.1.0 on noisy runs of random athletes.
  test("agrees with a general least-squares solver", () => {
    const aSprinter = fc.record({
      maximalVelocity: fc.double({ min: 6, max: 11, noNaN: true }),
      timeConstant: fc.double({ min: 0.8, max: 1.6, noNaN: true }),
      seed: fc.nat(),
    });
    fc.assert(
      fc.property(aSprinter, ({ seed, ...curve }) => {
        const noise = normalNoise(seed);
        const times = gates.map((distance) => timeToDistance(distance, curve) + 0.01 * noise());
        const model = unwrap(sprintModel(gates, times));
        const solver = levenbergMarquardt(
          { x: times, y: gates },
          ([velocity, constant]) =>
            (time) =>
              velocity! * (time - constant! * (1 - Math.exp(-time / constant!))),
          {
            initialValues: [curve.maximalVelocity, curve.timeConstant],
            centralDifference: true,
            gradientDifference: 1e-6,
            maxIterations: 300,
            errorTolerance: 0,
          },
        );
        expectRelative(model.maximalVelocity.value, solver.parameterValues[0]!, 1e-5);
        expectRelative(model.timeConstant.value, solver.parameterValues[1]!, 1e-5);
      }),
      { numRuns: cases(30) },
    );
  });

  test("finds the curve of exact times of any sprinter, with and without an offset", () => {
    const aSprinter = fc.record({
      maximalVelocity: fc.double({ min: 5, max: 12, noNaN: true }),
      timeConstant: fc.double({ min: 0.5, max: 2.2, noNaN: true }),
      offset: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    });
    fc.assert(
      fc.property(
        aSprinter,
        fc.constantFrom("distance" as const, "time" as const),
        ({ offset, ...curve }, residualsIn) => {
          const times = gates.map((distance) => timeToDistance(distance, curve));
          const model = unwrap(sprintModel(gates, times, { residualsIn }));
          expectRelative(model.maximalVelocity.value, curve.maximalVelocity, 1e-7);
          expectRelative(model.timeConstant.value, curve.timeConstant, 1e-7);

          const late = times.map((time) => time - offset);
          const shifted = unwrap(sprintModel(gates, late, { residualsIn, withTimeOffset: true }));
          expectRelative(shifted.maximalVelocity.value, curve.maximalVelocity, 1e-6);
          expect(shifted.timeOffset!.value).toBeCloseTo(offset, 6);
        },
      ),
    );
  });

  test("a missing gate is left out", () => {
    const [times, without] = [timesOf("A", "time_noisy_s"), [5, 10, 20, 30, 40]];
    const gap = times.map((time, index) => (index === 2 ? null : time));
    expect(sprintModel(gates, gap)).toEqual(
      sprintModel(
        without,
        times.filter((_, index) => index !== 2),
      ),
    );
  });

  test("says when the run was too short or the gates too few", () => {
    const short = unwrap(sprintModel([5, 10, 20], [1.38, 2.11, 3.34]));
    expect(short.cautions).toMatchObject([
      {
        code: "extrapolated",
        // Source: by hand, 10 m in 3.34 - 2.11 s is the fastest interval.
        facts: {
          what: "maximal velocity in m/s",
          estimate: short.maximalVelocity.value,
          measuredTo: expect.closeTo(10 / 1.23, 9),
        },
      },
      { code: "fewDegreesOfFreedom", facts: { degreesOfFreedom: 1 } },
    ]);
    const toThirty = unwrap(sprintModel([5, 10, 20, 30], [1.38, 2.11, 3.34, 4.48]));
    expect(toThirty.cautions).toMatchObject([{ code: "fewDegreesOfFreedom", facts: { degreesOfFreedom: 2 } }]);
    const fiveGates = unwrap(sprintModel([5, 10, 15, 20, 30], [1.38, 2.11, 2.72, 3.33, 4.48]));
    expect(fiveGates.cautions).toEqual([]);
  });

  test.each([
    ["times that fall", [5, 10, 20], [1.38, 1.3, 3.34], {}, "notRising"],
    ["distances that fall", [5, 20, 10], [1.38, 2.11, 3.34], {}, "notRising"],
    ["a time of zero", [5, 10, 20], [0, 2.11, 3.34], {}, "notPositive"],
    ["unequal lists", [5, 10, 20], [1.38, 2.11], {}, "unequalLengths"],
    ["confidence in percent", gates, [1.38, 2.11, 2.72, 3.33, 4.48, 5.57], { confidence: 95 }, "outOfRange"],
    ["a walker", [5, 10, 20, 30], [4, 7.5, 14.5, 21.5], {}, "outOfRange"],
  ])("%s: refused", (_, distances, times, options, code) => {
    expect(sprintModel(distances, times, options)).toMatchObject({ ok: false, reasons: [{ code }] });
  });

  test.each([
    ["two gates", [5, 10], [1.38, 2.11], false, 3],
    ["three gates and an offset", [5, 10, 20], [1.38, 2.11, 3.34], true, 4],
  ])("%s are too few", (_, distances, times, withTimeOffset, needed) => {
    expect(sprintModel(distances, times, { withTimeOffset })).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { what: "splits", needed, got: distances.length } }],
    });
  });

  test("every reason is given at once", () => {
    const refused = sprintModel([5, 5], [1.38, 2.11], { confidence: 95 });
    expect(!refused.ok && refused.reasons.map(({ code }) => code)).toEqual(["notRising", "outOfRange"]);
  });

  // Source: the definition of least squares: no neighbouring curve comes nearer to the times.
  test("the nearest curve is found though a step on the way leads to a curve that falls", () => {
    const [distances, times] = [
      [1, 3, 13, 15, 17],
      [1.94, 3.02, 3.46, 5.02, 5.11],
    ];
    const model = unwrap(sprintModel(distances, times, { withTimeOffset: true, residualsIn: "time" }));
    const found = [model.maximalVelocity, model.timeConstant, model.timeOffset!].map(({ value }) => value);
    const squares = ([maximalVelocity, timeConstant, offset]: readonly number[]): number =>
      distances.reduce((sum, distance, index) => {
        const fitted = timeToDistance(distance, { maximalVelocity: maximalVelocity!, timeConstant: timeConstant! });
        return sum + (times[index]! - (fitted - offset!)) ** 2;
      }, 0);
    expectRelative(model.residualSumOfSquares, squares(found), 1e-12);
    for (const moved of found.keys()) {
      for (const factor of [0.99, 1.01]) {
        const neighbour = found.map((value, index) => (index === moved ? value * factor : value));
        expect(squares(neighbour)).toBeGreaterThan(model.residualSumOfSquares);
      }
    }
  });

  // Source: by hand: curves near these splits pass the first gate before they start, or have a time constant below zero.
  test.each([
    [[1, 2, 12, 22, 32], [0.06, 1.22, 1.8, 3.64, 3.85], { withTimeOffset: true }],
    [[5, 6, 11, 12], [0.34, 1.77, 1.85, 2.34], { residualsIn: "time" }],
  ] as const)("no impossible curve is taken for a fit: %j %j", (distances, times, options) => {
    expect(sprintModel(distances, times, options)).toMatchObject({ ok: false, reasons: [{ code: "noFit" }] });
  });

  // Source: a run that slows from gate to gate, and times of steady speed, have no rising curve.
  test("splits no sprint curve follows are refused", () => {
    for (const residualsIn of ["distance", "time"] as const) {
      expect(sprintModel([5, 10, 20, 30], [0.3, 1.1, 4.4, 6.6], { residualsIn })).toEqual({
        ok: false,
        reasons: [
          {
            code: "noFit",
            message: "No sprint curve fits these splits. Check the distances and times.",
            facts: {},
          },
        ],
      });
    }
    expect(sprintModel([5, 10, 15, 20], [0.5, 1, 1.5, 2])).toMatchObject({
      ok: false,
      reasons: [{ code: "outOfRange", facts: { what: "time constant" } }],
    });
  });

  test("never gives NaN or Infinity on dirty input", () => {
    const split = fc.tuple(cell(-1, 60), cell(-1, 15));
    fc.assert(
      fc.property(fc.array(split, { maxLength: 7 }), fc.boolean(), fc.boolean(), (splits, withTimeOffset, inTime) => {
        const sorted = [...splits].sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
        const times = sorted.map(([, time]) => time).sort((a, b) => (a ?? 0) - (b ?? 0));
        const result = sprintModel(
          sorted.map(([distance]) => distance),
          times,
          { withTimeOffset, residualsIn: inTime ? "time" : "distance" },
        );
        expect(notFinitePaths(result)).toEqual([]);
      }),
      { numRuns: cases(500) },
    );
  });
});
