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

/** Waits until it is open and, which on a busy machine comes later, calculated. */
async function workbookNamed(name: string): Promise<void> {
  await open.page.waitForFunction(
    (wanted) =>
      document.querySelector("h1")?.textContent === wanted && document.documentElement.dataset.ready === "true",
    name,
    { timeout: 60_000 },
  );
  await open.page.evaluate(() => window.tapelineHost!.settle());
}

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

describe("the grid", () => {
  const selected = () =>
    open.page.evaluate(() =>
      window.tapelineHost!.Excel.run(async (context) => {
        const range = context.workbook.getSelectedRange().load("address");
        await context.sync();
        return range.address.replace(/^Grid!/, "");
      }),
    );

  const select = (address: string) =>
    open.page.evaluate((cells) => window.tapelineHost!.select(cells), `Grid!${address}`);

  /** Presses keys and types texts, in turn; a moment after each, as a person's hands take. */
  const press = async (...strokes: string[]) => {
    for (const stroke of strokes) {
      if (
        /^((Control|Shift|Alt)\+)*(Enter|Tab|Escape|Delete|Backspace|Home|End|Page\w+|Arrow\w+|Space|F2|a|c|v|x|y|z)$/.test(
          stroke,
        )
      )
        await open.page.keyboard.press(stroke);
      else await open.page.keyboard.type(stroke);
      await open.page.waitForTimeout(60);
    }
    await open.page.waitForTimeout(250);
    // A busy machine takes longer to calculate.
    await open.page.evaluate(() => window.tapelineHost!.settle());
  };

  const values = (address: string) => valuesAt(open.page, "Grid", address);

  /** Puts what another program would have copied on the clipboard, and pastes it. */
  const paste = async (address: string, copied: Record<string, string>) => {
    await select(address);
    await open.page.evaluate(async (types) => {
      const blobs = Object.entries(types).map(([type, text]) => [type, new Blob([text], { type })]);
      await navigator.clipboard.write([new ClipboardItem(Object.fromEntries(blobs))]);
    }, copied);
    await press("Control+v");
    await open.page.waitForTimeout(800);
  };

  beforeAll(async () => {
    await open.page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await open.page.evaluate(() =>
      window.tapelineHost!.Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.add("Grid");
        sheet.getRange("J1:K3").values = [
          ["Athlete", "Load (kg)"],
          ["Aelvi", 80],
          ["Dagnja", 90],
        ];
        sheet.tables.add("J1:K3", true).name = "Loads";
        sheet.activate();
        await context.sync();
      }),
    );
    await open.page.mouse.click(300, 500);
  });

  it("takes what is typed: Tab goes right, Enter back to the next row, arrows end an entry too", async () => {
    await select("A1");
    await press("1.5", "Tab", "2.5", "Tab", "=A1+B1", "Enter");
    expect(await selected()).toBe("A2");
    await press("x", "ArrowRight", "y", "ArrowDown");
    expect(await selected()).toBe("B3");
    await press("not this", "Escape");
    expect(await values("A1:C3")).toEqual([
      [1.5, 2.5, 4],
      ["x", "y", ""],
      ["", "", ""],
    ]);
  });

  it("edits with F2 where the entry ends, and breaks lines with Alt and Enter", async () => {
    await select("A1");
    await press("F2", "9", "Enter");
    expect(await values("A1")).toEqual([[1.59]]);
    await select("A5");
    await press("one", "Alt+Enter", "two", "Enter");
    expect(await values("A5")).toEqual([["one\ntwo"]]);
  });

  it("moves and selects by keys as a spreadsheet does", async () => {
    const journeys = [
      ["A1", "Control+ArrowRight", "C1"],
      ["A1", "Control+ArrowDown", "A2"],
      ["A1", "Control+Shift+ArrowRight", "A1:C1"],
      ["B2", "Home", "A2"],
      ["C3", "Control+Home", "A1"],
      ["A1", "Control+End", "K5"],
      ["B2", "Shift+Tab", "A2"],
      ["B2", "Shift+Enter", "B1"],
      ["B2", "Shift+ArrowDown", "B2:B3"],
      ["B2", "Shift+Space", "2:2"],
      ["B2", "Control+Space", "B:B"],
      ["A3", "PageDown", "A28"],
    ] as const;
    const arrived: string[] = [];
    for (const [from, key] of journeys) {
      await select(from);
      await press(key);
      arrived.push(await selected());
    }
    expect(arrived).toEqual(journeys.map(([, , to]) => to));
  });

  it("selects by dragging", async () => {
    await select("A1");
    await open.page.mouse.move(150, 250);
    await open.page.mouse.down();
    await open.page.mouse.move(400, 350, { steps: 8 });
    await open.page.mouse.up();
    expect(await selected()).toMatch(/^[A-C]\d+:[D-F]\d+$/);
  });

  it("takes a table of tabs and lines: leading blanks, quotes, line breaks and decimals", async () => {
    await paste("A20", { "text/plain": '\tLeft\tRight\nAelvi "Ace"\t150.5\t-3\n"two\nlines ""q"""\t<b>\t007\n' });
    expect(await values("A20:C23")).toEqual([
      ["", "Left", "Right"],
      ['Aelvi "Ace"', 150.5, -3],
      ['two\nlines "q"', "<b>", 7],
      ["", "", ""],
    ]);
  });

  it("leaves a decimal comma in a text as it is, and says what a pasted formula lacks", async () => {
    await paste("A26", { "text/plain": "1,5\t2.5\t=TAPELINE.ASYMMETRY(1)" });
    await open.page.locator("dialog[open]").waitFor();
    expect((await message()).slice(-1)).toEqual([
      "=TAPELINE.ASYMMETRY(1): You've entered too few arguments for TAPELINE.ASYMMETRY: right is missing.",
    ]);
    await open.page.keyboard.press("Escape");
    expect(await values("A26:B26")).toEqual([["1,5", 2.5]]);
    await select("A26:C26");
    await press("Delete");
  });

  it("copies out lines of one cell in quotes, and empty cells in their places", async () => {
    await paste("A40", { "text/plain": 'Left\t\tRight\n"two\nlines"\t\t7\n' });
    await select("A40:C41");
    await press("Control+c");
    await open.page.waitForTimeout(500);
    expect(await open.page.evaluate(() => navigator.clipboard.readText())).toBe('Left\t\tRight\n"two\nlines"\t\t7');
    await press("Delete");
  });

  it("takes the numbers behind a table of another program, not how they looked there", async () => {
    const cells = '<td>Left</td><td sdval="150.4567" sdnum="1043;">150,5</td><td x:num="7.125">7.1</td>';
    await paste("A30", { "text/plain": "Left\t150,5\t7.1", "text/html": `<table><tr>${cells}</tr></table>` });
    expect(await values("A30:C30")).toEqual([["Left", 150.4567, 7.125]]);
    await press("Control+z");
    expect(await values("A30:C30")).toEqual([["", "", ""]]);
    await press("Control+y");
    expect(await values("A30:C30")).toEqual([["Left", 150.4567, 7.125]]);
  });

  it("copies out as tabs and lines, pastes within, and moves what was cut", async () => {
    await select("A1:C1");
    await press("Control+c");
    await open.page.waitForTimeout(500);
    expect(await open.page.evaluate(() => navigator.clipboard.readText())).toBe("1.59\t2.5\t4.09");
    await select("E1");
    await press("Control+v");
    expect(await values("E1:G1")).toEqual([[1.59, 2.5, 4.09]]);
    await select("E1:F1");
    await press("Control+x");
    await select("E3");
    await press("Control+v");
    expect(await values("E1:F3")).toEqual([
      ["", ""],
      ["", ""],
      [1.59, 2.5],
    ]);
  });

  it("undoes and does again what was typed, deleted and written by an add-in", async () => {
    await select("A1:B1");
    await press("Delete");
    expect(await values("A1:B1")).toEqual([["", ""]]);
    await press("Control+z");
    expect(await values("A1:B1")).toEqual([[1.59, 2.5]]);
    await open.page.evaluate(() =>
      window.tapelineHost!.Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Grid").getRange("A1").values = [[77]];
        await context.sync();
      }),
    );
    await press("Control+z");
    expect(await values("A1")).toEqual([[1.59]]);
    await press("Control+y");
    expect(await values("A1")).toEqual([[77]]);
  });

  it("takes formulas as Excel has them, and refuses those with a fault in words", async () => {
    await select("H1");
    await press("=SUM(Loads[Load (kg)])", "Enter");
    expect(await values("H1")).toEqual([[170]]);
    await press("=TAPELINE.ASYMMETRY(1", "Enter");
    await open.page.locator("dialog[open]").waitFor();
    expect((await message())[1]).toBe("You've entered too few arguments for TAPELINE.ASYMMETRY: right is missing.");
    await open.page.getByRole("button", { name: "Go back" }).click();
    expect(await values("H2")).toEqual([[""]]);
  });

  it("goes by the name box to an address, another sheet and a table", async () => {
    const nameBox = open.page.locator('[data-u-comp="defined-name"] input');
    const arrived: string[] = [];
    for (const name of ["C5:D6", "'Read me'!A2", "Loads"]) {
      await nameBox.click();
      await nameBox.fill(name);
      await nameBox.press("Enter");
      arrived.push(await selected());
    }
    expect(arrived).toEqual(["C5:D6", "'Read me'!A2", "J2:K3"]);
    await press("81", "Enter");
    expect(await values("J2")).toEqual([[81]]);
  });

  it("adds and names a sheet by the tabs", async () => {
    const { page } = open;
    const tabs = () => page.locator('[data-u-comp="slide-tab-item"]').allTextContents();
    const tab = (name: string) => page.locator('[data-u-comp="slide-tab-item"]', { hasText: name });
    const before = await tabs();
    await page.locator('[data-u-comp="sheet-bar-append-button"]').first().click();
    await page.waitForTimeout(400);
    const [added = ""] = (await tabs()).filter((name) => !before.includes(name));
    await tab(added).dblclick();
    await press("Control+a", "Extra", "Enter");
    expect(await tabs()).toEqual([...before, "Extra"]);
  }, 90_000);
});

describe("a page whose task pane does not load", () => {
  it("says so in the pane's place, keeps the workbook usable, and tries again", async () => {
    const page = await open.page.context().browser()!.newPage();
    await page.route("**/functions.json", (route) => route.fulfill({ status: 404, body: "" }));
    await page.goto(open.page.url());
    await page
      .getByText("The task pane did not load. The workbook is open and can be saved.")
      .waitFor({ timeout: 60_000 });
    await type(page, "'Hop test'!C4", 171);
    expect(await valuesAt(page, "Hop test", "C4")).toEqual([[171]]);
    await page.unroute("**/functions.json");
    await page.getByRole("button", { name: "Try again" }).click();
    await page.waitForSelector('html[data-ready="true"]', { timeout: 60_000 });
    expect(await page.locator("#pane iframe").count()).toBe(1);
    await page.close();
  });
});

it("asks nothing of any other machine, and the console stays silent", () => {
  expect(open.foreignRequests).toEqual([]);
  expect(open.complaints).toEqual([]);
});
