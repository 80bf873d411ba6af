import { qualities, type TestKey, testKeys, testOf } from "../../sample-workbooks/battery";
import { block } from "../../sample-workbooks/block";
import { diary } from "../../sample-workbooks/diary";
import { noise, noiseOfMean } from "../../sample-workbooks/noise";
import {
  implausible,
  improver,
  injured,
  lateJoiner,
  lucky,
  misspelt,
  overdue,
  plantedAsymmetries,
  slips,
  spike,
  swappedSides,
  weakest,
} from "../../sample-workbooks/plantedTruths";
import { squad } from "../../sample-workbooks/squad";
import { trueScores } from "../../sample-workbooks/trueScores";
import { individualChange } from "../../src/engine/change/individualChange";
import { changeVerdicts } from "../../src/engine/change/judgeChange";
import { directionFlip } from "../../src/engine/flags/directionFlip";
import { implausibleValue } from "../../src/engine/flags/implausibleValue";
import { overdueRetest } from "../../src/engine/flags/overdueRetest";
import { plausibleRanges } from "../../src/engine/flags/plausibleRanges";
import { qualityPriorities } from "../../src/engine/grouping/qualityPriorities";
import { typicalError } from "../../src/engine/reliability/typicalError";
import { unwrap } from "../../src/engine/result";
import { zScores } from "../../src/engine/standing/zScores";
import type { Reduction } from "../../src/engine/trials/reduction";
import { readNumber } from "../../src/reading/readNumber";
import { asymmetryOf, judgedAsymmetry } from "./asymmetries";
import { cellOf, dayCalled, days, scoreOf } from "./scores";
import { loadsByWeek } from "./weekLoads";

const names = squad.map(({ name }) => name);
const seniors = squad.filter(({ team }) => team === "Seniors").map(({ name }) => name);
const truths = trueScores();

/** 100 ln of the score: differences are percentages. */
function logScore(key: TestKey, occasion: number, athlete: string, reduction: Reduction): number | null {
  const score = scoreOf(key, occasion, athlete, reduction);
  return score === null ? null : 100 * Math.log(score);
}

/** The typical error between the two sessions before the block, in percent. */
const noiseBetweenSessions = (key: TestKey, reduction: Reduction) =>
  unwrap(
    typicalError(
      names.map((name) => [logScore(key, 0, name, reduction), logScore(key, 1, name, reduction)]),
      { confidence: 0.95 },
    ),
  );

/** Everybody's change from the second session to the retest in percent, held against that noise. */
function changesIn(key: TestKey, reduction: Reduction = "mean") {
  const { error, degreesOfFreedom } = noiseBetweenSessions(key, reduction);
  const { mean, spread, better } = testOf(key);
  return new Map(
    names.map((name) => [
      name,
      individualChange({
        earlier: logScore(key, 1, name, reduction),
        later: logScore(key, 2, name, reduction),
        typicalError: error.value,
        degreesOfFreedom,
        smallestWorthwhileChange: (0.2 * 100 * spread) / mean,
        direction: better,
        confidence: 0.95,
      }),
    ]),
  );
}

describe("the improver", () => {
  const improved = Object.keys(improver.changes) as TestKey[];

  it.each(improved)("is clearly better in %s, where her true change is over four times the noise", (key) => {
    const { sides, trials, better } = testOf(key);
    const true_ = 100 * Math.log(1 + truths.get(improver.athlete)![key].change / 100);
    expect((better === "higher" ? 1 : -1) * true_).toBeGreaterThan(4 * noiseOfMean(noise[key], sides * trials));
    const { verdict, change } = unwrap(changesIn(key).get(improver.athlete)!);
    expect(changeVerdicts[verdict]).toBe("clear improvement");
    expect(change.low).toBeLessThan(true_);
    expect(change.high).toBeGreaterThan(true_);
  });

  it("changed more than anybody else in each of them", () => {
    for (const key of improved) {
      const improvements = [...changesIn(key)].flatMap(([name, change]) =>
        change.ok ? [{ name, improvement: change.value.improvement }] : [],
      );
      expect(improvements.sort((a, b) => b.improvement - a.improvement)[0]!.name).toBe(improver.athlete);
    }
  });
});

