// @ts-check
// Draws the icons from their pictures: node manifest/icons/draw.mjs. The small sizes have a picture of their own.
import { readFileSync, writeFileSync } from "node:fs";
import { chromium } from "playwright-core";
import { chromiumFlags, findChromium } from "../../tests/browser/chromium.mjs";

const here = new URL(".", import.meta.url);
const pictures = { 16: "tapeline-small.svg", 32: "tapeline.svg", 64: "tapeline.svg", 80: "tapeline.svg" };

const browser = await chromium.launch({ executablePath: findChromium() ?? "chromium", args: chromiumFlags });
const page = await browser.newPage();
for (const [size, picture] of Object.entries(pictures)) {
  const side = Number(size);
  const svg = readFileSync(new URL(picture, here), "utf8");
  await page.setViewportSize({ width: side, height: side });
  await page.setContent(`<style>body { margin: 0 } svg { display: block; width: 100vw; height: 100vh }</style>${svg}`);
  writeFileSync(new URL(`icon-${size}.png`, here), await page.screenshot({ omitBackground: true }));
}
await browser.close();
