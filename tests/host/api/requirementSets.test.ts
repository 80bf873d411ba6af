import { errorOf, onSheet, openHost } from "./openHost";

/** Pages: develop/specify-api-requirements-runtime, reference/requirement-sets/excel. */
describe("a host of an older Excel", () => {
  const opened = openHost({ apiSets: { ExcelApi: "1.13" } });

  test("says so", () => {
    const { requirements } = opened.host.Office.context;
    expect(requirements.isSetSupported("ExcelApi", "1.13")).toBe(true);
    expect(requirements.isSetSupported("ExcelApi", "1.14")).toBe(false);
    expect(requirements.isSetSupported("ExcelApi", "1.9")).toBe(true);
    expect(requirements.isSetSupported("NoSuchSet", "1.1")).toBe(false);
    expect(requirements.isSetSupported("CustomFunctionsRuntime", "1.3")).toBe(true);
  });

  test("has no notes (1.18), but merged areas (1.13)", async () => {
    const error = await errorOf(
      onSheet(opened.host, async (sheet, context) => {
        sheet.getRange("A1").getMergedAreasOrNullObject();
        await context.sync();
        sheet.notes.add("A1", "x");
        await context.sync();
      }),
    );
    expect(error).toMatchObject({ code: "ApiNotFound", debugInfo: { errorLocation: "NoteCollection.add" } });
  });
});

describe("the newest host", () => {
  const opened = openHost();

  test("has what is published, and puts the globals on a window", () => {
    const frame = {} as typeof globalThis;
    opened.host.install(frame);
    expect(frame.Office.context.requirements.isSetSupported("ExcelApi", "1.18")).toBe(true);
    expect(frame.Excel.ChartType.barClustered).toBe("BarClustered");
    expect(frame.CustomFunctions.ErrorCode.notAvailable).toBe("#N/A");
  });

  test("is ready for an add-in, and presses its buttons", async () => {
    const { Office } = opened.host;
    await expect(Office.onReady()).resolves.toMatchObject({ host: "Excel" });
    Office.actions.associate("SHOW", (event: Office.AddinCommands.Event) => event.completed());
    await expect(opened.host.press("SHOW")).resolves.toBeUndefined();
    expect(() => Office.ribbon).toThrow(expect.objectContaining({ code: "NotImplemented" }));
  });
});
