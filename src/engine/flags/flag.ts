/**
 * Something a coach should look at before believing a number. A flag deletes nothing. `code` and `facts` are for translation,
 * `reason` is the English sentence.
 */
export type Flag = {
  readonly code: string;
  readonly reason: string;
  readonly facts: Readonly<Record<string, number | string>>;
};
