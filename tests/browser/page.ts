import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Browser, chromium, type Frame, type Page } from "playwright-core";
import type { Host } from "../../src/host";
import { serve } from "../../src/host/serve.mjs";
import { areaAddress, placeOf } from "../../src/reading/address";
import { chromiumFlags, findChromium } from "./chromium.mjs";

declare global {
  interface Window {
    tapelineHost?: Host;
  }
}

const dist = join(__dirname, "../../dist");
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** The embedded host's page in a real browser, with the sample workbook open and the task pane docked. */
export type OpenPage = {
  readonly page: Page;
  readonly pane: Frame;
  /** Addresses asked for that are not the page's own. */
  readonly foreignRequests: readonly string[];
  /** What the page complained of in its console. */
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
};

export async function openPage(viewport = { width: 1366, height: 768 }): Promise<OpenPage> {
  const server = await serve(dist, { port: 0 });
  const browser = await startBrowser();
  // The stories are told in English, whatever the language of the machine.
  const page = await browser.newPage({ viewport, locale: "en-US" });
  const foreignRequests: string[] = [];
  const complaints: string[] = [];
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(server.address) && !/^(data|blob):/.test(url)) foreignRequests.push(url);
  });
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  await page.goto(server.address);
  await page.waitForSelector('html[data-ready="true"]', { timeout: 60_000 });
  const pane = page.frames().find((frame) => frame.url().includes("taskpane"));
  if (!pane) throw new Error("The page has no task pane.");
  await pane.waitForSelector("main");
  return {
    page,
    pane,
    foreignRequests,
    complaints,
    close: async () => {
      await browser.close();
      await server.stop();
    },
  };
}

function startBrowser(): Promise<Browser> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error("There is no Chromium; npm test says how to get one.");
  return chromium.launch({ executablePath, args: chromiumFlags });
}

/** What stands in cells of the workbook, read through the API as any add-in would. */
export const valuesAt = (page: Page, sheet: string, address: string): Promise<unknown[][]> =>
  page.evaluate(
    ([name, cells]) =>
      window.tapelineHost!.Excel.run(async (context) => {
        const range = context.workbook.worksheets.getItem(name!).getRange(cells!);
        range.load("values");
        await context.sync();
        return range.values;
      }),
    [sheet, address],
  );

/** A table as it stands in the workbook. */
export type StandingTable = {
  readonly sheet: string;
  /** Address within the sheet, headings included, e.g. "A7:L33". */
  readonly address: string;
  readonly headings: readonly string[];
  /** One record a row, by heading. */
  readonly rows: readonly Readonly<Record<string, unknown>>[];
  /** Address of the cell in a row of data (0 is the first) under a heading. */
  readonly cell: (row: number, heading: string) => string;
};

/** The table of that name, wherever it stands. */
export async function tableNamed(page: Page, name: string): Promise<StandingTable> {
  const { address, values } = await page.evaluate(
    (table) =>
      window.tapelineHost!.Excel.run(async (context) => {
        const range = context.workbook.tables.getItem(table).getRange();
        range.load("address,values");
        await context.sync();
        return { address: range.address, values: range.values };
      }),
    name,
  );
  const [sheet = "", cells = ""] = address.split("!");
  const [headings = [], ...body] = values;
  const { row: firstRow, column: firstColumn } = placeOf(cells.split(":")[0]!);
  return {
    sheet: sheet.replace(/^'(.*)'$/, "$1"),
    address: cells,
    headings: headings.map(String),
    rows: body.map((row) => Object.fromEntries(headings.map((heading, column) => [String(heading), row[column]]))),
    cell: (row, heading) => areaAddress(firstRow + 1 + row, firstColumn + headings.indexOf(heading), 1, 1),
  };
}

/** Serious faults of accessibility in the pane as it is now, by axe-core's rules. */
export async function seriousFaults(pane: Frame): Promise<string[]> {
  await pane.evaluate(axe);
  return pane.evaluate(async () => {
    const { violations } = await (window as unknown as { axe: typeof import("axe-core") }).axe.run(document);
    return violations
      .filter(({ impact }) => impact === "serious" || impact === "critical")
      .map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
}

/** How the program around the pane may look; in high contrast the system's own few colours are forced on every page. */
export const looks = ["light", "dark", "contrast"] as const;
export type Look = (typeof looks)[number];

/** Gives the pane a look, as the program around it and the system would. */
export async function putOn({ page, pane }: OpenPage, look: Look): Promise<void> {
  await page.emulateMedia({
    colorScheme: look === "light" ? "light" : "dark",
    forcedColors: look === "contrast" ? "active" : "none",
  });
  await pane.evaluate((isDarkTheme) => {
    Object.assign(Office.context, { officeTheme: { ...Office.context.officeTheme, isDarkTheme } });
    window.dispatchEvent(new Event("focus"));
  }, look !== "light");
}

/** Presses Tab until the focus is on the control with these words in the pane. */
export async function tabTo(page: Page, pane: Frame, words: string): Promise<void> {
  const focused = () =>
    pane.evaluate(() => {
      const control = document.activeElement as HTMLElement | null;
      const label = (control as HTMLInputElement | null)?.labels?.[0]?.textContent;
      return label ?? control?.textContent ?? "";
    });
  const seen: string[] = [];
  for (let press = 0; press < 80; press++) {
    const now = await focused();
    if (now.startsWith(words)) return;
    seen.push(now);
    await page.keyboard.press("Tab");
  }
  throw new Error(`Tab does not come to “${words}”, but to: ${[...new Set(seen)].join(" | ")}`);
}

/** Chooses a question in the pane's list. */
export const ask = (pane: Frame, title: string): Promise<void> =>
  pane.getByRole("button", { name: new RegExp(`^${title}`) }).click();

/** Goes to a sheet by its tab. */
export const goToSheet = (page: Page, name: string): Promise<void> => page.getByText(name, { exact: true }).click();

/** Goes to a sheet and selects cells on it, as a program would. */
export const select = (page: Page, sheet: string, address: string): Promise<void> =>
  page.evaluate(
    ([name, cells]) =>
      window.tapelineHost!.Excel.run(async (context) => {
        const worksheet = context.workbook.worksheets.getItem(name!);
        worksheet.activate();
        worksheet.getRange(cells!).select();
        await context.sync();
      }),
    [sheet, address],
  );

/** Types into a cell by the host's own gesture, which counts as a person's edit. */
export const type = (page: Page, address: string, value: string | number): Promise<void> =>
  page.evaluate(([cell, content]) => window.tapelineHost!.type(String(cell), content!), [address, value] as const);
