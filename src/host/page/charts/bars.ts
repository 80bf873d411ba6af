import { seriesColour } from "./inks";
import type { ChartPicture } from "./picture";
import type { Bands, Scale } from "./scale";
import { svg } from "./svg";

/** Bars from the zero line to their value, side by side within their category; standing, or lying to the side. */
export function bars(picture: ChartPicture, bands: Bands, values: Scale, lying: boolean): string {
  const { series, overlap, gapWidth } = picture;
  const shift = 1 - overlap / 100;
  // A category is as wide as its bars, each but the first shifted by what overlap leaves of it, and the gap.
  const width = bands.width / (1 + (series.length - 1) * shift + gapWidth / 100);
  const group = width * (1 + (series.length - 1) * shift);
  const zero = values.at(Math.min(Math.max(0, values.minimum), values.maximum));
  return series
    .flatMap(({ values: numbers, colour, pointColours, name }, place) => {
      // Lying bars count upwards, as their categories do.
      const offset = lying ? series.length - 1 - place : place;
      return numbers.map((value, index) => {
        if (value === null) return "";
        const start = bands.middle(index) - group / 2 + offset * width * shift;
        const end = values.at(Math.min(Math.max(value, values.minimum), values.maximum));
        const [low, length] = [Math.min(zero, end), Math.abs(end - zero)];
        const box = lying
          ? { x: low, y: start, width: length, height: width }
          : { x: start, y: low, width, height: length };
        const fill = seriesColour(pointColours?.[index] ?? colour, place);
        return svg("rect", { ...box, fill }, tooltip(picture, name, index, value));
      });
    })
    .join("");
}

/** What a pointer that rests on a mark is told. */
export const tooltip = ({ categories }: ChartPicture, name: string, index: number, value: number): string =>
  svg(
    "title",
    {},
    [categories[index] ?? "", name, String(Number(value.toPrecision(6)))]
      .filter(Boolean)
      .join(", ")
      .replace(/[&<>]/g, " "),
  );
