import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Host } from "../../src/host";
import type { Deed } from "../../src/sheet/deed";
import { keepDiary } from "../../src/sheet/keepDiary";
import { keepResults } from "../../src/sheet/keepResults";
import { makeEntrySheet } from "../../src/sheet/makeEntrySheet";
import { clearMarks, markCells } from "../../src/sheet/marks";
import { removeAthlete } from "../../src/sheet/removeAthlete";
import { setUp } from "../../src/sheet/setUp";
import { setUpProgramme } from "../../src/sheet/setUpProgramme";
import { takeBack } from "../../src/sheet/takeBack";
import { writeComparison } from "../../src/sheet/writeComparison";
import { writePlan } from "../../src/sheet/writePlan";
import { writePriorities } from "../../src/sheet/writePriorities";
import { writeReport } from "../../src/sheet/writeReport";
import { planEntrySheet } from "../../src/store/entrySheet";
import { addSheet, openWorkbook } from "./openWorkbook";
import { plannedRow, priority } from "./plannedRows";
import { reportOf } from "./reportOf";
import { batteryTest, keptResult, squadMember } from "./storeRows";
import { workbookImage } from "./workbookImage";

jest.setTimeout(240_000);

type Write = {
  /** Name of the file of the sheet room that writes. */
  readonly file: string;
  readonly prepare?: () => Promise<unknown>;
  readonly write: () => Promise<{ readonly deed: Deed }>;
  /** Rows were appended: the cells below the table, empty again, keep the alignment they were given. */
  readonly leavesLook?: true;
};

const squad = ["Ane Berg", "Kari Dahl"];
const results = squad.map((athlete) => keptResult({ athlete }));
const more = [...results, keptResult({ athlete: "Liv Aas" }), keptResult({ athlete: squad[0]!, value: 180 })];
const entry = {
  ...{ date: "2026-09-01", athlete: squad[0]!, session: "Strength", attended: "yes" as const, minutes: 60, rating: 6 },
  ...{ throws: null, jumps: 20, sprints: null, deliveries: null },
};
const marks = [{ cell: "A1", why: "Odd." }];

async function report(rows: readonly string[]): Promise<{ readonly deed: Deed }> {
  const written = await writeReport(reportOf(rows.map((name, index) => [name, index + 1, "x"])), "key");
  if (written.kind !== "written") throw new Error(written.kind);
  return written;
}

/** Everything by which the add-in changes a workbook and which can be taken back. */
const writes: Readonly<Record<string, Write>> = {
  "setting up": { file: "setUp", write: () => setUp({ squad: squad.map((name) => squadMember(name)) }) },
  "setting up the programme": { file: "setUpProgramme", write: () => setUpProgramme({ diary: [] }) },
  "keeping first results": { file: "keepResults", write: () => keepResults(results) },
  "keeping more results": {
    leavesLook: true,
    file: "keepResults",
    prepare: () => keepResults(results),
    write: () => keepResults(more),
  },
  "keeping the diary": {
    file: "keepDiary",
    prepare: () => setUpProgramme({ diary: [] }),
    write: () => keepDiary([entry]),
  },
  "writing a report": { file: "writeReport", write: () => report(squad) },
  "renewing a report": {
    file: "writeReport",
    prepare: () => report(squad),
    write: () => report(["Kari Dahl", "Liv Aas"]),
  },
  "writing priorities": {
    leavesLook: true,
    file: "writePriorities",
    prepare: () => writePriorities([priority(squad[0]!, 1, "Power")]),
    write: () => writePriorities(squad.map((name) => priority(name, 1, "Speed"))),
  },
  "writing a plan": {
    leavesLook: true,
    file: "writePlan",
    prepare: () => writePlan([plannedRow(squad[0]!, "Back squat")]),
    write: () => writePlan(squad.map((name) => plannedRow(name, "Bounding"))),
  },
  "making an entry sheet": {
    file: "makeEntrySheet",
    write: () =>
      makeEntrySheet(
        planEntrySheet({
          ...{ date: "2026-08-11", tests: [batteryTest("Hop", { unit: "cm" })] },
          athletes: squad.map((name) => squadMember(name)),
        }),
      ),
  },
  "marking cells": { file: "marks", write: () => markCells(marks, "Mine") },
  "clearing marks": { file: "marks", prepare: () => markCells(marks, "Mine"), write: () => clearMarks() },
  "choosing a comparison": { file: "writeComparison", write: () => writeComparison("role") },
  "removing an athlete": {
    file: "removeAthlete",
    prepare: () => setUp({ squad: squad.map((name) => squadMember(name)) }),
    write: () => removeAthlete(squad[0]!),
  },
};

/** These have fault tests of their own, or write what is put back by the program's own undo. */
const elsewhere = ["writePages", "trySample", "insertExample", "repairFormulas", "replaceByValues", "writeWeights"];

let host: Host;
beforeEach(async () => {
  host = openWorkbook();
  await addSheet("Mine", [["Athlete", "Left"]]);
}, 120_000);
afterEach(() => host.dispose());

test("no file that gives a deed is left out", () => {
  const room = join(__dirname, "../../src/sheet");
  const giving = readdirSync(room)
    .filter((file) =>
      /^export (const|async function) \w+[\s\S]*?\btrapHost\(/m.test(readFileSync(join(room, file), "utf8")),
    )
    .filter((file) => /\bdeed\b/.test(readFileSync(join(room, file), "utf8")))
    .map((file) => file.replace(/\.ts$/, ""));
  const inner = ["renewPlanned", "takeBack", "makeStoreTable"];
  const covered = new Set([...Object.values(writes).map(({ file }) => file), ...elsewhere, ...inner]);
  expect(giving.filter((file) => !covered.has(file))).toEqual([]);
});

describe.each(Object.entries(writes))("%s", (_, { prepare, write, leavesLook }) => {
  const image = async () => {
    const seen = await workbookImage(host, "A1:K16");
    return leavesLook ? seen.replace(/"(horizontalAlignment|indentLevel)": ("\w+"|\d+)/g, "") : seen;
  };

  it("is taken back byte for byte, in no more round trips than any other", async () => {
    await prepare?.();
    const before = await image();
    const syncs = host.syncs;
    const { deed } = await write();
    expect(host.syncs - syncs).toBeLessThanOrEqual(6);
    expect(await image()).not.toBe(before);
    expect(await takeBack(JSON.parse(JSON.stringify(deed)))).toEqual({ kind: "takenBack", gone: [] });
    expect(await image()).toBe(before);
  });
});
