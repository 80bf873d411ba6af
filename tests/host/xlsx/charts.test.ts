import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strToU8, unzipSync, zipSync } from "fflate";
import { type OpenedXlsx, openXlsx } from "../../../src/host/xlsx";
import { throughTheEngine } from "./throughTheEngine";

const sample = () => new Uint8Array(readFileSync(join(__dirname, "data/everything.xlsx")));

describe("charts and what add-ins keep in a workbook", () => {
  it("reads the chart another library wrote: its kind, place, title and ranges", () => {
    const { charts, notices, workbook } = openXlsx(sample(), "everything");
    expect(notices).toEqual([]);
    expect(charts).toHaveLength(1);
    const { sheetId, type, given } = charts[0]!;
    expect([sheetId, type, given.title?.text]).toEqual([workbook.sheetOrder![0], "ColumnClustered", "Hops"]);
    expect(given.series?.map(({ name, values, categories }) => [name, values, categories])).toEqual([
      ["='Hops & jumps'!B1", "'Hops & jumps'!B2:B4", "'Hops & jumps'!A2:A4"],
      ["='Hops & jumps'!C1", "'Hops & jumps'!C2:C4", "'Hops & jumps'!A2:A4"],
    ]);
    // openpyxl's anchor is cell L2 and its size 15 cm by 7.5 cm; a point is 2.54 / 72 cm.
    expect(given.top).toBeCloseTo(15, 1);
    expect(given.width).toBeCloseTo((15 / 2.54) * 72, 0);
    expect(given.height).toBeCloseTo((7.5 / 2.54) * 72, 0);
  });

  it.each(["BarClustered", "ColumnStacked", "LineMarkers", "XYScatter"])(
    "gives a %s chart back as it was",
    async (type) => {
      const before = openXlsx(sample(), "everything").charts[0]!.given;
      const after = await reopened((book) => {
        const chart = book.charts.list()[0]!;
        chart.type = type;
        chart.axes.value = { title: { visible: true, text: "Distance (cm)" }, minimum: 100, reversePlotOrder: true };
        chart.legend = { visible: true, position: "Top" };
        chart.series[0]!.fill = { color: "#0F6B5C" };
        chart.series[0]!.look = { gapWidth: 40, overlap: 100 };
      });
      const { type: kind, given } = after.charts[0]!;
      expect(kind).toBe(type);
      expect(given.series?.map(({ name, values, categories }) => [name, values, categories])).toEqual(
        before.series?.map(({ name, values, categories }) => [name, values, categories]),
      );
      expect(given.legend).toEqual({ visible: true, position: "Top" });
      expect(given.axes?.value).toMatchObject({
        title: { visible: true, text: "Distance (cm)" },
        minimum: 100,
        reversePlotOrder: true,
      });
      expect([given.left, given.top, given.width, given.height].map((points) => Math.round(points!))).toEqual(
        [before.left, before.top, before.width, before.height].map((points) => Math.round(points!)),
      );
      if (/Bar|Column/.test(type)) {
        expect(given.series![0]).toMatchObject({ fill: { color: "#0F6B5C" }, look: { gapWidth: 40, overlap: 100 } });
      }
    },
  );

  it("gives labels, sizes of titles, ticks, units, trend lines and colours of single points back as they were", async () => {
    const font = { size: 14, bold: true, color: "#0F6B5C", name: "Arial" };
    const after = await reopened((book) => {
      const chart = book.charts.list()[0]!;
      chart.title = { visible: true, text: "Hops", format: { font } };
      chart.legend = { visible: true, position: "Right", format: { font: { size: 8 } } };
      chart.axes.value = {
        title: { visible: true, text: "cm", format: { font: { italic: true } }, textOrientation: -90 },
        numberFormat: "0.0",
        majorUnit: 20,
        majorTickMark: "Outside",
        tickLabelPosition: "Low",
        format: { font: { size: 7.5 } },
      };
      const [left, right] = chart.series;
      left!.look = { hasDataLabels: true };
      left!.dataLabels = {
        position: "InsideEnd",
        showSeriesName: true,
        separator: "; ",
        format: { font: { size: 8 } },
      };
      left!.points = { 1: { format: { fill: { color: "#C00000" } } } };
      right!.trendlines = [{ type: "Polynomial", polynomialOrder: 3, showEquation: true }];
      chart.fill = { fill: { color: "#FFF8E0" } };
    });
    const { title, legend, axes, series, fill } = after.charts[0]!.given;
    expect(title).toMatchObject({ text: "Hops", format: { font } });
    expect(legend).toMatchObject({ position: "Right", format: { font: { size: 8 } } });
    expect(axes!.value).toMatchObject({
      title: { text: "cm", format: { font: { italic: true } }, textOrientation: -90 },
      numberFormat: "0.0",
      majorUnit: 20,
      majorTickMark: "Outside",
      tickLabelPosition: "Low",
      format: { font: { size: 7.5 } },
    });
    expect(series![0]!.look).toMatchObject({ hasDataLabels: true });
    expect(series![0]!.dataLabels).toMatchObject({
      position: "InsideEnd",
      showValue: true,
      showSeriesName: true,
      separator: "; ",
      format: { font: { size: 8 } },
    });
    expect(series![0]!.points[1]).toMatchObject({ format: { fill: { color: "#C00000" } } });
    expect(series![1]!.look.hasDataLabels).toBeUndefined();
    expect(series![1]!.trendlines).toEqual([
      { type: "Polynomial", polynomialOrder: 3, showEquation: true, showRSquared: false },
    ]);
    expect(fill).toMatchObject({ fill: { color: "#FFF8E0" } });
  });

  it("says before saving what of a chart the file does not hold", async () => {
    const saved = await throughTheEngine(sample(), (book) => {
      const chart = book.charts.list()[0]!;
      chart.title = { ...chart.title, showShadow: true };
      chart.series[0]!.errorBars.y = { visible: true };
    });
    expect(saved.losses).toEqual([
      "Of charts, not kept in the file: title: show shadow, series: error bars y visible.",
    ]);
  });

  it("says on opening what of a chart is neither drawn nor kept", () => {
    const parts = unzipSync(sample());
    const path = Object.keys(parts).find((name) => /charts\/chart/.test(name))!;
    const markup = new TextDecoder().decode(parts[path]);
    const spoilt = markup.replace(/<(c:)?cat>/, "<$1errBars/><$1cat>");
    expect(spoilt).not.toBe(markup);
    const { notices } = openXlsx(zipSync({ ...parts, [path]: strToU8(spoilt) }), "error bars");
    expect(notices).toEqual(["Of charts, not drawn and not saved again: error bars."]);
  });

  it("says that a chart of another kind is saved as columns", async () => {
    const saved = await throughTheEngine(sample(), (book) => {
      book.charts.list()[0]!.type = "Pie";
    });
    expect(saved.losses).toEqual(["A chart of a kind that is not drawn here: saved as columns."]);
  });

  it("keeps settings, properties and XML parts, and shows its own part to nobody", async () => {
    const part = {
      id: "{00000000-1111-2222-3333-444444444444}",
      xml: '<squad xmlns="urn:example"><a>&lt;1&gt;</a></squad>',
    };
    const { state } = await reopened((book) => {
      book.state.settings.set("threshold", { percent: 10, words: 'a "quoted" <word>' });
      book.state.customProperties.set("Season", "2026");
      book.state.customProperties.set("Squad size", 26);
      book.state.customProperties.set("Demo", true);
      book.state.customProperties.set("Tested", new Date("2026-08-11T00:00:00Z"));
      book.state.documentProperties.set("title", "Hops & jumps");
      book.state.documentProperties.set("company", "Fjordvik HK");
      book.state.sheetProperties("sheet-3").set("kind", "filtered");
      book.state.xmlParts.push(part);
    });
    expect(state.settings).toEqual({ threshold: { percent: 10, words: 'a "quoted" <word>' } });
    expect(state.customProperties).toEqual({
      Season: "2026",
      "Squad size": 26,
      Demo: true,
      Tested: new Date("2026-08-11T00:00:00Z"),
    });
    expect(state.documentProperties).toMatchObject({ title: "Hops & jumps", company: "Fjordvik HK" });
    expect(state.sheetProperties).toEqual({ "sheet-3": { kind: "filtered" } });
    expect(state.xmlParts).toEqual([part]);
  });
});

const reopened = async (change: Parameters<typeof throughTheEngine>[1]): Promise<OpenedXlsx> =>
  openXlsx((await throughTheEngine(sample(), change)).bytes, "again");
