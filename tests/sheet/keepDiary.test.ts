import type { Host } from "../../src/host";
import { keepDiary } from "../../src/sheet/keepDiary";
import { readProgramme } from "../../src/sheet/readProgramme";
import { setUpProgramme } from "../../src/sheet/setUpProgramme";
import { takeBack } from "../../src/sheet/takeBack";
import type { DiaryEntry } from "../../src/store/diary";
import { addSheet, openWorkbook, valuesAt } from "./openWorkbook";
import { workbookImage } from "./workbookImage";

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

const entry = (athlete: string, more: Partial<DiaryEntry> = {}): DiaryEntry => ({
  ...{ date: "2026-09-01", athlete, session: "Strength", attended: "yes", minutes: 60, rating: 6 },
  ...{ throws: null, jumps: 20, sprints: null, deliveries: null },
  ...more,
});

const week = [entry("Ane Berg"), entry("Kari Dahl", { rating: null }), entry("Liv Aas", { attended: "no" })];

const act = (change: (table: Excel.Table, sheet: Excel.Worksheet) => void) =>
  Excel.run(async (context) => {
    const table = context.workbook.tables.getItem("Tapeline_Diary");
    change(table, table.worksheet);
    await context.sync();
  });

describe("keepDiary(fresh)", () => {
  it("makes the diary where there is none, and gives back what it was given", async () => {
    const before = host.syncs;
    expect(await keepDiary(week)).toMatchObject({ sheet: "Diary", added: 3, same: 0, differing: [], inTheWay: null });
    expect(host.syncs - before).toBeLessThanOrEqual(3);
    const { diary, remarks } = await readProgramme();
    expect(diary).toEqual(week);
    expect(remarks).toEqual([]);
  });

  it("stands beside the coach's own sheet of that name, which is not touched", async () => {
    await addSheet("Diary", [["Date", "Athlete", "Minutes"]]);
    expect((await keepDiary(week)).sheet).toBe("Diary 2");
    expect(await valuesAt("Diary", "A1:C1")).toEqual([["Date", "Athlete", "Minutes"]]);
  });

  it("fills the blank row of an empty diary, then grows it; the same entries again add nothing", async () => {
    await setUpProgramme({ diary: [] });
    const before = host.syncs;
    expect(await keepDiary(week)).toMatchObject({ added: 3, same: 0 });
    expect(host.syncs - before).toBeLessThanOrEqual(3);
    expect((await readProgramme()).diary).toEqual(week);
    expect(await keepDiary(week)).toMatchObject({ added: 0, same: 3, deed: { steps: [] } });
    const more = [...week, entry("Ane Berg", { date: "2026-09-03" }), entry("ane  berg", { session: "Match" })];
    expect(await keepDiary(more)).toMatchObject({ added: 2, same: 3 });
    expect((await readProgramme()).diary).toHaveLength(5);
  });

  it("adds a second session by the same name, and tells one that stands with other numbers", async () => {
    await keepDiary([entry("Ane Berg")]);
    const twice = [entry("Ane Berg", { minutes: 45 }), entry("Ane Berg")];
    expect(await keepDiary(twice)).toMatchObject({ added: 1, same: 1, differing: [] });
    const outcome = await keepDiary([entry("Ane Berg", { rating: 9 })]);
    expect(outcome).toMatchObject({
      added: 0,
      same: 0,
      differing: [{ standing: { rating: 6 }, fresh: { rating: 9 } }],
    });
    expect((await readProgramme()).diary.map(({ rating }) => rating)).toEqual([6, 6]);
  });

  it("works on with a diary sorted, and with columns moved and added by the coach", async () => {
    await keepDiary(week);
    await act((table) => {
      table.columns.add(0, [["Mood"], ["a"], ["b"], ["c"]]);
      table.sort.apply([{ key: 2, ascending: false }]);
    });
    expect(await keepDiary([...week, entry("Oda Vik")])).toMatchObject({ added: 1, same: 3 });
    const body = await valuesAt("Diary", "A5:C8");
    expect(body.map(([mood, , athlete]) => [mood, athlete])).toEqual([
      ["c", "Liv Aas"],
      ["b", "Kari Dahl"],
      ["a", "Ane Berg"],
      ["", "Oda Vik"],
    ]);
  });

  it("writes nothing over cells below, and says where they are", async () => {
    await keepDiary(week);
    await host.type("Diary!B9", "mine");
    const more = [1, 2, 3].map((day) => entry("Ane Berg", { date: `2026-10-0${day}` }));
    expect(await keepDiary(more)).toMatchObject({ added: 0, inTheWay: { sheet: "Diary", cell: "B9" } });
    expect((await readProgramme()).diary).toEqual(week);
  });

  it("is taken back in one step, whether it grew the diary or made it", async () => {
    await addSheet("Mine", [["a"]]);
    const empty = await workbookImage(host, "A1:K12");
    const first = await keepDiary(week);
    const before = await workbookImage(host, "A1:K7");
    const second = await keepDiary([entry("Ane Berg", { date: "2026-09-08" })]);
    await takeBack(second.deed);
    expect(await workbookImage(host, "A1:K7")).toBe(before);
    expect((await readProgramme()).diary).toEqual(week);
    await takeBack(first.deed);
    expect(await workbookImage(host, "A1:K12")).toBe(empty);
  });
});
