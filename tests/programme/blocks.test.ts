import { blocksOf, currentBlock, lastBegun, workedOn } from "../../src/programme/blocks";
import { exerciseLibrary } from "../../src/programme/exerciseLibrary";
import { dayNumber, isoDay } from "../../src/reading/days";
import { asPlanned, type PlanRow } from "../../src/store/planTable";
import { plannedRow } from "../sheet/plannedRows";

const weeksFrom = (begins: string, weeks: number, athlete = "A"): PlanRow[] =>
  Array.from({ length: weeks }, (_, index) =>
    asPlanned(plannedRow(athlete, "Back squat", { week: index + 1, begins: isoDay(dayNumber(begins) + 7 * index) })),
  );

const first = weeksFrom("2026-08-31", 6);
const second = weeksFrom("2026-11-02", 4);
const spans = (rows: readonly PlanRow[]) => blocksOf(rows).map(({ begins, ends }) => `${begins} to ${ends}`);

describe("blocksOf(plan)", () => {
  it("ends a block where weeks are counted anew, whatever the order of the rows", () => {
    expect(blocksOf([])).toEqual([]);
    expect(spans(first)).toEqual(["2026-08-31 to 2026-10-11"]);
    expect(spans([...second, ...first].reverse())).toEqual(["2026-08-31 to 2026-10-11", "2026-11-02 to 2026-11-29"]);
    expect(spans([...weeksFrom("2026-08-31", 1), ...weeksFrom("2026-09-07", 1)])).toHaveLength(2);
  });

  it("is not torn apart by a day or a row that the coach has changed", () => {
    const tuesday = first.map((row) => (row.week === 3 ? { ...row, begins: "2026-09-15" } : row));
    expect(spans([...first, ...tuesday.filter(({ week }) => week === 3)])).toEqual(["2026-08-31 to 2026-10-11"]);
    expect(spans(tuesday)).toEqual(["2026-08-31 to 2026-10-11"]);
    // Of a block planned anew half way, a row of the old week 5 stands on a day of the new week 2.
    const old = { ...first[4]!, begins: "2026-09-28" };
    const anew = ["A", "B"].flatMap((athlete) => weeksFrom("2026-09-21", 4, athlete));
    expect(spans([...first.slice(0, 3), old, ...anew])).toEqual([
      "2026-08-31 to 2026-09-20",
      "2026-09-21 to 2026-10-18",
    ]);
  });
});

describe("which block counts", () => {
  const blocks = blocksOf([...first, ...second]);
  it.each([
    ["2026-08-20", "2026-08-31"],
    ["2026-10-11", "2026-08-31"],
    ["2026-10-12", "2026-11-02"],
    ["2027-01-01", "2026-11-02"],
  ])("on %s the current one is that of %s", (day, begins) => {
    expect(currentBlock(blocks, day)!.begins).toBe(begins);
  });

  it("for a review is the last that had begun with the latest results", () => {
    expect(lastBegun(blocks, "2026-10-29")!.begins).toBe("2026-08-31");
    expect(lastBegun(blocks, "2026-11-30")!.begins).toBe("2026-11-02");
    expect(lastBegun(blocks, "2026-08-20")).toBeNull();
  });
});

describe("workedOn(rows, library)", () => {
  it("ranks an athlete's qualities by how much of each was planned, and passes over unknown exercises", () => {
    const rows = ["Bounding", "back  squat", "Bench press", "Swim"].map((exercise) =>
      asPlanned(plannedRow("A", exercise)),
    );
    expect(workedOn(rows, exerciseLibrary)).toEqual([
      { athlete: "A", rank: 1, quality: "Strength" },
      { athlete: "A", rank: 2, quality: "Lower-body power" },
    ]);
  });
});