describe("the lucky one", () => {
  it("has not changed, though best against best looks like a gain worth having", () => {
    expect(truths.get(lucky.athlete)![lucky.test].change).toBe(0);
    const [first, second, retest] = lucky.trials.map((trials) => Math.max(...trials));
    // Height goes with the square of the flight time: uniform motion under gravity.
    expect(100 * ((retest! / Math.max(first!, second!)) ** 2 - 1)).toBeGreaterThan(5);
  });

  it.each(["best", "mean"] as const)("is within the noise by the %s of her trials", (reduction) => {
    const { verdict, change, minimalDetectableChange } = unwrap(changesIn(lucky.test, reduction).get(lucky.athlete)!);
    expect(["unclear", "withinNoise"]).toContain(verdict);
    expect(Math.abs(change.value)).toBeLessThan(minimalDetectableChange);
  });

  it("has trials that stand in the workbook as planted", () => {
    const found = [0, 1, 2].map((occasion) =>
      [1, 2, 3].map((trial) =>
        cellOf(
          days.find((day) => day.place === "gym" && day.occasion === occasion)!,
          lucky.athlete,
          `Countermovement jump flight time ${trial} (ms)`,
        ),
      ),
    );
    expect(found).toEqual(lucky.trials);
  });
});

describe("sides", () => {
  it.each(plantedAsymmetries.filter(({ strongerSide }) => strongerSide !== "neither"))(
    "$athlete is stronger on the $strongerSide on every day, as in the hop test",
    ({ athlete, strongerSide }) => {
      const signs = [0, 1, 2].map((occasion) => Math.sign(asymmetryOf("singleLegHop", occasion, athlete)!.percent));
      expect(new Set(signs)).toEqual(new Set([strongerSide === "right" ? 1 : -1]));
    },
  );

  const verdictsOf = (athlete: string) =>
    [0, 1, 2].map((occasion) => judgedAsymmetry("singleLegHop", occasion, athlete)!);

  it.each(["Torvei Bjørnemose", "Marvi Skumring", swappedSides.athlete])(
    "%s differs beyond the noise on all three days, and by more than 10 % on two at least",
    (athlete) => {
      const verdicts = verdictsOf(athlete);
      expect(verdicts.filter((verdict) => verdict !== "beyondNoise" && verdict !== "beyondNoiseAndThreshold")).toEqual(
        [],
      );
      expect(verdicts.filter((verdict) => verdict === "beyondNoiseAndThreshold").length).toBeGreaterThanOrEqual(2);
    },
  );

  it("has none where the hop test's difference was only noise", () => {
    const { athlete } = plantedAsymmetries.find(({ strongerSide }) => strongerSide === "neither")!;
    expect(verdictsOf(athlete)).toEqual(["withinNoise", "withinNoise", "withinNoise"]);
  });

  it("flips beyond the noise for the athlete whose sides were swapped, and for nobody else", () => {
    const flipped = names.filter((name) => {
      const [before, now] = [0, 1].map((occasion) => asymmetryOf("singleLegHop", occasion, name));
      if (!before || !now) return false;
      const flag = directionFlip(before.percent, now.percent, { noise: Math.max(before.limit, now.limit) });
      return flag?.facts.beyondNoise === "yes";
    });
    expect(flipped).toEqual([swappedSides.athlete]);
  });
});

describe("cells to ask about", () => {
  it.each(slips)("$athlete, $sheet: $heading", ({ athlete, sheet, heading, times }) => {
    const typed = cellOf(dayCalled(sheet), athlete, heading)!;
    const range = heading.includes("30 m") ? plausibleRanges.sprint30 : plausibleRanges.sprint10;
    const flag = implausibleValue(typed, range)!;
    expect(flag.code).toBe("unitSlip");
    expect(flag.facts.corrected).toBeCloseTo(typed / times, 6);
  });

  it("a flight time that no slip explains", () => {
    const typed = cellOf(dayCalled(implausible.sheet), implausible.athlete, implausible.heading)!;
    expect(implausibleValue(typed / 1000, plausibleRanges.flightTime)?.code).toBe("implausibleValue");
  });

  it("an injured athlete's cells are no trial, not zero", () => {
    expect(readNumber("inj", null)).toMatchObject({ kind: "unread", code: "absent" });
    expect(testKeys.map((key) => scoreOf(key, 2, injured.athlete))).toEqual(testKeys.map(() => null));
    expect(changesIn("countermovementJump").get(injured.athlete)!.ok).toBe(false);
  });

  it("a name that only its letters tell from one of the squad's", () => {
    const plain = (name: string) => name.normalize("NFKD").replace(/\p{M}/gu, "");
    expect(misspelt.typed).not.toBe(misspelt.athlete);
    expect(names.filter((name) => plain(name) === plain(misspelt.typed))).toEqual([misspelt.athlete]);
  });
});

