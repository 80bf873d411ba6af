import type { ColumnUse } from "../reading/columns";
import type { KeptResult } from "../store/keptResults";
import type { Part } from "./tasks";

/** Everything the pane says, in one place. Plain words; a coach's, not a programmer's. */
export const words = {
  paneLabel: "Tapeline",
  whatIs: (about: string) => `What is “${about}”?`,

  loading: "One moment…",
  reading: "Reading the results…",

  home: {
    title: "Tapeline",
    text: "What do you want to do?",
    back: "‹ Start",
    parts: {
      test: "Test",
      understand: "Understand",
      plan: "Plan and deliver",
      review: "Was it real? What next?",
      cells: "In your own cells",
    } satisfies Record<Part, string>,
  },

  /** What can be done beside the questions, which bring their own words. */
  tasks: {
    setUp: { title: "Squad and tests", question: "Who is in the squad, and what are they tested on?" },
    testDay: { title: "Sheet for a test day", question: "Make a sheet to type or pencil today's results into." },
    keep: { title: "Keep results", question: "Put results into the workbook's own table, each of them once." },
    priorities: { title: "Priorities", question: "What should each athlete work on first, and why?" },
    plan: { title: "Plan a block", question: "Which exercises, sets and loads follow from the priorities?" },
    deliver: { title: "Sessions and diary", question: "Print session sheets, and keep a diary of what was done." },
    load: { title: "Training load", question: "How much was done week by week, and what has changed?" },
    outcome: {
      title: "Who changed, who did the work",
      question: "Did the block show in the retests, and what comes next?",
    },
    pages: { title: "Pages for athletes", question: "A page for each athlete: where they stand, and what to work on." },
    functions: { title: "Functions", question: "Which TAPELINE functions are there for your own formulas?" },
  },

  takeBack: {
    label: "Last thing written",
    press: "Take back",
    busy: "Taking back…",
    changed: "You have changed cells since",
    changedText: (cells: readonly string[]) =>
      `Taking back would overwrite ${cells.slice(0, 5).join(", ")}${cells.length > 5 ? " and more" : ""}.`,
    anyway: "Take back all the same",
  },

  setUp: {
    reading: "Reading the workbook…",
    standing: "In this workbook",
    athletes: (count: number) => many(count, "athlete"),
    tests: (count: number) => `${count} numbers to test`,
    weights: (roles: number) => (roles === 0 ? "no roles yet" : `weights for ${many(roles, "role")}`),
    results: "one row for each result",
    editByHand: "Plain tables: change, add and delete rows as you like; add columns of your own.",
    remarks: (count: number) => `${many(count, "cell")} in these tables cannot be used`,
    toTestDay: "Make a sheet for a test day",
    squad: "Squad",
    found: (count: number, sheet: string) => `${many(count, "athlete")} in what you have selected on “${sheet}”:`,
    selectNames: "Select your list of names (with its headings) on any sheet, or start with an empty table.",
    listed: (named: readonly string[], more: number) => `${named.join(", ")}${more > 0 ? ` and ${more} more` : ""}.`,
    battery: "Tests",
    batteryText: "Ready-made sets to start from. Everything in them can be changed in the table.",
    make: (sheets: number) => `Set up on ${many(sheets, "new sheet")}`,
  },

  keep: {
    noTable: "There is no table of results yet",
    noTableText: "Set up squad and tests; the table of results comes with them.",
    entrySheets: "Sheets for test days",
    typed: (results: number, unread: number) =>
      `${results === 0 ? "nothing typed yet" : `${many(results, "result")} typed`}${unread > 0 ? `, ${many(unread, "cell")} cannot be read` : ""}`,
    gone: (headings: readonly string[]) =>
      `Not found on the sheet, so not read: ${headings.join(", ")}. Write the headings as they were.`,
    keep: (results: number) => `Keep ${many(results, "result")}`,
    select: "Or select any cells with results.",
    day: "Day of these results",
    refused: (count: number) => `${many(count, "result")} cannot be kept`,
    kept: (count: number) => (count === 0 ? "Nothing new" : `${many(count, "new result")} kept`),
    changed: (count: number) => `${many(count, "result")} corrected on the sheet since: renewed.`,
    same: (count: number) => `${many(count, "result")} had been kept before.`,
    nothingKept: "Nothing was kept",
    clash: (fresh: KeptResult, standing: KeptResult) =>
      `${fresh.source}: ${fresh.athlete}, ${fresh.test}: ${fresh.value} here, ${standing.value} in the table${standing.source ? ` (from ${standing.source})` : ""}.`,
    clashes: (count: number) =>
      `${many(count, "result")} not kept: the table already holds another value for the same athlete, test and day.`,
  },

  programme: {
    noResults: "No results are kept yet",
    noResultsText: "This rests on the workbook's own table of results.",
    notWritten: "Nothing was written",
    written: (sheet: string, rows: number) => `Written: ${sheet}, ${many(rows, "row")}`,
    coachs: (rows: number) => `${many(rows, "row")} of yours, or changed by you, stayed as they are.`,
    missing: (count: number) => (count === 1 ? "One thing is missing" : `${count} things are missing`),
    more: (count: number) => `And ${count} more.`,
  },

  priorities: {
    title: (athletes: number) => `Priorities of ${many(athletes, "athlete")}`,
    all: (athletes: number) => `Show all ${athletes}`,
    fewer: "Show fewer",
    most: "At most for each athlete",
    mostMeaning: "A short list is worked on; a long one is not.",
    together: "May train together",
    rule: "The weight of a quality for the role times how far the athlete stands below the squad. Common practice, no source: an aid to a conversation, not a diagnosis.",
    write: "Write the priorities",
    overrule: "Overrule there under “Coach's choice” and say why: both stay when the priorities are made anew.",
  },

  plan: {
    title: "The block",
    when: "When",
    begins: "First day",
    exercises: (count: number) => `${many(count, "exercise")} to choose from`,
    ownExercises: "From the table “Exercises” of this workbook.",
    readyExercises: "Ready-made ones. Put them into the workbook to change them.",
    makeExercises: "Put them into the workbook",
    noPriorities: "Priorities first",
    noPrioritiesText: "A block is planned from the priorities in this workbook, with what you have decided otherwise.",
    caution:
      "A plan to start from: see every athlete lift before you load. Loads come from estimates, not from maxima; minors get basic exercises and keep three repetitions in reserve. After an injury the clinician in charge decides.",
    write: (rows: number, athletes: number) => `Write the plan: ${many(rows, "row")} for ${many(athletes, "athlete")}`,
  },

  deliver: {
    print: (pages: number) => `Make ${many(pages, "page")} to print`,
  },

  pages: {
    title: (pages: number) => many(pages, "page"),
    text: "Where the athlete stands, what to work on, what has changed since the last test, and what comes next. Nobody else's results are on it.",
    caution: "Personal data: hand each page to its athlete, or to the parents of a minor, and to nobody else.",
    written: (written: number, wished: number) =>
      written === wished ? `${many(written, "page")} made` : `Stopped after ${written} of ${many(wished, "page")}`,
    progress: (done: number, of: number) => `${done} of ${many(of, "page")}`,
    stop: "Stop",
  },

  origin: {
    label: "Results from",
    selection: "The cells I select",
    kept: "The workbook's table of results",
  },

  alike: {
    title: "One person or two?",
    pair: (names: readonly string[]) => names.map((name) => `“${name}”`).join(" and "),
    merge: (name: string) => `One person: read as “${name}”`,
    merged: (name: string, kept: string) => `“${name}” is read as “${kept}”.`,
    part: "Keep apart",
  },

  nothing: {
    title: "Nothing to read there",
    text: (place: string) => `${place} holds no values.`,
  },

  source: {
    title: "Your results",
    keptTitle: "The workbook's results",
    kept: (athletes: number, results: number, tests: number) =>
      `${many(athletes, "athlete")}, ${tests === 1 ? "1 series of results" : `${tests} series of results`}, ${many(results, "result")}.`,
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
    live: "With formulas that follow the results",
    renewed: (sheet: string, address: string) => `Renewed: ${sheet}, ${address}`,
    writtenText: "Your own cells were not touched. Change a result and press again: the same table is renewed.",
    show: "Show me",
    elsewhere: "Write to a new sheet instead",
    conflict: {
      title: (sheet: string) => `The table on “${sheet}” was not changed`,
      headings: "Its headings were changed, so its columns cannot be told apart any more.",
      totals: "It has a total row. Switch the total row off, or write to a new sheet.",
      below: (cells: string) => `It needs more rows, but below it stands something of yours: ${cells}.`,
      beside: (cells: string) => `It needs more columns, but there stands something of yours: ${cells}.`,
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
