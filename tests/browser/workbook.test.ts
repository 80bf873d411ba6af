import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Workbook } from "exceljs";
import { type OpenPage, openPage, type, valuesAt } from "./page";

const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
/** Written by openpyxl, with a table, a note, a chart and absolute part names (see its write_samples.py). */
const foreignFile = join(__dirname, "../host/xlsx/data/everything.xlsx");

let open: OpenPage;

beforeAll(async () => {
  open = await openPage();
}, 90_000);

afterAll(() => open.close());

const paneWidth = () => open.page.evaluate(() => document.querySelector<HTMLElement>("#pane")!.offsetWidth);

/** Which part of the page has the focus. */
const focusedArea = () =>
  open.page.evaluate(() => {
    const focused = document.activeElement;
    return focused?.closest(".top-bar") ? "bar" : focused?.closest(".pane") ? "pane" : "grid";
  });

const message = () =>
  open.page.evaluate(() => {
    const dialog = document.querySelector("dialog")!;
    return dialog.open ? [...dialog.querySelectorAll("h2, p, li")].map((each) => each.textContent) : [];
  });

const workbookNamed = (name: string) =>
  open.page.waitForFunction(
    (wanted) =>
      document.querySelector("h1")?.textContent === wanted && document.documentElement.dataset.ready === "true",
    name,
    { timeout: 60_000 },
  );

const choose = (file: Parameters<OpenPage["page"]["setInputFiles"]>[1]) =>
  open.page.setInputFiles("#workbook-file", file);

describe("the page around the grid", () => {
  it("widens the pane by keyboard and by pointer, within its limits", async () => {
    const { page } = open;
    expect(await paneWidth()).toBe(360);
    await page.focus("#splitter");
    await page.keyboard.press("ArrowLeft");
    expect(await paneWidth()).toBe(380);
    await page.keyboard.press("End");
    expect(await paneWidth()).toBe(600);
    await page.keyboard.press("Home");
    expect(await paneWidth()).toBe(320);
    const { x, y } = (await page.locator("#splitter").boundingBox())!;
    await page.mouse.move(x + 3, y + 200);
    await page.mouse.down();
    await page.mouse.move(x - 77, y + 220, { steps: 5 });
    await page.mouse.up();
    expect(Math.abs((await paneWidth()) - 400)).toBeLessThan(4);
  });

  it("hides the pane and shows it again", async () => {
    await open.page.click("#toggle-pane");
    expect(await paneWidth()).toBe(0);
    expect(await open.page.getAttribute("#toggle-pane", "aria-pressed")).toBe("false");
    await open.page.click("#toggle-pane");
    expect(await paneWidth()).toBeGreaterThan(300);
  });

  it("goes round with F6 from grid to pane to bar, and back with Shift, also out of the grid's own Tab", async () => {
    const { page } = open;
    await page.mouse.click(300, 400);
    const areas = [await focusedArea()];
    for (const key of ["F6", "F6", "F6", "Shift+F6", "Shift+F6"]) {
      await page.keyboard.press(key);
      areas.push(await focusedArea());
    }
    expect(areas).toEqual(["grid", "pane", "bar", "grid", "bar", "pane"]);
    await page.keyboard.press("Shift+F6");
    await page.keyboard.press("Tab");
    await page.keyboard.type("77");
    await page.keyboard.press("Enter");
    expect(await valuesAt(page, "Hop test", "C12")).toEqual([[77]]);
    await page.keyboard.press("Control+z");
  });

  it("has no serious fault of accessibility of its own", async () => {
    await open.page.evaluate(axe);
    const faults = await open.page.evaluate(async () => {
      const own = { include: [[".top-bar"], [".splitter"], [".pane"]] };
      const { violations } = await (window as unknown as { axe: typeof import("axe-core") }).axe.run(own);
      return violations.filter(({ impact }) => impact === "serious" || impact === "critical").map(({ id }) => id);
    });
    expect(faults).toEqual([]);
  });
});

