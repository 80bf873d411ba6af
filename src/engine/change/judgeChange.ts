import { say } from "../../language/say";

/**
 * The verdicts on a change and their words. None says "proved", "responder" or "significant": a change of one athlete is read,
 * not tested.
 */
export const changeVerdicts = {
  get clearImprovement() {
    return say`clear improvement`;
  },
  get improvementBeyondNoise() {
    return say`improvement likely beyond measurement noise`;
  },
  get withinNoise() {
    return say`change within measurement noise`;
  },
  get unclear() {
    return say`unclear - too noisy to say`;
  },
  get declineBeyondNoise() {
    return say`decline likely beyond measurement noise`;
  },
  get clearDecline() {
    return say`clear decline`;
  },
} as const;

export type ChangeVerdict = keyof typeof changeVerdicts;

/**
 * The verdict on an improvement (positive is better) with its margin, the minimal detectable change, beside the smallest
 * worthwhile change (SWC), all in one unit:
 *
 * - clear: the whole interval lies beyond the SWC;
 * - likely beyond noise: the size exceeds the margin, but the interval reaches into the SWC;
 * - unclear: within noise, and the interval holds both a worthwhile gain and a worthwhile loss;
 * - within noise: otherwise.
 */
export function judgeChange({
  improvement,
  margin,
  smallestWorthwhileChange,
}: {
  readonly improvement: number;
  readonly margin: number;
  readonly smallestWorthwhileChange: number;
}): ChangeVerdict {
  const [low, high] = [improvement - margin, improvement + margin];
  if (low > smallestWorthwhileChange) return "clearImprovement";
  if (high < -smallestWorthwhileChange) return "clearDecline";
  if (improvement > margin) return "improvementBeyondNoise";
  if (improvement < -margin) return "declineBeyondNoise";
  return low < -smallestWorthwhileChange && high > smallestWorthwhileChange ? "unclear" : "withinNoise";
}
