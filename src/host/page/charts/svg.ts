type Attributes = { readonly [name: string]: string | number | undefined };

/** One SVG element as text; numbers are rounded to a hundredth of a pixel. */
export function svg(name: string, attributes: Attributes = {}, content: string | readonly string[] = ""): string {
  let opening = name;
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined) continue;
    opening += ` ${key}="${typeof value === "number" ? Math.round(value * 100) / 100 : escaped(value)}"`;
  }
  return `<${opening}>${typeof content === "string" ? content : content.join("")}</${name}>`;
}

export const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

export const fontSize = 12;

/** Width of a text in pixels, near enough to place it: letters of the page's typeface are about half as wide as high. */
export const textWidth = (text: string, size: number = fontSize): number => text.length * size * 0.56;

/** A text shortened to a width, with an ellipsis where something is missing. */
export function shortened(text: string, width: number, size: number = fontSize): string {
  if (textWidth(text, size) <= width) return text;
  const letters = Math.max(1, Math.floor(width / (size * 0.56)) - 1);
  return `${text.slice(0, letters).trimEnd()}…`;
}
