import { errorOf, onSheet, openHost } from "./openHost";

/** Pages: excel/excel-add-ins-charts, excel/excel-add-ins-charts-data-... (series, axes, titles). */
const opened = openHost();

const filled = (sheet: Excel.Worksheet): Excel.Range => {
  const range = sheet.getRange("A1:C3");
  range.values = [
    ["Player", "Left (cm)", "Right (cm)"],
    ["Ada", 180, 175],
    ["Eva", 190, "DNS"],
  ];
  return range;
};

describe("charts (excel/excel-add-ins-charts)", () => {
  test("find their series and categories in a range", () =>
    onSheet(opened.host, async (sheet, context) => {
      const chart = sheet.charts.add("BarClustered", filled(sheet), "Auto");
      chart.load("name,chartType,width,height");
      chart.series.load("items/name");
      await context.sync();
      expect(chart).toMatchObject({ chartType: "BarClustered", width: 360, height: 216 });
      expect(chart.series.items.map((series) => series.name)).toEqual(["Left (cm)", "Right (cm)"]);
      const [drawn] = opened.host.charts.list();
      expect(opened.host.charts.dataOf(drawn!)).toEqual({
        categories: ["Ada", "Eva"],
        series: [
          { name: "Left (cm)", values: [180, 190], x: [null, null] },
          { name: "Right (cm)", values: [175, null], x: [null, null] },
        ],
      });
    }));

  test("keep what is set of titles, axes, legend, series and place", () =>
    onSheet(opened.host, async (sheet, context) => {
      const chart = sheet.charts.add(opened.host.Excel.ChartType.columnClustered, filled(sheet));
      chart.name = "Asymmetry";
      chart.title.text = "Left and right";
      chart.legend.position = "Bottom";
      chart.axes.valueAxis.title.text = "cm";
      chart.axes.valueAxis.minimum = 100;
      chart.axes.categoryAxis.reversePlotOrder = true;
      const series = chart.series.getItemAt(0);
      series.gapWidth = 60;
      series.overlap = 100;
      series.format.fill.setSolidColor("#1F6F78");
      chart.setPosition("E2", "J16");
      const again = sheet.charts.getItem("asymmetry");
      again.load("title/text,legend/position,axes/valueAxis/minimum,axes/valueAxis/title/text,left,top,width,height");
      const colour = again.series.getItemAt(0).format.fill.getSolidColor();
      await context.sync();
      expect(again.title.text).toBe("Left and right");
      expect(again.legend.position).toBe("Bottom");
      expect(again.axes.valueAxis.title.text).toBe("cm");
      expect(again.axes.valueAxis.minimum).toBe(100);
      expect(colour.value).toBe("#1F6F78");
      // Columns of 48 points, rows of 15.
      expect([again.left, again.top, again.width, again.height]).toEqual([192, 15, 288, 225]);
    }));

  test("a series of its own takes values and names from ranges", () =>
    onSheet(opened.host, async (sheet, context) => {
      filled(sheet);
      const chart = sheet.charts.add("Line", sheet.getRange("A1:B3"));
      const series = chart.series.add("Right");
      series.setValues(sheet.getRange("C2:C3"));
      series.setXAxisValues(sheet.getRange("A2:A3"));
      const source = series.getDimensionDataSourceString("Values");
      await context.sync();
      expect(source.value).toBe("Sheet1!C2:C3");
      expect(opened.host.charts.dataOf(opened.host.charts.list()[0]!).series[1]).toMatchObject({
        name: "Right",
        values: [175, null],
      });
    }));

  test("tell the page when they come, change and go", () =>
    onSheet(opened.host, async (sheet, context) => {
      const told: string[] = [];
      opened.host.charts.listen((event, { name }) => told.push(`${event} ${name}`));
      const chart = sheet.charts.add("Line", filled(sheet));
      chart.title.text = "x";
      chart.delete();
      const gone = sheet.charts.getItemOrNullObject("Chart 1");
      await context.sync();
      expect(told).toEqual(["added Chart 1", "changed Chart 1", "deleted Chart 1"]);
      expect(gone.isNullObject).toBe(true);
    }));

  test("an unknown type or word is refused", async () => {
    for (const attempt of [
      (sheet: Excel.Worksheet) => void sheet.charts.add("Tower" as "Line", filled(sheet)),
      (sheet: Excel.Worksheet) => {
        sheet.charts.add("Line", filled(sheet)).legend.position = "Under" as "Top";
      },
    ]) {
      const error = await errorOf(
        onSheet(opened.host, async (sheet, context) => {
          attempt(sheet);
          await context.sync();
        }),
      );
      expect(error.code).toBe("InvalidArgument");
    }
  });
});
