/**
 * One way to say no.
 *
 * A method answers with a `Result`: the value, or every reason why the data cannot answer.
 * Data a coach can produce never gives NaN, null or an exception; a wrong call by a programmer throws.
 */
export type Result<T> = { readonly ok: true; readonly value: T } | Refused;

export type Refused = {
  readonly ok: false;
  readonly reasons: readonly Refusal[];
};

/**
 * Why the data cannot answer. `code` and `facts` are for translation, `message` is the English sentence:
 * what is wrong and what is needed. Make one with a function of refusals.ts, never by hand.
 */
export type Refusal = {
  readonly code: string;
  readonly message: string;
  readonly facts: Readonly<Record<string, number | string>>;
};

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });

export const refuse = (...reasons: Refusal[]): Refused => ({
  ok: false,
  reasons,
});

/** The value of a result that the caller knows to be good; throws otherwise, as a programming error. */
export function unwrap<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.reasons.map((reason) => reason.message).join(" "));
  return result.value;
}

/** The value of a result, or something else where there is none. */
export const valueOr = <T, Else>(result: Result<T>, otherwise: Else): T | Else =>
  result.ok ? result.value : otherwise;
