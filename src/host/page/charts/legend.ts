import { ink, seriesColour, shapes, strokes } from "./inks";
import { mark } from "./marks";
import type { ChartPicture } from "./picture";
import { escaped, fontSize, shortened, svg, textWidth } from "./svg";

export type Box = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

const keyWidth = 22;
const lineHeight = 20;

/** Draws the legend at its side of the box and gives back what is left of the box. */
export function legend(picture: ChartPicture, box: Box): { readonly drawn: string; readonly rest: Box } {
  const { legend: side, series } = picture;
  if (!side || series.length === 0) return { drawn: "", rest: box };
  const names = series.map(({ name }) => name);
  if (side === "left" || side === "right") {
    const width = Math.min(
      Math.max(...names.map((name) => textWidth(name))) + keyWidth + 10,
      (box.right - box.left) * 0.35,
    );
    const left = side === "left" ? box.left : box.right - width;
    const top = (box.top + box.bottom - names.length * lineHeight) / 2;
    const drawn = names
      .map((_, index) => entry(picture, index, left, top + index * lineHeight, width - keyWidth))
      .join("");
    const rest = side === "left" ? { ...box, left: box.left + width + 10 } : { ...box, right: box.right - width - 10 };
    return { drawn, rest };
  }
  const widths = names.map((name) => Math.min(textWidth(name), 200) + keyWidth + 18);
  const rows: number[][] = [[]];
  let used = 0;
  widths.forEach((width, index) => {
    if (used + width > box.right - box.left && used > 0) {
      rows.push([]);
      used = 0;
    }
    rows.at(-1)!.push(index);
    used += width;
  });
  const height = rows.length * lineHeight;
  const top = side === "top" ? box.top : box.bottom - height;
  const drawn = rows.map((row, line) => {
    const width = row.reduce((sum, index) => sum + widths[index]!, 0) - 18;
    let left = (box.left + box.right - width) / 2;
    return row.map((index) => {
      const text = entry(picture, index, left, top + line * lineHeight, 200);
      left += widths[index]!;
      return text;
    });
  });
  const rest = side === "top" ? { ...box, top: box.top + height + 6 } : { ...box, bottom: box.bottom - height - 6 };
  return { drawn: drawn.flat().join(""), rest };
}

function entry({ kind, series }: ChartPicture, index: number, left: number, top: number, width: number): string {
  const { name, colour: given } = series[index]!;
  const colour = seriesColour(given, index);
  const middle = top + lineHeight / 2;
  const shape = shapes[index % shapes.length] as (typeof shapes)[number];
  const isLine = kind === "lines" || (kind === "columns" && series[index]!.isLine);
  const swatch = () => svg("rect", { x: left + 3, y: middle - 6, width: 12, height: 12, fill: colour });
  const stroke = () =>
    svg("path", {
      d: `M${left} ${middle}h18`,
      stroke: colour,
      "stroke-width": 2,
      "stroke-dasharray": strokes[index % strokes.length] || undefined,
    });
  const spot = () => mark(shape, left + 9, middle, 7, colour);
  const key = kind === "points" ? spot() : isLine ? stroke() + (series[index]!.hasMarks ? spot() : "") : swatch();
  const text = svg(
    "text",
    { x: left + keyWidth, y: middle + fontSize * 0.35, fill: ink },
    escaped(shortened(name, width)),
  );
  return key + text;
}
