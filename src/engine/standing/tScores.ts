import { ok, type Result } from "../result";
import type { Direction } from "../trials/reduction";
import type { SquadScores } from "./squadScores";
import { zScores } from "./zScores";

/** T score of each athlete, 50 + 10 z; can lie outside 20 to 80 and is not cut. Refuses what `zScores` refuses. Source: textbook. */
export function tScores(scores: SquadScores, options: { readonly direction: Direction }): Result<(number | null)[]> {
  const z = zScores(scores, options);
  return z.ok ? ok(z.value.map((score) => (score === null ? null : 50 + 10 * score))) : z;
}
