import { mean } from "simple-statistics";
import { gates, type TestKey, testKeys, testOf } from "../../sample-workbooks/battery";
import { noise, noiseOfMean } from "../../sample-workbooks/noise";
import { squad } from "../../sample-workbooks/squad";
import { trueScores } from "../../sample-workbooks/trueScores";
import { plausibleRanges } from "../../src/engine/flags/plausibleRanges";
import { correlation } from "../../src/engine/reliability/correlation";
import { pooledNoise } from "../../src/engine/reliability/pooledNoise";
import { typicalError } from "../../src/engine/reliability/typicalError";
import { unwrap } from "../../src/engine/result";
import { cellOf, days, scoreOf, trialsOf } from "./scores";

const names = squad.map(({ name }) => name);
const truths = trueScores();

/** 100 ln of the scores on both days before the block: their differences are percentages. */
const logarithms = (key: TestKey) =>
  names.map((name) =>
    [0, 1].map((occasion) => {
      const score = scoreOf(key, occasion, name);
      return score === null ? null : 100 * Math.log(score);
    }),
  );

describe("the noise that was put in", () => {
  it.each(testKeys)("%s: the engine's typical error between sessions has it within its 99 % limits", (key) => {
    const { sides, trials } = testOf(key);
    const { error, athletes } = unwrap(typicalError(logarithms(key), { confidence: 0.99 }));
    const planned = noiseOfMean(noise[key], sides * trials);
    expect(athletes).toBe(43);
    expect(error.low).toBeLessThan(planned);
    expect(error.high).toBeGreaterThan(planned);
  });

  it.each(testKeys.filter((key) => testOf(key).trials > 1))("%s: so has the noise from trial to trial", (key) => {
    const sides = testOf(key).sides === 2 ? (["left", "right"] as const) : [undefined];
    const sets = names.flatMap((name) => sides.map((side) => trialsOf(key, 0, name, side)));
    const { logStandardDeviation, degreesOfFreedom } = unwrap(pooledNoise(sets));
    // A standard deviation from f degrees of freedom has itself the relative error 1 / sqrt(2 f): any text; 3 of them.
    const relative = Math.abs(logStandardDeviation / (noise[key].trial / 100) - 1);
    expect(relative).toBeLessThan(3 / Math.sqrt(2 * degreesOfFreedom));
  });

  it("leaves athletes to be told apart: they differ by at least twice the noise", () => {
    for (const key of testKeys) {
      const { mean, spread, sides, trials } = testOf(key);
      expect((100 * spread) / mean).toBeGreaterThan(2 * noiseOfMean(noise[key], sides * trials));
    }
  });
});

describe("the athletes behind the numbers", () => {
  /** True scores of the seniors in a test, better ones larger. */
  const standings = (key: TestKey) =>
    names.slice(0, 26).map((name) => (testOf(key).better === "higher" ? 1 : -1) * truths.get(name)![key].before);

  it("are good or poor at the tests of one quality alike, and less so across qualities", () => {
    const pairs = testKeys.flatMap((one, index) =>
      testKeys.slice(index + 1).map((other) => ({
        alike: testOf(one).quality === testOf(other).quality,
        r: unwrap(correlation(standings(one), standings(other))).coefficient,
      })),
    );
    // Planned: 0.81 within a quality; about 0.3 across, as the roles and the planted weaknesses leave it.
    const within = mean(pairs.filter(({ alike }) => alike).map(({ r }) => r));
    const across = mean(pairs.filter(({ alike }) => !alike).map(({ r }) => r));
    expect(within).toBeGreaterThan(0.6);
    expect(within).toBeLessThan(0.9);
    expect(across).toBeGreaterThan(0.1);
    expect(across).toBeLessThan(0.45);
  });

  it("hop on 18 August as far as in the hop test a week before", () => {
    for (const name of names.slice(0, 26)) {
      const { before: distance } = truths.get(name)!.singleLegHop;
      expect(Math.abs(scoreOf("singleLegHop", 0, name)! / distance - 1)).toBeLessThan(0.06);
    }
  });

  it("stay within what the tests allow, but for the planted slips", () => {
    const ranges = [
      [/^Single-leg hop/, plausibleRanges.singleHop, 1],
      [/flight time/, plausibleRanges.flightTime, 1000],
      [/contact time/, plausibleRanges.contactTime, 1000],
      [/^Sprint 10 m/, plausibleRanges.sprint10, 1],
      [/^Sprint 30 m/, plausibleRanges.sprint30, 1],
      [/^505/, plausibleRanges.changeOfDirection505, 1],
      [/reps/, plausibleRanges.repetitions, 1],
    ] as const;
    const outside = days.flatMap((day) =>
      day.headings.flatMap((heading, column) => {
        const range = ranges.find(([pattern]) => pattern.test(heading));
        if (!range) return [];
        const [, { low, high }, perUnit] = range;
        return day.rows.flatMap(({ athlete, cells }) => {
          const cell = cells[column];
          return typeof cell === "number" && (cell / perUnit < low || cell / perUnit > high) ? [athlete.name] : [];
        });
      }),
    );
    expect(outside).toEqual(["Embrit Blåknapp", "Gunja Skogsnipe", "Tuvja Myrull"]);
  });

  it("run past one gate after the other", () => {
    for (const day of days.filter(({ place, occasion }) => place === "field" && occasion === 2)) {
      for (const name of names) {
        const times = gates.map((gate) => cellOf(day, name, `Sprint ${gate} m 1 (s)`));
        if (times.includes(null)) continue;
        expect([...times].sort((a, b) => a! - b!)).toEqual(times);
      }
    }
  });

  it("lift what can be turned into a maximum: 2 to 15 repetitions", () => {
    for (const day of days) {
      day.headings.forEach((heading, column) => {
        if (!heading.endsWith(" reps")) return;
        for (const { cells } of day.rows) {
          const repetitions = cells[column]!;
          if (typeof repetitions === "number") expect(repetitions >= 2 && repetitions <= 15).toBe(true);
        }
      });
    }
  });
});
