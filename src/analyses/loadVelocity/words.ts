import type { Caution } from "../../engine/caution";
import type { Refusal } from "../../engine/result";
import { say } from "../../language/say";
import { wordOfSide } from "../../reading/vocabulary";
import type { MeasuredAttempt } from "../measuredAttempts";
import type { LoadVelocityRow, LoadVelocitySettings } from "./loadVelocity";

type Named = Pick<MeasuredAttempt, "athlete" | "test" | "side">;

const liftName = ({ test, side }: Named): string => {
  const lift = test === "" ? say`Lift` : test;
  return side === null ? lift : `${lift}, ${wordOfSide(side)}`;
};

export const rowName = (attempt: Named): string =>
  attempt.test === "" && attempt.side === null ? attempt.athlete : `${attempt.athlete}: ${liftName(attempt)}`;

export const halfALift = ({ values }: MeasuredAttempt): string =>
  values.load === undefined
    ? say`A bar velocity without a load: not used.`
    : say`A load without a bar velocity: not used.`;

export const fitted = (cautions: readonly Caution[]): string =>
  cautions.length === 0 ? say`A straight line through all loads.` : cautions.map(({ message }) => message).join(" ");

export const noLine = (reasons: readonly Refusal[]): string =>
  say`No answer: ${reasons.map(({ message }) => message).join(" ")}`;

export const lift = liftName;

export function summary(rows: readonly LoadVelocityRow[]): string[] {
  const known = rows.filter(({ maximum }) => maximum !== null);
  const without = rows.length - known.length;
  const sentences = [
    known.length === 1
      ? say`1 maximum estimated from the speed of the bar.`
      : say`${known.length} maxima estimated from the speed of the bar.`,
  ];
  if (without > 0) {
    sentences.push(
      without === 1
        ? say`1 row without an answer: see the verdict.`
        : say`${without} rows without an answer: see the verdict.`,
    );
  }
  return sentences;
}

export const method = ({ threshold }: LoadVelocitySettings): string =>
  say`Each athlete's latest day: the straight line of velocity on load, all sets alike, read at ${threshold} m/s; limits of 95 %.`;

export const latestOf = (all: number): string => say`of ${all} sets, those of the latest day`;
