import fc from "fast-check";

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

/** Draws of standard normal noise from a fixed seed (uniforms by mulberry32, normals by Box and Muller). */
export function normalNoise(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return (((mixed ^ (mixed >>> 14)) >>> 0) + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
