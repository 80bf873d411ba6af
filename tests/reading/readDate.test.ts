import fc from "fast-check";
import { readDate } from "../../src/reading/readDate";

describe("readDate(cell)", () => {
  // Microsoft, "DATEVALUE function": 1 January 2008 is serial number 39448 in the 1900 date system.
  it.each([
    [39_448, "2008-01-01"],
    [39_448.75, "2008-01-01"],
    ["2026-08-11", "2026-08-11"],
    ["2026-8-1", "2026-08-01"],
    ["11.8.2026", "2026-08-11"],
    ["25/11/2026", "2026-11-25"],
    ["11/25/2026", "2026-11-25"],
    ["5/5/2026", "2026-05-05"],
    ["29.02.2028", "2028-02-29"],
    ["11.8.26", "2026-08-11"],
    ["11 August 2026", "2026-08-11"],
    ["11. Aug. 2026", "2026-08-11"],
    ["1. März 2026", "2026-03-01"],
    ["August 11, 2026", "2026-08-11"],
  ])("reads %p as %s", (cell, date) => expect(readDate(cell)).toEqual({ kind: "date", date }));

  it.each([
    ["8/11/2026"],
    ["29.02.2027"],
    ["2026-13-01"],
    ["soon"],
    ["11 Rain 2026"],
    ["31 April 2026"],
    [12],
    [Number.NaN],
    [true],
    [{ error: "#N/A" }],
    ["31.12.1889"],
  ])("does not guess %p", (cell) => expect(readDate(cell)).toMatchObject({ kind: "unread" }));

  it("takes an empty cell as empty", () => {
    expect(readDate(null)).toEqual({ kind: "empty" });
    expect(readDate(" ")).toEqual({ kind: "empty" });
  });

  it("gives the same day from its serial number and from its text", () => {
    fc.assert(
      fc.property(fc.integer({ min: 32_874, max: 73_050 }), (serial) => {
        const read = readDate(serial);
        expect(read.kind).toBe("date");
        expect(readDate((read as { date: string }).date)).toEqual(read);
      }),
    );
  });
});
