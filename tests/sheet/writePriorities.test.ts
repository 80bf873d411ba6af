import type { Host } from "../../src/host";
import { readProgramme } from "../../src/sheet/readProgramme";
import { setUpProgramme } from "../../src/sheet/setUpProgramme";
import { takeBack } from "../../src/sheet/takeBack";
import { writeDecisions, writePriorities } from "../../src/sheet/writePriorities";
import type { DiaryEntry } from "../../src/store/diary";
import type { Exercise } from "../../src/store/exercises";
import { decided } from "../../src/store/priorityTable";
import { addSheet, openWorkbook, valuesAt } from "./openWorkbook";
import { priority } from "./plannedRows";
import { workbookImage } from "./workbookImage";

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

const first = [
  priority("Ane Berg", 1, "Speed"),
  priority("Ane Berg", 2, "Strength"),
  priority("Kari Dahl", 1, "Speed"),
];

const inTable = async () =>
  (await readProgramme()).priorities.map(
    ({ athlete, rank, quality, choice, reason }) => `${athlete} ${rank}: ${quality}, ${choice}, ${reason}`,
  );

describe("writePriorities(fresh)", () => {
  it("makes the table and is read back as proposed, in three and two round trips", async () => {
    const before = host.syncs;
    expect(await writePriorities(first)).toMatchObject({ sheet: "Priorities", written: 3 });
    expect(host.syncs - before).toBeLessThanOrEqual(3);
    const { priorities, remarks } = await readProgramme();
    expect(remarks).toEqual([]);
    expect(priorities.map(({ asProposed: _, ...row }) => row)).toEqual(
      first.map((row) => ({ ...row, choice: null, reason: null })),
    );
  });

  it("keeps the coach's choice and reason with athlete and rank, and the row where no rank is left", async () => {
    await writePriorities(first);
    await host.type("Priorities!E5", "Endurance");
    await host.type("Priorities!F5", "She has a camp in May");
    await host.type("Priorities!E6", "none");
    const before = host.syncs;
    const next = [priority("Ane Berg", 1, "Upper-body power"), priority("Kari Dahl", 1, "Speed")];
    const outcome = await writePriorities([...next, priority("Liv Aas", 1, "Strength")]);
    expect(host.syncs - before).toBeLessThanOrEqual(3);
    expect(outcome).toMatchObject({ written: 3, coachs: 1 });
    expect(await inTable()).toEqual([
      "Ane Berg 1: Upper-body power, Endurance, She has a camp in May",
      "Ane Berg 2: Strength, none, null",
      "Kari Dahl 1: Speed, null, null",
      "Liv Aas 1: Strength, null, null",
    ]);
    expect(decided((await readProgramme()).priorities)[0]).toMatchObject({
      quality: "Endurance",
      why: "The coach's choice: She has a camp in May",
    });
    await takeBack(outcome.deed);
    expect((await inTable())[0]).toBe("Ane Berg 1: Speed, Endurance, She has a camp in May");
    expect(await inTable()).toHaveLength(3);
  });

  it("keeps a row of the coach's own, and one they wrote over", async () => {
    await writePriorities(first);
    await host.type("Priorities!C7", "Mobility");
    await host.type("Priorities!A8", "Kari Dahl");
    await host.type("Priorities!B8", "2");
    await host.type("Priorities!C8", "Sleep");
    await Excel.run(async (context) => {
      const { tables, worksheets } = context.workbook;
      tables.getItem("Tapeline_Priorities").resize(worksheets.getItem("Priorities").getRange("A4:G8"));
      await context.sync();
    });
    const next = [priority("Ane Berg", 1, "Strength"), priority("Kari Dahl", 1, "Strength")];
    expect(await writePriorities(next)).toMatchObject({ written: 1, coachs: 2 });
    expect(await inTable()).toEqual([
      "Ane Berg 1: Strength, null, null",
      "Kari Dahl 1: Mobility, null, null",
      "Kari Dahl 2: Sleep, null, null",
    ]);
  });

  it("refuses a protected sheet and changes nothing", async () => {
    await writePriorities(first);
    const before = await workbookImage(host, "A1:H9");
    const protect = (isOn: boolean) =>
      Excel.run(async (context) => {
        const { protection } = context.workbook.worksheets.getItem("Priorities");
        if (isOn) protection.protect();
        else protection.unprotect();
        await context.sync();
      });
    await protect(true);
    await expect(writePriorities([priority("Ane Berg", 1, "Strength")])).rejects.toMatchObject({ name: "HostRefusal" });
    await protect(false);
    expect(await workbookImage(host, "A1:H9")).toBe(before);
  });
});

