import { strFromU8, unzipSync } from "fflate";
import type { Host } from "../../src/host";
import { saveBook } from "../../src/host/xlsx";
import { rememberColumnMap } from "../../src/sheet/columnMaps";
import { HostRefusal } from "../../src/sheet/hostRefusal";
import { keepResults } from "../../src/sheet/keepResults";
import { makeEntrySheet } from "../../src/sheet/makeEntrySheet";
import { markCells } from "../../src/sheet/marks";
import { readBackground } from "../../src/sheet/readBackground";
import { readKeptResults } from "../../src/sheet/readKeptResults";
import { findAthlete, removeAthlete } from "../../src/sheet/removeAthlete";
import { setUp } from "../../src/sheet/setUp";
import { setUpProgramme } from "../../src/sheet/setUpProgramme";
import { takeBack } from "../../src/sheet/takeBack";
import { writePages } from "../../src/sheet/writePages";
import { writePlan } from "../../src/sheet/writePlan";
import { writePriorities } from "../../src/sheet/writePriorities";
import { writeReport } from "../../src/sheet/writeReport";
import { planEntrySheet } from "../../src/store/entrySheet";
import { failAt } from "./failAt";
import { addSheet, openWorkbook, valuesAt } from "./openWorkbook";
import { plannedRow, priority } from "./plannedRows";
import { reportOf } from "./reportOf";
import { batteryTest, keptResult, squadMember } from "./storeRows";
import { workbookImage } from "./workbookImage";

const ane = "Ane Berg";
/** Her name is the beginning of another's: that athlete stays. */
const other = "Ane Bergstad";
const squad = [ane, other, "Kari Dahl"];

let host: Host;
beforeEach(async () => {
  host = openWorkbook();
  await setUp({ squad: squad.map((name) => squadMember(name, { role: "Back" })) });
  await keepResults(
    squad.flatMap((athlete) => [1, 2].map((trial) => keptResult({ athlete, trial, value: 150 + trial }))),
  );
  await writePriorities(squad.map((name) => priority(name, 1, "Power")));
  await writePlan(squad.map((name) => plannedRow(name, "Back squat")));
  await setUpProgramme({ diary: [] });
  await host.type("Diary!A5", "2026-08-12");
  await host.type("Diary!B5", "ane  berg");
  const report = reportOf(
    squad.map((name, index) => [name, 150 + index, "y"]),
    { summary: [`${ane} stands apart.`, "All others are alike."], cautions: [`Mind that ${ane} was ill.`] },
  );
  await writeReport(report, "key");
  const tests = [batteryTest("Hop", { unit: "cm" })];
  await makeEntrySheet(planEntrySheet({ date: "2026-08-11", tests, athletes: squad.map((name) => squadMember(name)) }));
});
afterEach(() => host.dispose());

const page = (name: string) => ({
  sheet: name,
  title: name,
  subtitle: "",
  parts: [{ kind: "heading" as const, text: "Here" }],
});

/** Everything that a saved file holds, whatever its parts. */
const savedText = (): string =>
  Object.entries(unzipSync(saveBook(host.book).bytes))
    .map(([path, content]) => path + strFromU8(content))
    .join("\n");

const timesNamed = (): number => [...savedText().matchAll(/ane\s+berg(?!stad)/gi)].length;

jest.setTimeout(120_000);

describe("removeAthlete(name)", () => {
  it("leaves no trace of the name in the saved file, and everybody else where they were", async () => {
    await writePages(squad.map(page));
    await addSheet("Mine", [["x", 1]]);
    await markCells([{ cell: "A1", why: `${ane} looks odd.` }], "Mine");
    await rememberColumnMap("{1}!A1", ["Athlete"], {
      ...{ firstDataRow: 1, columns: [], date: null, sameTest: {}, includeHiddenRows: false },
      sameAthlete: { "A. Berg": ane, "K. Dahl": "Kari Dahl" },
    });
    expect(timesNamed()).toBeGreaterThan(12);
    const removed = await removeAthlete(ane);
    expect(removed).toMatchObject({ pages: [ane], marks: true, elsewhere: [], lines: 2 });
    expect(removed.tables.map(({ sheet, rows }) => `${sheet}: ${rows}`)).toEqual([
      ...["Squad: 1", "Results: 2", "Priorities: 1", "Plan: 1", "Diary: 1", "Sample: 1", "Test day 11 Aug: 1"],
    ]);
    expect(timesNamed()).toBe(0);
    expect((await readBackground()).background.squad.map(({ athlete }) => athlete)).toEqual([other, "Kari Dahl"]);
    expect((await readKeptResults())!.results.map(({ athlete, value }) => `${athlete} ${value}`)).toEqual([
      ...[`${other} 151`, `${other} 152`, "Kari Dahl 151", "Kari Dahl 152"],
    ]);
    expect(savedText()).toContain("K. Dahl");
  });

  it("is taken back byte for byte, but for the pages", async () => {
    const before = await workbookImage(host);
    const { deed } = await removeAthlete(ane);
    expect(await workbookImage(host)).not.toBe(before);
    expect(await takeBack(JSON.parse(JSON.stringify(deed)))).toEqual({ kind: "takenBack", gone: [] });
    expect(await workbookImage(host)).toBe(before);
  });

  it("tells where else the name stands, and leaves those places as they are", async () => {
    await addSheet("Hop's", [
      ["Athlete", "Left"],
      ["ANE BERG", 150],
      [other, 151],
      ["see Ane Berg, and others", 152],
    ]);
    const told = ["'Hop''s'!A2", "'Hop''s'!A4"];
    expect((await findAthlete(ane)).elsewhere).toEqual(told);
    expect((await removeAthlete(ane)).elsewhere).toEqual(told);
    expect(await valuesAt("Hop's", "A1:A4")).toEqual([
      ["Athlete"],
      ["ANE BERG"],
      [other],
      ["see Ane Berg, and others"],
    ]);
  });

  it("moves the coach's own columns up with their rows, formulas too", async () => {
    await host.type("Squad!I4", "Age");
    await Excel.run(async (context) => {
      context.workbook.tables.getItem("Tapeline_Squad").resize("A4:I7");
      await context.sync();
    });
    await host.type("Squad!I5", "hers");
    await host.type("Squad!I6", '=LEN(A6)&"A6"&$A$4');
    await host.type("Squad!I7", "Kari's");
    await removeAthlete(ane);
    expect(await valuesAt("Squad", "I5:I7")).toEqual([[`${other.length}A6Athlete`], ["Kari's"], [""]]);
  });

  it("changes nothing for a name that nobody has", async () => {
    const before = await workbookImage(host);
    expect(await removeAthlete("Nobody Known")).toMatchObject({ tables: [], pages: [], lines: 0, elsewhere: [] });
    expect(await workbookImage(host)).toBe(before);
  });

  it("leaves the workbook as it was where a call fails", async () => {
    const before = await workbookImage(host);
    for (let n = 1; ; n += 41) {
      const { member, error } = await failAt(n, "instead", () => removeAthlete(ane));
      if (member === null) break;
      expect(error).toBeInstanceOf(HostRefusal);
      expect({ member, image: await workbookImage(host) }).toEqual({ member, image: before });
    }
    expect(await workbookImage(host)).not.toBe(before);
  }, 240_000);
});
