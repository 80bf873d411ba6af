import { readFileSync } from "node:fs";
import { join } from "node:path";
import { openAndSave } from "./openAndSave";
import { randomFrom } from "./random";
import { spoiltWorkbook } from "./spoiltWorkbook";

const valid = new Uint8Array(readFileSync(join(__dirname, "../host/xlsx/data/everything.xlsx")));

/** A sample of what `npm run fuzz` does 10,000 times. */
it("malformed .xlsx files are refused in words, or opened and saved", async () => {
  const outcomes = { refused: 0, opened: 0 };
  for (let seed = 1; seed <= 40; seed += 1) {
    const { how, bytes } = spoiltWorkbook(valid, randomFrom(seed));
    try {
      outcomes[await openAndSave(bytes)] += 1;
    } catch (error) {
      throw new Error(`Seed ${seed}, ${how}`, { cause: error });
    }
  }
  expect(outcomes.refused).toBeGreaterThan(5);
  expect(outcomes.opened).toBeGreaterThan(5);
}, 120_000);
