import { parseArgs } from "node:util";
import { analysesAgainstCells } from "./analysesAgainstCells";
import { bundles } from "./bundles";
import { functionsAgainstBuiltIns } from "./functionsAgainstBuiltIns";
import { growth } from "./growth";
import { libraries } from "./libraries";

/**
 * `npm run bench`: what is to be fast, beside what it is measured by, in one run; the ratios say more than the times.
 * `-- --only c` takes some of the parts, `--sizes 30,1000` other squads, `--analysis asymmetry` one analysis.
 */
const { values } = parseArgs({
  options: {
    only: { type: "string", default: "abcdf" },
    sizes: { type: "string", default: "30,1000,50000" },
    rows: { type: "string", default: "1000,10000,100000,1000000" },
    cells: { type: "string", default: "10000" },
    analysis: { type: "string" },
  },
});

const numbers = (list: string): number[] => list.split(",").map(Number);

async function bench(): Promise<void> {
  const { only } = values;
  if (only.includes("b")) await libraries();
  if (only.includes("d")) await growth(numbers(values.rows));
  if (only.includes("f")) bundles();
  if (only.includes("c")) await functionsAgainstBuiltIns(Number(values.cells));
  if (only.includes("a")) await analysesAgainstCells(numbers(values.sizes), values.analysis);
}

void bench().then(() => process.exit());
