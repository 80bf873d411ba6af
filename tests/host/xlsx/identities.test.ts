import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { createEngine, createHost } from "../../../src/host";
import { openXlsx, restoreBook, saveBook } from "../../../src/host/xlsx";

const identity = /^\{[0-9A-F]{8}(-[0-9A-F]{4}){3}-[0-9A-F]{12}\}$/;

type Ids = { readonly sheets: Record<string, string>; readonly tables: Record<string, string> };

function open(bytes?: Uint8Array) {
  const opened = bytes && openXlsx(bytes, "book");
  const host = createHost(createEngine(opened ? { workbook: opened.workbook } : {}));
  if (opened) restoreBook(host.book, opened);
  return host;
}

/** What an add-in reads as the ids of sheets and tables, by their names. */
async function idsIn(bytes: Uint8Array): Promise<Ids> {
  const host = open(bytes);
  const byName = (items: readonly { name: string; id: string }[]) =>
    Object.fromEntries(items.map(({ name, id }) => [name, id]));
  const ids = await host.Excel.run(async ({ workbook }) => {
    const sheets = workbook.worksheets.load("items/id,items/name");
    const tables = workbook.tables.load("items/id,items/name");
    await workbook.context.sync();
    return { sheets: byName(sheets.items), tables: byName(tables.items) };
  });
  host.dispose();
  return ids;
}

let saved: Uint8Array;
let ids: Ids;

beforeAll(async () => {
  const host = open();
  await host.Excel.run(async ({ workbook }) => {
    const second = workbook.worksheets.add("Results");
    workbook.worksheets.add("Squad").customProperties.add("kind", "squad");
    for (const [sheet, name] of [
      [workbook.worksheets.getItem("Sheet1"), "Hops"],
      [second, "Kept"],
    ] as const) {
      sheet.getRange("A1:B1").values = [["Athlete", "Left"]];
      sheet.tables.add("A1:B2", true).name = name;
    }
    workbook.settings.add("Tapeline.example", 1);
    await workbook.context.sync();
  });
  saved = saveBook(host.book).bytes;
  host.dispose();
  ids = await idsIn(saved);
});

/** The file as another program would write it: parts changed by hand. */
function rewritten(change: (path: string, text: string) => string): Uint8Array {
  const parts = unzipSync(saved);
  const changed = Object.entries(parts).map(([path, bytes]) => [path, strToU8(change(path, strFromU8(bytes)))]);
  return zipSync(Object.fromEntries(changed));
}

const lastSheetFirst = (text: string) => text.replace(/(<sheets>)(.*)(<sheet [^>]*>)(<\/sheets>)/, "$1$3$2$4");
const withoutIds = (text: string) => text.replace(/ xr:uid="[^"]*"/, "");

/** Reference of Excel.Worksheet.id and Excel.Table.id: the same though the sheet is moved or the table renamed. */
describe("the ids of sheets and tables", () => {
  it("are all different, and stand in the file where Excel keeps its own", async () => {
    const all = [...Object.values(ids.sheets), ...Object.values(ids.tables)];
    expect(all).toHaveLength(5);
    expect(new Set(all).size).toBe(5);
    for (const id of all) expect(id).toMatch(identity);
    const parts = unzipSync(saved);
    expect(strFromU8(parts["xl/worksheets/sheet2.xml"]!)).toContain(`xr:uid="${ids.sheets.Results}"`);
    expect(strFromU8(parts["xl/tables/table1.xml"]!)).toContain(`xr:uid="${ids.tables.Hops}"`);
  });

  it("stay when another program has moved sheets and renamed a table", async () => {
    const moved = rewritten((path, text) =>
      path === "xl/workbook.xml" ? lastSheetFirst(text) : text.replaceAll('"Kept"', '"KeptResults"'),
    );
    const after = await idsIn(moved);
    expect(Object.keys(after.sheets)).toEqual(["Squad", "Sheet1", "Results"]);
    expect(after.sheets).toEqual(ids.sheets);
    expect(after.tables).toEqual({ Hops: ids.tables.Hops, KeptResults: ids.tables.Kept });
  });

  it("are found by name when another program has dropped them and moved sheets", async () => {
    const after = await idsIn(
      rewritten((path, text) => withoutIds(path === "xl/workbook.xml" ? lastSheetFirst(text) : text)),
    );
    expect(after).toEqual(ids);
  });

  it("are not shared by a sheet that another program has copied with its id", async () => {
    const copied = rewritten((path, text) =>
      path === "xl/worksheets/sheet3.xml" ? text.replace(ids.sheets.Squad!, ids.sheets.Sheet1!) : text,
    );
    const after = await idsIn(copied);
    expect(after.sheets.Sheet1).toBe(ids.sheets.Sheet1);
    expect(after.sheets.Squad).toBe(ids.sheets.Squad);
  });

  it("are the same each time a file without any is opened, and a sheet's properties stay with it", async () => {
    const foreign = new Uint8Array(readFileSync(join(__dirname, "data/everything.xlsx")));
    expect(await idsIn(foreign)).toEqual(await idsIn(foreign));
    const { state } = openXlsx(
      rewritten((path, text) => (path === "xl/workbook.xml" ? lastSheetFirst(text) : text)),
      "moved",
    );
    expect(state.sheetProperties).toEqual({ [ids.sheets.Squad!]: { kind: "squad" } });
  });
});
