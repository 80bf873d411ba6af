import fc from "fast-check";
import { breakIntoLines } from "../../src/sheet/breakIntoLines";
import { footLines, headLines } from "../../src/sheet/reportLines";
import { reportOf } from "./reportOf";

const provenance = { source: "Test!A1:B3", date: "2026-08-11", method: "By hand.", used: "2 athletes, 2 results" };
const leftOut = [
  { cell: "B3", why: "“DNS” stands for did not start: no trial." },
  { cell: "B4", why: "Not a number." },
  { cell: "C9", why: "“DNS” stands for did not start: no trial." },
];

describe("headLines(report, count)", () => {
  it("says title, answer, source, and what stands below the table", () => {
    expect(headLines(reportOf([], { provenance: { ...provenance, leftOut } }))).toEqual([
      "A sample",
      "One sentence.",
      "",
      "Read from Test!A1:B3 on 2026-08-11: 2 athletes, 2 results.",
      "Below the table: how it was computed, and one thing to keep in mind. 3 cells were left out.",
    ]);
  });

  it("fills the room there is above a table that stands: blank lines, or the rest in one", () => {
    const summary = ["One.", "Two.", "Three.", "Four."];
    expect(headLines(reportOf([], { summary }), 6).slice(1, 4)).toEqual(["One.", "Two.", "Three. Four."]);
    expect(headLines(reportOf([], { summary: ["One."] }), 6).slice(1, 4)).toEqual(["One.", "", ""]);
  });
});

describe("footLines(report)", () => {
  it("tells the method, what to keep in mind, and what was left out by reason", () => {
    const lines = footLines(reportOf([], { provenance: { ...provenance, leftOut } }));
    expect(lines.filter((line) => line.isHeading).map((line) => line.text)).toEqual([
      "How it was computed",
      "Keep in mind",
      "Left out (3)",
    ]);
    expect(lines.map((line) => line.text)).toEqual([
      "How it was computed",
      "By hand.",
      "Keep in mind",
      "• Mind this.",
      "Left out (3)",
      "• B3, C9: “DNS” stands for did not start: no trial.",
      "• B4: Not a number.",
    ]);
  });
});

describe("breakIntoLines(text)", () => {
  it("breaks between words and loses none, in lines that can be read", () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-zæøå.,;]{1,60}$/), { maxLength: 80 }), (words) => {
        const lines = breakIntoLines(words.join("\n "));
        expect(lines.flatMap((line) => line.split(" "))).toEqual(words);
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(100);
      }),
    );
  });

  it("shortens a word that no line holds (a cell holds 32,767 characters: Excel specifications and limits)", () => {
    expect(breakIntoLines(`${"x".repeat(32_767)} jumps`)).toEqual([`${"x".repeat(59)}… jumps`]);
  });
});
