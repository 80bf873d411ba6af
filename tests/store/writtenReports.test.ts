import { noWrittenReports, parseWrittenReports } from "../../src/store/writtenReports";

const written = {
  version: 1,
  reports: { key: { tableId: "t", sheetId: "s", headings: ["Athlete"], head: ["T"], foot: ["M", null], chart: null } },
};

describe("parseWrittenReports(stored)", () => {
  it("gives back what was stored", () => {
    expect(parseWrittenReports(JSON.parse(JSON.stringify(written)))).toEqual(written);
    expect(parseWrittenReports(noWrittenReports)).toEqual(noWrittenReports);
  });

  it.each([
    ["of a newer version", { ...written, version: 2 }],
    ["damaged", { version: 1, reports: { key: { tableId: "t" } } }],
    ["something else", "text"],
    ["nothing", null],
  ])("is null for what is %s, so that nobody writes over it", (_, stored) => {
    expect(parseWrittenReports(stored)).toBeNull();
  });
});
