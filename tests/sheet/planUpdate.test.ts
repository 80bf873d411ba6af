import { planUpdate, type StandingTable } from "../../src/sheet/planUpdate";
import { reportOf } from "./reportOf";

const last = {
  tableId: "t",
  sheetId: "s",
  headings: ["Athlete", "Value (cm)", "Verdict"],
  head: [],
  foot: [],
  chart: null,
};

const standing = (body: readonly (readonly unknown[])[], more: Partial<StandingTable> = {}): StandingTable => ({
  headerRow: 5,
  firstColumn: 0,
  headings: last.headings,
  body,
  hasTotals: false,
  below: [],
  ...more,
});

const planned = (...args: Parameters<typeof planUpdate>) => {
  const plan = planUpdate(...args);
  if (plan.kind === "conflict") throw new Error(plan.reason);
  return plan;
};

describe("planUpdate(report, standing, last)", () => {
  const report = reportOf([
    ["A", 1, "x"],
    ["B", 2, "y"],
    ["C", 3, "z"],
  ]);

  it("keeps the rows in the coach's order and puts new athletes below", () => {
    const plan = planned(
      report,
      standing([
        ["C", 0, ""],
        ["A", 0, ""],
      ]),
      last,
    );
    expect(plan.columns.map((column) => column.values)).toEqual([
      ["C", "A", "B"],
      [3, 1, 2],
      ["z", "x", "y"],
    ]);
    expect(plan.rowCount).toBe(3);
  });

  it("closes up the rows of athletes who are gone, and empties what the table gives up", () => {
    const plan = planned(
      report,
      standing([
        ["Gone", 9, ""],
        ["A", 0, ""],
        ["B", 0, ""],
        ["C", 0, ""],
        ["Gone too", 9, ""],
      ]),
      last,
    );
    expect(plan.rowCount).toBe(3);
    expect(plan.columns[0]!.values).toEqual(["A", "B", "C", null, null]);
  });

  it("never moves a row beside a coach's own column: who is gone keeps the row, with our cells empty", () => {
    const own = { headings: ["Athlete", "My note", "Value (cm)", "Verdict"] };
    const plan = planned(
      report,
      standing(
        [
          ["Gone", "keep", 9, "w"],
          ["A", "", 0, ""],
        ],
        own,
      ),
      last,
    );
    expect(plan.columns.map((column) => column.index)).toEqual([0, 2, 3]);
    expect(plan.columns.map((column) => column.values)).toEqual([
      ["Gone", "A", "B", "C"],
      [null, 1, 2, 3],
      [null, "x", "y", "z"],
    ]);
  });

  it("refuses to grow over a coach's cells, and names them", () => {
    const plan = planUpdate(
      report,
      standing([["A", 0, ""]], {
        below: [
          ["", "", ""],
          ["", "mine", ""],
        ],
      }),
      last,
    );
    expect(plan).toEqual({ kind: "conflict", reason: "below", address: "B9" });
  });

  it("does not mind a coach's cells further down", () => {
    const below = [
      ["", "", ""],
      ["", "", ""],
      ["", "mine", ""],
    ];
    expect(planned(report, standing([["A", 0, ""]], { below }), last).rowCount).toBe(3);
  });

  it("refuses a table whose headings were changed or that has a total row", () => {
    expect(planUpdate(report, standing([], { headings: ["Name", "Value (cm)", "Verdict"] }), last)).toMatchObject({
      reason: "headings",
    });
    expect(planUpdate(report, standing([], { hasTotals: true }), last)).toMatchObject({ reason: "totals" });
  });
});
