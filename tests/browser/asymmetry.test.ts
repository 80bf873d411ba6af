import { readFileSync } from "node:fs";
import { plantedAsymmetries } from "../../sample-workbooks/plantedTruths";
import { ask, goToSheet, type OpenPage, openPage, type, valuesAt } from "./page";

const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

let open: OpenPage;

beforeAll(async () => {
  open = await openPage();
}, 90_000);

afterAll(() => open.close());

const paneText = () => open.pane.locator("main").textContent();

async function seriousFaults(): Promise<string[]> {
  await open.pane.evaluate(axe);
  return open.pane.evaluate(async () => {
    const { violations } = await (window as unknown as { axe: typeof import("axe-core") }).axe.run(document);
    return violations
      .filter(({ impact }) => impact === "serious" || impact === "critical")
      .map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
}

/** Drags from one cell to another, by their places on the screen of 1366 by 768. */
async function drag(from: readonly [number, number], to: readonly [number, number]): Promise<void> {
  const { mouse } = open.page;
  await mouse.move(...from);
  await mouse.down();
  await mouse.move(...to, { steps: 8 });
  await mouse.up();
}

describe("a coach with the mouse", () => {
  it("selects the hop results and sees what was understood", async () => {
    expect(await seriousFaults()).toEqual([]);
    await ask(open.pane, "Left-right asymmetry");
    await goToSheet(open.page, "Hop test");
    await drag([100, 209], [860, 690]);
    await open.pane.getByText(/'Hop test'!A3:H\d\d/).waitFor();
    expect(await paneText()).toMatch(/2\d athletes, one row each; \d+ results in cm/);
    expect(await paneText()).toContain("Left trials C, D, E");
    expect(await seriousFaults()).toEqual([]);
  });

  it("clicks one cell instead, and the whole block is read", async () => {
    await goToSheet(open.page, "Hop test long");
    await open.pane.getByText("26 athletes, one row per attempt; 156 results in cm.").waitFor();
    await goToSheet(open.page, "Hop test");
    await open.page.mouse.click(100, 160);
    await open.pane.getByText("26 athletes, one row each; 156 results in cm.").waitFor();
  });

  it("reads the answer before anything is written: the planted truths", async () => {
    const text = await paneText();
    for (const { athlete, strongerSide } of plantedAsymmetries) {
      if (strongerSide !== "neither" && athlete !== "Sivje Fjærestein")
        expect(text).toContain(`${athlete} (${strongerSide} stronger`);
    }
    expect(text).toContain("Gudvi Solgangsbris (left stronger, 10.7 %): above 10 %, but noise can do that.");
  });

  it("asks what a setting means", async () => {
    await open.pane.getByRole("button", { name: "What is “Noise from”?" }).click();
    await open.pane.getByText(/steadied by the group's\. The CV rule is common and lenient/).waitFor();
    await open.page.keyboard.press("Escape");
  });

  it("writes the table to its own sheet and reads it back from the grid", async () => {
    await open.pane.getByRole("button", { name: "Write to a new sheet “Asymmetry”" }).click();
    await open.pane.getByText("Written: Asymmetry, A6:L32").waitFor();
    const cells = await valuesAt(open.page, "Asymmetry", "A6:G8");
    expect(cells[0]).toEqual([
      "Athlete",
      "Left (cm)",
      "Right (cm)",
      "Asymmetry (%)",
      "Stronger side",
      "Noise limit (%)",
      "Verdict",
    ]);
    expect(cells[1]!.slice(0, 3)).toEqual(["Torvei Bjørnemose", 174, 150]);
    expect(cells[1]![3]).toBeCloseTo((100 * (150 - 174)) / 174, 12);
    expect(cells[1]![6]).toBe("Beyond noise, above 10 %");
    expect(await seriousFaults()).toEqual([]);
  });

  it("finds the custom functions giving the table's numbers, and recalculating when a result changes", async () => {
    await type(open.page, "'Hop test'!K4", "=TAPELINE.ASYMMETRY(C25:E25,F25:H25)");
    await type(open.page, "'Hop test'!L4", "=TAPELINE.NOISELIMIT(C4:E29,F4:H29)");
    const asymmetry = (await valuesAt(open.page, "Hop test", "K4"))[0]![0];
    const limits = await valuesAt(open.page, "Hop test", "L4:L29");
    const table = await valuesAt(open.page, "Asymmetry", "A7:F32");
    const athletes = (await valuesAt(open.page, "Hop test", "A4:A29")).flat();
    expect(asymmetry).toBe(table[0]![3]);
    for (const row of table) expect(limits[athletes.indexOf(row[0])]).toEqual([row[5]]);
    await type(open.page, "'Hop test'!F25", 174);
    expect(await valuesAt(open.page, "Hop test", "K4")).toEqual([[0]]);
  });

  it("presses again after the change: the same table is renewed", async () => {
    await open.pane.getByRole("button", { name: "Renew the table on “Asymmetry”" }).click();
    await open.pane.getByText("Renewed: Asymmetry, A6:L32").waitFor();
    expect((await valuesAt(open.page, "Asymmetry", "A7:D7"))[0]).toEqual(["Torvei Bjørnemose", 174, 174, 0]);
    await type(open.page, "'Hop test'!F25", 147);
    for (const cell of ["K4", "L4"]) await type(open.page, `'Hop test'!${cell}`, "");
  });

  it("is told of every dirty cell, and a click on it goes there", async () => {
    await goToSheet(open.page, "Hop test dirty");
    await open.pane.getByText("12 cells left out").waitFor();
    await open.pane.getByRole("button", { name: /^Show \d+ more$/ }).click();
    const text = await paneText();
    for (const words of [
      "“DNS” stands for did not start",
      "“inj” stands for injured",
      "#DIV/0!",
      "merged cells C8:D8",
      "is hidden and was left out",
    ]) {
      expect(text).toContain(words);
    }
    await open.pane.getByRole("button", { name: "Go to E7" }).click();
    const active = await open.page.evaluate(() =>
      window.tapelineHost!.Excel.run(async (context) => {
        const cell = context.workbook.getActiveCell();
        cell.load("address");
        await context.sync();
        return cell.address;
      }),
    );
    expect(active).toBe("'Hop test dirty'!E7");
    expect(await seriousFaults()).toEqual([]);
  });

  it("mends a cell, and the answer follows", async () => {
    await type(open.page, "'Hop test dirty'!E7", 150);
    await open.pane.getByText("11 cells left out").waitFor();
    await type(open.page, "'Hop test dirty'!E7", "DNS");
    await open.pane.getByText("12 cells left out").waitFor();
  });

  it("corrects what was understood: another column for the athletes, and no left trials", async () => {
    await open.pane.getByRole("button", { name: "Columns and unit" }).click();
    for (const letter of ["C", "D", "E"]) {
      await open.pane.getByLabel(new RegExp(`^${letter}: `)).selectOption("none");
    }
    await open.pane.getByText("Say which column holds the left results.").waitFor();
    await open.pane.getByLabel(/^C: /).selectOption("left");
    await open.pane.getByText("Left trials C").waitFor();
  });

  it("selects nothing of use, and is told what to select", async () => {
    await goToSheet(open.page, "Read me");
    await open.pane.getByText("No answer yet").waitFor();
    expect(await seriousFaults()).toEqual([]);
  });
});

describe("a coach with the keyboard alone", () => {
  let alone: OpenPage;

  beforeAll(async () => {
    alone = await openPage();
  }, 90_000);

  afterAll(() => alone.close());

  it("selects the results, goes over to the pane, writes, and comes back to the grid", async () => {
    const { page, pane } = alone;
    const focused = () => pane.evaluate(() => document.activeElement?.textContent ?? "");
    const { keyboard } = page;
    const tabTo = async (words: string) => {
      for (let press = 0; press < 40 && !(await focused()).startsWith(words); press++) await keyboard.press("Tab");
      expect(await focused()).toMatch(new RegExp(`^${words}`));
    };
    for (const key of ["ArrowDown", "ArrowDown", "Control+Shift+ArrowRight", "Control+Shift+ArrowDown"])
      await keyboard.press(key);

    await keyboard.press("F6");
    await page.waitForFunction(() => document.activeElement?.tagName === "IFRAME");
    await tabTo("Left-right asymmetry");
    await keyboard.press("Enter");
    await pane.getByText("'Hop test'!A3:H29").waitFor();
    await tabTo("Write to a new sheet “Asymmetry”");
    await keyboard.press("Enter");
    await pane.getByText("Written: Asymmetry, A6:L32").waitFor();
    expect((await valuesAt(page, "Asymmetry", "A7:C7"))[0]).toEqual(["Torvei Bjørnemose", 174, 150]);

    await keyboard.press("F6");
    await page.waitForFunction(() => document.activeElement?.tagName !== "IFRAME");
    expect(alone.complaints).toEqual([]);
  });
});

describe("the page", () => {
  it("asks nothing of any other origin, and complains of nothing", () => {
    expect(open.foreignRequests).toEqual([]);
    expect(open.complaints).toEqual([]);
  });
});
