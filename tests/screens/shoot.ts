/**
 * Pictures of every screen of the pane in every look and size, and one page that shows them all:
 * `npm run screens` writes them into reports/screens/.
 */
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { buildReady } from "../../src/host/ready.mjs";
import { everyScreen } from "../browser/everyScreen";
import { type Look, looks, type OpenPage, openPage, putOn } from "../browser/page";

const sizes = [
  { name: "320", width: 320, zoom: 1 },
  { name: "400", width: 400, zoom: 1 },
  { name: "400-zoomed", width: 400, zoom: 2 },
] as const;

type Size = (typeof sizes)[number];

/** A page longer than this is cut: what stands lower is more of the same. */
const tallest = 2400;

const folder = join(__dirname, "../../reports/screens");

async function shootAll(): Promise<void> {
  buildReady(["add-in", "host"]);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const open = await openPage({ width: 1366, height: tallest });
  const taken: string[] = [];
  try {
    for (const { name, reach } of everyScreen) {
      await reach(open);
      for (const look of looks) {
        for (const size of sizes) {
          const file = `${name}.${look}.${size.name}.png`;
          writeFileSync(join(folder, file), await picture(open, look, size));
        }
      }
      await putOn(open, "light");
      taken.push(name);
      console.log(name);
    }
  } finally {
    writeFileSync(join(folder, "index.html"), sheet(taken));
    await open.close();
  }
}

/** The pane alone, as long as it is, the grid left out. */
async function picture(open: OpenPage, look: Look, { width, zoom }: Size): Promise<Buffer> {
  const { page, pane } = open;
  await putOn(open, look);
  const lay = (height: number) =>
    page.evaluate(
      ([wide, high]) => {
        const frame = document.querySelector<HTMLIFrameElement>(".pane iframe")!;
        frame.style.cssText = `position: fixed; z-index: 1000; inset: 0 auto auto 0; width: ${wide}px; height: ${high}px`;
      },
      [width, height],
    );
  await lay(500);
  const height = await pane.evaluate((times) => {
    document.documentElement.style.setProperty("zoom", String(times));
    return document.documentElement.scrollHeight * (CSS.supports("zoom", "2") ? 1 : times);
  }, zoom);
  const shown = Math.min(Math.max(height, 500), tallest);
  await lay(shown);
  const image = await page.screenshot({ clip: { x: 0, y: 0, width, height: shown }, animations: "disabled" });
  await pane.evaluate(() => document.documentElement.style.removeProperty("zoom"));
  await page.evaluate(() => document.querySelector(".pane iframe")!.removeAttribute("style"));
  return image;
}

/** All pictures on one page, a row for each screen. */
function sheet(names: readonly string[]): string {
  const columns = looks.flatMap((look) => sizes.map((size) => ({ look, size })));
  const heads = columns.map(({ look, size }) => `<th>${look}, ${size.name}</th>`).join("");
  const rows = names.map(
    (name) =>
      `<tr id="${name}"><th>${name}</th>${columns
        .map(({ look, size }) => `${name}.${look}.${size.name}.png`)
        .map((file) => `<td><a href="${file}"><img src="${file}" alt="${file}" loading="lazy"></a></td>`)
        .join("")}</tr>`,
  );
  return `<!doctype html><meta charset="utf-8"><title>Every screen</title>
<style>body { font: 14px sans-serif; background: #ccc } td, th { vertical-align: top; padding: 6px } img { width: 240px }
thead th { position: sticky; top: 0; background: #ccc } tbody th { text-align: left }</style>
<table><thead><tr><th></th>${heads}</tr></thead><tbody>${rows.join("\n")}</tbody></table>`;
}

void shootAll();
