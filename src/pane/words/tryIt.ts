/** What the pane says while a coach tries it on the sample squad. */
export const tryItWords = {
  offer: "Try it on a sample squad",
  offerText: "Two minutes, on a sheet of its own. Removed without a trace.",
  label: "Trying it on a sample squad",
  step: (number: number, of: number) => `Sample squad, step ${number} of ${of}`,
  select: {
    text: "Ten invented players, each leg hopped three times. The cells are selected: ask them a question.",
    press: "Is one leg weaker?",
  },
  read: "The pane follows what you select. Solid bars go beyond the test's own noise; outlined ones may be chance. Nothing has been written yet: press the button at the bottom.",
  written: (sheet: string) => `It stands on “${sheet}”: a plain table, with the method and its source below it.`,
  show: "Show me",
  goOn: "Go on",
  last: {
    text: "Your own results go the same way: select them and ask. Home shows what else there is.",
    press: "To the start",
  },
  remove: (sheets: readonly string[]) => `Remove the sample (${sheets.map((sheet) => `“${sheet}”`).join(", ")})`,
  removing: "Removing…",
} as const;
