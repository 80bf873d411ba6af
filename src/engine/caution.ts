import { say } from "../language/say";

/**
 * What a reader must know beside a value that was given: the data could answer, but not without reserve.
 * `code` and `facts` are for translation, `message` is the English sentence. A caution that only one method can give is
 * made in that method's file; those that several give are made here.
 */
export type Caution = {
  readonly code: string;
  readonly message: string;
  readonly facts: Readonly<Record<string, number | string>>;
};

/** The value lies far beyond anything that was measured. */
export const extrapolated = (what: string, estimate: number, measuredTo: number): Caution => ({
  code: "extrapolated",
  message: say`The ${what} (${rounded(estimate)}) lies far beyond what was measured (${rounded(measuredTo)}): extrapolated.`,
  facts: { what, estimate, measuredTo },
});

/** An input is outside the range of the people or tests the equation was fitted on. */
export const outsideFittedRange = (what: string, low: number, high: number, value: number, unit: string): Caution => ({
  code: "outsideFittedRange",
  message: say`The equation is trusted for a ${what} of ${low} to ${high} ${unit}; ${value} ${unit} is outside.`,
  facts: { what, low, high, value, unit },
});

/** A group regression stands behind a single athlete's number. */
export const groupEstimate = (what: string, error: string): Caution => ({
  code: "groupEstimate",
  message: say`The ${what} is estimated from a group's regression (${error}); track the raw result and set no training zone from it alone.`,
  facts: { what, error },
});

/** Limits resting on very few degrees of freedom. */
export const fewDegreesOfFreedom = (degreesOfFreedom: number): Caution => ({
  code: "fewDegreesOfFreedom",
  message:
    degreesOfFreedom === 1
      ? say`The limits rest on 1 degree of freedom and are rough.`
      : say`The limits rest on ${degreesOfFreedom} degrees of freedom and are rough.`,
  facts: { degreesOfFreedom },
});

/** A number as it stands in a sentence: three significant digits or all before the decimal sign. */
export const rounded = (value: number): number =>
  Math.abs(value) >= 100 ? Math.round(value) : Number(value.toPrecision(3));
