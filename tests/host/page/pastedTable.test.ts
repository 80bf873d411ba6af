import { cellsOfText, textOfCells } from "../../../src/host/page/pastedTable";

describe("a table as the text of a clipboard", () => {
  // As spreadsheet programs write it (observed, common practice): tabs and lines, and quotes where a cell has those.
  const table = [
    ["Athlete", "", "Right"],
    ["two\nlines", 'she said "hop"', "a\ttab"],
    ['"quoted"', "1,5", ""],
  ];
  const text = 'Athlete\t\tRight\n"two\nlines"\tshe said "hop"\t"a\ttab"\n"""quoted"""\t1,5\t';

  it("quotes cells with line breaks and tabs, and keeps the place of empty ones", () => {
    expect(textOfCells(table)).toBe(text);
  });

  it("is read back as it was", () => {
    expect(cellsOfText(text)).toEqual(table);
  });
});
