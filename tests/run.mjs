// @ts-check
// `npm test` on any machine: installs what is missing, then types, style, build and every test. Ends with one line
// that counts, and an exit code that agrees with it.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { buildReady, NotReady, nodeReady, packagesReady, root } from "../src/host/ready.mjs";
import { findChromium, installChromium, withoutChromium } from "./browser/chromium.mjs";

const results = join(root, "reports", "jest.json");
let failedSteps = 0;
let jestStatus = null;

const isReady = step(() => {
  nodeReady();
  packagesReady();
});
if (isReady) {
  step(() => checked("Types", "typescript/bin/tsc"));
  step(() => checked("Style", "@biomejs/biome/bin/biome", "check"));
  const isBuilt = step(() => buildReady(["add-in", "host"]));
  const hasBrowser = step(() => {
    if (!(findChromium() ?? installChromium())) throw new NotReady(withoutChromium);
  });
  // Other programs, and the walk through every screen, have commands of their own: npm run test:interop, test:screens.
  const left = ["--ignoreProjects", "interop", "screens", ...(isBuilt && hasBrowser ? [] : ["browser"])];
  mkdirSync(join(root, "reports"), { recursive: true });
  rmSync(results, { force: true });
  // The build and the grid take most of a small machine; more than two at a time only makes them late. The grid leaves
  // timers behind in Node, for which nobody need wait.
  jestStatus = node("jest/bin/jest.js", "--maxWorkers=2", "--forceExit", "--json", `--outputFile=${results}`, ...left);
}

const jest = existsSync(results) ? JSON.parse(readFileSync(results, "utf8")) : undefined;
const passed = jest?.numPassedTests ?? 0;
// A suite that breaks before its first test is not among the tests that failed.
const failedTests = jest ? jest.numFailedTests + jest.numRuntimeErrorTestSuites : 0;
const failed = failedSteps + (isReady && jestStatus !== 0 ? Math.max(failedTests, 1) : failedTests);
const skipped = (jest?.numPendingTests ?? 0) + (jest?.numTodoTests ?? 0);
console.log(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;

/**
 * Does a step; a failure is told, counted, and lets the others go on.
 * @param {() => void} deed
 */
function step(deed) {
  try {
    deed();
    return true;
  } catch (error) {
    console.error(error instanceof NotReady ? error.message : error);
    failedSteps += 1;
    return false;
  }
}

/**
 * @param {string} name
 * @param {string} script
 * @param {...string} parameters
 */
function checked(name, script, ...parameters) {
  console.log(`${name} ...`);
  if (node(script, ...parameters) !== 0) throw new NotReady(`${name}: see above.`);
}

/**
 * Runs a package's script by this same Node, its words shown. Jest prints its own report on the error stream and
 * nothing else is wanted of it.
 * @param {string} script
 * @param {...string} parameters
 */
function node(script, ...parameters) {
  const path = join(root, "node_modules", ...script.split("/"));
  return spawnSync(process.execPath, [path, ...parameters], { cwd: root, stdio: "inherit" }).status;
}
