import { say } from "../../language/say";
import type { Caution } from "../caution";
import { tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { type Split, splitsFrom } from "./splits";

export type SplitInterval = {
  readonly fromDistance: number;
  readonly toDistance: number;
  readonly seconds: number;
  /** Mean velocity over the interval, m/s. */
  readonly velocity: number;
};

export type SplitVelocities = {
  readonly intervals: readonly SplitInterval[];
  /** The highest interval velocity: an estimate of maximal velocity from below, m/s. */
  readonly fastest: number;
  readonly cautions: readonly Caution[];
};

/** An interval taking less than this share of a neighbour's time per metre is a misread gate: common practice, no source. */
const suspectShare = 0.6;

/**
 * Mean velocity of each interval between timing gates, from distances (m) and times (s) counted from the start.
 * A missing split (`null`) joins its two intervals to one. The first interval contains the start and is naturally slow, so it
 * is suspected only when it is too fast. Refuses no splits at all and splits that do not rise.
 *
 * Compare only runs with the same start and the same distance behind the first gate; gates read 0.01 s.
 * Source: kinematics.
 */
export function splitVelocities(
  distances: readonly (number | null)[],
  times: readonly (number | null)[],
): Result<SplitVelocities> {
  const read = splitsFrom(distances, times);
  if (!read.ok) return read;
  if (read.value.length === 0) return refuse(tooFew(say`splits`, 1, 0));
  const start: Split = { distance: 0, time: 0 };
  const intervals = read.value.map((split, index) => intervalBetween(read.value[index - 1] ?? start, split));
  return ok({
    intervals,
    fastest: Math.max(...intervals.map(({ velocity }) => velocity)),
    cautions: intervals.filter((_, index) => isSuspect(intervals, index)).map(suspectInterval),
  });
}

function intervalBetween(from: Split, to: Split): SplitInterval {
  const seconds = to.time - from.time;
  return {
    fromDistance: from.distance,
    toDistance: to.distance,
    seconds,
    velocity: (to.distance - from.distance) / seconds,
  };
}

function isSuspect(intervals: readonly SplitInterval[], index: number): boolean {
  const { velocity } = intervals[index]!;
  const neighbours = [index - 1 > 0 ? intervals[index - 1] : undefined, intervals[index + 1]];
  return neighbours.some((neighbour) => neighbour !== undefined && neighbour.velocity < suspectShare * velocity);
}

const suspectInterval = ({ fromDistance, toDistance, velocity }: SplitInterval): Caution => ({
  code: "suspectInterval",
  message: say`From ${fromDistance} to ${toDistance} m the athlete would have run ${velocity.toFixed(1)} m/s, far faster than just beside it: check the gate times.`,
  facts: { fromDistance, toDistance, velocity },
});
