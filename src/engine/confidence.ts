import { say } from "../language/say";
import { outOfRange } from "./refusals";
import type { Refusal } from "./result";

/** A value with the limits it lies between at the stated confidence; same unit throughout. */
export type Estimate = { readonly value: number; readonly low: number; readonly high: number };

/** An estimate on another scale, e.g. from logarithms to percent; `transform` must be increasing. */
export const transformEstimate = (estimate: Estimate, transform: (value: number) => number): Estimate => ({
  value: transform(estimate.value),
  low: transform(estimate.low),
  high: transform(estimate.high),
});

/** Reasons why a share cannot serve as confidence: empty when it can. 95 in place of 0.95 is the usual slip. */
export const confidenceRefusals = (confidence: number): Refusal[] =>
  confidence >= 0.01 && confidence <= 0.9999 ? [] : [outOfRange(say`confidence`, 0.01, 0.9999, confidence)];
