import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { hopTest } from "../../sample-workbooks/hopTest";
import { analyse, longest, python, type ReadWorkbook, readWithPython } from "./handToAndFro";

const sample = join(__dirname, "../../sample-workbooks/fjordvik-handball.xlsx");
const folder = mkdtempSync(join(tmpdir(), "tapeline-interop-"));

afterAll(() => rmSync(folder, { recursive: true, force: true }));

(python ? describe : describe.skip)("what we write, read by openpyxl", () => {
  let before: ReadWorkbook;
  let after: ReadWorkbook;

  beforeAll(async () => {
    before = readWithPython(sample);
    after = readWithPython(await analyse(sample, "Hop test!A3:H29", join(folder, "analysed.xlsx")));
  }, longest);

  it.each(["Hop test", "Hop test long", "Hop test dirty", "Read me"])("has all that %s had", (name) => {
    const { widths, ...rest } = before.sheets[name]!;
    const { widths: widthsAfter, ...restAfter } = after.sheets[name]!;
    expect(Object.keys(rest.values).length).toBeGreaterThan(3);
    expect(restAfter).toEqual(rest);
    // Neighbours of one width stand under the first one's letter; widths may lose half a pixel.
    for (const [letters, width] of Object.entries(widths)) expect(widthsAfter[letters]).toBeCloseTo(width, 0);
  });

  it("has the table, its chart, its frozen headings and its numbers at full precision", () => {
    const sheet = after.sheets.Asymmetry!;
    expect(Object.keys(sheet.tables)).toEqual(["Tapeline_Asymmetry"]);
    const [, heading, last] = /^A(\d+):[A-Z](\d+)$/.exec(sheet.tables.Tapeline_Asymmetry!)!.map(Number);
    expect(last! - heading!).toBe(26);
    expect(sheet.frozen).toBe(`A${heading! + 1}`);
    expect(sheet.charts).toBe(1);
    for (let row = heading! + 1; row <= last!; row += 1) {
      const { left, right } = hopTest().find(({ athlete }) => athlete.name === sheet.values[`A${row}`])!;
      const [l, r] = [Math.max(...left), Math.max(...right)];
      expect(sheet.values[`D${row}`]).toBeCloseTo((100 * (r - l)) / Math.max(l, r), 12);
    }
  });
});
