import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strToU8, unzipSync, zipSync } from "fflate";
import { openXlsx, XlsxRefusal } from "../../../src/host/xlsx";
import { limits } from "../../../src/host/xlsx/package/archive";

const sample = unzipSync(new Uint8Array(readFileSync(join(__dirname, "data/everything.xlsx"))));

/** The sample with some parts replaced (by text) or added. */
const spoilt = (parts: Record<string, string>) =>
  zipSync({ ...sample, ...Object.fromEntries(Object.entries(parts).map(([path, text]) => [path, strToU8(text)])) });

/** A packed file in which the part of a certain size announces another one, in its local and in its central header. */
function announcing(parts: Record<string, Uint8Array>, size: number, instead: number): Uint8Array {
  const packed = zipSync(parts);
  const bytes = (number: number) => new Uint8Array(new Uint32Array([number]).buffer);
  for (let at = 0; at < packed.length - 4; at += 1) {
    if (bytes(size).every((byte, index) => packed[at + index] === byte)) packed.set(bytes(instead), at);
  }
  return packed;
}

const textOf = (path: string) => new TextDecoder().decode(sample[path]);

const refusal = (bytes: Uint8Array): string => {
  try {
    openXlsx(bytes, "spoilt");
  } catch (error) {
    if (error instanceof XlsxRefusal) return error.message;
    throw error;
  }
  throw new Error("It was opened.");
};

describe("files that are refused, each with its reason", () => {
  it("no packed file at all", () => {
    expect(refusal(strToU8("Athlete;Left;Right"))).toMatch(/not an \.xlsx workbook/);
    expect(refusal(new Uint8Array())).toMatch(/not an \.xlsx workbook/);
  });

  it("an old or locked workbook", () => {
    expect(refusal(new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1]))).toMatch(/older \.xls .* password/);
  });

  it("a packed file that is no workbook", () => {
    expect(refusal(zipSync({ "readme.txt": strToU8("hello") }))).toMatch(/no workbook/);
  });

  it("a file cut short", () => {
    const whole = zipSync(sample);
    expect(refusal(whole.subarray(0, whole.length / 2))).toMatch(/damaged/);
  });

  it("a file that unpacks to far more than a workbook", () => {
    const bomb = announcing({ ...sample, "xl/media/image1.png": new Uint8Array(1e6) }, 1e6, limits.unpacked);
    expect(refusal(bomb)).toMatch(/far more than a workbook holds/);
  });

  it("a file of very many parts", () => {
    const parts = Object.fromEntries(
      Array.from({ length: limits.parts + 1 }, (_, index) => [`part${index}`, new Uint8Array()]),
    );
    expect(refusal(zipSync(parts, { level: 0 }))).toMatch(/far more than a workbook holds/);
  });

  it("a part that holds more than it announces gets no more room than it announces", () => {
    const long = strToU8(`<worksheet>${" ".repeat(1e6)}</worksheet>`);
    expect(refusal(announcing({ ...sample, "xl/worksheets/sheet1.xml": long }, long.length, 16))).toMatch(/damaged/);
  });

  it("broken XML, and a document type declaration", () => {
    expect(refusal(spoilt({ "xl/worksheets/sheet1.xml": "<worksheet><sheetData></worksheet>" }))).toMatch(/damaged/);
    const entity = `<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa">]><worksheet>&a;</worksheet>`;
    expect(refusal(spoilt({ "xl/worksheets/sheet1.xml": entity }))).toMatch(/damaged/);
  });

  it("cells beyond the grid", () => {
    const beyond = (cell: string) =>
      spoilt({
        "xl/worksheets/sheet1.xml": `<worksheet><sheetData><row><c r="${cell}"><v>1</v></c></row></sheetData></worksheet>`,
      });
    expect(refusal(beyond("A1048577"))).toMatch(/which no sheet has/);
    expect(refusal(beyond("XFE1"))).toMatch(/which no sheet has/);
    const row = `<worksheet><sheetData><row r="9999999"/></sheetData></worksheet>`;
    expect(refusal(spoilt({ "xl/worksheets/sheet1.xml": row }))).toMatch(/more cells than a sheet/);
  });

  it("macros and values from other files", () => {
    expect(refusal(spoilt({ "xl/vbaProject.bin": "macro" }))).toMatch(/macros/);
    const links = textOf("xl/_rels/workbook.xml.rels").replace(
      "</Relationships>",
      `<Relationship Id="x1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLink" Target="externalLinks/externalLink1.xml"/></Relationships>`,
    );
    expect(refusal(spoilt({ "xl/_rels/workbook.xml.rels": links }))).toMatch(/other files/);
  });
});

describe("files that only look dangerous", () => {
  // Laid out cell by cell it would not end within the time of a test, nor in the machine's memory.
  it("a name and a rule over whole columns open", () => {
    const book = textOf("xl/workbook.xml").replace("$B$2:$B$4", "$A$1:$XFD$1048576");
    const sheet = textOf("xl/worksheets/sheet1.xml").replace('sqref="B2:C100"', 'sqref="B1:C1048576"');
    expect(sheet).toContain("1048576");
    const opened = openXlsx(spoilt({ "xl/workbook.xml": book, "xl/worksheets/sheet1.xml": sheet }), "wide");
    expect(Object.values(opened.workbook.sheets!)[0]!.rowCount).toBe(1000);
  });

  it("prefixed element names, as some writers use, read the same", () => {
    const prefixed = textOf("xl/worksheets/sheet2.xml")
      .replace(/<(\/?)(\w)/g, "<$1x:$2")
      .replace("xmlns=", "xmlns:x=");
    const { workbook } = openXlsx(spoilt({ "xl/worksheets/sheet2.xml": prefixed }), "prefixed");
    expect(workbook.sheets![workbook.sheetOrder![1]!]!.cellData![0]![0]).toEqual({ f: "='Hops & jumps'!B2*2" });
  });
});
