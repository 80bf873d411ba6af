import type { Host } from "../../src/host";
import { Book } from "../../src/host/engine/book";
import { HostRefusal } from "../../src/sheet/hostRefusal";
import { clearMarks, markCells } from "../../src/sheet/marks";
import { takeBack } from "../../src/sheet/takeBack";
import { failAt } from "./failAt";
import { addSheet, openWorkbook } from "./openWorkbook";
import { workbookImage } from "./workbookImage";

let host: Host;

async function open(options: Parameters<typeof openWorkbook>[0] = {}) {
  host = openWorkbook(options);
  await addSheet("Hop test", [
    ["Athlete", "Left (cm)", "Right (cm)"],
    ["A", 150, 15.1],
    ["B", 151, 152],
  ]);
  await addSheet("Jumps", [["Athlete", "Height (cm)"]]);
  await Excel.run(async (context) => {
    const cell = context.workbook.worksheets.getItem("Hop test").getRange("C2");
    cell.format.fill.color = "#FFEE00";
    cell.format.font.color = "#AA0000";
    cell.format.font.italic = true;
    const edge = cell.format.borders.getItem("EdgeBottom");
    edge.style = "Double";
    edge.color = "#00AA00";
    await context.sync();
  });
}

// The embedded host writes a note to the active sheet, whichever sheet it is for: the command calls the sheet
// `subUnitId`, and is given `sheetId`. This can go when src/host/api/excel/notes.ts names it.
beforeAll(() => {
  const { run } = Book.prototype;
  jest.spyOn(Book.prototype, "run").mockImplementation(function (this: Book, id, params) {
    const given = params as { readonly sheetId?: string; readonly subUnitId?: string };
    return run.call(this, id, given?.sheetId ? { subUnitId: given.sheetId, ...given } : params);
  });
});
afterAll(() => jest.restoreAllMocks());

beforeEach(() => open());
afterEach(() => host.dispose());

const noteAt = (sheet: string, cell: string) =>
  Excel.run(async (context) => {
    const note = context.workbook.worksheets.getItem(sheet).notes.getItemOrNullObject(cell).load("content");
    await context.sync();
    return note.isNullObject ? null : note.content;
  });

const writeNote = (sheet: string, cell: string, content: string) =>
  Excel.run(async (context) => {
    const { notes } = context.workbook.worksheets.getItem(sheet);
    const note = notes.getItemOrNullObject(cell);
    await context.sync();
    if (note.isNullObject) notes.add(cell, content);
    else note.content = content;
    await context.sync();
  });

const lookAt = (sheet: string, cell: string) =>
  Excel.run(async (context) => {
    const { format } = context.workbook.worksheets.getItem(sheet).getRange(cell);
    format.font.load("bold,italic,color");
    format.fill.load("color");
    const edge = format.borders.getItem("EdgeLeft").load("style,weight");
    await context.sync();
    return [format.font.bold, format.font.italic, format.font.color, format.fill.color, edge.style, edge.weight];
  });

const marks = [
  { cell: "C2", why: "A tenth of the left leg: perhaps metres." },
  { cell: "$B$3", why: "Outside the range of the battery." },
  { cell: "Jumps!B1", why: "No unit." },
  { cell: "'Hop test'!c2", why: "One trial only." },
];

