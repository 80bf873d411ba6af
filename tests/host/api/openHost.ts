import { createEngine, createHost, type Host, type HostOptions } from "../../../src/host";

/** A host with one empty sheet for each test of a file. Documentation is named by its page under office/dev/add-ins. */
export function openHost(options: HostOptions = {}): { readonly host: Host } {
  const opened = {} as { host: Host };
  beforeEach(() => {
    opened.host = createHost(createEngine(), options);
  });
  afterEach(() => {
    opened.host.dispose();
  });
  return opened;
}

/** Runs a batch on the active sheet. */
export const onSheet = <T>(
  host: Host,
  batch: (sheet: Excel.Worksheet, context: Excel.RequestContext) => Promise<T>,
): Promise<T> =>
  host.Excel.run((context) => batch(context.workbook.worksheets.getActiveWorksheet(), context)) as Promise<T>;

/** Values of an address, read in a batch of their own. */
export const valuesAt = (host: Host, address: string): Promise<unknown[][]> =>
  onSheet(host, async (sheet, context) => {
    const range = sheet.getRange(address).load("values");
    await context.sync();
    return range.values;
  });

/** The error a batch ends with. */
export async function errorOf(batch: Promise<unknown>): Promise<OfficeExtension.Error> {
  try {
    await batch;
  } catch (error) {
    return error as OfficeExtension.Error;
  }
  throw new Error("No error was raised.");
}
