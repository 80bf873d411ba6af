import { atStart, say } from "../language/say";
import type { Refusal } from "./result";

/** Every reason a method can give for not answering, said once. `what` names the quantity in plain words. */

export const tooFew = (what: string, needed: number, got: number): Refusal => ({
  code: "tooFew",
  message:
    got === 1
      ? say`At least ${needed} ${what} are needed; there is 1.`
      : say`At least ${needed} ${what} are needed; there are ${got}.`,
  facts: { what, needed, got },
});

export const notPositive = (what: string, value: number): Refusal => ({
  code: "notPositive",
  message: say`${atStart(what)} must be above zero; ${value} is not.`,
  facts: { what, value },
});

export const negative = (what: string, value: number): Refusal => ({
  code: "negative",
  message: say`${atStart(what)} cannot be below zero; ${value} is.`,
  facts: { what, value },
});

export const outOfRange = (what: string, low: number, high: number, value: number): Refusal => ({
  code: "outOfRange",
  message: say`${atStart(what)} must be from ${low} to ${high}; ${value} is not.`,
  facts: { what, low, high, value },
});

export const noSpread = (what: string): Refusal => ({
  code: "noSpread",
  message: say`All ${what} are equal, so there is no spread to compare with. Check for copied data.`,
  facts: { what },
});

export const notFinite = (what: string): Refusal => ({
  code: "notFinite",
  message: say`${atStart(what)} must be a number.`,
  facts: { what },
});

export const unequalLengths = (first: string, second: string, lengths: readonly [number, number]): Refusal => ({
  code: "unequalLengths",
  message: say`${atStart(first)} and ${second} must be equally many; there are ${lengths[0]} and ${lengths[1]}.`,
  facts: { first, second, firstCount: lengths[0], secondCount: lengths[1] },
});

export const missing = (what: string): Refusal => ({
  code: "missing",
  message: say`${atStart(what)} is missing.`,
  facts: { what },
});

export const noTrueSpread = (what: string): Refusal => ({
  code: "noTrueSpread",
  message: say`${atStart(what)} cannot be told: the athletes differ no more from each other than their own results do.`,
  facts: { what },
});

export const mostEqual = (what: string): Refusal => ({
  code: "mostEqual",
  message: say`More than half of the ${what} are equal, so their median spread is zero.`,
  facts: { what },
});

export const agreementUndefined = (): Refusal => ({
  code: "agreementUndefined",
  message: say`Everybody has the same side larger both times, so agreement beyond chance cannot be told.`,
  facts: {},
});
