import { plantedAsymmetries } from "../../sample-workbooks/plantedTruths";
import { ask, goToSheet, type OpenPage, openPage, seriousFaults, tableNamed, tabTo, type, valuesAt } from "./page";

let open: OpenPage;

beforeAll(async () => {
  open = await openPage();
}, 90_000);

afterAll(() => open.close());

const paneText = () => open.pane.locator("main").textContent();

/** What the pane says of a table written or renewed where it stands now. */
const toldOf = async ({ page }: OpenPage, name: string) => {
  const { sheet, address } = await tableNamed(page, name);
  return `${sheet}, ${address}`;
};

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
    expect(await seriousFaults(open.pane)).toEqual([]);
    await ask(open.pane, "Left-right asymmetry");
    await goToSheet(open.page, "Hop test");
    await drag([100, 209], [860, 690]);
    await open.pane.getByText(/'Hop test'!A3:H\d\d/).waitFor();
    expect(await paneText()).toMatch(/2\d athletes, one row each; \d+ results in cm/);
    expect(await paneText()).toContain("Left trials C, D, E");
    expect(await seriousFaults(open.pane)).toEqual([]);
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
    await open.pane.getByText("Written: Asymmetry, ").waitFor();
    await open.pane.getByText(`Written: ${await toldOf(open, "Tapeline_Asymmetry")}`).waitFor();
    const { headings, rows } = await tableNamed(open.page, "Tapeline_Asymmetry");
    expect(headings.slice(0, 7)).toEqual([
      "Athlete",
      "Left (cm)",
      "Right (cm)",
      "Asymmetry (%)",
      "Stronger side",
      "Noise limit (%)",
      "Verdict",
    ]);
    expect(rows).toHaveLength(26);
    expect(rows[0]).toMatchObject({
      Athlete: "Torvei Bjørnemose",
      "Left (cm)": 174,
      "Right (cm)": 150,
      Verdict: "Beyond noise, above 10 %",
    });
    expect(rows[0]!["Asymmetry (%)"]).toBeCloseTo((100 * (150 - 174)) / 174, 12);
    expect(await seriousFaults(open.pane)).toEqual([]);
  });

  it("finds the custom functions giving the table's numbers, and recalculating when a result changes", async () => {
    await type(open.page, "'Hop test'!K4", "=TAPELINE.ASYMMETRY(C25:E25,F25:H25)");
    await type(open.page, "'Hop test'!L4", "=TAPELINE.NOISELIMIT(C4:E29,F4:H29)");
    const asymmetry = (await valuesAt(open.page, "Hop test", "K4"))[0]![0];
    const limits = await valuesAt(open.page, "Hop test", "L4:L29");
    const { rows } = await tableNamed(open.page, "Tapeline_Asymmetry");
    const athletes = (await valuesAt(open.page, "Hop test", "A4:A29")).flat();
    expect(asymmetry).toBe(rows[0]!["Asymmetry (%)"]);
    for (const row of rows) expect(limits[athletes.indexOf(row.Athlete)]).toEqual([row["Noise limit (%)"]]);
    await type(open.page, "'Hop test'!F25", 174);
    expect(await valuesAt(open.page, "Hop test", "K4")).toEqual([[0]]);
  });

  it("presses again after the change: the same table is renewed", async () => {
    const standing = await toldOf(open, "Tapeline_Asymmetry");
    await open.pane.getByRole("button", { name: "Renew the table on “Asymmetry”" }).click();
    await open.pane.getByText(`Renewed: ${standing}`).waitFor();
    const { rows } = await tableNamed(open.page, "Tapeline_Asymmetry");
    expect(rows[0]).toMatchObject({
      Athlete: "Torvei Bjørnemose",
      "Left (cm)": 174,
      "Right (cm)": 174,
      "Asymmetry (%)": 0,
    });
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
    expect(await seriousFaults(open.pane)).toEqual([]);
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
    expect(await seriousFaults(open.pane)).toEqual([]);
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
    const { keyboard } = page;
    for (const key of ["ArrowDown", "ArrowDown", "Control+Shift+ArrowRight", "Control+Shift+ArrowDown"])
      await keyboard.press(key);

    await keyboard.press("F6");
    await page.waitForFunction(() => document.activeElement?.tagName === "IFRAME");
    await tabTo(page, pane, "Left-right asymmetry");
    await keyboard.press("Enter");
    await pane.getByText("'Hop test'!A3:H29").waitFor();
    await tabTo(page, pane, "Write to a new sheet “Asymmetry”");
    await keyboard.press("Enter");
    await pane.getByText("Written: Asymmetry, ").waitFor();
    const { rows } = await tableNamed(page, "Tapeline_Asymmetry");
    expect(rows[0]).toMatchObject({ Athlete: "Torvei Bjørnemose", "Left (cm)": 174, "Right (cm)": 150 });

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
