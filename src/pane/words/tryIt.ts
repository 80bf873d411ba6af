import { say } from "../../language/say";

/** What the pane says while a coach tries it on the sample squad. */
export const tryItWords = {
  offer: say`Try it on a sample squad`,
  offerText: say`Two minutes, on a sheet of its own. Removed without a trace.`,
  label: say`Trying it on a sample squad`,
  step: (number: number, of: number) => say`Sample squad, step ${number} of ${of}`,
  select: {
    text: say`Ten invented players, each leg hopped three times. The cells are selected: ask them a question.`,
    press: say`Is one leg weaker?`,
  },
  read: say`The pane follows what you select. Solid bars go beyond the test's own noise; outlined ones may be chance. Nothing has been written yet: press the button at the bottom.`,
  written: (sheet: string) => say`It stands on “${sheet}”: a plain table, with the method and its source below it.`,
  show: say`Show me`,
  goOn: say`Go on`,
  last: {
    text: say`Your own results go the same way: select them and ask. Home shows what else there is.`,
    press: say`To the start`,
  },
  remove: (sheets: readonly string[]) => say`Remove the sample (${sheets.map((sheet) => say`“${sheet}”`).join(", ")})`,
  removing: say`Removing…`,
} as const;
