import { ink, seriesColour } from "./inks";
import type { ChartPicture, PictureSeries } from "./picture";
import type { Bands, Scale } from "./scale";
import { escaped, fontSize, svg } from "./svg";

/** Bars from the zero line to their value, side by side or on each other within their category; standing or lying. */
export function bars(picture: ChartPicture, bands: Bands, values: Scale): string {
  const lying = picture.kind === "bars";
  const drawn = picture.series.map((series, colour) => ({ series, colour })).filter(({ series }) => !series.isLine);
  const places = picture.stacked ? 1 : drawn.length;
  const shift = 1 - picture.overlap / 100;
  // A category is as wide as its bars, each but the first shifted by what overlap leaves of it, and the gap.
  const width = bands.width / (1 + (places - 1) * shift + picture.gapWidth / 100);
  const group = width * (1 + (places - 1) * shift);
  const within = (value: number) => values.at(Math.min(Math.max(value, values.minimum), values.maximum));
  const ends = picture.stacked ? stackedEnds(drawn.map(({ series }) => series)) : undefined;

  return drawn
    .flatMap(({ series, colour }, place) =>
      series.values.map((value, index) => {
        if (value === null) return "";
        const [from, to] = ends?.[place]?.[index] ?? [0, value];
        // Lying bars count upwards, as their categories do.
        const offset = picture.stacked ? 0 : lying ? places - 1 - place : place;
        const start = bands.middle(index) - group / 2 + offset * width * shift;
        const [near, far] = [within(from), within(to)];
        const [low, length] = [Math.min(near, far), Math.abs(far - near)];
        const box = lying
          ? { x: low, y: start, width: length, height: width }
          : { x: start, y: low, width, height: length };
        const fill = seriesColour(series.pointColours[index] ?? series.colour, colour);
        const bar = svg("rect", { ...box, fill }, tooltip(picture, series.name, index, value));
        return series.hasLabels ? bar + label(value, start + width / 2, far, lying) : bar;
      }),
    )
    .join("");
}

/** Where each bar of a stack begins and ends: what is above zero grows upwards, what is below downwards. */
export function stackedEnds(series: readonly PictureSeries[]): (readonly [number, number])[][] {
  const above: number[] = [];
  const below: number[] = [];
  return series.map(({ values }) =>
    values.map((value, index) => {
      const pile = (value ?? 0) < 0 ? below : above;
      const from = pile[index] ?? 0;
      pile[index] = from + (value ?? 0);
      return [from, pile[index]] as const;
    }),
  );
}

function label(value: number, middle: number, end: number, lying: boolean): string {
  const text = escaped(plainNumber(value));
  const outward = value < 0 ? -1 : 1;
  if (lying) {
    const anchor = value < 0 ? "end" : "start";
    return svg("text", { x: end + 4 * outward, y: middle + fontSize * 0.35, "text-anchor": anchor, fill: ink }, text);
  }
  const y = value < 0 ? end + fontSize : end - 4;
  return svg("text", { x: middle, y, "text-anchor": "middle", fill: ink }, text);
}

/** What a pointer that rests on a mark is told. */
export const tooltip = ({ categories }: ChartPicture, name: string, index: number, value: number): string =>
  svg("title", {}, escaped([categories[index] ?? "", name, plainNumber(value)].filter(Boolean).join(", ")));

const plainNumber = (value: number) => String(Number(value.toPrecision(4)));
