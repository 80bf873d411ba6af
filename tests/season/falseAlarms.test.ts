import { testKeys, testOf } from "../../sample-workbooks/battery";
import { block } from "../../sample-workbooks/block";
import {
  falseAlarms,
  largestUnplantedRise,
  plantedAsymmetries,
  spike,
  swappedSides,
} from "../../sample-workbooks/plantedTruths";
import { squad } from "../../sample-workbooks/squad";
import { trueScores } from "../../sample-workbooks/trueScores";
import { individualChange } from "../../src/engine/change/individualChange";
import { typicalError } from "../../src/engine/reliability/typicalError";
import { unwrap } from "../../src/engine/result";
import { judgedAsymmetry } from "./asymmetries";
import { scoreOf } from "./scores";
import { loadsByWeek } from "./weekLoads";

const names = squad.map(({ name }) => name);
const truths = trueScores();

/** Of every test: the engine's 95 % intervals of all athletes' changes, beside what truly changed (in percent). */
const intervals = testKeys.flatMap((key) => {
  const logs = [0, 1, 2].map((occasion) =>
    names.map((name) => {
      const score = scoreOf(key, occasion, name);
      return score === null ? null : 100 * Math.log(score);
    }),
  );
  const { error, degreesOfFreedom } = unwrap(
    typicalError(
      names.map((_, index) => [logs[0]![index]!, logs[1]![index]!]),
      { confidence: 0.95 },
    ),
  );
  return [1, 2].flatMap((later) =>
    names.flatMap((name, index) => {
      const change = individualChange({
        earlier: logs[later - 1]![index]!,
        later: logs[later]![index]!,
        typicalError: error.value,
        degreesOfFreedom,
        smallestWorthwhileChange: (20 * testOf(key).spread) / testOf(key).mean,
        direction: testOf(key).better,
        confidence: 0.95,
      });
      if (!change.ok) return [];
      const trueChange = later === 1 ? 0 : 100 * Math.log(1 + truths.get(name)![key].change / 100);
      return [{ key, name, later, trueChange, ...change.value }];
    }),
  );
});

const shareOf = (all: readonly unknown[], some: readonly unknown[]): number => (100 * some.length) / all.length;

describe("the rest of the club", () => {
  it("changes beyond the 95 % limits between the two days before the block about once in twenty", () => {
    const between = intervals.filter(({ later }) => later === 1);
    const flagged = between.filter(
      ({ improvement, minimalDetectableChange }) => Math.abs(improvement) > minimalDetectableChange,
    );
    expect(between.length).toBe(13 * 43);
    expect(shareOf(between, flagged)).toBeGreaterThan(falseAlarms.betweenSessions.least);
    expect(shareOf(between, flagged)).toBeLessThan(falseAlarms.betweenSessions.most);
  });

  it("has a true change outside the retest's 95 % interval about once in twenty", () => {
    const retest = intervals.filter(({ later }) => later === 2);
    const missed = retest.filter(({ change, trueChange }) => trueChange < change.low || trueChange > change.high);
    expect(retest.length).toBe(13 * 41);
    expect(shareOf(retest, missed)).toBeGreaterThan(falseAlarms.intervalsThatMiss.least);
    expect(shareOf(retest, missed)).toBeLessThan(falseAlarms.intervalsThatMiss.most);
  });

  it("is hardly ever said to have declined, since the block made everybody better or left her alike", () => {
    const declined = intervals.filter(
      ({ later, verdict }) => later === 2 && (verdict === "declineBeyondNoise" || verdict === "clearDecline"),
    );
    const retest = intervals.filter(({ later }) => later === 2);
    // One tail of 5 % at the most: 2.5 %.
    expect(shareOf(retest, declined)).toBeLessThan(2.5);
  });

  it("has no sides that differ beyond noise and 10 %, but for one athlete a day at the most", () => {
    const planted = [swappedSides.athlete, ...plantedAsymmetries.map(({ athlete }) => athlete)];
    for (const occasion of [0, 1, 2]) {
      const flagged = names
        .filter((name) => !planted.includes(name))
        .filter((name) => judgedAsymmetry("singleLegHop", occasion, name) === "beyondNoiseAndThreshold");
      expect(flagged.length).toBeLessThanOrEqual(falseAlarms.asymmetries);
    }
  });

  it("has no week that rises like the planted one", () => {
    const rises = names
      .filter((name) => name !== spike.athlete)
      .flatMap((name) => {
        const weeks = loadsByWeek(name);
        return Array.from({ length: block.weeks - 4 }, (_, index) => {
          const before = weeks.slice(index, index + 4);
          // After weeks away there is nothing to compare with.
          if (before.some((load) => load === 0)) return 0;
          return weeks[index + 4]! / (before.reduce((sum, load) => sum + load, 0) / 4);
        });
      });
    expect(Math.max(...rises)).toBeLessThan(largestUnplantedRise);
  });
});
