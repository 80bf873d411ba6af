import { tooltip } from "./bars";
import { seriesColour, shapes, strokes } from "./inks";
import { mark } from "./marks";
import type { ChartPicture } from "./picture";
import type { Bands, Scale } from "./scale";
import { svg } from "./svg";

/** Lines through the values of each series, open where a value is missing, with a mark at each value. */
export const lines = (picture: ChartPicture, bands: Bands, values: Scale): string =>
  picture.series
    .map(({ values: numbers, colour: given, name }, place) => {
      const colour = seriesColour(given, place);
      const shape = shapes[place % shapes.length] as (typeof shapes)[number];
      const at = (value: number, index: number) => [bands.middle(index), values.at(value)] as const;
      let open = false;
      const path = numbers
        .map((value, index) => {
          const move = open ? "L" : "M";
          open = value !== null;
          return value === null
            ? ""
            : `${move}${at(value, index)
                .map((each) => each.toFixed(1))
                .join(" ")}`;
        })
        .join("");
      const stroke = strokes[place % strokes.length];
      return [
        svg("path", {
          d: path,
          fill: "none",
          stroke: colour,
          "stroke-width": 2,
          "stroke-dasharray": stroke || undefined,
        }),
        ...numbers.map((value, index) => {
          if (value === null) return "";
          return svg("g", {}, [mark(shape, ...at(value, index), 7, colour), tooltip(picture, name, index, value)]);
        }),
      ].join("");
    })
    .join("");
