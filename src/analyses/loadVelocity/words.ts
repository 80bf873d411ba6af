import type { Caution } from "../../engine/caution";
import type { Refusal } from "../../engine/result";
import type { MeasuredAttempt } from "../measuredAttempts";
import type { LoadVelocityRow, LoadVelocitySettings } from "./loadVelocity";

type Named = Pick<MeasuredAttempt, "athlete" | "test" | "side">;

const liftName = ({ test, side }: Named): string => {
  const lift = test === "" ? "Lift" : test;
  return side === null ? lift : `${lift}, ${side}`;
};

export const rowName = (attempt: Named): string =>
  attempt.test === "" && attempt.side === null ? attempt.athlete : `${attempt.athlete}: ${liftName(attempt)}`;

export const halfALift = ({ values }: MeasuredAttempt): string =>
  values.load === undefined ? "A bar velocity without a load: not used." : "A load without a bar velocity: not used.";

export const fitted = (cautions: readonly Caution[]): string =>
  cautions.length === 0 ? "A straight line through all loads." : cautions.map(({ message }) => message).join(" ");

export const noLine = (reasons: readonly Refusal[]): string =>
  `No answer: ${reasons.map(({ message }) => message).join(" ")}`;

export const lift = liftName;

export function summary(rows: readonly LoadVelocityRow[]): string[] {
  const known = rows.filter(({ maximum }) => maximum !== null);
  const without = rows.length - known.length;
  const sentences = [`${counted(known.length, "maximum", "maxima")} estimated from the speed of the bar.`];
  if (without > 0) sentences.push(`${counted(without, "row", "rows")} without an answer: see the verdict.`);
  return sentences;
}

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

export const method = ({ threshold }: LoadVelocitySettings): string =>
  `Each athlete's latest day: the straight line of velocity on load, all sets alike, read at ${threshold} m/s; limits of 95 %.`;

export const latestOf = (all: number): string => `of ${all} sets, those of the latest day`;
