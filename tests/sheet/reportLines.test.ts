import { reportLines } from "../../src/sheet/reportLines";
import { reportOf } from "./reportOf";

const provenance = { source: "Test!A1:B3", date: "2026-08-11", method: "By hand.", used: "2 athletes, 2 results" };

describe("reportLines(report)", () => {
  it("says title, answer, source and method, what was left out, and what to mind", () => {
    const leftOut = [{ cell: "B3", why: "“DNS” stands for did not start: no trial." }];
    expect(reportLines(reportOf([], { provenance: { ...provenance, leftOut } }))).toEqual([
      "A sample",
      "One sentence.",
      "Read from Test!A1:B3 on 2026-08-11: 2 athletes, 2 results. By hand.",
      "Left out (1): B3: “DNS” stands for did not start: no trial.",
      "Keep in mind: Mind this.",
    ]);
  });

  it("fits a cell, whatever was left out (Excel specifications and limits: 32,767 characters a cell)", () => {
    const leftOut = Array.from({ length: 5000 }, (_, row) => ({
      cell: `B${row}`,
      why: "Empty: taken as a missing trial.",
    }));
    const lines = reportLines(reportOf([], { provenance: { ...provenance, leftOut } }));
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(32_767);
  });
});
