import type { Direction, Reduction } from "../engine/trials/reduction";
import { say } from "../language/say";
import { measureOf } from "../reading/measures";
import type { TestResult } from "../reading/testResult";
import { unitOf } from "../reading/units";
import { type Background, testCalled } from "../store/background";
import type { BatteryTest } from "../store/battery";

/** What a coach chose in the form; "asSetUp" leaves it to the battery. */
export type TestChoices = {
  readonly direction: Direction | "asSetUp";
  readonly reduction: Reduction | "asSetUp";
};

/** What has to be known of a test before its results can be scored and compared. */
export type TestFacts = {
  readonly direction: Direction;
  /** Who says which way is better: the form, the battery, the kind of measure, or no more than the unit. */
  readonly directionFrom: "settings" | "battery" | "measure" | "unit";
  readonly reduction: Reduction;
  /** Physical quality the test stands for; null where the battery does not say. */
  readonly quality: string | null;
  /** The test's row in the battery; null where the coach has set up none. */
  readonly setUp: BatteryTest | null;
};

/**
 * The facts of the series of results to which a result belongs. The form goes before the battery, the battery before
 * what measure and unit suggest: a time is better lower, all else higher; and the best trial counts.
 */
export function factsOf(
  { test, measure, unit }: Pick<TestResult, "test" | "measure" | "unit">,
  choices: TestChoices,
  background: Background,
): TestFacts {
  const setUp = testCalled(background, test, measure);
  const byMeasure = measure === null ? null : measureOf(measure).better;
  const byUnit: Direction = unit !== null && unitOf(unit)?.quantity === "time" ? "lower" : "higher";
  const [direction, directionFrom] =
    choices.direction !== "asSetUp"
      ? ([choices.direction, "settings"] as const)
      : setUp
        ? ([setUp.direction, "battery"] as const)
        : byMeasure
          ? ([byMeasure, "measure"] as const)
          : ([byUnit, "unit"] as const);
  const reduction = choices.reduction === "asSetUp" ? (setUp?.reduction ?? "best") : choices.reduction;
  return { direction, directionFrom, reduction, quality: setUp?.quality ?? null, setUp };
}

/** A sentence where a way of being better was no more than assumed and could be wrong; else null. */
export const assumedDirection = ({ direction, directionFrom }: TestFacts): string | null =>
  directionFrom === "unit" && direction === "lower"
    ? say`A time was taken as better when it is shorter. For a time to hold, such as a plank, set “Better is” to Higher.`
    : null;

export const reductionWords: Readonly<Record<Reduction, string>> = {
  best: say`best trial`,
  mean: say`mean of the trials`,
  median: say`middle trial`,
  meanOfBestTwo: say`mean of the best two trials`,
};
