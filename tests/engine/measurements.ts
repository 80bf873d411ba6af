import fc from "fast-check";
import { uniform } from "./uniform";

/** Cases for a property that needs more than the usual hundred, or fewer; in proportion where tests/draws.ts is told another number. */
export const cases = (usual: number): number => Math.ceil((usual * Number(process.env.DRAWS_RUNS ?? 100)) / 100);

/** A random measurement, read to a thousandth as instruments do. */
export const measurement = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true }).map((value) => Math.round(value * 1000) / 1000 || 0);

/** A random measurement, now and then missing. */
export const cell = (min: number, max: number): fc.Arbitrary<number | null> =>
  fc.option(measurement(min, max), { nil: null, freq: 6 });

/** Paths of all numbers in a result that are not finite; a sound engine has none. */
export function notFinitePaths(value: unknown, path = "result"): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinitePaths(inner, `${path}.${key}`));
}

/** Draws of standard normal noise from a fixed seed (normals by Box and Muller). */
export function normalNoise(seed: number): () => number {
  const share = uniform(seed);
  // Half a step up, for there is no logarithm of 0.
  const aboveZero = (): number => share() + 0.5 / 2 ** 32;
  return () => Math.sqrt(-2 * Math.log(aboveZero())) * Math.cos(2 * Math.PI * aboveZero());
}