describe("retests", () => {
  const today = Date.UTC(2026, 10, 2) / 86_400_000;
  const everyDays = 7 * 9;
  const lastDayOf = (athlete: string): number | null => {
    const tested = days.filter((day) => day.headings.some((heading) => cellOf(day, athlete, heading) !== null));
    return tested.length === 0 ? null : Math.max(...tested.map(({ date }) => date.getTime() / 86_400_000));
  };

  it("are overdue for the athlete who was away and the one who is injured, a week after the retest", () => {
    const due = names.filter((name) => overdueRetest(lastDayOf(name), today, everyDays)?.code === "overdueRetest");
    expect(due).toEqual([overdue.athlete, injured.athlete]);
  });

  it("tell no change of the athlete who joined late", () => {
    expect(changesIn("countermovementJump").get(lateJoiner.athlete)!.ok).toBe(false);
    expect(scoreOf("countermovementJump", 2, lateJoiner.athlete)).not.toBeNull();
  });
});

describe("the weakest in a quality", () => {
  /** Mean z score of the quality's tests among the seniors. */
  const standingsIn = (quality: string, occasion: number): Map<string, number> => {
    const tests = testKeys.filter((key) => testOf(key).quality === quality);
    const columns = tests.map((key) => {
      const scores = seniors.map((name) => scoreOf(key, occasion, name));
      return unwrap(zScores(scores, { direction: testOf(key).better }));
    });
    return new Map(
      seniors.map((name, index) => [name, columns.reduce((sum, column) => sum + column[index]!, 0) / columns.length]),
    );
  };

  it.each(qualities)(
    "%s: the same athlete on both days before the block, by a fifth of a spread or more",
    (quality) => {
      for (const occasion of [0, 1]) {
        const [[last, z], [, nextZ]] = [...standingsIn(quality, occasion)].sort((a, b) => a[1] - b[1]) as [
          [string, number],
          [string, number],
        ];
        expect(last).toBe(weakest[quality]);
        expect(nextZ - z).toBeGreaterThan(0.2);
      }
    },
  );

  it.each(qualities)("%s is what its weakest athlete has to train first", (quality) => {
    const athlete = weakest[quality];
    const { priorities } = unwrap(
      qualityPriorities(
        qualities.map((name) => ({ name, z: standingsIn(name, 0).get(athlete)!, target: 0, weight: 1 })),
      ),
    );
    expect(priorities[0]!.name).toBe(quality);
  });
});

describe("the diary's spike", () => {
  const weekOfSpike = (Date.parse(spike.week) - Date.parse(block.firstDay)) / (7 * 86_400_000);

  it("is more than twice her mean of the four weeks before", () => {
    const weeks = loadsByWeek(spike.athlete);
    const before = weeks.slice(weekOfSpike - 4, weekOfSpike).reduce((sum, load) => sum + load, 0) / 4;
    expect(weeks[weekOfSpike]! / before).toBeGreaterThan(2);
    expect(weeks[weekOfSpike]! / before).toBeLessThan(2.6);
  });

  it("comes with throws: more than in any other week of hers", () => {
    const throws = Array.from({ length: block.weeks }, (_, week) =>
      diary()
        .filter(({ athlete }) => athlete === spike.athlete)
        .filter(({ date }) => Math.floor((date.getTime() - Date.parse(block.firstDay)) / (7 * 86_400_000)) === week)
        .reduce((sum, row) => sum + row.throws, 0),
    );
    expect(throws.indexOf(Math.max(...throws))).toBe(weekOfSpike);
  });
});
