import { childOf, numberOf, type XmlElement } from "../package/xml";

/** Resolves a colour of the file (plain, from the theme, or from the old fixed palette) to "#rrggbb". */
export type Colours = (colour: XmlElement | undefined) => string | undefined;

export function readColours(theme: XmlElement | undefined): Colours {
  const scheme = themeScheme(theme);
  return (colour) => {
    if (!colour) return undefined;
    const plain =
      colour.attributes.rgb ?? scheme[numberOf(colour, "theme") ?? -1] ?? fixed(numberOf(colour, "indexed"));
    return plain && tinted(plain.slice(-6), numberOf(colour, "tint") ?? 0);
  };
}

/** A sheet's theme numbers count light 1, dark 1, light 2, dark 2; the theme itself lists dark before light. */
function themeScheme(theme: XmlElement | undefined): readonly string[] {
  const colours = childOf(childOf(theme, "themeElements"), "clrScheme")?.children.map(
    ({ children: [value] }) => value?.attributes.lastClr ?? value?.attributes.val ?? "000000",
  );
  if (!colours) return [];
  const [dark1, light1, dark2, light2, ...rest] = colours as [string, string, string, string, ...string[]];
  return [light1, dark1, light2, dark2, ...rest];
}

/** ECMA-376 part 1, 18.8.19: a tint moves the lightness towards black (below 0) or white (above 0). */
function tinted(hex: string, tint: number): string {
  const [red, green, blue] = [0, 2, 4].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255) as [
    number,
    number,
    number,
  ];
  const lightness = (Math.max(red, green, blue) + Math.min(red, green, blue)) / 2;
  const wanted = tint < 0 ? lightness * (1 + tint) : lightness * (1 - tint) + tint;
  return `#${[red, green, blue].map((part) => byte(relit(part, lightness, wanted))).join("")}`;
}

/** Moves one channel so that hue and saturation stay while the lightness changes. */
function relit(part: number, lightness: number, wanted: number): number {
  const reach = (level: number) => 1 - Math.abs(2 * level - 1);
  if (reach(lightness) === 0) return wanted;
  return wanted + ((part - lightness) * reach(wanted)) / reach(lightness);
}

const byte = (share: number) =>
  Math.round(Math.min(1, Math.max(0, share)) * 255)
    .toString(16)
    .padStart(2, "0");

/** ECMA-376 part 1, 18.8.27. 64 and 65 are the system's ink and paper, which the grid has anyway. */
const fixed = (index: number | undefined) => (index === undefined ? undefined : palette[index < 8 ? index : index - 8]);

const palette = (
  "000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF 800000 008000 000080 808000 800080 008080 C0C0C0 808080 " +
  "9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF 000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF " +
  "00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99 3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 " +
  "003366 339966 003300 333300 993300 993366 333399 333333"
).split(" ");
