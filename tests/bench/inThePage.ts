import { existsSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { serve } from "../../src/host/serve.mjs";
import { chromiumFlags, findChromium } from "../browser/chromium.mjs";

const dist = join(__dirname, "../../dist");

/**
 * Seconds from choosing the file until the grid can be used, and until the task pane is there again; and how many of
 * those to the grid the page itself was at work, which a machine busy with other things does not lengthen.
 */
export type OpeningTimes = { readonly grid: number; readonly work: number; readonly pane: number };

/** Opens a workbook in the built page, which stands already, several times. Null without a browser or a build. */
export async function openingTimes(bytes: Uint8Array, rounds: number): Promise<OpeningTimes[] | null> {
  const executablePath = findChromium();
  if (!executablePath || !existsSync(join(dist, "index.html"))) return null;
  const server = await serve(dist, { port: 0 });
  const browser = await chromium.launch({ executablePath, args: chromiumFlags });
  try {
    const page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
    await page.goto(server.address);
    await page.waitForSelector('html[data-ready="true"]', { timeout: 120_000 });
    const inspector = await page.context().newCDPSession(page);
    await inspector.send("Performance.enable", { timeDomain: "threadTicks" });
    const worked = async () =>
      (await inspector.send("Performance.getMetrics")).metrics.find(({ name }) => name === "TaskDuration")?.value ?? 0;
    const times: OpeningTimes[] = [];
    for (let round = 1; round <= rounds; round += 1) {
      const name = `large ${round}`;
      const before = await worked();
      const start = performance.now();
      const since = () => (performance.now() - start) / 1000;
      await page.setInputFiles("#workbook-file", { name: `${name}.xlsx`, mimeType: "", buffer: Buffer.from(bytes) });
      await page.waitForFunction(
        (wanted) =>
          document.querySelector("h1")?.textContent === wanted &&
          document.querySelector<HTMLElement>("#cover")?.hidden === true,
        name,
        { timeout: 120_000 },
      );
      const grid = since();
      const work = (await worked()) - before;
      await page.waitForSelector('html[data-ready="true"]', { timeout: 120_000 });
      times.push({ grid, work, pane: since() });
    }
    return times;
  } finally {
    await browser.close();
    await server.stop();
  }
}
