import type { Role } from "./athletes";
import { type Quality, qualities, type TestKey, testKeys, testOf } from "./battery";
import { trueChange } from "./block";
import { hopTest, squadMean, squadSpread } from "./hopTest";
import { largestUnplantedDifference, swappedSides, weakest } from "./plantedTruths";
import { type Chance, chanceFrom } from "./random";
import { type Member, squad } from "./squad";

/** What the tests would say of an athlete if they had no noise. */
export type TrueScore = {
  /** Before the block, the mean of both sides where there are two, in the unit of the test. */
  readonly before: number;
  /** What the block changes, in percent of `before`. */
  readonly change: number;
  /** Right above left as a share of their mean; 0 for tests without sides. */
  readonly difference: number;
};

export type TruthOfAthlete = Readonly<Record<TestKey, TrueScore>> & {
  /** Time constant in seconds of the athlete's sprint: how long she takes to gather speed. */
  readonly timeConstant: number;
};

/**
 * Qualities are correlated (0.36 for any two): each is 0.6 of what makes an all-round athlete and 0.8 of its own. The tests
 * of one quality correlate by 0.81, each being 0.9 of the quality. The hop of the seniors is that of the hop test, and their
 * jumping power follows from it. All invented.
 */
const allRoundPart = 0.6;
const ownPart = 0.8;
const qualityInTest = 0.9;
const restInTest = Math.sqrt(1 - qualityInTest ** 2);

/** Standard deviations by which a role is above or below the club. */
const roles: Readonly<Record<Role, Partial<Record<Quality, number>>>> = {
  Goalkeeper: { Speed: -0.5, Endurance: -0.7, "Change of direction": -0.3 },
  Wing: { Speed: 0.5, "Change of direction": 0.4, Endurance: 0.4, "Maximal strength": -0.4, "Throwing power": -0.4 },
  Back: { "Throwing power": 0.5, "Maximal strength": 0.1 },
  Pivot: { Speed: -0.5, "Maximal strength": 0.6, "Change of direction": -0.3 },
};

/** The planted weakest stand here, and nobody else of the seniors below the other: standard deviations from their mean. */
const weakestAt = -2.6;
const othersAbove = -1.7;
const othersBelow = 2.4;

/** Sides of the rest differ by at most this share: evenly spread within it. */
const largestDifference = largestUnplantedDifference / 100;

/** The same for every run: what is true of each athlete. */
export function trueScores(): ReadonlyMap<string, TruthOfAthlete> {
  const chance = chanceFrom(20260815);
  const hops = new Map(hopTest().map((result) => [result.athlete.name, result]));
  return new Map(
    squad.map((member) => {
      const hop = hops.get(member.name);
      const levels = drawQualities(chance, member.role, hop && (hop.trueDistance - squadMean) / squadSpread);
      const scores = testKeys.map((key) => {
        const score = drawScore(chance, member, key, levels[testOf(key).quality]);
        const ofHopTest = key === "singleLegHop" && hop;
        return [key, ofHopTest ? { ...score, before: hop.trueDistance, difference: hop.trueDifference } : score];
      });
      return [member.name, { ...Object.fromEntries(scores), timeConstant: 0.72 + 0.04 * chance.deviation() }];
    }),
  );
}

/** The athlete's standing in each quality, in standard deviations. */
function drawQualities({ deviation }: Chance, role: Role, jumping: number | undefined): Record<Quality, number> {
  const allRound = allRoundPart * (jumping ?? deviation()) + ownPart * deviation();
  return Object.fromEntries(
    qualities.map((quality) => {
      const drawn = allRoundPart * allRound + ownPart * deviation() + (roles[role][quality] ?? 0);
      return [quality, quality === "Jumping power" && jumping !== undefined ? jumping : drawn];
    }),
  ) as Record<Quality, number>;
}

function drawScore(chance: Chance, member: Member, key: TestKey, level: number): TrueScore {
  const { quality, better, mean, spread, juniorsBehind, sides } = testOf(key);
  const drawn = qualityInTest * level + restInTest * chance.deviation();
  const within = Math.max(othersAbove, Math.min(othersBelow, drawn));
  const standing = weakest[quality] === member.name ? weakestAt : within;
  const behind = member.team === "Seniors" ? 0 : juniorsBehind;
  const difference = (2 * chance.share() - 1) * largestDifference;
  const planted = member.name === swappedSides.athlete && key === swappedSides.test;
  return {
    before: mean + (better === "higher" ? 1 : -1) * spread * (standing - behind),
    change: trueChange(member.name, key, chance),
    difference: sides === 1 ? 0 : planted ? swappedSides.trueDifference / 100 : difference,
  };
}
