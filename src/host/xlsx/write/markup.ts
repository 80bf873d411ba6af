import { isIdentity } from "../../engine/identity";

/** What an attribute may be; `undefined` and `false` leave it out, `true` writes "1". */
export type Attribute = string | number | boolean | undefined;

/** One element of an XML part. `content` is markup, not text: text goes through `escaped`. */
export function tag(
  name: string,
  attributes: { readonly [name: string]: Attribute } = {},
  content: string | readonly string[] = "",
): string {
  let opening = name;
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    opening += ` ${key}="${value === true ? 1 : escaped(String(value))}"`;
  }
  const inside = typeof content === "string" ? content : content.join("");
  return inside === "" ? `<${opening}/>` : `<${opening}>${inside}</${name}>`;
}

/** A list of elements under one that counts them; nothing where the list is empty. */
export const counted = (name: string, items: readonly string[]): string =>
  items.length === 0 ? "" : tag(name, { count: items.length }, items);

export const escaped = (text: string): string =>
  text
    .replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`)
    // What only looks like a character written by its number is kept from being read as one.
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")
    // XML has no form for most control characters; the format writes them by their number.
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the very characters to replace
    .replace(/[\u0000-\u0008\u000b\u000c\u000d\u000e-\u001f\ufffe\uffff]/g, (sign) => {
      const code = sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
      return `_x${code}_`;
    });

/** A text element whose blanks at both ends count. */
export const textTag = (name: string, text: string): string =>
  tag(name, /^\s|\s$|\n/.test(text) ? { "xml:space": "preserve" } : {}, escaped(text));

const encoder = new TextEncoder();

/** A complete XML part. */
export const part = (markup: string): Uint8Array =>
  encoder.encode(`<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${markup}`);

/** The id of a part's sheet or table, where Excel keeps its own; other programs may leave it unread. */
export const identityAttributes = (id: string | undefined): Record<string, string> =>
  isIdentity(id)
    ? {
        "xmlns:mc": "http://schemas.openxmlformats.org/markup-compatibility/2006",
        "mc:Ignorable": "xr",
        "xmlns:xr": "http://schemas.microsoft.com/office/spreadsheetml/2014/revision",
        "xr:uid": id,
      }
    : {};

export const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const relationships = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
