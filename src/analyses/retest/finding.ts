/** What kind of thing was found; the first is the most likely slip, the last a matter of the calendar. */
export const findingKinds = [
  "unitSlip",
  "implausible",
  "unread",
  "sidesSwapped",
  "sideMissing",
  "spread",
  "outlier",
  "inFuture",
  "overdue",
  "untested",
] as const;

export type Finding = {
  readonly kind: (typeof findingKinds)[number];
  readonly athlete: string;
  /** The test with its side; "" where only a cell is known. */
  readonly test: string;
  readonly why: string;
  /** The cells concerned; none where it is about something that is not there. */
  readonly cells: readonly string[];
};
