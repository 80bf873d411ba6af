import { say } from "../../language/say";
import { notPositive } from "../refusals";
import { ok, type Result, refuse } from "../result";

/**
 * The smallest change that matters: a share (0.2 by default) of a standard deviation between athletes
 * (`betweenAthleteSpread`; the true one when there are two sessions), or an `anchor` the coach names, in the unit of the
 * test. Other shares in use: 0.3 of an athlete's own variation from competition to competition. A mixed squad's spread is
 * meaningless: group first.
 *
 * Refuses a size that is not above zero.
 * Sources: 0.2 is Cohen's "small", Hopkins 2004, Sportscience 8:1-7; 0.3, Hopkins et al. 1999, Med Sci Sports Exerc
 * 31:472-485 (from memory).
 */
export function smallestWorthwhileChange(
  basis: { readonly standardDeviation: number; readonly share?: number } | { readonly anchor: number },
): Result<number> {
  const size = "anchor" in basis ? basis.anchor : basis.standardDeviation * (basis.share ?? 0.2);
  return size > 0 ? ok(size) : refuse(notPositive(say`the smallest worthwhile change`, size));
}
