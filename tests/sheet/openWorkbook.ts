import { createEngine, createHost, type Host, type HostOptions } from "../../src/host";

export type TestCell = number | string | boolean;

/** A workbook on the embedded host in Node, with Office, Excel and CustomFunctions put on the global object. */
export function openWorkbook(options: HostOptions = {}): Host {
  const host = createHost(createEngine(), options);
  host.install(globalThis);
  return host;
}

/** Adds a sheet with these cells from A1 on, as a coach would have typed them. */
export const addSheet = (name: string, rows: readonly (readonly TestCell[])[]): Promise<void> =>
  Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.add(name);
    const width = Math.max(...rows.map((row) => row.length));
    const cells = rows.map((row) => [...row, ...Array<string>(width - row.length).fill("")]);
    sheet.getRangeByIndexes(0, 0, rows.length, width).values = cells;
    await context.sync();
  });

/** What stands in a range now. */
export const valuesAt = (sheet: string, address: string): Promise<unknown[][]> =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange(address);
    range.load("values");
    await context.sync();
    return range.values;
  });
