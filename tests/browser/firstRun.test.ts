import { type OpenPage, openPage, seriousFaults, tabTo } from "./page";

/** A coach who has never seen it, in a workbook with nothing of ours, tries it with the keyboard. */
jest.setTimeout(150_000);

let open: OpenPage;

beforeAll(async () => {
  open = await openPage();
}, 150_000);

afterAll(() => open.close());

const told = (words: string | RegExp) => open.pane.getByText(words).first().waitFor({ timeout: 60_000 });

async function pressOn(words: string): Promise<void> {
  await tabTo(open.page, open.pane, words);
  await open.page.keyboard.press("Enter");
}

/** Sheets with all that stands on them, tables, and what is remembered in the workbook. */
const workbook = () =>
  open.page.evaluate(() =>
    window.tapelineHost!.Excel.run(async (context) => {
      const { worksheets, tables, settings } = context.workbook;
      worksheets.load("items/name");
      tables.load("items/name");
      settings.load("items/key,items/value");
      const active = worksheets.getActiveWorksheet().load("name");
      const selected = context.workbook.getSelectedRange().load("address");
      await context.sync();
      const used = worksheets.items.map((sheet) => sheet.getUsedRange().load("address,formulas,numberFormat"));
      await context.sync();
      return {
        sheets: worksheets.items.map(({ name }) => name),
        cells: used.map(({ address, formulas, numberFormat }) => JSON.stringify([address, formulas, numberFormat])),
        tables: tables.items.map(({ name }) => name),
        settings: settings.items.map(({ key, value }) => [key, JSON.stringify(value)]),
        charts: window.tapelineHost!.charts.list().length,
        at: `${active.name} ${selected.address}`,
      };
    }),
  );

it("goes from the sample squad to a written answer, and leaves the workbook as it was", async () => {
  await told("Try it on a sample squad");
  const before = await workbook();
  await open.pane.getByRole("combobox").focus();

  await pressOn("Try it on a sample squad");
  await told("Sample squad, step 1 of 4");
  expect(await seriousFaults(open.pane)).toEqual([]);
  await pressOn("Is one leg weaker?");
  await told("Sample squad, step 2 of 4");
  await told(/of 10 athletes differ between left and right beyond the noise/);
  expect(await seriousFaults(open.pane)).toEqual([]);
  await pressOn("Write to a new sheet “Asymmetry”");
  await told("Sample squad, step 3 of 4");
  await told("It stands on “Asymmetry”");
  await open.pane.getByRole("button", { name: "‹ Start" }).press("Enter");
  await told("Asked a moment ago");
  expect((await workbook()).sheets).toEqual([...before.sheets, "Tapeline sample", "Asymmetry"]);

  await open.pane.getByRole("button", { name: /^Remove the sample/ }).press("Enter");
  await told("Try it on a sample squad");
  expect(await workbook()).toEqual(before);
  expect(await open.pane.getByText("Asked a moment ago").isVisible()).toBe(false);
  expect(await open.pane.getByRole("button", { name: "Take back" }).isVisible()).toBe(false);
  expect(open.complaints).toEqual([]);
});
