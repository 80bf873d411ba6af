import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

const dist = join(__dirname, "../../dist");

/** (f): what is loaded before the first custom function answers, and before the pane's first screen. */
export function bundles(): void {
  console.log("(f) bundles, gzip");
  if (!existsSync(join(dist, "functions.js"))) {
    console.log("  nothing is built: npm run build");
    return;
  }
  for (const [name, budget] of [
    ["functions.js", 45],
    ["pane.js", 200],
  ] as const) {
    const kilobytes = gzipSync(readFileSync(join(dist, name))).length / 1000;
    console.log(`  ${name.padEnd(14)}${kilobytes.toFixed(1).padStart(7)} kB, of ${budget} kB allowed`);
  }
  const later = readdirSync(dist).filter((name) => /^pane-.*\.js$/.test(name));
  console.log(`  and ${later.length} parts of the pane that come when they are asked for`);
}