describe("markCells(marks, sheet)", () => {
  it("puts a note in words and a frame on each cell, once, and leaves its colours", async () => {
    const outcome = await markCells(marks, "Hop test");
    expect(outcome).toMatchObject({ marked: 3, missing: [], notes: true });
    expect(await noteAt("Hop test", "C2")).toBe(
      "Check: A tenth of the left leg: perhaps metres.\nCheck: One trial only.",
    );
    expect(await noteAt("Hop test", "B3")).toBe("Check: Outside the range of the battery.");
    expect(await noteAt("Jumps", "B1")).toBe("Check: No unit.");
    expect(await lookAt("Hop test", "C2")).toEqual([true, true, "#AA0000", "#FFEE00", "Dash", "Medium"]);
  });

  it("tells cells that are not there", async () => {
    const asked = ["Gone!A1", "A1:B2", "XFE1", "A0", "A1048577", "nonsense", ""].map((cell) => ({ cell, why: "x" }));
    const before = await workbookImage(host);
    expect(await markCells(asked, "Hop test")).toMatchObject({ marked: 0, missing: asked.map(({ cell }) => cell) });
    expect(await workbookImage(host)).toBe(before);
  });

  it("keeps a coach's note above ours, and their changes to it when the cell is marked again", async () => {
    await writeNote("Hop test", "C2", "Wet floor.");
    await markCells([{ cell: "C2", why: "Low." }], "Hop test");
    expect(await noteAt("Hop test", "C2")).toBe("Wet floor.\n\nCheck: Low.");
    await markCells([{ cell: "C2", why: "Still low." }], "Hop test");
    expect(await noteAt("Hop test", "C2")).toBe("Wet floor.\n\nCheck: Still low.");
    await writeNote("Hop test", "C2", "Wet floor.\n\nCheck: Still low.\nAsked her.");
    await markCells([{ cell: "C2", why: "Low." }], "Hop test");
    expect(await noteAt("Hop test", "C2")).toBe("Wet floor.\n\n\nAsked her.\n\nCheck: Low.");
    await clearMarks();
    expect(await noteAt("Hop test", "C2")).toBe("Wet floor.\n\n\nAsked her.");
  });

  it("changes only the look where the program has no notes (ExcelApi 1.18), and says so", async () => {
    host.dispose();
    await open({ apiSets: { ExcelApi: "1.13" } });
    const outcome = await markCells(marks, "Hop test");
    expect(outcome).toMatchObject({ marked: 3, notes: false });
    expect(await lookAt("Hop test", "B3")).toEqual([true, true, "#000000", "#FFFFFF", "Dash", "Medium"]);
    expect(await clearMarks()).toMatchObject({ cleared: 3, keptNotes: [] });
    expect(await lookAt("Hop test", "B3")).toEqual([false, false, "#000000", "#FFFFFF", "None", "Thin"]);
  });

  it.each(["=1+1", "\t@SUM(A1)", "<b>x</b>", "a\u202Eb\u0007c"])("says %j to the letter", async (why) => {
    await markCells([{ cell: "C2", why }], "Hop test");
    expect(await noteAt("Hop test", "C2")).toBe(`Check: ${why}`);
    expect(await clearMarks()).toMatchObject({ cleared: 1, keptNotes: [] });
  });

  it("shortens a reason that no note can show", async () => {
    await markCells([{ cell: "C2", why: "x".repeat(32_767) }], "Hop test");
    expect(await noteAt("Hop test", "C2")).toBe(`Check: ${"x".repeat(999)}…`);
  });

  it("takes three round trips, however many cells", async () => {
    const many = Array.from({ length: 40 }, (_, row) => ({ cell: `D${row + 1}`, why: "x" }));
    for (const action of [() => markCells(many, "Hop test"), () => markCells(many, "Hop test"), clearMarks]) {
      const before = host.syncs;
      await action();
      expect(host.syncs - before).toBeLessThanOrEqual(3);
    }
  });

  it("writes nothing over what a newer version remembers", async () => {
    await Excel.run(async (context) => {
      context.workbook.settings.add("Tapeline.marks", { version: 2 });
      await context.sync();
    });
    const before = await workbookImage(host);
    await expect(markCells(marks, "Hop test")).rejects.toMatchObject({ code: "UnknownState" });
    expect(await workbookImage(host)).toBe(before);
  });

  it("is taken back byte for byte, the first time and the second", async () => {
    await writeNote("Hop test", "C2", "Wet floor.");
    const before = await workbookImage(host);
    const { deed } = await markCells(marks, "Hop test");
    const marked = await workbookImage(host);
    expect(marked).not.toBe(before);
    const again = await markCells([{ cell: "C2", why: "Other." }], "Hop test");
    expect(await takeBack(again.deed)).toEqual({ kind: "takenBack", gone: [] });
    expect(await workbookImage(host)).toBe(marked);
    expect(await takeBack(deed)).toEqual({ kind: "takenBack", gone: [] });
    expect(await workbookImage(host)).toBe(before);
  });

  it("is not taken back over a note the coach has written since", async () => {
    const { deed } = await markCells(marks, "Hop test");
    await writeNote("Hop test", "B3", "Measured again.");
    expect(await takeBack(deed)).toEqual({ kind: "changedSince", cells: ["'Hop test'!B3"] });
    expect(await noteAt("Hop test", "C2")).toMatch(/^Check/);
  });
});

