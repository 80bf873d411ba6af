import { cellRuns } from "../../src/sheet/cellRuns";

const at = (row: number, column: number) => ({ row, column });

describe("cellRuns(cells)", () => {
  it("joins cells below each other, and keeps apart what is not", () => {
    const runs = cellRuns([at(4, 1), at(2, 1), at(3, 1), at(2, 2), at(6, 1)]);
    expect(runs.map(({ address, cells }) => [address, cells.length])).toEqual([
      ["B3:B5", 3],
      ["B7", 1],
      ["C3", 1],
    ]);
    expect(runs[0]).toMatchObject({ row: 2, column: 1 });
  });

  it("of no cells is none", () => expect(cellRuns([])).toEqual([]));
});
