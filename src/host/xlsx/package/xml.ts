import { SaxesParser } from "saxes";
import { XlsxRefusal } from "../refusal";

/** An element of an XML part: names without their namespace prefix, which writers choose freely. */
export type XmlElement = {
  readonly name: string;
  readonly attributes: { readonly [name: string]: string };
  readonly children: XmlElement[];
  text: string;
};

/** Elements of these names are handed over as soon as they are complete, and not kept: for long sheets. */
export type Consumers = { readonly [name: string]: (element: XmlElement) => void };

/** Parses one part. A document type declaration is refused: workbooks have none, attacks do. */
export function parseXml(source: Uint8Array, consumers: Consumers = {}): XmlElement {
  const parser = new SaxesParser({ xmlns: false, position: false });
  const root: XmlElement = { name: "", attributes: {}, children: [], text: "" };
  const open: XmlElement[] = [root];
  parser.on("error", () => {
    throw brokenXml();
  });
  parser.on("doctype", () => {
    throw brokenXml();
  });
  parser.on("opentag", (tag) => {
    const attributes: Record<string, string> = {};
    for (const name in tag.attributes) attributes[withoutPrefix(name)] = tag.attributes[name] as string;
    const element: XmlElement = { name: withoutPrefix(tag.name), attributes, children: [], text: "" };
    if (!consumers[element.name]) open.at(-1)!.children.push(element);
    open.push(element);
  });
  const addText = (text: string) => {
    open.at(-1)!.text += text;
  };
  parser.on("text", addText);
  parser.on("cdata", addText);
  parser.on("closetag", () => {
    const closed = open.pop()!;
    consumers[closed.name]?.(closed);
  });
  parser.write(new TextDecoder().decode(source)).close();
  const document = root.children[0];
  if (!document) throw brokenXml();
  return document;
}

export const childOf = (element: XmlElement | undefined, name: string): XmlElement | undefined =>
  element?.children.find((child) => child.name === name);

export const childrenOf = (element: XmlElement | undefined, name: string): readonly XmlElement[] =>
  element?.children.filter((child) => child.name === name) ?? [];

/** How many elements of these names there are, at any depth. */
export const countOf = (element: XmlElement | undefined, names: readonly string[]): number =>
  (element?.children ?? []).reduce(
    (count, child) => count + (names.includes(child.name) ? 1 : 0) + countOf(child, names),
    0,
  );

/** Number of an attribute, or `undefined` where there is none. */
export function numberOf(element: XmlElement | undefined, attribute: string): number | undefined {
  const text = element?.attributes[attribute];
  return text === undefined || text === "" || Number.isNaN(Number(text)) ? undefined : Number(text);
}

/** Truth of an attribute as spreadsheet files write it: "1" or "true". */
export function truthOf(element: XmlElement | undefined, attribute: string, otherwise = false): boolean {
  const text = element?.attributes[attribute];
  return text === undefined ? otherwise : text === "1" || text === "true";
}

/** All text of an element's `t` descendants: shared strings, notes and chart titles store it so. Phonetic hints are left out. */
export function textOf(element: XmlElement | undefined): string {
  if (!element) return "";
  if (element.name === "t") return unescapeControls(element.text);
  return element.children
    .filter((child) => child.name !== "rPh")
    .map(textOf)
    .join("");
}

/** `_x000D_` and the like stand for characters that XML cannot hold. */
const unescapeControls = (text: string) =>
  text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));

const withoutPrefix = (name: string) => name.slice(name.indexOf(":") + 1);

const brokenXml = () =>
  new XlsxRefusal(
    "This file is damaged: a part of it cannot be read. Open and save it in your spreadsheet program, then try again.",
  );
