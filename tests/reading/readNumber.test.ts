import { readNumber } from "../../src/reading/readNumber";
import { unitOf } from "../../src/reading/units";

const cm = unitOf("cm");

describe("readNumber(cell, unit)", () => {
  it("takes numbers as they are, and empty cells as empty", () => {
    expect(readNumber(182.5, cm)).toEqual({ kind: "number", value: 182.5, remark: null });
    expect(readNumber(null, cm)).toEqual({ kind: "empty" });
    expect(readNumber("  ", cm)).toEqual({ kind: "empty" });
  });

  it.each([
    ["182", 182],
    ["182,5", 182.5],
    [" 182.5 ", 182.5],
    ["182 cm", 182],
    ["182cm.", 182],
    ["1.82 m", 182],
    ["1,82 m", 182],
    ["1820 mm", 182],
    // 1 inch is 2.54 cm exactly, by definition.
    ["70 in", 177.8],
  ])("reads the text “%s” as %d cm, and says so", (text, value) => {
    const read = readNumber(text, cm);
    expect(read).toMatchObject({ kind: "number", value });
    expect(read).toHaveProperty("remark", expect.stringContaining("was read as"));
  });

  it.each([
    ["DNS", "absent"],
    ["inj", "absent"],
    ["-", "absent"],
    ["foul", "absent"],
    ["about 180", "text"],
    ["180?", "text"],
    ["1,820", "text"],
    ["82 kg", "unit"],
    [true, "boolean"],
    [{ error: "#DIV/0!" }, "error"],
    [1e12, "text"],
  ])("does not read %p: %s", (cell, code) => {
    expect(readNumber(cell, cm)).toMatchObject({ kind: "unread", code });
  });

  it("does not guess the unit of a column", () => {
    expect(readNumber("182 cm", null)).toMatchObject({ kind: "unread", code: "unit" });
  });

  it("quotes long text by its beginning only", () => {
    const read = readNumber("x".repeat(32_767), cm);
    expect(read).toHaveProperty("why", expect.stringMatching(/^“x{23}…” is text/));
  });
});
