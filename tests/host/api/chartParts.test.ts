import { onSheet, openHost } from "./openHost";

/** Pages: excel/excel-add-ins-charts, excel/excel-add-ins-charts-data-labels and, of the reference, Excel.Chart. */
const opened = openHost();

const withChart = <T>(
  type: Excel.ChartType | "ColumnClustered" | "Pie",
  batch: (chart: Excel.Chart, sheet: Excel.Worksheet, context: Excel.RequestContext) => Promise<T>,
): Promise<T> =>
  onSheet(opened.host, async (sheet, context) => {
    sheet.getRange("A1:C3").values = [
      ["Player", "Left", "Right"],
      ["Ada", 31, 29],
      ["Eva", 33, 34],
    ];
    return batch(sheet.charts.add(type as "Pie", sheet.getRange("A1:C3"), "Columns"), sheet, context);
  });

test("legend entries name the series, of a pie its slices, and can be hidden", async () => {
  await withChart("ColumnClustered", async (chart, _sheet, context) => {
    const { legendEntries } = chart.legend;
    legendEntries.getItemAt(1).visible = false;
    legendEntries.load("items/visible,items/index");
    const count = legendEntries.getCount();
    await context.sync();
    expect([count.value, legendEntries.items.map(({ index, visible }) => [index, visible])]).toEqual([
      2,
      [
        [0, true],
        [1, false],
      ],
    ]);
  });
  await withChart("Pie", async (chart, _sheet, context) => {
    const count = chart.legend.legendEntries.getCount();
    await context.sync();
    expect(count.value).toBe(2);
  });
});

test("titles follow the cell their formula points at", () =>
  withChart("ColumnClustered", async (chart, sheet, context) => {
    sheet.getRange("E1").values = [["Hop test"]];
    chart.title.setFormula("=Sheet1!E1");
    chart.axes.valueAxis.title.setFormula("=Sheet1!B1");
    chart.title.load("text,width,height");
    chart.axes.valueAxis.title.load("text,visible");
    await context.sync();
    expect([chart.title.text, chart.axes.valueAxis.title.text, chart.axes.valueAxis.title.visible]).toEqual([
      "Hop test",
      "Left",
      true,
    ]);
    sheet.getRange("E1").values = [["Jump test, May"]];
    const { width } = chart.title;
    chart.title.load("text,width");
    await context.sync();
    expect(chart.title.text).toBe("Jump test, May");
    expect(chart.title.width).toBeGreaterThan(width);
  }));

test("data labels have a size, a place for their tail and substrings", () =>
  withChart("ColumnClustered", async (chart, _sheet, context) => {
    const series = chart.series.getItemAt(0);
    series.hasDataLabels = true;
    const label = series.points.getItemAt(1).dataLabel;
    label.setHeight(24);
    label.setWidth(60);
    const anchor = label.getTailAnchor();
    anchor.top = 12;
    anchor.load("top,left");
    label.load("height,width,showAsStickyCallout");
    await context.sync();
    expect([label.height, label.width, label.showAsStickyCallout, anchor.top]).toEqual([24, 60, false, 12]);
  }));

test("axes take a display unit of their own, trendlines have a label", () =>
  withChart("ColumnClustered", async (chart, _sheet, context) => {
    const axis = chart.axes.valueAxis;
    axis.setCustomDisplayUnit(5);
    axis.load("displayUnit,customDisplayUnit,alignment");
    const trendline = chart.series.getItemAt(0).trendlines.add("Linear");
    trendline.showEquation = true;
    trendline.label.numberFormat = "0.00";
    trendline.label.format.font.color = "#FF0000";
    trendline.label.load("numberFormat,format/font/color");
    await context.sync();
    expect([axis.displayUnit, axis.customDisplayUnit, axis.alignment]).toEqual(["Custom", 5, "Center"]);
    expect([trendline.label.numberFormat, trendline.label.format.font.color]).toEqual(["0.00", "#FF0000"]);
  }));
