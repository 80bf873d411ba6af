import { readFileSync } from "node:fs";
import { join } from "node:path";
import { dirtyRange } from "./dirtyRange";
import { faultsOfRange } from "./faultsOfRange";
import { openAndSave } from "./openAndSave";
import { randomFrom } from "./random";
import { spoiltWorkbook } from "./spoiltWorkbook";

/** The process that `npm run fuzz` watches: draws one seed after the other and tells what became of each. */
type Drawn = { readonly outcome: string; readonly fault?: string };

function range(seed: number): Drawn {
  const random = randomFrom(seed);
  const [fault] = faultsOfRange(dirtyRange(random), random);
  return fault === undefined ? { outcome: "read" } : { outcome: "faulty", fault };
}

const valid = new Uint8Array(readFileSync(join(__dirname, "../host/xlsx/data/everything.xlsx")));

const workbook = async (seed: number): Promise<Drawn> => ({
  outcome: await openAndSave(spoiltWorkbook(valid, randomFrom(seed)).bytes),
});

const whatIs = (error: unknown): string =>
  error instanceof Error ? (error.stack ?? error.message).split("\n").slice(0, 3).join(" ") : String(error);

async function draw(kind: string | undefined, from: number, end: number): Promise<void> {
  for (let seed = from; seed < end; seed += 1) {
    let drawn: Drawn;
    try {
      drawn = kind === "workbooks" ? await workbook(seed) : range(seed);
    } catch (error) {
      drawn = { outcome: "crashed", fault: whatIs(error) };
    }
    await new Promise((sent) => process.send!({ seed, ...drawn }, sent));
  }
}

const [, , kind, from, end] = process.argv;
void draw(kind, Number(from), Number(end)).then(() => process.exit(0));
