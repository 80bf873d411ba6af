import { ok, type Result } from "../result";
import { type Noise, pooledNoise } from "./pooledNoise";
import { steadiedNoise } from "./steadiedNoise";

/** Whose trials tell how much an athlete's trials scatter. */
export const noiseSources = ["steadied", "group", "athlete"] as const;
export type NoiseSource = (typeof noiseSources)[number];

/**
 * Trial-to-trial noise for each athlete of a group, in their order.
 *
 * - `steadied`: the athlete's own, steadied by the group's (`steadiedNoise`); the group's pooled noise where the group
 *   is too small for that.
 * - `group`: everybody's trials pooled (`pooledNoise`), the same for all.
 * - `athlete`: the athlete's own trials only.
 *
 * @param athletes for each athlete their sets of trials: one for each side and session. `null` is a missing trial.
 */
export function noiseOfAthletes(
  athletes: readonly (readonly (readonly (number | null)[])[])[],
  source: NoiseSource,
): Result<Noise>[] {
  if (source === "athlete") return athletes.map(pooledNoise);
  const steadied = source === "steadied" ? steadiedNoise(athletes) : null;
  if (steadied?.ok) return steadied.value.map(ok);
  const group = pooledNoise(athletes.flat());
  return athletes.map(() => group);
}
