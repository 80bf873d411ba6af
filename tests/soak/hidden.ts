import { unzipSync } from "fflate";
import type { Host } from "../../src/host";
import { saveBook } from "../../src/host/xlsx";

/** How much there is in a workbook that nobody sees, as its file would keep it. */
export type Hidden = Readonly<
  Record<"sheets" | "styles" | "names" | "settings" | "parts" | "bytes" | "charts", number>
>;

export async function hiddenIn(host: Host): Promise<Hidden> {
  const { sheets, names, settings } = await host.Excel.run(async (context) => {
    const { worksheets, names, settings } = context.workbook;
    worksheets.load("items/name");
    names.load("items/name");
    settings.load("items/key,items/value");
    await context.sync();
    return {
      sheets: worksheets.items.length,
      names: names.items.length,
      settings: JSON.stringify(settings.items.map(({ key, value }) => [key, value])).length,
    };
  });
  const { bytes } = saveBook(host.book);
  const parts = unzipSync(bytes);
  const styles = new TextDecoder().decode(parts["xl/styles.xml"]);
  return {
    ...{ sheets, names, settings, bytes: bytes.length, charts: host.charts.list().length },
    styles: styles.match(/<xf /g)?.length ?? 0,
    parts: Object.keys(parts).length,
  };
}
