import { tooltip } from "./bars";
import { seriesColour, shapes, strokes } from "./inks";
import { mark } from "./marks";
import type { ChartPicture, PictureSeries } from "./picture";
import type { Scale } from "./scale";
import { svg } from "./svg";

/**
 * Lines through the values of series, open where a value is missing, and a mark at each value. Series that are told
 * apart by stroke and shape as well as by colour are `place` apart in the chart's list.
 */
export function line(
  picture: ChartPicture,
  series: PictureSeries,
  place: number,
  across: (index: number) => number | null,
  values: Scale,
): string {
  const colour = seriesColour(series.colour, place);
  const shape = shapes[place % shapes.length] as (typeof shapes)[number];
  const spots = series.values.map((value, index) => {
    const x = across(index);
    return value === null || x === null ? null : { x, y: values.at(value), value, index };
  });
  const steps = spots.map(
    (spot, index) => spot && `${spots[index - 1] ? "L" : "M"}${spot.x.toFixed(1)} ${spot.y.toFixed(1)}`,
  );
  const stroke = series.isLine || picture.kind === "lines";
  return [
    stroke
      ? svg("path", {
          d: steps.filter(Boolean).join(""),
          fill: "none",
          stroke: colour,
          "stroke-width": 2,
          "stroke-dasharray": strokes[place % strokes.length] || undefined,
        })
      : "",
    ...spots.map((spot) => {
      if (!spot || (stroke && !series.hasMarks)) return "";
      const fill = seriesColour(series.pointColours[spot.index] ?? series.colour, place);
      const size = stroke ? 7 : 8;
      return svg("g", {}, [
        mark(shape, spot.x, spot.y, size, fill),
        tooltip(picture, series.name, spot.index, spot.value),
      ]);
    }),
  ].join("");
}
