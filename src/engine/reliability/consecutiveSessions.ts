import type { Result } from "../result";
import { type MeanChange, meanChange } from "./meanChange";
import { completePairs, type RepeatedResults } from "./repeatedResults";
import { type TypicalError, typicalError } from "./typicalError";

export type SessionPair = {
  /** Column numbers from 0. */
  readonly earlier: number;
  readonly later: number;
  readonly meanChange: Result<MeanChange>;
  readonly typicalError: Result<TypicalError>;
};

/**
 * Mean change and typical error of each pair of neighbouring sessions, over the athletes who have both. A first pair with
 * a clearly larger error or change means that the first session was a learning session.
 * Source: Hopkins 2000, Sports Med 30:1-15 (from memory).
 */
export function consecutiveSessions(
  results: RepeatedResults,
  { confidence }: { readonly confidence: number },
): SessionPair[] {
  const sessions = results[0]?.length ?? 0;
  return Array.from({ length: Math.max(0, sessions - 1) }, (_, earlier) => {
    const later = earlier + 1;
    return {
      earlier,
      later,
      meanChange: meanChange(results, { earlier, later, confidence }),
      typicalError: typicalError(completePairs(results, earlier, later), { confidence }),
    };
  });
}
