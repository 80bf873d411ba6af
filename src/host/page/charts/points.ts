import { tooltip } from "./bars";
import { seriesColour, shapes } from "./inks";
import { mark } from "./marks";
import type { ChartPicture } from "./picture";
import type { Scale } from "./scale";
import { svg } from "./svg";

/** Points at their horizontal and vertical values. */
export const points = (picture: ChartPicture, horizontal: Scale, vertical: Scale): string =>
  picture.series
    .flatMap(({ values, horizontal: places, colour, name, pointColours }, series) =>
      values.map((value, index) => {
        const place = places?.[index] ?? index + 1;
        if (value === null || (places && places[index] === null)) return "";
        const shape = shapes[series % shapes.length] as (typeof shapes)[number];
        const fill = seriesColour(pointColours?.[index] ?? colour, series);
        return svg("g", {}, [
          mark(shape, horizontal.at(place), vertical.at(value), 8, fill),
          tooltip(picture, name, index, value),
        ]);
      }),
    )
    .join("");
