import { valueOr } from "../engine/result";
import { reduceTrials } from "../engine/trials/reduceTrials";
import type { TestFacts } from "./testFacts";

/** The score of trials as a test has them scored; null where there are too few. */
export const trialScore = (
  trials: readonly number[],
  facts: Pick<TestFacts, "reduction" | "direction">,
): number | null => valueOr(reduceTrials(trials, facts), null)?.score ?? null;
