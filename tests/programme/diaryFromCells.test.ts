import { diary as sampleDiary } from "../../sample-workbooks/diary";
import { diaryFromCells } from "../../src/programme/diaryFromCells";
import type { Cell, Grid } from "../../src/reading/grid";
import { readSeason } from "./season";

const grid = (...cells: Cell[][]): Grid => ({
  ...{ sheet: "Diary", firstRow: 0, firstColumn: 0, cells },
  ...{ hiddenRows: [], unselectedRows: [], unselectedColumns: [], mergedAreas: [] },
});

describe("a coach's diary sheet", () => {
  it("is read whole from the sample season: every row, day and number", async () => {
    const { diary } = await readSeason();
    const read = diaryFromCells(diary)!;
    const rows = sampleDiary();
    expect(read.remarks).toEqual([]);
    expect(read.unused).toEqual([]);
    expect(read.entries).toEqual(
      rows.map(({ date, athlete, session, minutes, rating, throws, jumps }) => ({
        ...{ date: date.toISOString().slice(0, 10), athlete, session, attended: "yes", minutes, rating, throws, jumps },
        ...{ sprints: null, deliveries: null },
      })),
    );
  });

  it("is read in German, in any order, below a title, with columns of the coach's own", () => {
    const read = diaryFromCells(
      grid(
        ["Trainingstagebuch", null, null, null, null, null],
        ["Spielerin", "Stimmung", "Datum", "Dauer (min)", "Anstrengung", "Würfe"],
        ["Ane Berg", "gut", "31.8.2026", 90, "6,5", 70],
      ),
    )!;
    expect(read).toMatchObject({ unused: ["Stimmung"], remarks: [] });
    expect(read.entries).toEqual([
      {
        ...{ date: "2026-08-31", athlete: "Ane Berg", session: null, attended: "yes", minutes: 90, rating: 6.5 },
        ...{ throws: 70, jumps: null, sprints: null, deliveries: null },
      },
    ]);
  });

  it("tells dirty cells by their address, and takes an athlete who was ill as away", () => {
    const read = diaryFromCells(
      grid(
        ["Date", "Athlete", "Minutes", "Rating (0-10)"],
        ["2026-08-31", "Ane Berg", 90, 11],
        ["sometime", "Ane Berg", 90, 5],
        ["2026-09-01", "Ane Berg", "ill", null],
        ["2026-09-02", "Ane Berg", { error: "#REF!" }, 5],
        [null, null, null, null],
        ["2026-09-03", null, 60, 5],
      ),
    )!;
    expect(read.remarks.map(({ cell, why }) => `${cell} ${why}`)).toEqual([
      "D2 11 is not from 0 to 10.",
      "A3 “sometime” is not a date. The row was left out.",
      "C5 The cell shows the error #REF!.",
      "B7 Nothing stands under “Athlete”; the row was left out.",
    ]);
    expect(read.entries.map(({ attended, minutes, rating }) => [attended, minutes, rating])).toEqual([
      ["yes", 90, null],
      ["no", null, null],
      ["yes", null, 5],
    ]);
  });

  it("understands marks of attendance, and tells one it does not", () => {
    const read = diaryFromCells(
      grid(
        ["Date", "Name", "Present", "Min"],
        ...["x", "nein", "inj", "late", true].map((mark): Cell[] => ["2026-09-01", "Ane Berg", mark, 60]),
      ),
    )!;
    expect(read.entries.map(({ attended }) => attended)).toEqual(["yes", "no", "no", "yes", "yes"]);
    expect(read.remarks).toMatchObject([{ cell: "C5", why: expect.stringContaining("late") }]);
  });

  it("reads the day of merged cells in each of their rows, and passes over rows that are hidden or not selected", () => {
    const rows: Cell[][] = [
      ["Day", "Athlete", "Min"],
      ["2026-09-01", "Ane Berg", 60],
      [null, "Kari Dahl", 60],
      ["2026-09-02", "Ane Berg", 45],
      ["2026-09-03", "Ane Berg", 30],
    ];
    const read = diaryFromCells({ ...grid(...rows), mergedAreas: ["A2:A3"], hiddenRows: [3], unselectedRows: [4] })!;
    expect(read.entries.map(({ date, athlete }) => `${date} ${athlete}`)).toEqual([
      "2026-09-01 Ane Berg",
      "2026-09-01 Kari Dahl",
    ]);
    expect(read).toMatchObject({ hiddenRows: 1, remarks: [] });
  });

  it("is none where nothing names day and athlete", () => {
    expect(diaryFromCells(grid(["Team", "Points"], ["A", 3]))).toBeNull();
  });
});
