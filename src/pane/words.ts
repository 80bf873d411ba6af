import type { ColumnUse } from "../reading/columns";

/** Everything the pane says, in one place. Plain words; a coach's, not a programmer's. */
export const words = {
  paneLabel: "Tapeline",
  whatIs: (about: string) => `What is “${about}”?`,

  home: {
    title: "Tapeline",
    text: "What do you want to know from your test results?",
    back: "‹ All questions",
  },

  reading: "Reading the selection…",
  nothing: {
    title: "Nothing to read there",
    text: (place: string) => `${place} holds no values.`,
  },

  source: {
    title: "Your results",
    grown: (cell: string) => `Read as the block of cells around ${cell}.`,
    wide: (athletes: number, results: number, unit: string) =>
      `${many(athletes, "athlete")}, one row each; ${many(results, "result")}${unit}.`,
    long: (athletes: number, results: number, unit: string) =>
      `${many(athletes, "athlete")}, one row per attempt; ${many(results, "result")}${unit}.`,
    unclear: "Say below which columns to use.",
    inUnit: (unit: string) => ` in ${unit}`,
    noUnit: ", unit not known",
    columnsOf: (use: string, letters: readonly string[]) => `${use} ${letters.join(", ")}`,
    change: "Columns and unit",
  },

  columns: {
    use: (letters: string, heading: string) => (heading ? `${letters}: ${heading}` : `Column ${letters}`),
    uses: {
      athlete: "Athlete",
      left: "Left trials",
      right: "Right trials",
      result: "Results",
      side: "Side of each row",
      attempt: "Attempt number",
      test: "Test",
      date: "Date",
      group: "Role or group",
      measure: "What was measured",
      unit: "Unit of each row",
      bodyMass: "Body mass",
      stature: "Stature",
      none: "Not used",
    } satisfies Record<ColumnUse, string>,
    unit: "Unit of the results",
    unitUnknown: "Not set",
    test: "Which test",
    unnamedTest: "(no name)",
    hidden: (count: number) => `Also read ${many(count, "hidden row")}`,
  },

  remarks: {
    title: (leftOut: number) => (leftOut === 0 ? "Read with a remark" : `${many(leftOut, "cell")} left out`),
    more: (count: number) => `Show ${count} more`,
    less: "Show fewer",
    goTo: (cell: string) => `Go to ${cell}`,
  },

  settings: {
    title: "How to judge",
    range: (low: number, high: number, unit: string) => `Type a number from ${low} to ${high} ${unit}.`,
  },

  answer: {
    title: "Answer",
    showAll: (count: number) => `Show all ${count}`,
    showFew: "Show the largest only",
    mind: "Keep in mind",
    noAnswer: "No answer yet",
  },

  write: {
    newSheet: (sheet: string) => `Write to a new sheet “${sheet}”`,
    renew: (sheet: string) => `Renew the table on “${sheet}”`,
    writing: "Writing…",
    written: (sheet: string, address: string) => `Written: ${sheet}, ${address}`,
    renewed: (sheet: string, address: string) => `Renewed: ${sheet}, ${address}`,
    writtenText: "Your own cells were not touched. Change a result and press again: the same table is renewed.",
    show: "Show me",
    elsewhere: "Write to a new sheet instead",
    conflict: {
      title: (sheet: string) => `The table on “${sheet}” was not changed`,
      headings: "Its headings were changed, so its columns cannot be told apart any more.",
      totals: "It has a total row. Switch the total row off, or write to a new sheet.",
      below: (cells: string) => `It needs more rows, but below it stands something of yours: ${cells}.`,
    },
    unknownState: {
      title: "Nothing was written",
      text: "This workbook was last used with a newer Tapeline. Update the add-in, then try again.",
    },
  },

  hostRefusal: {
    title: "The workbook did not let Tapeline do that",
    busy: "A cell is being edited. Press Enter or Esc in the sheet, then try again.",
    protectedSheet: "The sheet or the workbook is protected. Take the protection off, then try again.",
    tooLarge: "That is more than can be handled at once. Select fewer rows, then try again.",
    other: (message: string) => `It said: ${message}`,
    again: "Try again",
  },

  ourMistake: {
    title: "Tapeline made a mistake",
    text: "Your workbook was not changed by it. Load the pane again; if it happens once more, please report it.",
    reload: "Load again",
  },
} as const;

/** "1 athlete", "24 athletes". */
export function many(count: number, noun: string): string {
  return count === 1 ? `1 ${noun}` : `${count} ${noun}s`;
}
