import { functionWords } from "../../src/pane/words/functions";
import { goToSheet, type OpenPage, openPage, select, seriousFaults, type, valuesAt } from "./page";

/** A coach's own formulas: found by what they want to know, put into a cell, mended, and made plain for sharing. */
jest.setTimeout(150_000);

const sheet = "Read me";
const cell = "F30";
const unknown = "F32";
const { list, mend } = functionWords;

let open: OpenPage;

beforeAll(async () => {
  open = await openPage();
}, 150_000);

afterAll(() => open.close());

const press = (name: string | RegExp) => open.pane.getByRole("button", { name }).first().click();
const told = (words: string | RegExp) => open.pane.getByText(words).first().waitFor({ timeout: 60_000 });

const formulaAt = (address: string) =>
  open.page.evaluate(
    ([name, at]) =>
      window.tapelineHost!.Excel.run(async (context) => {
        const range = context.workbook.worksheets.getItem(name!).getRange(at!).load("formulas");
        await context.sync();
        return range.formulas[0]![0] as unknown;
      }),
    [sheet, address],
  );

it("finds a function by what it answers, and puts its example into the active cell", async () => {
  await goToSheet(open.page, sheet);
  await select(open.page, sheet, cell);
  await press(/^Functions/);
  await open.pane.getByRole("searchbox").fill("left right difference percent");
  await open.pane.locator("details.function", { hasText: "ASYMMETRY" }).first().locator("summary").click();
  expect(await seriousFaults(open.pane)).toEqual([]);
  await open.pane.getByRole("button", { name: list.insert }).first().click();
  await told(/^Written into /);
  expect(await formulaAt(cell)).toMatch(/^=TAPELINE\.ASYMMETRY\(/);
  await open.page.waitForFunction(
    ([name, at]) =>
      window.tapelineHost!.Excel.run(async (context) => {
        const range = context.workbook.worksheets.getItem(name!).getRange(at!).load("values");
        await context.sync();
        return typeof range.values[0]![0] === "number";
      }),
    [sheet, cell],
  );
});

it("writes nothing over a cell that is not empty", async () => {
  await open.pane.getByRole("button", { name: list.insert }).first().click();
  await told(/is not empty\. Select a free cell/);
});

it("says of formulas which no repair makes known where they are", async () => {
  await type(open.page, `'${sheet}'!${unknown}`, "=TAPELINE.ASYMETRY(1,2)");
  await press(mend.repair);
  await told(new RegExp(`^Still not known: .*${unknown}`));
});

it("replaces formulas by their values, and gives them back in one press", async () => {
  const [[value]] = (await valuesAt(open.page, sheet, cell)) as [[number]];
  const formula = await formulaAt(cell);
  await press(mend.replace);
  await told(/replaced: /);
  expect(await formulaAt(cell)).toBe(value);
  expect(await seriousFaults(open.pane)).toEqual([]);
  await press("Take back");
  await open.page.waitForFunction(
    ([name, at, before]) =>
      window.tapelineHost!.Excel.run(async (context) => {
        const range = context.workbook.worksheets.getItem(name!).getRange(at!).load("formulas");
        await context.sync();
        return range.formulas[0]![0] === before;
      }),
    [sheet, cell, String(formula)],
  );
});

it("complains of nothing", () => expect(open.complaints).toEqual([]));
