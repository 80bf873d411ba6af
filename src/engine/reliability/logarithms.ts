import { say } from "../../language/say";
import { presentValues } from "../presentValues";
import { notPositive } from "../refusals";
import { ok, type Result, refuse } from "../result";
import type { RepeatedResults } from "./repeatedResults";

/** Natural logarithms of all results; refuses a value that is not above zero, since the scale then has no ratios. */
export function logarithms(results: RepeatedResults): Result<RepeatedResults> {
  const bad = presentValues(results.flat()).find((value) => value <= 0);
  if (bad !== undefined) return refuse(notPositive(say`every result`, bad));
  return ok(results.map((row) => row.map((cell) => (cell === null ? null : Math.log(cell)))));
}
