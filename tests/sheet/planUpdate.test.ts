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
  beside: [],
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

  describe("whose columns come and go", () => {
    const keys = ["athlete", "value", "verdict"];
    const day = { key: "day", heading: "Day", meaning: "When." };
    const { table } = report;
    /** The columns of the report with the one for the day before the verdict, and without the value. */
    const other = {
      ...report,
      table: {
        ...table,
        columns: [table.columns[0]!, day, table.columns[2]!],
        rows: table.rows.map(([athlete, , verdict]) => [athlete!, "d", verdict!]),
      },
    };
    const body = [["A", 9, "old"]];
    const beside = [[""], [""], [""], [""], ["mine, further down"]];

    it("puts a new column after the last, and empties one that is no longer given", () => {
      const plan = planned(other, standing(body, { beside }), { ...last, keys });
      expect(plan.width).toBe(4);
      expect(plan.columns.map(({ index }) => index)).toEqual([0, 3, 2]);
      expect(plan.columns[1]!.values).toEqual(["d", "d", "d"]);
      expect(plan.emptied).toEqual([{ index: 1, heading: "Value (cm)", key: "value" }]);
    });

    it("keeps a coach's own column where it is, and fills an emptied one again", () => {
      const headings = ["Athlete", "Value (cm)", "Verdict", "My note", "Day"];
      const remembered = { ...last, headings: ["Athlete", "Day", "Verdict", "Value (cm)"] };
      const plan = planned(report, standing([["A", "", "x", "mine", "d"]], { headings }), {
        ...remembered,
        keys: ["athlete", "day", "verdict", "value"],
      });
      expect(plan.width).toBe(5);
      expect(plan.columns.map(({ index }) => index)).toEqual([0, 1, 2]);
      expect(plan.emptied).toEqual([{ index: 4, heading: "Day", key: "day" }]);
    });

    it("knows a column by its key where the heading has another unit now", () => {
      const metres = {
        ...table,
        columns: table.columns.map((one) => (one.key === "value" ? { ...one, heading: "Value (m)" } : one)),
      };
      const plan = planned({ ...report, table: metres }, standing(body), { ...last, keys });
      expect([plan.width, plan.emptied, plan.columns[1]!.index]).toEqual([3, [], 1]);
    });

    it("knows a table of an early version by headings", () => {
      const wider = { ...table, columns: [...table.columns, day], rows: table.rows.map((row) => [...row, "d"]) };
      const plan = planned({ ...report, table: wider }, standing(body, { beside }), last);
      expect(plan.columns.map(({ index }) => index)).toEqual([0, 1, 2, 3]);
    });

    it("refuses to grow over a coach's cells beside it, or to give a heading twice, and names the cell", () => {
      const written = { ...last, keys };
      const full = [[""], [""], ["mine"], [""]];
      expect(planUpdate(other, standing(body, { beside: full }), written)).toEqual({
        ...{ kind: "conflict", reason: "beside", address: "D8" },
      });
      const headings = ["day", ...last.headings];
      expect(planUpdate(other, standing([["mine", ...body[0]!]], { headings }), written)).toMatchObject({
        ...{ reason: "beside", address: "A6" },
      });
    });
  });

  it("refuses a table whose headings were changed or that has a total row", () => {
    expect(planUpdate(report, standing([], { headings: ["Name", "Value (cm)", "Verdict"] }), last)).toMatchObject({
      reason: "headings",
    });
    expect(planUpdate(report, standing([], { hasTotals: true }), last)).toMatchObject({ reason: "totals" });
  });
});
