import { noise } from "../../sample-workbooks/noise";
import { implausible, plantedAsymmetries, slips, swappedSides, weakest } from "../../sample-workbooks/plantedTruths";
import { noteOn, squad } from "../../sample-workbooks/squad";
import { testDays } from "../../sample-workbooks/testDays";
import {
  ask,
  goToSheet,
  type OpenPage,
  openPage,
  type StandingTable,
  seriousFaults,
  tableNamed,
  tabTo,
  type,
  valuesAt,
} from "./page";

/** A coach's season from the list of names to the decisions, on the sample workbook; each step goes on from the last. */
jest.setTimeout(150_000);

const day = "2026-08-13";
const entrySheet = "Test day 13 Aug";
/** What cannot be a hop: typed in millimetres. */
const inMillimetres = 1520;
/** What cannot be a flight time in ms, and no unit or comma explains. */
const noFlight = 990;
/** Stood on a cell before we marked it. */
const coachsNote = "Ask her about the mat";

let open: OpenPage;

beforeAll(async () => {
  open = await openPage();
}, 150_000);

afterAll(() => open.close());

const press = (name: string | RegExp) => open.pane.getByRole("button", { name }).first().click();
const told = (words: string | RegExp) => open.pane.getByText(words).first().waitFor({ timeout: 60_000 });
const start = () => press("‹ Start");

async function askKept(title: string): Promise<void> {
  await ask(open.pane, title);
  await open.pane.getByLabel("Results from").selectOption("kept");
  await told("The workbook's results");
}

/** Writes the answer at hand to a sheet of its own, and reads the table back. */
async function written(sheet: string, table: string): Promise<StandingTable> {
  await press(`Write to a new sheet “${sheet}”`);
  await told(`Written: ${sheet}, `);
  return tableNamed(open.page, table);
}

/** Rows of the workbook's table of results; as made, it has one that is empty. */
const keptRows = async (page: OpenPage["page"]) =>
  (await tableNamed(page, "Tapeline_Results")).rows.filter(({ Athlete }) => Athlete !== "");

/** Cell of an athlete under a heading of a test-day sheet, whose headings stand in row 4. */
async function cellOf(sheet: string, athlete: string, heading: string): Promise<string> {
  const [headings = []] = await valuesAt(open.page, sheet, "A4:AZ4");
  const names = (await valuesAt(open.page, sheet, "A1:A60")).flat();
  const [column, row] = [headings.indexOf(heading), names.indexOf(athlete)];
  if (column < 0 || row < 0) throw new Error(`${sheet} has no ${heading} of ${athlete}.`);
  const letters = column < 26 ? "" : String.fromCharCode(64 + Math.floor(column / 26));
  return `${letters}${String.fromCharCode(65 + (column % 26))}${row + 1}`;
}

/** Notes and looks of the coach's sheets, as any add-in reads them; edges of the cell that is surely marked. */
const look = async () => {
  const edgesOf = await cellOf(implausible.sheet, implausible.athlete, implausible.heading);
  return open.page.evaluate(
    ([markedSheet, marked]) =>
      window.tapelineHost!.Excel.run(async (context) => {
        const sheets = ["Field 18 Aug", "Gym 20 Aug", "Gym 27 Aug"].map((name) => {
          const sheet = context.workbook.worksheets.getItem(name);
          sheet.notes.load("items/content");
          const cells = sheet.getRange("A1:AZ60").getCellProperties({
            format: { font: { bold: true, italic: true, color: true }, fill: { color: true } },
          });
          return { sheet, cells };
        });
        const { borders } = context.workbook.worksheets.getItem(markedSheet!).getRange(marked!).format;
        const edges = (["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"] as const).map((edge) =>
          borders.getItem(edge).load("style,weight"),
        );
        await context.sync();
        return {
          edges: edges.map(({ style, weight }) => `${style} ${weight}`),
          notes: sheets.map(({ sheet }) => sheet.notes.items.map(({ content }) => content)),
          cells: sheets.map(({ cells }) => JSON.stringify(cells.value)),
          /** How many cells have bold italic figures, as marked ones have. */
          standingOut: sheets.map(
            ({ cells }) => cells.value.flat().filter(({ format }) => format?.font?.bold && format.font.italic).length,
          ),
        };
      }),
    [implausible.sheet, edgesOf],
  );
};

/** How they looked before anything was marked. */
let before: Awaited<ReturnType<typeof look>>;