describe("a workbook from disk", () => {
  it("asks before changes are left behind, and refuses what is no workbook with its reason", async () => {
    await type(open.page, "'Hop test'!C4", 170);
    await choose({ name: "results.xlsx", mimeType: "", buffer: Buffer.from("Athlete;Left;Right") });
    await open.page.locator("dialog[open]").waitFor();
    expect(await message()).toEqual([
      "Leave the changes behind?",
      "fjordvik-handball has changes that were not saved as .xlsx.",
    ]);
    await open.page.getByRole("button", { name: "Open without saving" }).click();
    await open.page.getByRole("button", { name: "Go back" }).waitFor();
    expect(await message()).toEqual([
      "results.xlsx was not opened",
      "This is not an .xlsx workbook. In your spreadsheet program, choose Save as and the type .xlsx.",
    ]);
    await open.page.keyboard.press("Escape");
    expect(await valuesAt(open.page, "Hop test", "C4")).toEqual([[170]]);
  });

  it("opens a file of another program with its chart, and saves what another program reads", async () => {
    await choose(foreignFile);
    await open.page.getByRole("button", { name: "Open without saving" }).click();
    await workbookNamed("everything");
    expect(await valuesAt(open.page, "Hops & jumps", "D3")).toEqual([[159.123456789012]]);
    expect(await open.page.locator('.chart svg[role="img"]').count()).toBe(1);
    await type(open.page, "'Hops & jumps'!C2", 200);
    const [download] = await Promise.all([open.page.waitForEvent("download"), open.page.keyboard.press("Control+s")]);
    expect(download.suggestedFilename()).toBe("everything.xlsx");
    const saved = new Workbook();
    await saved.xlsx.readFile(await download.path());
    expect(saved.getWorksheet("Hops & jumps")!.getCell("D2").value).toEqual({ formula: "MAX(B2:C2)", result: 200 });
  });

  it("takes a dropped file, without asking once everything is saved", async () => {
    await open.page.evaluate(async () => {
      const bytes = await (await fetch("sample-workbooks/fjordvik-handball.xlsx")).blob();
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([bytes], "dropped.xlsx"));
      for (const step of ["dragenter", "dragover", "drop"]) {
        const event = new DragEvent(step, { dataTransfer, bubbles: true, cancelable: true });
        document.querySelector("#grid")!.dispatchEvent(event);
      }
    });
    await workbookNamed("dropped");
    expect(await valuesAt(open.page, "Hop test", "A4")).toEqual([["Aelvi Drivved"]]);
  });
});

describe("a chart over the grid", () => {
  const chartBox = async () => (await open.page.locator(".chart").boundingBox())!;

  it("is drawn from the cells and follows them, scrolling, and the arrow keys", async () => {
    const { page } = open;
    await page.evaluate(() =>
      window.tapelineHost!.Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Hop test");
        const chart = sheet.charts.add("ColumnClustered", sheet.getRange("C3:C10"));
        chart.setPosition("D6", "H20");
        await context.sync();
      }),
    );
    await page.locator(".chart svg").waitFor();
    const drawing = await page.locator(".chart").innerHTML();
    await type(page, "'Hop test'!C5", 20);
    await page.waitForFunction((before) => document.querySelector(".chart")!.innerHTML !== before, drawing);

    const before = await chartBox();
    await page.mouse.move(200, 600);
    await page.mouse.wheel(0, 100);
    await page.waitForFunction(
      (top) => document.querySelector(".chart")!.getBoundingClientRect().top < top - 50,
      before.y,
    );
    await page.mouse.wheel(0, -300);
    await page.waitForFunction(
      (top) => document.querySelector(".chart")!.getBoundingClientRect().top === top,
      before.y,
    );

    await page.focus(".chart");
    await page.keyboard.press("ArrowRight");
    await page.waitForFunction(
      (left) => document.querySelector(".chart")!.getBoundingClientRect().left > left,
      before.x,
    );
    await page.keyboard.press("Delete");
    await page.waitForFunction(() => document.querySelector(".chart") === null);
  });
});

it("asks nothing of any other machine, and the console stays silent", () => {
  expect(open.foreignRequests).toEqual([]);
  expect(open.complaints).toEqual([]);
});
