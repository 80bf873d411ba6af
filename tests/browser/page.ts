import { join } from "node:path";
import { type Browser, chromium, type Frame, type Page } from "playwright-core";
import type { Host } from "../../src/host";
import { serve } from "../../src/host/serve.mjs";
import { chromiumFlags, findChromium } from "./chromium.mjs";

declare global {
  interface Window {
    tapelineHost?: Host;
  }
}

const dist = join(__dirname, "../../dist");

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

export async function openPage(): Promise<OpenPage> {
  const server = await serve(dist, { port: 0 });
  const browser = await startBrowser();
  const page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
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

/** Chooses a question in the pane's list. */
export const ask = (pane: Frame, title: string): Promise<void> =>
  pane.getByRole("button", { name: new RegExp(`^${title}`) }).click();

/** Goes to a sheet by its tab. */
export const goToSheet = (page: Page, name: string): Promise<void> => page.getByText(name, { exact: true }).click();

/** Types into a cell by the host's own gesture, which counts as a person's edit. */
export const type = (page: Page, address: string, value: string | number): Promise<void> =>
  page.evaluate(([cell, content]) => window.tapelineHost!.type(String(cell), content!), [address, value] as const);
