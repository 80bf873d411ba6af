import fc from "fast-check";
import { steadiedNoise } from "../../../src/engine/reliability/steadiedNoise";
import { trialNoise } from "../../../src/engine/reliability/trialNoise";
import { unwrap } from "../../../src/engine/result";

/** Two sides of three trials whose log variance, pooled, is exactly `variance`. */
function athleteWithVariance(variance: number): number[][] {
  const step = Math.sqrt(variance);
  const side = [-step, 0, step].map((log) => 150 * Math.exp(log));
  return [side, side.map((trial) => trial * 1.05)];
}

describe("steadiedNoise(athletes)", () => {
  // R 4.2.2, limma 3.54.1 (a general library of linear models): squeezeVar(variances, df = 4).
  const variances = [0.0012, 0.0009, 0.0031, 0.0004, 0.0102, 0.0015, 0.0022, 0.0007, 0.0018, 0.0061];
  const expected = [
    0.00173796192154726, 0.00163117166459974, 0.00241430021554828, 0.00145318790302052, 0.00494166962997314,
    0.00184475217849479, 0.0020939294447057, 0.00155997815996805, 0.00195154243544232, 0.00348220278502357,
  ];

  it("gives the moderated variances and degrees of freedom of limma's squeezeVar", () => {
    const noises = unwrap(steadiedNoise(variances.map(athleteWithVariance)));
    noises.forEach((noise, index) => {
      expect(noise.logStandardDeviation ** 2 / expected[index]!).toBeCloseTo(1, 9);
      expect(noise.degreesOfFreedom).toBeCloseTo(4 + 7.23698017310339, 8);
    });
  });

  it("is the pooled noise of the group when athletes scatter alike, as limma's infinite prior", () => {
    const athletes = [0.0012, 0.0011, 0.0013, 0.0012, 0.001].map(athleteWithVariance);
    const pooled = unwrap(trialNoise(athletes.flat(), { confidence: 0.95 }));
    for (const noise of unwrap(steadiedNoise(athletes))) {
      expect(noise.logStandardDeviation).toBeCloseTo(pooled.logStandardDeviation, 12);
      expect(noise.logStandardDeviation ** 2).toBeCloseTo(0.00116, 12);
      expect(noise.degreesOfFreedom).toBe(20);
    }
  });

  it("lends the group's noise to an athlete with single trials", () => {
    const noises = unwrap(steadiedNoise([...variances.map(athleteWithVariance), [[150], [160]]]));
    expect(noises.at(-1)!.logStandardDeviation ** 2).toBeCloseTo(0.00203530247447382, 9);
    expect(noises.at(-1)!.degreesOfFreedom).toBeCloseTo(7.23698017310339, 8);
  });

  it("keeps equal trials of one athlete from making the whole group's noise meaningless", () => {
    const athletes = [
      ...variances.map(athleteWithVariance),
      [
        [150, 150, 150],
        [150, 150, 150],
      ],
    ];
    const noises = unwrap(steadiedNoise(athletes));
    expect(noises.at(-1)!.logStandardDeviation).toBeGreaterThan(0.01);
  });

  it("refuses values that are not above zero, too few athletes, and copied data", () => {
    expect(steadiedNoise([[[1, 0]], [[1, 2]], [[1, 2]]])).toMatchObject({
      ok: false,
      reasons: [{ code: "notPositive", facts: { what: "every trial", value: 0 } }],
    });
    expect(steadiedNoise([[[1, 2]], [[1, 2]]])).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { what: "athletes with two trials of a side", needed: 3, got: 2 } }],
    });
    expect(steadiedNoise([[[2, 2]], [[3, 3]], [[4, 4]]])).toMatchObject({
      ok: false,
      reasons: [{ code: "noSpread", facts: { what: "trials of each set" } }],
    });
  });

  it("does not depend on the unit, on missing trials, or on the order of athletes", () => {
    const trial = fc.double({ min: 100, max: 200, noNaN: true });
    const athlete = fc.tuple(
      fc.array(trial, { minLength: 1, maxLength: 4 }),
      fc.array(trial, { minLength: 2, maxLength: 4 }),
    );
    fc.assert(
      fc.property(
        fc.array(athlete, { minLength: 3, maxLength: 12 }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (squad, unit) => {
          const plain = steadiedNoise(squad);
          fc.pre(plain.ok);
          const other = unwrap(
            steadiedNoise(
              [...squad].reverse().map((sides) => sides.map((side) => [...side.map((value) => value * unit), null])),
            ),
          );
          unwrap(plain).forEach((noise, index) => {
            const twin = other[squad.length - 1 - index]!;
            expect(Number.isFinite(noise.logStandardDeviation)).toBe(true);
            expect(twin.logStandardDeviation).toBeCloseTo(noise.logStandardDeviation, 6);
            expect(twin.degreesOfFreedom / noise.degreesOfFreedom).toBeCloseTo(1, 4);
          });
        },
      ),
    );
  });
});