describe("clearMarks()", () => {
  it("gives notes and looks back byte for byte on all sheets, after marking twice too, and can be taken back", async () => {
    await writeNote("Hop test", "C2", "Wet floor.");
    const before = await workbookImage(host);
    await markCells(marks, "Hop test");
    await markCells([{ cell: "C2", why: "Other." }], "Hop test");
    const marked = await workbookImage(host);
    const outcome = await clearMarks();
    expect(outcome).toMatchObject({ cleared: 3, keptNotes: [] });
    expect(await workbookImage(host)).toBe(before);
    await takeBack(outcome.deed);
    expect(await workbookImage(host)).toBe(marked);
  });

  it("keeps a note the coach has rewritten, and a look they have changed", async () => {
    await markCells(marks, "Hop test");
    await writeNote("Hop test", "B3", "Measured again: right.");
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Jumps").getRange("B1").format.borders.getItem("EdgeLeft").style = "Double";
      await context.sync();
    });
    expect(await clearMarks()).toMatchObject({ cleared: 3, keptNotes: ["'Hop test'!B3"] });
    expect(await noteAt("Hop test", "B3")).toBe("Measured again: right.");
    expect(await lookAt("Hop test", "B3")).toEqual([false, false, "#000000", "#FFFFFF", "None", "Thin"]);
    expect(await noteAt("Jumps", "B1")).toBeNull();
    expect((await lookAt("Jumps", "B1"))[4]).toBe("Double");
    expect(await clearMarks()).toMatchObject({ cleared: 0 });
  });

  it("tells where no mark of ours stands any more, taken off by hand or gone with sorted rows", async () => {
    await markCells(marks.slice(0, 2), "Hop test");
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Hop test");
      sheet.notes.getItem("B3").delete();
      sheet.getRange("B3").clear("Formats");
      await context.sync();
    });
    expect(await clearMarks()).toMatchObject({ cleared: 1, keptNotes: [], lost: ["'Hop test'!B3"] });
  });

  it("forgets the marks of a sheet that is gone", async () => {
    await markCells(marks, "Hop test");
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Jumps").delete();
      await context.sync();
    });
    expect(await clearMarks()).toMatchObject({ cleared: 2 });
    expect(await workbookImage(host)).not.toContain("Tapeline.marks");
  });
});

describe.each(["instead", "after"] as const)("where a call fails (%s)", (when) => {
  const seen = "A1:D4";

  it.each(["markCells", "clearMarks"])(
    "%s leaves the workbook as it was, whichever call it is",
    async (name) => {
      await writeNote("Hop test", "C2", "Wet floor.");
      if (name === "clearMarks") await markCells(marks, "Hop test");
      const action = name === "clearMarks" ? clearMarks : () => markCells(marks, "Hop test");
      const before = await workbookImage(host, seen);
      let count = 0;
      for (let n = 1; ; n++) {
        const { member, error } = await failAt(n, when, action);
        if (member === null) break;
        count += 1;
        const where = `call ${n}, ${member}`;
        expect({ where, refused: error instanceof HostRefusal }).toEqual({ where, refused: true });
        expect({ where, image: await workbookImage(host, seen) }).toEqual({ where, image: before });
      }
      expect(count).toBeGreaterThan(20);
      expect(await workbookImage(host, seen)).not.toBe(before);
    },
    120_000,
  );
});
