import { markKey, noMarks, parseMarks } from "../../src/store/marks";

const line = { style: "None", weight: "Thin", color: "#000000" };
const mark = {
  sheetId: "sheet-1",
  address: "B3",
  said: "Check: low.",
  before: { note: null, bold: false, italic: null, edges: { top: line, bottom: line, left: line, right: line } },
};
const marks = { version: 1, marks: { "sheet-1!B3": mark } };

describe("parseMarks(stored)", () => {
  it("gives back what was stored", () => {
    expect(parseMarks(JSON.parse(JSON.stringify(marks)))).toEqual(marks);
    expect(parseMarks(noMarks)).toEqual(noMarks);
  });

  it.each([
    ["of a newer version", { ...marks, version: 2 }],
    ["damaged", { version: 1, marks: { "sheet-1!B3": { ...mark, before: {} } } }],
    ["something else", []],
  ])("is null for what is %s, so that nobody writes over it", (_, stored) => {
    expect(parseMarks(stored)).toBeNull();
  });
});

it("markKey(mark) is one key for each cell of each sheet", () => {
  expect(markKey(mark)).toBe("sheet-1!B3");
});
