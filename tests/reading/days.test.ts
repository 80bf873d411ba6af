import { dayNumber, dayOfSerial, daySerial, isoDay, mondayOf } from "../../src/reading/days";

describe("days", () => {
  it("are counted from 1970, and back", () => {
    expect(dayNumber("1970-01-01")).toBe(0);
    expect(dayNumber("2026-08-11")).toBe(20_676);
    expect(isoDay(20_676)).toBe("2026-08-11");
  });

  // LibreOffice 7.4.7: =DATEVALUE("2000-01-01") gives 36526, =DATEVALUE("2026-08-11") gives 46245.
  it("have the serial numbers of the sheet, whatever the time of day", () => {
    expect(daySerial("2000-01-01")).toBe(36_526);
    expect(daySerial("2026-08-11")).toBe(46_245);
    expect(dayOfSerial(46_245.75)).toBe("2026-08-11");
  });

  it("belong to the week of their Monday, before 1970 too", () => {
    expect(mondayOf("2026-08-10")).toBe("2026-08-10");
    expect(mondayOf("2026-08-16")).toBe("2026-08-10");
    expect(mondayOf("1969-12-31")).toBe("1969-12-29");
  });
});
