/** How the trials of one athlete, one limb and one session become one score. */
export const reductions = ["best", "mean", "median", "meanOfBestTwo"] as const;
export type Reduction = (typeof reductions)[number];

/** Which values are better: higher (a jump) or lower (a sprint time). */
export type Direction = "higher" | "lower";

/** Fewest trials a reduction can work with. The mean of the best two never falls back on a single trial. */
export const fewestTrials = (reduction: Reduction): number => (reduction === "meanOfBestTwo" ? 2 : 1);
