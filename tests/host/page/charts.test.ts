import { XMLParser, XMLValidator } from "fast-xml-parser";
import { stackedEnds } from "../../../src/host/page/charts/bars";
import { description, drawChart } from "../../../src/host/page/charts/drawChart";
import type { ChartPicture, PictureAxis, PictureSeries } from "../../../src/host/page/charts/picture";
import { bandsAlong, numberScale } from "../../../src/host/page/charts/scale";

const axis: PictureAxis = {
  title: null,
  minimum: null,
  maximum: null,
  reversed: false,
  gridlines: false,
  visible: true,
};

const series = (name: string, values: (number | null)[], more: Partial<PictureSeries> = {}): PictureSeries => ({
  name,
  values,
  horizontal: [],
  isLine: false,
  hasMarks: true,
  colour: null,
  pointColours: {},
  hasLabels: false,
  ...more,
});

const picture = (more: Partial<ChartPicture> = {}): ChartPicture => ({
  kind: "columns",
  stacked: false,
  title: "Hops <left & right>",
  categories: ["Aelvi", "Brynka", "Dagnja"],
  series: [series("Left", [150, -20, null])],
  categoryAxis: axis,
  valueAxis: axis,
  legend: null,
  overlap: 0,
  gapWidth: 100,
  ...more,
});

type Rect = { x: number; y: number; width: number; height: number; fill: string };

/** The bars of a drawing: every rectangle but the paper. */
function barsOf(drawing: string): Rect[] {
  const parser = new XMLParser({ ignoreAttributes: false, attributeNamePrefix: "", parseAttributeValue: true });
  return [parser.parse(drawing).svg.rect].flat().slice(1);
}

describe("a scale", () => {
  it.each([
    [
      [3, 97],
      [0, 50, 100],
    ],
    [
      [-13.8, 13.3],
      [-20, -10, 0, 10, 20],
    ],
    [
      [0.012, 0.019],
      [0.01, 0.015, 0.02],
    ],
  ])("of %j has round marks around its values", (values, marks) => {
    const scale = numberScale(
      values,
      { from: 0, to: 100 },
      { minimum: null, maximum: null },
      { fromZero: false, marks: 3 },
    );
    expect(scale.marks.map((mark) => Number(mark.toPrecision(6)))).toEqual(marks);
    expect(scale.at(scale.minimum)).toBe(0);
    expect(scale.at(scale.maximum)).toBeCloseTo(100);
  });

  it("reaches zero where the length of a bar means its value, and keeps ends that are given", () => {
    const free = { minimum: null, maximum: null };
    expect(numberScale([150, 180], { from: 0, to: 1 }, free, { fromZero: true, marks: 4 }).minimum).toBe(0);
    const given = numberScale(
      [150, 180],
      { from: 0, to: 1 },
      { minimum: 140, maximum: 200 },
      { fromZero: true, marks: 4 },
    );
    expect([given.minimum, given.maximum]).toEqual([140, 200]);
  });

  it("stands without values, and with one value only", () => {
    const free = { minimum: null, maximum: null };
    for (const values of [[], [0], [5], [-5]]) {
      const scale = numberScale(values, { from: 0, to: 100 }, free, { fromZero: false, marks: 4 });
      for (const value of values) expect(Number.isFinite(scale.at(value))).toBe(true);
    }
  });

  it("gives categories equal bands, from either end", () => {
    expect([0, 1].map(bandsAlong(2, { from: 0, to: 100 }, false).middle)).toEqual([25, 75]);
    expect([0, 1].map(bandsAlong(2, { from: 0, to: 100 }, true).middle)).toEqual([75, 25]);
  });
});

describe("bars", () => {
  it("grow up from zero and down from zero, and are absent where a value is", () => {
    const [up, down, ...none] = barsOf(drawChart(picture(), "c", 400, 300)) as [Rect, Rect, ...Rect[]];
    expect(none).toEqual([]);
    expect(up.y + up.height).toBeCloseTo(down.y, 1);
    expect(up.height / down.height).toBeCloseTo(150 / 20, 1);
  });

  it("are as wide as gap and overlap say", () => {
    const two = [series("Left", [1]), series("Right", [1])];
    const [left, right] = barsOf(drawChart(picture({ categories: ["A"], series: two }), "c", 400, 300)) as [Rect, Rect];
    expect(right.x - left.x).toBeCloseTo(left.width, 1);
    const covering = picture({ categories: ["A"], series: two, overlap: 100 });
    const [one, other] = barsOf(drawChart(covering, "c", 400, 300)) as [Rect, Rect];
    expect(other.x).toBeCloseTo(one.x, 1);
    expect(one.width / left.width).toBeCloseTo(3 / 2, 1);
  });

  it("lie with the first category at the bottom, as Excel has it, and on top where the axis is reversed", () => {
    const lying = (reversed: boolean) =>
      barsOf(
        drawChart(
          picture({ kind: "bars", series: [series("L", [1, 2, 3])], categoryAxis: { ...axis, reversed } }),
          "c",
          400,
          300,
        ),
      );
    expect(lying(false)[0]!.y).toBeGreaterThan(lying(false)[2]!.y);
    expect(lying(true)[0]!.y).toBeLessThan(lying(true)[2]!.y);
    expect(lying(true)[2]!.width / lying(true)[0]!.width).toBeCloseTo(3, 1);
  });

  it("stand on each other, above and below zero apart", () => {
    expect(stackedEnds([series("a", [1, -2]), series("b", [3, -4]), series("c", [-5, 6])])).toEqual([
      [
        [0, 1],
        [0, -2],
      ],
      [
        [1, 4],
        [-2, -6],
      ],
      [
        [0, -5],
        [0, 6],
      ],
    ]);
  });

  it("take the workbook's colours, a point's before its series'", () => {
    const coloured = series("L", [1, 2, 3], { colour: "#123456", pointColours: { 1: "#abcdef" } });
    const fills = barsOf(drawChart(picture({ series: [coloured] }), "c", 400, 300)).map(({ fill }) => fill);
    expect(fills).toEqual(["#123456", "#abcdef", "#123456"]);
  });
});

describe("a drawing", () => {
  it.each(["columns", "bars", "lines", "points"] as const)(
    "of %s is sound XML with a title and a description",
    (kind) => {
      for (const legend of ["top", "bottom", "left", "right", null] as const) {
        const drawing = drawChart(picture({ kind, legend, stacked: kind === "bars" }), "c", 320, 200);
        expect(XMLValidator.validate(drawing)).toBe(true);
        expect(drawing).toContain('role="img"');
        expect(drawing).toContain("Hops &#60;left &#38; right&#62;</title>");
        expect(drawing).not.toMatch(/NaN|Infinity|undefined/);
      }
    },
  );

  it("stands with nothing to show", () => {
    const empty = drawChart(picture({ categories: [], series: [], title: null }), "c", 120, 90);
    expect(XMLValidator.validate(empty)).toBe(true);
    expect(empty).not.toMatch(/NaN|Infinity|undefined/);
  });

  it("is told in words", () => {
    const words = description(picture({ valueAxis: { ...axis, title: "Distance (cm)" } }));
    expect(words).toBe("Column chart over 3 categories. Left: 2 values from -20 to 150. Values: Distance (cm).");
  });

  it("opens a line where a value is missing", () => {
    const drawing = drawChart(picture({ kind: "lines", series: [series("L", [1, null, 3, 4])] }), "c", 400, 300);
    const line = /<path d="([^"]*)" fill="none"/.exec(drawing)![1]!;
    expect(line.match(/M/g)).toHaveLength(2);
    expect(line.match(/L/g)).toHaveLength(1);
  });
});
