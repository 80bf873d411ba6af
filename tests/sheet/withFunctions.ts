import { registerFunctions } from "../../src/batch/registerFunctions";
import type { Host } from "../../src/host";
import { openWorkbook } from "./openWorkbook";

/** A workbook on the embedded host in which our functions answer. */
export async function openWithFunctions(): Promise<Host> {
  const host = openWorkbook();
  await registerFunctions(host);
  return host;
}

/** Formulas of a range, or values where there are none. */
export const formulasAt = (sheet: string, address: string): Promise<unknown[][]> =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange(address);
    range.load("formulas");
    await context.sync();
    return range.formulas;
  });
