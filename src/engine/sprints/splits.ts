import { say } from "../../language/say";
import { positiveRefusals } from "../quantities";
import { unequalLengths } from "../refusals";
import { ok, type Refusal, type Result, refuse } from "../result";

/** A distance from the start (m) and the time it was reached (s). */
export type Split = { readonly distance: number; readonly time: number };

/**
 * Splits from two lists of equal length, missing ones (`null`) left out. Refuses values that are not positive and splits whose
 * distances or times do not both rise from one to the next.
 */
export function splitsFrom(distances: readonly (number | null)[], times: readonly (number | null)[]): Result<Split[]> {
  if (distances.length !== times.length)
    return refuse(unequalLengths(say`distances`, "times", [distances.length, times.length]));
  const splits = distances.flatMap((distance, index) => {
    const time = times[index] ?? null;
    return distance === null || time === null ? [] : [{ distance, time }];
  });
  const refusals: Refusal[] = splits.flatMap(({ distance, time }) =>
    positiveRefusals({ distance, "split time": time }),
  );
  if (refusals.length > 0) return refuse(...refusals);
  splits.forEach((split, index) => {
    const before = splits[index - 1];
    if (before && !(split.distance > before.distance && split.time > before.time))
      refusals.push(notRising(before, split));
  });
  return refusals.length > 0 ? refuse(...refusals) : ok(splits);
}

const notRising = (before: Split, split: Split): Refusal => ({
  code: "notRising",
  message: say`Distances and times must rise from split to split; ${split.distance} m in ${split.time} s follows ${before.distance} m in ${before.time} s.`,
  facts: { distance: split.distance, time: split.time, distanceBefore: before.distance, timeBefore: before.time },
});