describe("squad and tests", () => {
  it("are taken from the coach's own list of names, each with role, hand and build", async () => {
    await goToSheet(open.page, "Squad");
    await press("Set up squad and tests");
    await told(`${squad.length} athletes in what you have selected on “Squad”:`);
    expect(await seriousFaults(open.pane)).toEqual([]);
    await press("Set up on 4 new sheets");
    await told("In this workbook");
    await told(`${squad.length} athletes`);
    const { rows } = await tableNamed(open.page, "Tapeline_Squad");
    expect(rows).toHaveLength(squad.length);
    for (const { name, role, team, throwingHand, birthYear, bodyMass, stature } of squad) {
      expect(rows.find(({ Athlete }) => Athlete === name)).toMatchObject({
        Role: role,
        Group: team,
        Notes: noteOn(name) ?? "",
        "Dominant side": throwingHand.toLowerCase(),
        "Birth year": birthYear,
        "Body mass (kg)": bodyMass,
        "Stature (cm)": stature,
      });
    }
    const { headings } = await tableNamed(open.page, "Tapeline_Weights");
    expect(headings).toEqual(["Quality", ...new Set(squad.map(({ role }) => role))]);
    expect(await seriousFaults(open.pane)).toEqual([]);
  });

  it("stand on sheets of their own, beside the coach's, and are gone to by a press", async () => {
    const { sheet } = await tableNamed(open.page, "Tapeline_Squad");
    expect(sheet).not.toBe("Squad");
    expect((await valuesAt(open.page, "Squad", "A3:B3"))[0]).toEqual(["Name", "Role"]);
    await open.pane.getByRole("button", { name: "Squad", exact: true }).click();
    await open.page.waitForFunction(
      (wanted) =>
        window.tapelineHost!.Excel.run(async (context) => {
          const active = context.workbook.worksheets.getActiveWorksheet().load("name");
          await context.sync();
          return active.name === wanted;
        }),
      sheet,
    );
  });

  it("are the coach's to change by hand: the turn is called as on her sheets", async () => {
    const battery = await tableNamed(open.page, "Tapeline_Battery");
    for (const [index, { Test }] of battery.rows.entries()) {
      if (Test === "505 change of direction")
        await type(open.page, `'${battery.sheet}'!${battery.cell(index, "Test")}`, "505");
    }
    await press("Make a sheet for a test day");
    await open.pane.getByLabel("505", { exact: true }).waitFor();
  });
});

describe("a test day", () => {
  it("has a sheet made for it, with a column for each trial of the tests that are ticked", async () => {
    await open.pane.getByLabel("Day of the test").fill(day);
    await open.pane.getByLabel("Single-leg hop", { exact: true }).check();
    await open.pane.getByLabel("Countermovement jump", { exact: true }).check();
    expect(await seriousFaults(open.pane)).toEqual([]);
    await press(`Make “${entrySheet}” for ${squad.length} athletes`);
    await told(`Made: ${entrySheet}`);
    const { sheet, headings, rows } = await tableNamed(open.page, "Tapeline_Entry");
    expect(sheet).toBe(entrySheet);
    expect(rows.map(({ Athlete }) => Athlete)).toEqual(squad.map(({ name }) => name));
    const trials = [1, 2, 3];
    // In the order of the battery.
    expect(headings).toEqual([
      ...["Athlete", "Role"],
      ...trials.map((trial) => `Countermovement jump flight time ${trial} (ms)`),
      ...["left", "right"].flatMap((side) => trials.map((trial) => `Single-leg hop ${side} ${trial} (cm)`)),
    ]);
    expect(await seriousFaults(open.pane)).toEqual([]);
  });

  it("takes results as they are typed, and keeps those that can be read", async () => {
    const entry = await tableNamed(open.page, "Tapeline_Entry");
    const typeInto = (row: number, heading: string, value: string | number) =>
      type(open.page, `'${entrySheet}'!${entry.cell(row, heading)}`, value);
    const hops = [
      ["152,5", 150, 151, 149, "DNS", 150],
      [148, 147, 149, inMillimetres, 150, 151],
      [160, 158, 161, 163, 160, "about 160"],
    ];
    const [jump] = entry.headings.filter((heading) => heading.startsWith("Countermovement jump"));
    const headings = entry.headings.filter((heading) => heading.startsWith("Single-leg hop"));
    for (const [row, values] of hops.entries())
      for (const [column, value] of values.entries()) await typeInto(row, headings[column]!, value);
    await typeInto(0, jump!, 480);
    await typeInto(1, jump!, noFlight);

    await press("Keep results");
    await told("17 results typed, 3 cells cannot be read");
    await told(/“DNS” stands for did not start/);
    await told(new RegExp(String(inMillimetres)));
    expect(await seriousFaults(open.pane)).toEqual([]);
    await open.pane.getByRole("listitem").getByRole("button", { name: "Keep 17 results" }).click();
    await told("17 new results kept");
    const rows = await keptRows(open.page);
    expect(rows).toHaveLength(17);
    const first = squad[0]!.name;
    expect(
      rows
        .filter(({ Athlete, Test }) => Athlete === first && Test === "Single-leg hop")
        .map(({ Side, Trial, Value, Unit }) => [String(Side).toLowerCase(), Trial, Value, Unit]),
    ).toEqual([
      ["left", 1, 152.5, "cm"],
      ["left", 2, 150, "cm"],
      ["left", 3, 151, "cm"],
      ["right", 1, 149, "cm"],
      ["right", 3, 150, "cm"],
    ]);
    expect(await seriousFaults(open.pane)).toEqual([]);
  });

  it("is kept once: the same again adds nothing, a corrected cell is renewed", async () => {
    const button = open.pane.getByRole("listitem").getByRole("button", { name: "Keep 17 results" });
    await button.click();
    await told("Nothing new");
    await told("17 results had been kept before.");
    const entry = await tableNamed(open.page, "Tapeline_Entry");
    await type(open.page, `'${entrySheet}'!${entry.cell(0, "Single-leg hop left 2 (cm)")}`, 151);
    await told("17 results typed, 3 cells cannot be read");
    // The pane reads the sheet again when it has been quiet for a moment.
    await open.page.waitForTimeout(2000);
    await button.click();
    await told("1 result corrected on the sheet since: renewed.");
    const rows = await keptRows(open.page);
    expect(rows).toHaveLength(17);
    expect(rows.filter(({ Value }) => Value === 151)).toHaveLength(3);
  });
});

