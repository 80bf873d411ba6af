/** Writes the sample workbook: `npm run samples`. What was planted in it: plantedTruths.ts and dirtyHopTest.ts. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { season } from "./season";

void season().then((bytes) => {
  writeFileSync(join(__dirname, "fjordvik-handball.xlsx"), bytes);
  console.log("Written: sample-workbooks/fjordvik-handball.xlsx");
});
