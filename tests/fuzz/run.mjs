// @ts-check
// `npm run fuzz`: dirty ranges through reading and analyses, malformed .xlsx files through the host's reader. What is
// drawn follows from the seed alone: `npm run fuzz -- --seed 7 --ranges 100000 --workbooks 10000` (the default counts),
// and `--only ranges:1060` draws a single one again. A case that takes longer than `patience` is a hang: the process
// that works on it is ended from here, since it can no longer end itself.
import { fork } from "node:child_process";
import { join } from "node:path";
import { parseArgs } from "node:util";

const patience = 120_000;
const { values } = parseArgs({
  options: {
    seed: { type: "string", default: "1" },
    ranges: { type: "string", default: "100000" },
    workbooks: { type: "string", default: "10000" },
    only: { type: "string" },
  },
});
const first = Number(values.seed);
const root = join(import.meta.dirname, "../..");

let faults = 0;
for (const kind of /** @type {const} */ (["ranges", "workbooks"])) {
  const only = values.only?.split(":");
  if (only && only[0] !== kind) continue;
  const from = only ? Number(only[1]) : first;
  const end = only ? from + 1 : first + Number(values[kind]);
  faults += await all(kind, from, end);
}
process.exitCode = faults > 0 ? 1 : 0;

/**
 * Draws all seeds of a kind, going on after a hang or a crash of the process.
 * @param {"ranges" | "workbooks"} kind
 * @param {number} from
 * @param {number} end
 * @returns {Promise<number>} how many faults were found
 */
async function all(kind, from, end) {
  /** @type {Record<string, number>} */
  const counts = {};
  let found = 0;
  let next = from;
  while (next < end) {
    next = await draw(kind, next, end, ({ outcome, seed, fault }) => {
      counts[outcome] = (counts[outcome] ?? 0) + 1;
      if (fault === undefined) return;
      found += 1;
      console.log(`${kind}:${seed} ${fault}`);
    });
  }
  const told = Object.entries(counts).map(([outcome, count]) => `${count} ${outcome}`);
  console.log(`${kind}: ${end - from} drawn from seed ${from} on: ${told.join(", ")}; ${found} faults`);
  return found;
}

/**
 * @param {string} kind
 * @param {number} from
 * @param {number} end
 * @param {(told: { outcome: string, seed: number, fault?: string }) => void} tell
 * @returns {Promise<number>} the seed to go on with
 */
function draw(kind, from, end, tell) {
  return new Promise((resolve) => {
    const child = fork(join(root, "tests/fuzz/draw.ts"), [kind, String(from), String(end)], {
      execArgv: ["--require", join(root, "sample-workbooks/typescript.cjs")],
    });
    let seed = from;
    let isHanging = false;
    let watch = setTimeout(() => {}, 0);
    const wait = () => {
      clearTimeout(watch);
      watch = setTimeout(() => {
        isHanging = true;
        child.kill("SIGKILL");
      }, patience);
    };
    wait();
    child.on("message", (message) => {
      const told = /** @type {{ outcome: string, seed: number, fault?: string }} */ (message);
      seed = told.seed + 1;
      wait();
      tell(told);
    });
    child.on("exit", (code) => {
      clearTimeout(watch);
      if (seed < end) {
        const fault = isHanging ? `took longer than ${patience / 1000} s` : `ended the process (${code})`;
        tell({ outcome: "broken", seed, fault });
      }
      resolve(seed < end ? seed + 1 : end);
    });
  });
}