describe("the coach's own sheets of test days", () => {
  /** Every number that was typed; words such as "inj" are no results, and slips are left out with a remark. */
  const numbersOn = (sheet: string) =>
    testDays()
      .find((one) => one.sheet === sheet)!
      .rows.flatMap(({ cells }) => cells)
      .filter((cell) => typeof cell === "number").length;

  it.each([
    ["Field 18 Aug", "2026-08-18"],
    ["Gym 20 Aug", "2026-08-20"],
    ["Gym 27 Aug", "2026-08-27"],
  ])("%s is kept by selecting it, once, under its day", async (sheet, date) => {
    await goToSheet(open.page, sheet);
    await told(new RegExp(`'${sheet}'!`));
    const before = (await keptRows(open.page)).length;
    const slipped = slips.filter((slip) => slip.sheet === sheet);
    for (const { athlete, heading } of slipped) await told(await cellOf(sheet, athlete, heading));
    const count = numbersOn(sheet) - slipped.length;
    const button = open.pane.locator("footer").getByRole("button", { name: `Keep ${count} results` });
    expect(await open.pane.getByLabel("Day of these results").inputValue()).toBe(date);
    await button.click();
    await told(`${count} new results kept`);
    expect(await keptRows(open.page)).toHaveLength(before + count);
    await button.click();
    await told(`${count} results had been kept before.`);
    expect(await keptRows(open.page)).toHaveLength(before + count);
  });
});

describe("reliability", () => {
  it("finds about the noise that the season was made with", async () => {
    await start();
    await askKept("Reliability of a test");
    expect(await seriousFaults(open.pane)).toEqual([]);
    const { rows } = await written("Reliability", "Tapeline_Reliability");
    // With some 45 athletes the typical error is known to about a tenth; the gates add a little of their own.
    for (const [test, key] of [
      ["Single-leg hop, left", "singleLegHop"],
      ["Single-leg hop, right", "singleLegHop"],
      ["Sprint, 10 m", "sprint"],
      ["Overhead medicine-ball throw", "medicineBallThrow"],
    ] as const) {
      const share = Number(rows.find(({ Test }) => Test === test)?.["CV (%)"]) / noise[key].trial;
      expect([test, share > 0.8 && share < 1.25]).toEqual([test, true]);
    }
    expect(await seriousFaults(open.pane)).toEqual([]);
  });
});

