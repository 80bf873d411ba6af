import { type EditableRow, keepCoachsRows } from "../../src/store/keepCoachsRows";

const row = (offset: number, key: string, more: Partial<EditableRow> = {}): EditableRow => ({
  ...{ offset, key, state: "ours", hasOwnCells: false },
  ...more,
});

const merge = (standing: readonly EditableRow[], ...fresh: string[]) => keepCoachsRows(standing, fresh, (key) => key);

describe("keepCoachsRows", () => {
  it("renews our rows where they stand, fills those given up, and adds the rest below", () => {
    const standing = [row(0, "a"), row(1, "b"), row(2, "c")];
    expect(merge(standing, "c", "d", "a", "e")).toEqual({
      written: [
        { offset: 0, row: "a" },
        { offset: 2, row: "c" },
        { offset: 1, row: "d" },
      ],
      emptied: [],
      appended: ["e"],
      coachs: 0,
    });
    expect(merge(standing, "b")).toMatchObject({ written: [{ offset: 1, row: "b" }], emptied: [0, 2], appended: [] });
  });

  it("leaves a row the coach has changed, and one of their own, as they are", () => {
    const changed = row(0, "a", { state: "coachs" });
    const own = row(1, "swim", { state: "coachs" });
    const unreadable = row(2, "", { state: "coachs", key: null });
    expect(merge([changed, own, unreadable], "a", "b")).toEqual({
      ...{ written: [], emptied: [], appended: ["b"], coachs: 3 },
    });
  });

  it("moves nothing beside a note of the coach's that belongs to another row", () => {
    const noted = row(0, "a", { hasOwnCells: true });
    expect(merge([noted], "b")).toMatchObject({ written: [], emptied: [0], appended: ["b"] });
    expect(merge([noted], "a")).toMatchObject({ written: [{ offset: 0, row: "a" }], emptied: [], appended: [] });
  });

  it("fills blank rows first, and keeps of two rows with one key the first", () => {
    const blank = row(1, "", { key: null, state: "free" });
    expect(merge([row(0, "a"), blank, row(2, "a")], "a", "b")).toMatchObject({
      written: [
        { offset: 0, row: "a" },
        { offset: 1, row: "b" },
      ],
      emptied: [2],
    });
  });
});
