import { createEngine, createHost } from "../../src/host";
import { openXlsx, restoreBook, saveBook, XlsxRefusal } from "../../src/host/xlsx";

export type Outcome = "refused" | "opened";

/** Opens a file as the page does, looks at every sheet and saves; throws what a person would see as a crash. */
export async function openAndSave(bytes: Uint8Array): Promise<Outcome> {
  let opened: ReturnType<typeof openXlsx>;
  try {
    opened = openXlsx(bytes, "spoilt");
  } catch (error) {
    // A refusal says what is the matter and what to do, in sentences.
    if (error instanceof XlsxRefusal && /^[A-Z“].*\.$/s.test(error.message)) return "refused";
    throw error;
  }
  const engine = createEngine({ workbook: opened.workbook });
  const host = createHost(engine);
  try {
    restoreBook(host.book, opened);
    await host.settle();
    await host.Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name");
      await context.sync();
      for (const sheet of worksheets.items) sheet.getRange("A1:J60").load("values,formulas,numberFormat");
      await context.sync();
    });
    const { bytes: saved } = saveBook(host.book);
    openXlsx(saved, "saved");
    return "opened";
  } finally {
    host.dispose();
    engine.univer.dispose();
  }
}