describe("asymmetry", () => {
  it("finds the truly uneven, and spares whom only noise made uneven", async () => {
    await start();
    await askKept("Left-right asymmetry");
    await open.pane.getByLabel("Which test").selectOption("Single-leg hop");
    expect(await seriousFaults(open.pane)).toEqual([]);
    const { rows } = await written("Asymmetry", "Tapeline_Asymmetry");
    const of = (name: string) => rows.find(({ Athlete }) => Athlete === name)!;
    for (const name of ["Torvei Bjørnemose", "Marvi Skumring", swappedSides.athlete])
      expect([name, of(name).Verdict]).toEqual([name, expect.stringContaining("Beyond noise")]);
    for (const { athlete, strongerSide } of plantedAsymmetries) {
      if (strongerSide === "neither") expect(of(athlete).Verdict).not.toContain("Beyond noise");
    }
  });
});

describe("ranking", () => {
  /** The ready-made battery's words for the qualities of the season. */
  const qualities = {
    Speed: "Speed",
    "Change of direction": "Change of direction",
    "Throwing power": "Upper-body power",
    "Maximal strength": "Strength",
    "Trunk and leg capacity": "Muscle capacity",
    Endurance: "Endurance",
  } as const;

  it("puts last in each quality the senior who is", async () => {
    await start();
    await askKept("Squad ranking");
    expect(await seriousFaults(open.pane)).toEqual([]);
    const { headings, rows } = await written("Ranking", "Tapeline_Ranking");
    const seniors = new Set(squad.filter(({ team }) => team === "Seniors").map(({ name }) => name));
    const last = Object.entries(qualities).map(([quality, called]) => {
      const heading = headings.find((one) => one.startsWith(called));
      const scored = rows.flatMap(({ Athlete, [heading ?? ""]: score }) =>
        typeof score === "number" && seniors.has(String(Athlete)) ? [{ athlete: String(Athlete), score }] : [],
      );
      return [quality, scored.sort((a, b) => a.score - b.score)[0]?.athlete];
    });
    expect(last).toEqual(Object.keys(qualities).map((quality) => [quality, weakest[quality as keyof typeof weakest]]));
  });
});

describe("look again", () => {
  it("names what was typed wrongly and whose sides were swapped, cell by cell", async () => {
    const cell = await cellOf(implausible.sheet, implausible.athlete, implausible.heading);
    await open.page.evaluate(
      ([sheet, address, note]) =>
        window.tapelineHost!.Excel.run(async (context) => {
          context.workbook.worksheets.getItem(sheet!).notes.add(address!, note!);
          await context.sync();
        }),
      [implausible.sheet, cell, coachsNote],
    );
    before = await look();
    await start();
    await askKept("Look again");
    expect(await seriousFaults(open.pane)).toEqual([]);
    const { rows } = await written("Look again", "Tapeline_Retest");
    const of = (athlete: string, test: string) =>
      rows.filter(({ Athlete, Test }) => Athlete === athlete && String(Test).startsWith(test));

    const [flown] = of(implausible.athlete, "Countermovement jump");
    expect(flown).toMatchObject({ Cell: expect.stringContaining(cell) });
    expect(of(swappedSides.athlete, "Single-leg hop").map(({ Why }) => Why)).toContainEqual(
      expect.stringMatching(/side/i),
    );
    expect(of(squad[1]!.name, "Countermovement jump").map(({ Why }) => Why)).toContainEqual(
      expect.stringContaining(String(noFlight)),
    );
  });

  it("marks them on the coach's sheets, beside her own note, and clears the marks without a trace", async () => {
    await press(/^Mark \d+ cells on the sheet$/);
    await told(/\d+ cells marked/);
    const marked = await look();
    for (const notes of marked.notes) expect(notes.some((note) => note.includes("Check: "))).toBe(true);
    expect(marked.notes[1]!.find((note) => note.startsWith(coachsNote))).toContain("Check: ");
    expect(before.standingOut).toEqual([0, 0, 0]);
    expect(marked.standingOut).toEqual(marked.notes.map((notes) => notes.length));
    expect(marked.edges).toEqual(Array(4).fill("Dash Medium"));
    expect(await seriousFaults(open.pane)).toEqual([]);

    await press("Clear all marks");
    await told(/\d+ marks cleared\./);
    expect(await look()).toEqual(before);
  });
});

