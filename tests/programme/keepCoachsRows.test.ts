import { type EditableRow, keepCoachsRows, written } from "../../src/programme/keepCoachsRows";

const ours = (key: string, ...cells: EditableRow["cells"]): EditableRow => ({ key, cells, asPlanned: written(cells) });

describe("keepCoachsRows", () => {
  it("renews our rows, drops those the new plan does not have, and adds new ones below", () => {
    const { rows, coachs } = keepCoachsRows([ours("a", 3), ours("b", 4)], [ours("c", 5), ours("a", 6)]);
    expect(rows).toEqual([ours("a", 6), ours("c", 5)]);
    expect(coachs).toBe(0);
  });

  it("leaves a row the coach has changed, and one of their own, as they are", () => {
    const changed: EditableRow = { ...ours("a", 3), cells: [2] };
    const own: EditableRow = { key: "x", cells: ["Swim"], asPlanned: null };
    const { rows, coachs } = keepCoachsRows([changed, own], [ours("a", 6), ours("b", 1)]);
    expect(rows).toEqual([changed, own, ours("b", 1)]);
    expect(coachs).toBe(2);
  });
});
