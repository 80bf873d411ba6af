import { type Unit, unitOf } from "./units";

/**
 * The unit of times that name none. A jump's flight or a ground contact lasts some tenths of a second and a sprint of at
 * most 40 m less than 20 s, so that a middle below 20 is in seconds, and one of 50 or more in milliseconds; between the
 * two neither can be told. Common practice, no source.
 */
export const timeUnit = (middle: number): Unit | null =>
  middle > 0 && middle < 20 ? unitOf("s") : middle >= 50 ? unitOf("ms") : null;