describe("the last thing written", () => {
  const tableNames = () =>
    open.page.evaluate(() =>
      window.tapelineHost!.Excel.run(async (context) => {
        const { tables } = context.workbook;
        tables.load("items/name");
        await context.sync();
        return tables.items.map(({ name }) => name);
      }),
    );

  it("is taken back, and then what was written before it", async () => {
    const bar = open.pane.getByRole("complementary", { name: "Last thing written" });
    await bar.getByText("Cleared the marks").waitFor();
    await press("Take back");
    await bar.getByText(/^Marked/).waitFor();
    expect((await look()).notes[1]!.find((note) => note.startsWith(coachsNote))).toContain("Check: ");
    await press("Take back");
    await bar.getByText(/'Look again'!/).waitFor();
    expect(await look()).toEqual(before);
    expect(await tableNames()).toContain("Tapeline_Retest");
    await press("Take back");
    await bar.getByText(/Ranking!/).waitFor();
    expect(await tableNames()).not.toContain("Tapeline_Retest");
    expect(await tableNames()).toContain("Tapeline_Ranking");
  });
});

describe("a retest", () => {
  it("has a sheet made from what is to be looked at: those athletes, those tests", async () => {
    await press(/^Make a sheet to test \d+ athletes again$/);
    await told("Only the athletes who are to be tested again.");
    await open.pane.getByLabel("Day of the test").fill("2026-11-24");
    expect(await open.pane.getByLabel("Countermovement jump", { exact: true }).isChecked()).toBe(true);
    expect(await seriousFaults(open.pane)).toEqual([]);
    await press(/^Make “Test day 24 Nov” for \d+ athletes$/);
    await told("Made: Test day 24 Nov");
    const names = (await valuesAt(open.page, "Test day 24 Nov", "A5:A60")).flat();
    expect(names).toContain(implausible.athlete);
    expect(names.filter((name) => squad.some((member) => member.name === name)).length).toBeLessThan(squad.length);
  });
});

describe("a coach with the keyboard alone", () => {
  let alone: OpenPage;

  beforeAll(async () => {
    alone = await openPage();
  }, 150_000);

  afterAll(() => alone.close());

  it("sets up, makes a sheet for a test day, types a result and keeps it", async () => {
    const { page, pane } = alone;
    const { keyboard } = page;
    const toPane = async () => {
      await keyboard.press("F6");
      await page.waitForFunction(() => document.activeElement?.tagName === "IFRAME");
    };
    const pressOn = async (words: string) => {
      await tabTo(page, pane, words);
      await keyboard.press("Enter");
    };
    // The page opens in the grid, on a sheet with names.
    await keyboard.press("ArrowDown");
    await pane.getByText("Ask a question of any results you select").waitFor();
    await toPane();
    await pressOn("Set up squad and tests");
    await pane.getByText("26 athletes in what you have selected").waitFor();
    await pressOn("Set up on 4 new sheets");
    await pane.getByText("In this workbook").waitFor({ timeout: 60_000 });
    await pressOn("Make a sheet for a test day");
    // Screens are fetched when first asked for; a person waits for them, too.
    await pane.getByText("Day of the test").waitFor();
    await tabTo(page, pane, "Single-leg hop");
    await keyboard.press("Space");
    await pressOn("Make “Test day");
    await pane.getByText(/^Made: Test day/).waitFor({ timeout: 60_000 });

    await keyboard.press("F6");
    await keyboard.press("F6");
    await page.waitForFunction(() => document.activeElement?.tagName !== "IFRAME");
    const entry = await tableNamed(page, "Tapeline_Entry");
    for (let step = 0; step < 4; step++) await keyboard.press("ArrowDown");
    for (let step = 0; step < 2; step++) await keyboard.press("ArrowRight");
    await keyboard.type("152");
    await keyboard.press("Enter");
    await page.waitForTimeout(500);
    expect((await valuesAt(page, entry.sheet, entry.cell(0, "Single-leg hop left 1 (cm)")))[0]).toEqual([152]);

    await toPane();
    await pressOn("Keep results");
    await pane.getByText("1 result typed").waitFor();
    await pressOn("Keep 1 result");
    await pane.getByText("1 new result kept").waitFor({ timeout: 60_000 });
    const rows = await keptRows(page);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ Athlete: entry.rows[0]!.Athlete, Test: "Single-leg hop", Value: 152, Unit: "cm" });
    expect(alone.complaints).toEqual([]);
    expect(alone.foreignRequests).toEqual([]);
  });
});

describe("the page", () => {
  it("asks nothing of any other origin, and complains of nothing", () => {
    expect(open.foreignRequests).toEqual([]);
    expect(open.complaints).toEqual([]);
  });
});
