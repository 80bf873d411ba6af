import { paper, type Shape } from "./inks";
import { svg } from "./svg";

/** A point's mark about a place. */
export function mark(shape: Shape, x: number, y: number, size: number, colour: string): string {
  const look = { fill: colour, stroke: paper, "stroke-width": 1 };
  const half = size / 2;
  switch (shape) {
    case "circle":
      return svg("circle", { cx: x, cy: y, r: half, ...look });
    case "square":
      return svg("rect", { x: x - half, y: y - half, width: size, height: size, ...look });
    case "diamond":
      return svg("path", {
        d: path([x, y - half * 1.3], [x + half * 1.3, y], [x, y + half * 1.3], [x - half * 1.3, y]),
        ...look,
      });
    case "triangle":
      return svg("path", {
        d: path([x, y - half * 1.2], [x + half * 1.2, y + half], [x - half * 1.2, y + half]),
        ...look,
      });
  }
}

const path = (...points: readonly (readonly [number, number])[]) =>
  `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}Z`;
