import { bars, stackedEnds } from "./bars";
import { hairline, ink, paper, quietInk } from "./inks";
import { type Box, legend } from "./legend";
import { line } from "./lines";
import type { ChartPicture, PictureSeries } from "./picture";
import { type Bands, bandsAlong, numberScale, type Scale } from "./scale";
import { escaped, fontSize, shortened, svg, textWidth } from "./svg";

const margin = 14;
const titleSize = 15;

/** A chart as SVG text. `id` makes the names of its title and description unique in the page. */
export function drawChart(picture: ChartPicture, id: string, width: number, height: number): string {
  let box: Box = { left: margin, top: margin, right: width - margin, bottom: height - margin };
  let head = "";
  if (picture.title) {
    const text = escaped(shortened(picture.title, width - 2 * margin, titleSize));
    const look = { "font-size": titleSize, "font-weight": 600, "text-anchor": "middle", fill: ink };
    head = svg("text", { x: width / 2, y: box.top + titleSize * 0.8, ...look }, text);
    box = { ...box, top: box.top + titleSize + 12 };
  }
  const { drawn, rest } = legend(picture, box);
  const plot = picture.kind === "bars" ? lyingPlot(picture, rest) : standingPlot(picture, rest);
  return svg(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: "img",
      "aria-labelledby": `${id}-title ${id}-description`,
      "font-family": "Segoe UI, system-ui, Helvetica Neue, Liberation Sans, sans-serif",
      "font-size": fontSize,
    },
    [
      svg("title", { id: `${id}-title` }, escaped(picture.title ?? "Chart")),
      svg("desc", { id: `${id}-description` }, escaped(description(picture))),
      svg("rect", { width, height, fill: paper }),
      head,
      drawn,
      plot,
    ],
  );
}

/** The chart in a sentence or two, for those who do not see it. */
export function description({ kind, series, categories, valueAxis }: ChartPicture): string {
  const names = { columns: "Column chart", bars: "Bar chart", lines: "Line chart", points: "Scatter chart" };
  const ranges = series.map(({ name, values }) => {
    const numbers = values.filter((value) => value !== null);
    if (numbers.length === 0) return `${name}: no values`;
    const [low, high] = [Math.min(...numbers), Math.max(...numbers)].map((each) => Number(each.toPrecision(4)));
    return `${name}: ${numbers.length} values from ${low} to ${high}`;
  });
  const along = categories.length > 0 && kind !== "points" ? ` over ${categories.length} categories` : "";
  const unit = valueAxis.title ? ` Values: ${valueAxis.title}.` : "";
  return `${names[kind]}${along}. ${ranges.join("; ")}.${unit}`;
}

const present = (values: readonly (number | null)[]) => values.filter((value) => value !== null);

function valueScale(picture: ChartPicture, from: number, to: number): Scale {
  const fromZero = picture.kind === "columns" || picture.kind === "bars";
  const values = picture.stacked
    ? stackedEnds(picture.series).flat(2)
    : picture.series.flatMap((each) => present(each.values));
  const ends = picture.valueAxis.reversed ? { from: to, to: from } : { from, to };
  // A mark every 45 pixels upwards; figures side by side need more room.
  const marks = Math.abs(to - from) / (picture.kind === "bars" ? 80 : 45);
  return numberScale(values, ends, picture.valueAxis, { fromZero, marks });
}

/** Columns, lines and points: values upwards. */
function standingPlot(picture: ChartPicture, box: Box): string {
  const { valueAxis, categoryAxis } = picture;
  const count = Math.max(picture.categories.length, ...picture.series.map(({ values }) => values.length), 1);
  const trial = valueScale(picture, box.bottom, box.top);
  const labels = valueAxis.visible ? Math.max(...trial.marks.map((each) => textWidth(trial.label(each)))) + 8 : 0;
  const left = box.left + labels + (valueAxis.title ? fontSize + 8 : 0);
  const right = box.right - 4;

  const slot = (right - left) / count;
  const longest = Math.max(0, ...picture.categories.map((label) => textWidth(label)));
  const turned = picture.kind !== "points" && longest + 8 > slot;
  const below = !categoryAxis.visible
    ? 4
    : turned
      ? Math.min(longest * 0.75, (box.bottom - box.top) * 0.36) + 16
      : fontSize + 10;
  const bottom = box.bottom - below - (categoryAxis.title ? fontSize + 8 : 0);
  const vertical = valueScale(picture, bottom, box.top + 4);
  const frame = { left, top: box.top + 4, right, bottom };

  const axis = [
    ...vertical.marks.map((value) => valueMark(vertical, value, frame, picture)),
    valueAxis.title
      ? axisTitle(valueAxis.title, box.left + fontSize * 0.8, (frame.top + bottom) / 2, bottom - frame.top, true)
      : "",
    categoryAxis.title ? axisTitle(categoryAxis.title, (left + right) / 2, box.bottom - 2, right - left, false) : "",
  ];
  if (picture.kind === "points") {
    const across = numberScale(
      picture.series.flatMap((series) => present(placesOf(series))),
      categoryAxis.reversed ? { from: right, to: left } : { from: left, to: right },
      categoryAxis,
      { fromZero: false, marks: (right - left) / 80 },
    );
    const spots = picture.series.map((series, place) => {
      const places = placesOf(series);
      const at = (index: number) => (typeof places[index] === "number" ? across.at(places[index]) : null);
      return line(picture, series, place, at, vertical);
    });
    return [...axis, ...across.marks.map((value) => acrossMark(across, value, frame, picture)), ...spots].join("");
  }
  const bands = bandsAlong(count, { from: left, to: right }, categoryAxis.reversed);
  const marks = [
    picture.kind === "columns" ? bars(picture, bands, vertical) : "",
    ...picture.series.map((series, place) =>
      picture.kind === "lines" || series.isLine ? line(picture, series, place, bands.middle, vertical) : "",
    ),
  ];
  const names = categoryAxis.visible ? categoryNames(picture, bands, bottom, turned, below, box.left) : "";
  return [...axis, ...marks, zeroLine(vertical, frame, false), names].join("");
}

