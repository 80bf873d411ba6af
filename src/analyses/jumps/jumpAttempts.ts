import { heightFromFlightTime } from "../../engine/jumps/heightFromFlightTime";
import { reactiveStrengthIndex } from "../../engine/jumps/reactiveStrengthIndex";
import { ok, type Result } from "../../engine/result";
import type { MeasureKey } from "../../reading/measures";
import type { TestResult } from "../../reading/testResult";
import { unitOf } from "../../reading/units";
import type { CellRemark } from "../analysis";
import { firstCell, type MeasuredAttempt, measuredAttempts } from "../measuredAttempts";
import { type JumpKind, jumpNamed } from "./jumpNames";
import * as words from "./words";

export type JumpAttempt = {
  readonly attempt: MeasuredAttempt;
  readonly kind: JumpKind;
  /** cm */
  readonly height: number;
  /** Whether the height was computed from the time in the air. */
  readonly isFromFlight: boolean;
  /** s; null where it was not measured. */
  readonly contact: number | null;
  /** m/s; null without a contact time. */
  readonly reactive: number | null;
};

const measuresOfJumps: readonly (MeasureKey | null)[] = ["flightTime", "contactTime", "jumpHeight"];
const millisecondsPerSecond = 1000;
const centimetresPerMetre = 100;

/**
 * The vertical jumps among the results. Which jump it is says the test's name; a jump with a contact time is a drop jump
 * whatever its name; others are what the coach says (`others`), or left out. A result without a measure is a height, or
 * a time in the air where it is in seconds. Jumps on one leg are told and left out.
 */
export function jumpAttempts(
  results: readonly TestResult[],
  others: JumpKind | null,
): { readonly jumps: readonly JumpAttempt[]; readonly leftOut: readonly CellRemark[] } {
  const measured = measuredAttempts(
    results.map((result) => withMeasure(result, others)).filter(({ measure }) => measuresOfJumps.includes(measure)),
  );
  const leftOut: CellRemark[] = [...measured.leftOut];
  const jumps = measured.attempts.flatMap((attempt): JumpAttempt[] => {
    const jump = jumpOf(attempt, others);
    if (typeof jump !== "string") return [jump];
    leftOut.push({ cell: firstCell(attempt), why: jump });
    return [];
  });
  return { jumps, leftOut };
}

/** The jump an attempt was, or why it is none that can be used. */
function jumpOf(attempt: MeasuredAttempt, others: JumpKind | null): JumpAttempt | string {
  const { test, side, values } = attempt;
  if (side !== null) return words.oneLeg;
  const kind = values.contactTime === undefined ? (jumpNamed(test) ?? others) : "drop";
  if (kind === null) return words.unknownJump(test);
  const height = heightOf(attempt);
  if (height === null) return words.noHeight;
  if (!height.ok) return words.reasons(height.reasons);
  const jump = { attempt, kind, height: height.value, isFromFlight: values.jumpHeight === undefined };
  if (values.contactTime === undefined) return { ...jump, contact: null, reactive: null };
  const contact = values.contactTime / millisecondsPerSecond;
  const reactive = reactiveStrengthIndex(height.value / centimetresPerMetre, contact);
  return reactive.ok ? { ...jump, contact, reactive: reactive.value } : words.reasons(reactive.reasons);
}

/** Height in cm, as measured or from the time in the air; null where there is neither. */
function heightOf({ values }: MeasuredAttempt): Result<number> | null {
  if (values.jumpHeight !== undefined) return ok(values.jumpHeight);
  if (values.flightTime === undefined) return null;
  const metres = heightFromFlightTime(values.flightTime / millisecondsPerSecond);
  return metres.ok ? ok(metres.value * centimetresPerMetre) : metres;
}

function withMeasure(result: TestResult, others: JumpKind | null): TestResult {
  if (result.measure !== null || (jumpNamed(result.test) ?? others) === null) return result;
  const quantity = result.unit === null ? "length" : unitOf(result.unit)?.quantity;
  if (quantity === "length") return { ...result, measure: "jumpHeight" };
  return quantity === "time" ? { ...result, measure: "flightTime" } : result;
}
