// @ts-check
// `npm run test:draws`: the property tests (those that import fast-check) with cases no run has met, and more of them.
// The seed is printed, so that a failure can be met again: DRAWS_SEED=... npm run test:draws -- <what you say to jest>.
// DRAWS_RUNS sets how many cases each property meets, DRAWS_ROUNDS how many seeds follow one another.
import { spawnSync } from "node:child_process";
import { randomInt } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const root = join(import.meta.dirname, "..");
const runs = process.env.DRAWS_RUNS ?? "1000";
const rounds = Number(process.env.DRAWS_ROUNDS ?? 1);

// The pane and the browser are drawn by hand; properties stand in pure and host tests alone.
const propertyTests = readdirSync(join(root, "tests"), { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".test.ts"))
  .filter((path) => /from "fast-check"|\/(squads|measurements)"/.test(readFileSync(join(root, "tests", path), "utf8")))
  .map((path) => join("tests", path));

let failedRounds = 0;
for (let round = 1; round <= rounds; round += 1) {
  const seed = process.env.DRAWS_SEED ?? String(randomInt(2 ** 31 - 1));
  console.log(`DRAWS_SEED=${seed} DRAWS_RUNS=${runs} npm run test:draws (round ${round} of ${rounds})`);
  const { status } = spawnSync(
    process.execPath,
    [
      join(root, "node_modules/jest/bin/jest.js"),
      ...["--selectProjects", "pure", "host", "--maxWorkers=2", "--forceExit", "--testTimeout=600000"],
      ...["--testPathPatterns", ...propertyTests],
      ...process.argv.slice(2),
    ],
    { cwd: root, stdio: "inherit", env: { ...process.env, DRAWS_SEED: seed, DRAWS_RUNS: runs } },
  );
  if (status !== 0) failedRounds += 1;
}
console.log(`${rounds} rounds, ${failedRounds} failed`);
process.exitCode = failedRounds > 0 ? 1 : 0;
