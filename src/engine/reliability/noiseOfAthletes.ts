import { ok, type Result } from "../result";
import { type Noise, steadiedNoise } from "./steadiedNoise";
import { trialNoise } from "./trialNoise";

/** Whose trials tell how much an athlete's trials scatter. */
export const noiseSources = ["steadied", "group", "athlete"] as const;
export type NoiseSource = (typeof noiseSources)[number];

/**
 * Trial-to-trial noise for each athlete of a group, in their order.
 *
 * - `steadied`: the athlete's own, steadied by the group's (`steadiedNoise`); the group's pooled noise where the group
 *   is too small for that.
 * - `group`: everybody's trials pooled (`trialNoise`), the same for all.
 * - `athlete`: the athlete's own trials only.
 *
 * @param athletes for each athlete their sets of trials: one for each side and session. `null` is a missing trial.
 */
export function noiseOfAthletes(
  athletes: readonly (readonly (readonly (number | null)[])[])[],
  source: NoiseSource,
): Result<Noise>[] {
  // The confidence only concerns limits of the noise itself, which nobody asks for here.
  const pooled = (sets: readonly (readonly (number | null)[])[]) => trialNoise(sets, { confidence: 0.95 });
  if (source === "athlete") return athletes.map(pooled);
  const steadied = source === "steadied" ? steadiedNoise(athletes) : null;
  if (steadied?.ok) return steadied.value.map(ok);
  const group = pooled(athletes.flat());
  return athletes.map(() => group);
}
