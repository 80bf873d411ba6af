import { say } from "../language/say";
import type { ColumnUse } from "../reading/columns";
import type { KeptResult } from "../store/keptResults";
import type { Part } from "./tasks";
import { many } from "./words/many";

/** Everything the pane says, in one place. Plain words; a coach's, not a programmer's. */
export const words = {
  paneLabel: say`Tapeline`,
  whatIs: (about: string) => say`What is “${about}”?`,

  loading: say`One moment…`,
  reading: say`Reading the results…`,

  home: {
    title: say`Tapeline`,
    text: say`What do you want to do?`,
    back: say`‹ Start`,
    parts: {
      test: say`Test`,
      understand: say`Understand`,
      plan: say`Plan and deliver`,
      review: say`Was it real? What next?`,
      cells: say`In your own cells`,
    } satisfies Record<Part, string>,
  },

  /** What can be done beside the questions, which bring their own words. */
  tasks: {
    setUp: { title: say`Squad and tests`, question: say`Who is in the squad, and what are they tested on?` },
    testDay: { title: say`Sheet for a test day`, question: say`Make a sheet to type or pencil today's results into.` },
    keep: { title: say`Keep results`, question: say`Put results into the workbook's own table, each of them once.` },
    priorities: { title: say`Priorities`, question: say`What should each athlete work on first, and why?` },
    plan: { title: say`Plan a block`, question: say`Which exercises, sets and loads follow from the priorities?` },
    deliver: {
      title: say`Sessions and diary`,
      question: say`Print session sheets, and keep a diary of what was done.`,
    },
    load: { title: say`Training load`, question: say`How much was done week by week, and what has changed?` },
    outcome: {
      title: say`Who changed, who did the work`,
      question: say`Did the block show in the retests, and what comes next?`,
    },
    pages: {
      title: say`Pages for athletes`,
      question: say`A page for each athlete: where they stand, and what to work on.`,
    },
    functions: { title: say`Functions`, question: say`Which TAPELINE functions are there for your own formulas?` },
  },

  takeBack: {
    label: say`Last thing written`,
    press: say`Take back`,
    busy: say`Taking back…`,
    changed: say`You have changed cells since`,
    changedText: (cells: readonly string[]) =>
      say`Taking back would overwrite ${cells.slice(0, 5).join(", ")}${cells.length > 5 ? say` and more` : ""}.`,
    anyway: say`Take back all the same`,
  },

  setUp: {
    reading: say`Reading the workbook…`,
    standing: say`In this workbook`,
    athletes: (count: number) => many(count, "athlete"),
    tests: (count: number) => say`${count} numbers to test`,
    weights: (roles: number) => (roles === 0 ? say`no roles yet` : say`weights for ${many(roles, "role")}`),
    results: say`one row for each result`,
    editByHand: say`Plain tables: change, add and delete rows as you like; add columns of your own.`,
    remarks: (count: number) => say`${many(count, "cell")} in these tables cannot be used`,
    toTestDay: say`Make a sheet for a test day`,
    squad: say`Squad`,
    found: (count: number, sheet: string) => say`${many(count, "athlete")} in what you have selected on “${sheet}”:`,
    selectNames: say`Select your list of names (with its headings) on any sheet, or start with an empty table.`,
    listed: (named: readonly string[], more: number) => `${named.join(", ")}${more > 0 ? say` and ${more} more` : ""}.`,
    battery: say`Tests`,
    batteryText: say`Ready-made sets to start from. Everything in them can be changed in the table.`,
    make: (sheets: number) => say`Set up on ${many(sheets, "new sheet")}`,
  },

  keep: {
    noTable: say`There is no table of results yet`,
    noTableText: say`Set up squad and tests; the table of results comes with them.`,
    entrySheets: say`Sheets for test days`,
    typed: (results: number, unread: number) =>
      `${results === 0 ? say`nothing typed yet` : say`${many(results, "result")} typed`}${unread > 0 ? say`, ${many(unread, "cell")} cannot be read` : ""}`,
    gone: (headings: readonly string[]) =>
      say`Not found on the sheet, so not read: ${headings.join(", ")}. Write the headings as they were.`,
    keep: (results: number) => say`Keep ${many(results, "result")}`,
    select: say`Or select any cells with results.`,
    day: say`Day of these results`,
    refused: (count: number) => say`${many(count, "result")} cannot be kept`,
    kept: (count: number) => (count === 0 ? say`Nothing new` : say`${many(count, "new result")} kept`),
    changed: (count: number) => say`${many(count, "result")} corrected on the sheet since: renewed.`,
    same: (count: number) => say`${many(count, "result")} had been kept before.`,
    nothingKept: say`Nothing was kept`,
    clash: (fresh: KeptResult, standing: KeptResult) =>
      say`${fresh.source}: ${fresh.athlete}, ${fresh.test}: ${fresh.value} here, ${standing.value} in the table${standing.source ? say` (from ${standing.source})` : ""}.`,
    clashes: (count: number) =>
      say`${many(count, "result")} not kept: the table already holds another value for the same athlete, test and day.`,
  },

  programme: {
    noResults: say`No results are kept yet`,
    noResultsText: say`This rests on the workbook's own table of results.`,
    notWritten: say`Nothing was written`,
    written: (sheet: string, rows: number) => say`Written: ${sheet}, ${many(rows, "row")}`,
    coachs: (rows: number) => say`${many(rows, "row")} of yours, or changed by you, stayed as they are.`,
    missing: (count: number) => (count === 1 ? say`One thing is missing` : say`${count} things are missing`),
    more: (count: number) => say`And ${count} more.`,
  },

  priorities: {
    title: (athletes: number) => say`Priorities of ${many(athletes, "athlete")}`,
    all: (athletes: number) => say`Show all ${athletes}`,
    fewer: say`Show fewer`,
    most: say`At most for each athlete`,
    mostMeaning: say`A short list is worked on; a long one is not.`,
    together: say`May train together`,
    rule: say`The weight of a quality for the role times how far the athlete stands below the squad. Common practice, no source: an aid to a conversation, not a diagnosis.`,
    write: say`Write the priorities`,
  },

  plan: {
    title: say`The block`,
    when: say`When`,
    begins: say`First day`,
    exercises: (count: number) => say`${many(count, "exercise")} to choose from`,
    ownExercises: say`From the table “Exercises” of this workbook.`,
    readyExercises: say`Ready-made ones. Put them into the workbook to change them.`,
    makeExercises: say`Put them into the workbook`,
    noPriorities: say`Priorities first`,
    noPrioritiesText: say`A block is planned from the priorities in this workbook, with what you have decided otherwise.`,
    caution: say`A plan to start from: see every athlete lift before you load. Loads come from estimates, not from maxima; minors get basic exercises and keep three repetitions in reserve. After an injury the clinician in charge decides.`,
    write: (rows: number, athletes: number) =>
      say`Write the plan: ${many(rows, "row")} for ${many(athletes, "athlete")}`,
  },

  deliver: {
    print: (pages: number) => say`Make ${many(pages, "page")} to print`,
  },

  pages: {
    title: (pages: number) => many(pages, "page"),
    text: say`Where the athlete stands, what to work on, what has changed since the last test, and what comes next. Nobody else's results are on it.`,
    caution: say`Personal data: hand each page to its athlete, or to the parents of a minor, and to nobody else.`,
    written: (written: number, wished: number) =>
      written === wished
        ? say`${many(written, "page")} made`
        : say`Stopped after ${written} of ${many(wished, "page")}`,
    progress: (done: number, of: number) => (of === 1 ? say`${done} of 1 page` : say`${done} of ${of} pages`),
    stop: say`Stop`,
  },

  origin: {
    label: say`Results from`,
    selection: say`The cells I select`,
    kept: say`The workbook's table of results`,
  },

  alike: {
    title: say`One person or two?`,
    pair: (names: readonly string[]) => names.map((name) => say`“${name}”`).join(say` and `),
    merge: (name: string) => say`One person: read as “${name}”`,
    merged: (name: string, kept: string) => say`“${name}” is read as “${kept}”.`,
    part: say`Keep apart`,
  },

  nothing: {
    title: say`Nothing to read there`,
    text: (place: string) => say`${place} holds no values.`,
  },

  source: {
    title: say`Your results`,
    keptTitle: say`The workbook's results`,
    kept: (athletes: number, results: number, tests: number) =>
      `${many(athletes, "athlete")}, ${many(tests, "series")}, ${many(results, "result")}.`,
    grown: (cell: string) => say`Read as the block of cells around ${cell}.`,
    wide: (athletes: number, results: number, unit: string) =>
      say`${many(athletes, "athlete")}, one row each; ${many(results, "result")}${unit}.`,
    long: (athletes: number, results: number, unit: string) =>
      say`${many(athletes, "athlete")}, one row per attempt; ${many(results, "result")}${unit}.`,
    unclear: say`Say below which columns to use.`,
    inUnit: (unit: string) => say` in ${unit}`,
    noUnit: say`, unit not known`,
    columnsOf: (use: string, letters: readonly string[]) => `${use} ${letters.join(", ")}`,
    change: say`Columns and unit`,
  },

  columns: {
    use: (letters: string, heading: string) => (heading ? `${letters}: ${heading}` : say`Column ${letters}`),
    uses: {
      athlete: say`Athlete`,
      left: say`Left trials`,
      right: say`Right trials`,
      result: say`Results`,
      side: say`Side of each row`,
      attempt: say`Attempt number`,
      test: say`Test`,
      date: say`Date`,
      group: say`Role or group`,
      measure: say`What was measured`,
      unit: say`Unit of each row`,
      bodyMass: say`Body mass`,
      stature: say`Stature`,
      none: say`Not used`,
    } satisfies Record<ColumnUse, string>,
    unit: say`Unit of the results`,
    unitUnknown: say`Not set`,
    test: say`Which test`,
    unnamedTest: say`(no name)`,
    hidden: (count: number) => say`Also read ${many(count, "hidden row")}`,
  },

  remarks: {
    title: (leftOut: number) => (leftOut === 0 ? say`Read with a remark` : say`${many(leftOut, "cell")} left out`),
    more: (count: number) => say`Show ${count} more`,
    less: say`Show fewer`,
    goTo: (cell: string) => say`Go to ${cell}`,
  },

  settings: {
    title: say`How to judge`,
    range: (low: number, high: number, unit: string) => say`Type a number from ${low} to ${high} ${unit}.`,
  },

  answer: {
    title: say`Answer`,
    showAll: (count: number) => say`Show all ${count}`,
    showFew: say`Show the largest only`,
    mind: say`Keep in mind`,
    noAnswer: say`No answer yet`,
  },

  write: {
    newSheet: (sheet: string) => say`Write to a new sheet “${sheet}”`,
    renew: (sheet: string) => say`Renew the table on “${sheet}”`,
    writing: say`Writing…`,
    written: (sheet: string, address: string) => say`Written: ${sheet}, ${address}`,
    live: say`With formulas that follow the results`,
    renewed: (sheet: string, address: string) => say`Renewed: ${sheet}, ${address}`,
    writtenText: say`Your own cells were not touched. Change a result and press again: the same table is renewed.`,
    show: say`Show me`,
    elsewhere: say`Write to a new sheet instead`,
    conflict: {
      title: (sheet: string) => say`The table on “${sheet}” was not changed`,
      headings: say`Its headings were changed, so its columns cannot be told apart any more.`,
      totals: say`It has a total row. Switch the total row off, or write to a new sheet.`,
      below: (cells: string) => say`It needs more rows, but below it stands something of yours: ${cells}.`,
      beside: (cells: string) => say`It needs more columns, but there stands something of yours: ${cells}.`,
    },
    unknownState: {
      title: say`Nothing was written`,
      text: say`This workbook was last used with a newer Tapeline. Update the add-in, then try again.`,
    },
  },

  hostRefusal: {
    title: say`The workbook did not let Tapeline do that`,
    busy: say`A cell is being edited. Press Enter or Esc in the sheet, then try again.`,
    protectedSheet: say`The sheet or the workbook is protected. Take the protection off, then try again.`,
    tooLarge: say`That is more than can be handled at once. Select fewer rows, then try again.`,
    other: (message: string) => say`It said: ${message}`,
    again: say`Try again`,
  },

  ourMistake: {
    title: say`Tapeline made a mistake`,
    text: say`Your workbook was not changed by it. Load the pane again; if it happens once more, please report it.`,
    reload: say`Load again`,
  },
} as const;
