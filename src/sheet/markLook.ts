import type { Mark } from "../store/marks";
import { look } from "./tableLook";

/*
 * How a marked cell looks: a frame of dashes and bold italic figures, which are seen in print and without colours. The
 * fill and the colour of the figures stay the coach's.
 */

type Look = Omit<Mark["before"], "note">;

const sides = { top: "EdgeTop", bottom: "EdgeBottom", left: "EdgeLeft", right: "EdgeRight" } as const;

const frame = { style: "Dash", weight: "Medium", color: look.ink } as const;

/** The properties that mark a cell of this look. */
export const markedLook = ({ bold, italic }: Look): Excel.SettableCellProperties => ({
  format: {
    borders: { top: frame, bottom: frame, left: frame, right: frame },
    font: { ...(bold !== null && { bold: true }), ...(italic !== null && { italic: true }) },
  },
});

/** Whether a cell still has the look of a mark, all of it. */
export const isMarked = ({ bold, italic, edges }: Look): boolean =>
  bold !== false &&
  italic !== false &&
  Object.values(edges).every((edge) => edge.style === frame.style && edge.weight === frame.weight);

/** Queues reading the look of a cell; gives it after the round trip. */
export function readLook({ format }: Excel.Range): () => Look {
  const font = format.font.load("bold,italic");
  const edge = (side: keyof typeof sides) => {
    const border = format.borders.getItem(sides[side]).load("style,weight,color");
    return () => ({ style: border.style as string, weight: border.weight as string, color: border.color });
  };
  const edges = { top: edge("top"), bottom: edge("bottom"), left: edge("left"), right: edge("right") };
  return () => ({
    bold: font.bold,
    italic: font.italic,
    edges: { top: edges.top(), bottom: edges.bottom(), left: edges.left(), right: edges.right() },
  });
}

/** The properties that give a cell its look again. An edge without a line has no weight: setting one would draw it. */
export function plainLook({ bold, italic, edges }: Look): Excel.SettableCellProperties {
  const edge = ({ style, weight, color }: Look["edges"]["top"]) =>
    (style === "None" ? { style } : { style, weight, color }) as Excel.CellBorder;
  return {
    format: {
      borders: { top: edge(edges.top), bottom: edge(edges.bottom), left: edge(edges.left), right: edge(edges.right) },
      font: { ...(bold !== null && { bold }), ...(italic !== null && { italic }) },
    },
  };
}
