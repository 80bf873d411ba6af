// @ts-check
// `npm run audit`: what is known against the packages we depend on, as the lock file pins them. What goes into the
// add-in must have nothing against it; what only builds and tests it, nothing high or critical. What is accepted all the
// same stands below with its reason, and is told each time.
import { spawnSync } from "node:child_process";
import { join } from "node:path";

/**
 * By the number of the advisory (GHSA-...): why it cannot harm here. Empty: nothing has had to be accepted yet.
 * @type {Readonly<Record<string, string>>}
 */
const accepted = {};

const root = join(import.meta.dirname, "..");
let against = 0;
audit("packages in the add-in", ["--omit=dev"], ["info", "low", "moderate", "high", "critical"]);
audit("packages that build and test it", [], ["high", "critical"]);
console.log(against === 0 ? "Nothing is known against our packages." : `${against} to be mended.`);
process.exitCode = against === 0 ? 0 : 1;

/**
 * @param {string} called
 * @param {readonly string[]} parameters
 * @param {readonly string[]} severities
 */
function audit(called, parameters, severities) {
  const { stdout } = spawnSync("npm", ["audit", "--json", ...parameters], { cwd: root, encoding: "utf8" });
  const report = JSON.parse(stdout || "{}");
  if (!report.vulnerabilities) {
    console.error(`The registry did not answer: ${report.message ?? "no connection"}. Nothing is known either way.`);
    process.exit(2);
  }
  const found = new Map();
  for (const { via } of Object.values(report.vulnerabilities)) {
    for (const advisory of via) if (typeof advisory === "object") found.set(advisory.url, advisory);
  }
  for (const { url, name, title, severity } of found.values()) {
    if (!severities.includes(severity)) continue;
    const reason = accepted[url.split("/").at(-1)];
    if (reason === undefined) against += 1;
    console.log(`${called}: ${name}, ${severity}: ${title} (${url})${reason ? `; accepted: ${reason}` : ""}`);
  }
}
