import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { Random } from "./random";

/** What was done to a file, and the file. */
export type Spoilt = { readonly how: string; readonly bytes: Uint8Array };

/** A valid .xlsx file made invalid, or merely strange: in its bytes, in the XML of its parts, or in its cells. */
export function spoiltWorkbook(valid: Uint8Array, random: Random): Spoilt {
  const level = random.oneOf(["bytes", "parts", "xml", "xml", "cells", "cells"] as const);
  switch (level) {
    case "bytes":
      return { how: level, bytes: spoiltBytes(valid, random) };
    case "parts":
      return { how: level, bytes: packed(spoiltParts(unzipSync(valid), random)) };
    case "xml":
      return { how: level, bytes: packed(withPart(unzipSync(valid), random, /\.(xml|rels)$/, spoiltXml)) };
    case "cells":
      return {
        how: level,
        bytes: packed(withPart(unzipSync(valid), random, /worksheets\/sheet\d+\.xml$/, spoiltCells)),
      };
  }
}

type Parts = Record<string, Uint8Array>;

const packed = (parts: Parts): Uint8Array => zipSync(parts, { level: 1 });

/** Bytes flipped, cut off, doubled, blanked or slipped in. */
function spoiltBytes(valid: Uint8Array, random: Random): Uint8Array {
  const [from, length] = [random.below(valid.length), 1 + random.below(random.oneOf([4, 64, 2000]))];
  const before = valid.subarray(0, from);
  const after = valid.subarray(from);
  const noise = Uint8Array.from({ length }, () => random.below(256));
  switch (random.below(5)) {
    case 0:
      return joined(before);
    case 1:
      return joined(before, noise, after);
    case 2:
      return joined(before, noise, after.subarray(length));
    case 3:
      return joined(before, after.subarray(length));
    default:
      return joined(before, after.subarray(0, length), after);
  }
}

function joined(...pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/** A part gone, empty, of another's content, or under another name. */
function spoiltParts(parts: Parts, random: Random): Parts {
  const names = Object.keys(parts);
  const [one, other] = [random.oneOf(names), random.oneOf(names)];
  const { [one]: content, ...rest } = parts;
  switch (random.below(5)) {
    case 0:
      return rest;
    case 1:
      return { ...rest, [one]: new Uint8Array() };
    case 2:
      return { ...parts, [one]: parts[other]!, [other]: content! };
    case 3:
      return { ...rest, [random.oneOf([`/${one}`, `../${one}`, one.toUpperCase(), `${one}/`])]: content! };
    default:
      return { ...rest, [one]: Uint8Array.from({ length: random.below(300) }, () => random.below(256)) };
  }
}

function withPart(parts: Parts, random: Random, which: RegExp, spoil: (xml: string, random: Random) => string): Parts {
  const name = random.oneOf(Object.keys(parts).filter((path) => which.test(path)));
  let xml = strFromU8(parts[name]!);
  for (let times = 1 + random.below(3); times > 0; times -= 1) xml = spoil(xml, random);
  return { ...parts, [name]: strToU8(xml) };
}

/** Tags doubled, dropped, moved and cut; attributes gone or with values that nobody writes. */
function spoiltXml(xml: string, random: Random): string {
  const tags = [...xml.matchAll(/<[^>]*>/g)];
  const tag = tags[random.below(tags.length)];
  if (!tag) return xml;
  const replaced = (by: string) => xml.slice(0, tag.index) + by + xml.slice(tag.index + tag[0].length);
  const attributes = [...tag[0].matchAll(/([\w:]+)="([^"]*)"/g)];
  const attribute = attributes[random.below(attributes.length)];
  switch (random.below(attribute ? 8 : 5)) {
    case 0:
      return replaced("");
    case 1:
      return replaced(tag[0] + tag[0]);
    case 2:
      return replaced(random.oneOf(["<x/>", "&nope;", "&#0;", "]]>", "<![CDATA[", "<a>".repeat(3000), "<!-- "]));
    case 3:
      return xml.slice(0, tag.index);
    case 4:
      return replaced(tags[random.below(tags.length)]![0]);
    case 5:
      return replaced(tag[0].replace(attribute![0], ""));
    default:
      return replaced(tag[0].replace(attribute![0], () => `${attribute![1]}="${random.oneOf(strangeValues)}"`));
  }
}

/** Values that stand for an address, a number, a truth or a name, none of them sensible. */
const strangeValues = [
  ...["", "-1", "0", "1", "2147483648", "1e309", "NaN", "99999999999999999999", "0.5", "x", "true", "A0", "A1048577"],
  ...["XFE1", "A1:XFD1048576", "B2:A1", "A1:", ":", "$A$1", "Sheet1!A1", "A1 B2 C3", "__proto__", "constructor"],
  ...["../../xl/workbook.xml", "/", "#REF!", "&amp;&lt;", "rgb", "FFFFFFFFFF", "a".repeat(40_000), "🏃", "&#55357;"],
];

/** Cells of kinds, places, looks and contents that do not fit together. */
function spoiltCells(xml: string, random: Random): string {
  const cells = [...xml.matchAll(/<c [^>]*?(?:\/>|>.*?<\/c>)/gs)];
  const cell = cells[random.below(cells.length)];
  if (!cell) return spoiltXml(xml, random);
  const strange = `<c r="${random.oneOf(["A1", "B2", "", "a1", "A0", "XFD1048576", "ZZZZ1", "1A", "C3"])}" s="${random.oneOf(strangeValues)}" t="${random.oneOf(["s", "n", "b", "e", "str", "inlineStr", "d", "?", ""])}">${random.oneOf(strangeContents)}</c>`;
  return xml.slice(0, cell.index) + strange + xml.slice(cell.index + cell[0].length);
}

const strangeContents = [
  ...[
    "<v>1</v>",
    "<v>-1</v>",
    "<v>99999999</v>",
    "<v>1e309</v>",
    "<v>NaN</v>",
    "<v></v>",
    "<v/>",
    "<v>#N/A</v>",
    "<v>TRUE</v>",
  ],
  ...["<is><t>x</t></is>", "<is/>", "<is><r/></is>", "<v>2026-08-11T00:00:00</v>", "<v>1</v><v>2</v>", "<v>\u0001</v>"],
  ...["<f>1+</f><v>1</v>", "<f>A1:</f>", "<f></f>", "<f>SUM(</f>", `<f>${"(".repeat(500)}1${")".repeat(500)}</f>`],
  ...["<f>NOSUCH(1)</f>", "<f>[1]Sheet1!A1</f>", '<f t="shared" si="99"/>', '<f t="array" ref="A1:XFD1">ROW(A:A)</f>'],
  ...[
    '<f t="dataTable" ref="A1" r1="B1"/>',
    '<f t="shared" ref="A1:A5" si="0">A1*2</f>',
    "<f>#REF!+1</f>",
    "<f>A1</f>",
  ],
  ...["<f>REPT(&quot;a&quot;,1e9)</f>", "<f>SEQUENCE(1000000,1000)</f>", "<f>INDIRECT(&quot;A1&quot;)</f>"],
  ...["<f>cmd|'/c calc'!A1</f>", "<f>HYPERLINK(&quot;javascript:1&quot;)</f>", `<v>${"9".repeat(40_000)}</v>`],
];