describe("writeDecisions(decisions, fresh)", () => {
  const decision = { athlete: "Ane Berg", rank: 2, choice: "Endurance", reason: "A camp in May" };

  it("writes the coach's choice and reason beside the proposal in three round trips, and survives new proposals", async () => {
    await writePriorities(first);
    const before = await workbookImage(host, "A1:H9");
    const syncs = host.syncs;
    const { deed } = await writeDecisions([decision], first);
    expect(host.syncs - syncs).toBeLessThanOrEqual(3);
    expect(await inTable()).toEqual([
      "Ane Berg 1: Speed, null, null",
      "Ane Berg 2: Strength, Endurance, A camp in May",
      "Kari Dahl 1: Speed, null, null",
    ]);
    await writePriorities(first.map((row) => ({ ...row, why: "Tested again." })));
    expect((await inTable())[1]).toBe("Ane Berg 2: Strength, Endurance, A camp in May");
    await takeBack(deed);
    expect((await inTable())[1]).toBe("Ane Berg 2: Strength, null, null");
    expect(before).toContain("Strength is low.");
  });

  it("writes the proposals first where they do not stand yet; both go in one take back", async () => {
    const before = await workbookImage(host);
    const { deed } = await writeDecisions([decision], first);
    expect((await inTable())[1]).toBe("Ane Berg 2: Strength, Endurance, A camp in May");
    await takeBack(deed);
    expect(await workbookImage(host)).toBe(before);
  });

  it("says so where the coach has renamed the column it belongs in", async () => {
    await writePriorities(first);
    await host.type("Priorities!E4", "My say");
    const { inTheWay } = await writeDecisions([decision], first);
    expect(inTheWay).not.toBeNull();
    expect((await valuesAt("Priorities", "E5:F7")).flat().every((cell) => cell === "")).toBe(true);
  });
});

describe("setUpProgramme(tables)", () => {
  const exercise: Exercise = {
    ...{ exercise: "Back squat", quality: "Strength", region: "Legs", limbs: "both", equipment: "Bar" },
    ...{ level: "trained", dose: "repetitions", loadFrom: "Back squat", percentOfMaximum: 100, caution: null },
  };
  const entry: DiaryEntry = {
    ...{ date: "2026-08-31", athlete: "Ane Berg", session: "Match", attended: "yes", minutes: 45, rating: 7.5 },
    ...{ throws: 30, jumps: null, sprints: null, deliveries: null },
  };

  it("makes what does not stand, beside the coach's own diary, and is read back as given", async () => {
    await addSheet("Diary", [["mine"]]);
    const { sheets, deed } = await setUpProgramme({ exercises: [exercise], diary: [entry] });
    expect(sheets).toEqual(["Exercises", "Diary 2"]);
    expect(await valuesAt("Diary", "A1")).toEqual([["mine"]]);
    const { exercises, diary, remarks, present } = await readProgramme();
    expect({ exercises, diary, remarks }).toEqual({ exercises: [exercise], diary: [entry], remarks: [] });
    expect([...present].sort()).toEqual(["diary", "exercises"]);
    expect((await setUpProgramme({ exercises: [], diary: [] })).sheets).toEqual([]);
    await takeBack(deed);
    expect((await readProgramme()).present.size).toBe(0);
  });

  it("reads a workbook without any of them as empty", async () => {
    expect(await readProgramme()).toEqual({
      ...{ exercises: [], priorities: [], plan: [], diary: [], remarks: [], present: new Set() },
    });
  });
});
