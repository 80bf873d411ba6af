/** What an asymmetry means beside the noise of the test and the size the coach cares about. */
export type AsymmetryVerdict =
  | "beyondNoiseAndThreshold"
  | "beyondNoise"
  | "overThresholdWithinNoise"
  | "withinNoise"
  | "cannotTell";

/**
 * The verdict on one athlete's asymmetry. All three sizes are percentages by the same formula, deviations from equal
 * sides (not a limb symmetry index); the sign of the asymmetry does not matter, and "beyond" means larger than.
 *
 * | code | size is beyond noise | beyond the threshold |
 * | --- | --- | --- |
 * | beyondNoiseAndThreshold | yes | yes |
 * | beyondNoise | yes | no |
 * | overThresholdWithinNoise | no | yes: large, yet noise alone can do it |
 * | withinNoise | no | no |
 * | cannotTell | the noise is not known (`noiseLimit` null): one trial a side and no squad to learn it from | |
 */
export function judgeAsymmetry({
  asymmetry,
  noiseLimit,
  threshold,
}: {
  readonly asymmetry: number;
  readonly noiseLimit: number | null;
  readonly threshold: number;
}): AsymmetryVerdict {
  if (noiseLimit === null) return "cannotTell";
  const size = Math.abs(asymmetry);
  if (size > noiseLimit) return size > threshold ? "beyondNoiseAndThreshold" : "beyondNoise";
  return size > threshold ? "overThresholdWithinNoise" : "withinNoise";
}
