import type { Host } from "../host";
import { quotedSheet } from "../reading/address";
import { BatchRefusal } from "./refusal";

/**
 * Selects as a coach would. Takes "Hop test!A3:H29" with or without the quotes a formula needs around the sheet, whole
 * columns ("Hop test!A:H"), one cell (the block around it is read), several areas joined by commas, or a name.
 */
export async function selectRange(host: Host, range: string): Promise<void> {
  const text = range.trim();
  const [, sheet, cells] = /^'((?:[^']|'')+)'!(.+)$/.exec(text) ?? /^([^'!]+)!(.+)$/.exec(text) ?? [];
  if (sheet === undefined || cells === undefined) {
    if (/^\$?[A-Z]{1,3}\$?\d*(:|$)/i.test(text) || text.includes("!")) throw withoutSheet(text);
  } else await requireSheet(host, sheet.replaceAll("''", "'"));
  const address = sheet === undefined ? text : `${quotedSheet(sheet.replaceAll("''", "'"))}!${cells}`;
  try {
    host.select(address);
  } catch {
    throw new BatchRefusal(`"${cells ?? text}" is no range of this workbook. Write it as "Hop test!A3:H29".`);
  }
}

const withoutSheet = (text: string) =>
  new BatchRefusal(`--range "${text}" does not say the sheet. Write it as "Hop test!A3:H29".`);

async function requireSheet(host: Host, wanted: string): Promise<void> {
  const names = await sheetNames(host);
  if (names.some((name) => name.toLowerCase() === wanted.toLowerCase())) return;
  throw new BatchRefusal(`There is no sheet "${wanted}" in it. Its sheets: ${names.join(", ")}.`);
}

/** Names of the workbook's sheets, from left to right. */
export const sheetNames = (host: Host): Promise<string[]> =>
  host.Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    return worksheets.items.map((sheet) => sheet.name);
  });
