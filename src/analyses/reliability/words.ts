import type { Estimate } from "../../engine/confidence";
import type { Refusal } from "../../engine/result";
import { say } from "../../language/say";
import type { TestResult } from "../../reading/testResult";
import { reductionWords } from "../testFacts";
import type { ReliabilityChoices, ReliabilityRow, ReliabilitySettings } from "./reliability";

export const noAnswer = (reasons: readonly Refusal[]): string =>
  say`No answer: ${reasons.map(({ message }) => message).join(" ")}`;

/** An error within a fifth of the worthwhile change is neither smaller nor larger for practical use. */
const alike = 1.2;

export function verdict(
  found: { readonly error: number; readonly worthwhile: number | null; readonly change: Estimate | null },
  { compare, direction }: ReliabilityChoices,
): string {
  const { error, worthwhile, change } = found;
  const improves = change !== null && (direction === "higher" ? change.low > 0 : change.high < 0);
  const worsens = change !== null && (direction === "higher" ? change.high < 0 : change.low > 0);
  const shift = improves
    ? say`Results still improve from repeat to repeat: add practice trials.`
    : worsens
      ? say`Results get worse from repeat to repeat: allow more rest.`
      : "";
  return [
    compare === "sessions" ? againstWorthwhile(error, worthwhile) : "",
    shift || (compare === "trials" ? say`Steady from trial to trial.` : ""),
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

function againstWorthwhile(error: number, worthwhile: number | null): string {
  if (worthwhile === null) return say`Athletes differ no more than the test's noise.`;
  if (error * alike < worthwhile) return say`One retest can show a small change.`;
  if (error < worthwhile * alike) return say`One retest can just show a small change.`;
  return say`One retest cannot show a small change: average more trials, or trust only changes beyond the detectable one.`;
}

export function summary(rows: readonly ReliabilityRow[], { compare }: ReliabilitySettings): string[] {
  const answered = rows.filter((row) => row.variation !== null);
  const noun = compare === "trials" ? say`trial to trial` : say`session to session`;
  if (answered.length === 0) return [say`No test has enough repeated results for an answer.`];
  const sorted = [...answered].sort((a, b) => a.variation! - b.variation!);
  const [least, most] = [sorted[0]!, sorted.at(-1)!];
  const first =
    answered.length === 1
      ? say`${least.test} varies by ${least.variation!.toFixed(1)} % from ${noun}.`
      : say`From ${noun} the tests vary by ${least.variation!.toFixed(1)} % (${least.test}) to ${most.variation!.toFixed(1)} % (${most.test}).`;
  return [first, ...answered.slice(0, 4).map((row) => `${row.test}: ${row.verdict}`)];
}

export function cautions(
  rows: readonly ReliabilityRow[],
  { compare }: ReliabilitySettings,
  results: readonly TestResult[],
): string[] {
  const notes: string[] = [];
  if (compare === "trials") {
    notes.push(
      say`This is noise within one session; a retest on another day varies more. Compare sessions before you judge a change.`,
    );
  } else if (results.every(({ date }) => date === null)) {
    notes.push(say`The sheet has no dates: each result column was taken for one session.`);
  }
  if (rows.some((row) => row.athletes < 10))
    notes.push(say`With fewer than ten athletes the limits are wide: see the low and high columns.`);
  return notes;
}

export function method({ compare, reduction, direction }: ReliabilitySettings): string {
  const better = direction === "asSetUp" ? say`better as set up, else by the unit` : say`${direction} is better`;
  if (compare === "trials") return say`Between the trials of a session (${better}).`;
  const score = reduction === "asSetUp" ? say`score as set up, else the best trial` : reductionWords[reduction];
  return say`Between sessions, the ${score} of each (${better}).`;
}