/** Where points stand along the horizontal axis; without numbers of their own they are counted. */
const placesOf = ({ horizontal, values }: PictureSeries): readonly (number | null)[] =>
  horizontal.length > 0 ? horizontal : values.map((_, index) => index + 1);

/** Lying bars: values to the right, the first category at the bottom, as Excel has it. */
function lyingPlot(picture: ChartPicture, box: Box): string {
  const { valueAxis, categoryAxis } = picture;
  const longest = Math.max(0, ...picture.categories.map((label) => textWidth(label)));
  const labels = categoryAxis.visible ? Math.min(longest, (box.right - box.left) * 0.35) + 8 : 0;
  const left = box.left + labels + (categoryAxis.title ? fontSize + 8 : 0);
  const right = box.right - 12;
  const bottom = box.bottom - (valueAxis.visible ? fontSize + 10 : 4) - (valueAxis.title ? fontSize + 8 : 0);
  const frame = { left, top: box.top, right, bottom };
  const across = valueScale(picture, left, right);
  const count = Math.max(picture.categories.length, ...picture.series.map(({ values }) => values.length), 1);
  const bands = bandsAlong(count, { from: bottom, to: box.top }, categoryAxis.reversed);
  const everyNth = Math.max(1, Math.ceil((fontSize + 1) / bands.width));
  const names = categoryAxis.visible
    ? picture.categories.map((label, index) =>
        index % everyNth
          ? ""
          : svg(
              "text",
              { x: left - 8, y: bands.middle(index) + fontSize * 0.35, "text-anchor": "end", fill: ink },
              escaped(shortened(label, labels - 8)),
            ),
      )
    : [];
  return [
    ...across.marks.map((value) => acrossMark(across, value, frame, { ...picture, categoryAxis: valueAxis })),
    bars(picture, bands, across),
    zeroLine(across, frame, true),
    ...names,
    valueAxis.title ? axisTitle(valueAxis.title, (left + right) / 2, box.bottom - 2, right - left, false) : "",
    categoryAxis.title
      ? axisTitle(categoryAxis.title, box.left + fontSize * 0.8, (box.top + bottom) / 2, bottom - box.top, true)
      : "",
  ].join("");
}

function valueMark(scale: Scale, value: number, frame: Box, { valueAxis }: ChartPicture): string {
  const y = scale.at(value);
  const line = valueAxis.gridlines
    ? svg("path", { d: `M${frame.left} ${y.toFixed(1)}H${frame.right}`, stroke: hairline, "stroke-width": 1 })
    : "";
  if (!valueAxis.visible) return line;
  return (
    line +
    svg("text", { x: frame.left - 6, y: y + fontSize * 0.35, "text-anchor": "end", fill: quietInk }, scale.label(value))
  );
}

function acrossMark(scale: Scale, value: number, frame: Box, { categoryAxis }: ChartPicture): string {
  const x = scale.at(value);
  const line = categoryAxis.gridlines
    ? svg("path", { d: `M${x.toFixed(1)} ${frame.top}V${frame.bottom}`, stroke: hairline, "stroke-width": 1 })
    : "";
  if (!categoryAxis.visible) return line;
  return (
    line +
    svg("text", { x, y: frame.bottom + fontSize + 5, "text-anchor": "middle", fill: quietInk }, scale.label(value))
  );
}

function zeroLine(scale: Scale, frame: Box, upright: boolean): string {
  const at = scale.at(Math.min(Math.max(0, scale.minimum), scale.maximum)).toFixed(1);
  const d = upright ? `M${at} ${frame.top}V${frame.bottom}` : `M${frame.left} ${at}H${frame.right}`;
  return svg("path", { d, stroke: quietInk, "stroke-width": 1 });
}

/** Names below the plot, also where bars go down from zero; turned where they are long, thinned out where they are many. */
function categoryNames(
  picture: ChartPicture,
  bands: Bands,
  bottom: number,
  turned: boolean,
  below: number,
  left: number,
): string {
  const everyNth = Math.max(1, Math.ceil((fontSize + 1) / bands.width));
  return picture.categories
    .map((label, index) => {
      if (index % everyNth) return "";
      const x = bands.middle(index);
      if (!turned)
        return svg("text", { x, y: bottom + fontSize + 5, "text-anchor": "middle", fill: ink }, escaped(label));
      const y = bottom + 12;
      // A turned name must not run out of the chart on the left.
      const room = Math.min((below - 12) / 0.75, (x - left) / 0.64);
      const turn = `rotate(-50 ${x.toFixed(1)} ${y.toFixed(1)})`;
      return svg("text", { x, y, transform: turn, "text-anchor": "end", fill: ink }, escaped(shortened(label, room)));
    })
    .join("");
}

function axisTitle(text: string, x: number, y: number, room: number, turned: boolean): string {
  const transform = turned ? `rotate(-90 ${x.toFixed(1)} ${y.toFixed(1)})` : undefined;
  return svg("text", { x, y, transform, "text-anchor": "middle", fill: quietInk }, escaped(shortened(text, room)));
}
