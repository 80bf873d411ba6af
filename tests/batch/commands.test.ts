import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { folderOfOwn, hopTestsAlone } from "./folder";

const at = folderOfOwn();
const sample = hopTestsAlone();

/** Starts the runner as the scripts of package.json do, in a Node of its own. */
function start(...words: string[]) {
  const script = join(__dirname, "../../src/batch/start.mjs");
  return spawnSync(process.execPath, [script, ...words], { encoding: "utf8", timeout: 60_000 });
}

it("npm run evaluate prints JSON alone, and ends", () => {
  const { stdout, stderr, status } = start("evaluate", "--workbook", sample(), "=SUM('Hop test'!C4:E4)");
  expect({ stdout, stderr, status }).toEqual({ stdout: expect.stringMatching(/^\d+\n$/), stderr: "", status: 0 });
}, 90_000);

it("npm run batch ends with the code that agrees with what was done", () => {
  const words = ["batch", "--workbook", sample(), "--analysis", "asymmetry", "--out", at("a.xlsx"), "--range"];
  expect(start(...words, "Nope!A1")).toMatchObject({ status: 1, stderr: expect.stringContaining("no sheet") });
  expect(existsSync(at("a.xlsx"))).toBe(false);
  expect(start(...words, "Hop test!A3:H29")).toMatchObject({ status: 0, stderr: "" });
  expect(existsSync(at("a.xlsx"))).toBe(true);
}, 180_000);
