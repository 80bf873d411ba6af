import { goToSheet, type OpenPage, select, type } from "./page";

/** A state of the pane worth looking at, and how a coach comes to it from the one before. */
export type Stop = {
  /** Name of the file of its picture. */
  readonly name: string;
  readonly reach: (open: OpenPage) => Promise<void>;
};

const patience = { timeout: 60_000 };

const told = (open: OpenPage, words: string | RegExp) => open.pane.getByText(words).first().waitFor(patience);
const press = (open: OpenPage, name: string | RegExp) =>
  open.pane.getByRole("button", { name }).first().click(patience);

/** Home, and from there to one of its capabilities. */
async function choose(open: OpenPage, title: string): Promise<void> {
  const back = open.pane.getByRole("button", { name: "‹ Start" });
  if (await back.isVisible()) await back.click();
  await open.pane
    .locator(".questions")
    .getByRole("button", { name: new RegExp(`^${title}`) })
    .click(patience);
  await open.pane.getByRole("heading", { level: 1, name: title }).waitFor(patience);
}

/** Lets no reading be under way, and brings the page to rest. */
async function atRest({ pane }: OpenPage): Promise<void> {
  await pane.waitForFunction(() => !/One moment…|Reading the/.test(document.body.textContent ?? ""), null, patience);
}

const stop = (name: string, reach: (open: OpenPage) => Promise<void>): Stop => ({
  name,
  reach: async (open) => {
    await reach(open);
    await atRest(open);
  },
});

/** A screen as it is when nothing has been set up or kept. */
const withNothing = (name: string, title: string): Stop => stop(`nothing-${name}`, (open) => choose(open, title));

/** A question, asked of the results that are kept in the workbook. */
const question = (name: string, title: string): Stop =>
  stop(`question-${name}`, async (open) => {
    await choose(open, title);
    await open.pane.getByLabel("Results from").selectOption("kept");
    await told(open, "The workbook's results");
  });

async function keep(open: OpenPage, sheet: string): Promise<void> {
  await goToSheet(open.page, sheet);
  await told(open, new RegExp(`'${sheet}'!`));
  await open.pane
    .locator("footer")
    .getByRole("button", { name: /^Keep \d+ results$/ })
    .click(patience);
  await told(open, /new results kept/);
}

/**
 * Every screen of the pane, each from the one before, on the sample workbook: a new workbook, then a season's work in
 * it, then what goes wrong.
 */
export const everyScreen: readonly Stop[] = [
  stop("home", (open) => told(open, "Ask a question of any results you select")),
  withNothing("keep", "Keep results"),
  withNothing("test-day", "Sheet for a test day"),
  withNothing("priorities", "Priorities"),
  withNothing("plan", "Plan a block"),
  withNothing("deliver", "Sessions and diary"),
  withNothing("load", "Training load"),
  withNothing("outcome", "Who changed, who did the work"),
  withNothing("pages", "Pages for athletes"),
  stop("empty-selection", async (open) => {
    await select(open.page, "Hop test", "Z90");
    await choose(open, "Left-right asymmetry");
    await told(open, "Nothing to read there");
  }),
  stop("no-answer", async (open) => {
    await select(open.page, "Squad", "A3");
    await told(open, "No answer yet");
  }),
  stop("question-of-selection", async (open) => {
    await select(open.page, "Hop test", "A3");
    await open.pane.getByRole("heading", { name: "Answer" }).waitFor(patience);
  }),
  stop("columns", (open) => press(open, "Columns and unit")),
  stop("what-is-this", (open) => press(open, /^What is “/)),
  stop("written", async (open) => {
    await open.pane.page().keyboard.press("Escape");
    await press(open, "Write to a new sheet “Asymmetry”");
    await told(open, "Written: Asymmetry, ");
  }),
  stop("dirty", async (open) => {
    await goToSheet(open.page, "Hop test dirty");
    await told(open, /cells left out/);
  }),
  stop("set-up", async (open) => {
    await goToSheet(open.page, "Squad");
    await choose(open, "Squad and tests");
    await told(open, "44 athletes in what you have selected");
  }),
  stop("set-up-done", async (open) => {
    await press(open, "Set up on 4 new sheets");
    await told(open, "In this workbook");
  }),
  stop("home-set-up", async (open) => {
    await press(open, "‹ Start");
    await told(open, "are set up. Next come results.");
  }),
  stop("test-day", async (open) => {
    await choose(open, "Sheet for a test day");
    await open.pane.getByLabel("Day of the test").fill("2026-08-13");
    await open.pane.getByLabel("Single-leg hop", { exact: true }).check();
  }),
  stop("test-day-made", async (open) => {
    await press(open, /^Make “Test day/);
    await told(open, "Made: Test day 13 Aug");
  }),
  stop("keep", async (open) => {
    await type(open.page, "'Test day 13 Aug'!C5", 152);
    await type(open.page, "'Test day 13 Aug'!D5", "about 160");
    await goToSheet(open.page, "Field 18 Aug");
    await choose(open, "Keep results");
    await told(open, /'Field 18 Aug'!/);
  }),
  stop("kept", async (open) => {
    for (const sheet of ["Field 18 Aug", "Gym 20 Aug", "Field 25 Aug", "Gym 27 Aug", "Field 27 Oct", "Gym 29 Oct"])
      await keep(open, sheet);
  }),
  question("retest", "Look again"),
  question("reliability", "Reliability of a test"),
  question("change", "Change since last time"),
  question("asymmetry", "Left-right asymmetry"),
  question("standing", "Standing in the squad"),
  question("ranking", "Squad ranking"),
  question("strength", "Estimated strength and loads"),
  question("load-velocity", "Load-velocity profile"),
  question("jumps", "Jumps"),
  question("sprints", "Sprints by their sections"),
  question("endurance", "Endurance"),
  question("capacity", "Capacity of each side"),
  stop("priorities", async (open) => {
    await choose(open, "Priorities");
    await told(open, /^Priorities of \d+ athletes/);
  }),
  stop("priorities-written", async (open) => {
    await press(open, "Write the priorities");
    await told(open, /^Written: /);
  }),
  stop("plan", async (open) => {
    await choose(open, "Plan a block");
    await open.pane.getByRole("button", { name: /^Write the plan/ }).waitFor(patience);
  }),
  stop("plan-written", async (open) => {
    await press(open, /^Write the plan/);
    await told(open, /^Written: /);
  }),
  stop("deliver", async (open) => {
    await goToSheet(open.page, "Diary");
    await choose(open, "Sessions and diary");
    await told(open, "Session sheets");
  }),
  stop("diary-kept", async (open) => {
    await press(open, /^Add .* to the diary$/);
    await told(open, /entries added/);
  }),
  stop("load", async (open) => {
    await choose(open, "Training load");
    await open.pane.getByRole("combobox", { name: "Whose weeks" }).waitFor(patience);
  }),
  stop("outcome", (open) => choose(open, "Who changed, who did the work")),
  stop("pages", (open) => choose(open, "Pages for athletes")),
  stop("functions", async (open) => {
    await choose(open, "Functions");
    await open.pane.getByRole("searchbox").fill("asymmetry");
    await open.pane.locator("summary", { hasText: "ASYMMETRY" }).first().click(patience);
  }),
  stop("refused", async (open) => {
    await open.page.evaluate(() =>
      window.tapelineHost!.Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Asymmetry").protection.protect();
        await context.sync();
      }),
    );
    await select(open.page, "Hop test", "A3");
    await choose(open, "Left-right asymmetry");
    await press(open, "Renew the table on “Asymmetry”");
    await told(open, "The workbook did not let Tapeline do that");
  }),
];
