import type { Host } from "../../src/host";
import { heading, type Page, paragraph, quiet } from "../../src/programme/page";
import { takeBack } from "../../src/sheet/takeBack";
import { type PagesWritten, writePages } from "../../src/sheet/writePages";
import { failAt } from "./failAt";
import { addSheet, openWorkbook, valuesAt } from "./openWorkbook";
import { workbookImage } from "./workbookImage";

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

const long = "A long sentence that will not fit on one line of the page, however wide it is. ".repeat(3).trim();

const page = (athlete: string, points: number, said: Partial<Page> = {}): Page => ({
  ...{ sheet: athlete, title: athlete, subtitle: "Back" },
  parts: [
    heading("Where you stand"),
    {
      kind: "table",
      columns: [
        { key: "quality", heading: "Quality", meaning: "" },
        { key: "points", heading: "Points", meaning: "", format: "+0;-0;0" },
        { key: "drawn", heading: "Drawn", meaning: "", format: "0.0", quiet: true },
      ],
      rows: [
        ["Speed", points, 1.5],
        ["=Strength", 3, null],
      ],
      toFillIn: false,
    },
    {
      kind: "picture",
      place: "beside",
      chart: {
        kind: "bar",
        title: "You",
        categories: "quality",
        series: [{ column: "drawn", name: "You", tone: "strong" }],
        valueAxisTitle: "Right is better",
      },
    },
    paragraph(long),
    quiet("5"),
  ],
  ...said,
});

const sheetNames = () =>
  Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    return worksheets.items.map(({ name }) => name);
  });

describe("writePages(pages)", () => {
  it("writes each page on its own sheet, two round trips and one a page, and tells how far it is", async () => {
    const before = host.syncs;
    const progress: string[] = [];
    const outcome = await writePages([page("Ane Berg", -7), page("Kari Dahl", 4)], {
      onProgress: (done, of) => progress.push(`${done}/${of}`),
    });
    expect(host.syncs - before).toBeLessThanOrEqual(4);
    expect(outcome).toMatchObject({ sheets: ["Ane Berg", "Kari Dahl"], replaced: 0, stopped: null });
    expect(outcome.deed.what).toBe("Wrote 2 pages.");
    expect(progress).toEqual(["1/2", "2/2"]);
    const cells = (await valuesAt("Ane Berg", "A1:G12")).map((row) => row.filter((cell) => cell !== ""));
    expect(cells.filter((row) => row.length > 0)).toEqual([
      ...[["Ane Berg"], ["Back"], ["Where you stand"]],
      ["Quality", "Points", "Right is better", "Drawn"],
      ...[["Speed", -7, 1.5], ["=Strength", 3], [long], ["5"]],
    ]);
  });

  it("sets it up to be printed: upright, one page wide, without gridlines, and without what only a picture needs", async () => {
    await writePages([page("Ane Berg", -7)], { paper: "letter" });
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Ane Berg");
      sheet.load("showGridlines");
      const { pageLayout } = sheet;
      pageLayout.load("orientation,paperSize,zoom,printGridlines");
      const area = pageLayout.getPrintArea().load("address");
      const used = sheet.getUsedRange(true).load("columnCount");
      const charts = sheet.charts.load("items/name");
      await context.sync();
      expect(sheet.showGridlines).toBe(false);
      expect(pageLayout.toJSON()).toMatchObject({
        ...{ orientation: "Portrait", paperSize: "Letter", printGridlines: false },
        zoom: { horizontalFitToPages: 1, verticalFitToPages: 1 },
      });
      // Two columns of the table, the gap and the picture; the drawn column stands beyond, one apart.
      const printed = area.address.split("!")[1]!;
      expect(printed).toMatch(/^A1:[CD]\d+$/);
      expect(used.columnCount).toBe(printed.charCodeAt(3) - 64 + 2);
      expect(charts.items).toHaveLength(1);
    });
  });

  it("replaces its own page, but never a sheet of the coach's or a page they have written on", async () => {
    await addSheet("Kari Dahl", [["mine"]]);
    await writePages([page("Ane Berg", -7), page("Kari Dahl", 4)]);
    expect(await sheetNames()).toEqual(expect.arrayContaining(["Ane Berg", "Kari Dahl", "Kari Dahl 2"]));
    const again = await writePages([page("Ane Berg", 12)]);
    expect(again).toMatchObject({ sheets: ["Ane Berg"], replaced: 1 });
    expect(again.deed.what).toBe("Wrote 1 page, in place of an earlier one, which is not brought back.");
    expect((await valuesAt("Ane Berg", "A1:D12")).flat()).toContain(12);
    expect((await sheetNames()).filter((name) => name.startsWith("Ane"))).toEqual(["Ane Berg"]);
    await host.type("Ane Berg!A15", "Well done");
    expect((await writePages([page("Ane Berg", 13)])).sheets).toEqual(["Ane Berg 2"]);
    expect(await valuesAt("Ane Berg", "A15")).toEqual([["Well done"]]);
    expect(await valuesAt("Kari Dahl", "A1")).toEqual([["mine"]]);
  });

  it("gives names that sheets may have, and two athletes of one name a sheet each", async () => {
    const wished = ["A/B: [C]", "A/B: [C]", "x".repeat(40), "x".repeat(40)];
    const { sheets } = await writePages(wished.map((sheet, index) => page("N", index, { sheet })));
    expect(sheets).toEqual(["A-B- -C-", "A-B- -C- 2", "x".repeat(31), `${"x".repeat(27)} 2`]);
  });

  it("stops between pages when told to, and says which stand", async () => {
    const stop = new AbortController();
    const outcome = await writePages([page("A", 1), page("B", 2), page("C", 3)], {
      signal: stop.signal,
      onProgress: (done) => {
        if (done === 2) stop.abort();
      },
    });
    expect(outcome).toMatchObject({ sheets: ["A", "B"], stopped: "cancelled" });
    expect(await sheetNames()).not.toContain("C");
  });

  it("can be taken back, also what stands of a run that failed", async () => {
    const before = await workbookImage(host);
    const probe = await writePages([page("A", 1)]);
    await takeBack(probe.deed);
    expect(await workbookImage(host)).toBe(before);
    let outcome = null as PagesWritten | null;
    for (let n = 60; outcome?.sheets.length !== 1; n += 25) {
      expect(n).toBeLessThan(400);
      if (outcome) await takeBack(outcome.deed);
      const { error } = await failAt(n, "instead", async () => {
        outcome = await writePages([page("A", 1), page("B", 2)]);
      });
      expect(error).toBeNull();
    }
    const stopped = outcome!;
    expect(stopped).toMatchObject({ sheets: ["A"], stopped: { name: "HostRefusal" } });
    expect(await sheetNames()).not.toContain("B");
    await takeBack(stopped.deed);
    expect(await workbookImage(host)).toBe(before);
  });
});
