import { areasOf, splitAreas } from "../../src/sheet/areas";

describe("splitAreas(address)", () => {
  it.each([
    ["Hops!A1:B3", ["A1:B3"]],
    ["'Hop test'!A3:A20,'Hop test'!D3:F20", ["A3:A20", "D3:F20"]],
    ["'Left, right!'!A1,'Left, right!'!C3:C5", ["A1", "C3:C5"]],
    ["'Coach''s'!$A$1:$B$2", ["$A$1:$B$2"]],
    ["A1:B2,D4", ["A1:B2", "D4"]],
  ])("%s", (address, areas) => expect(splitAreas(address)).toEqual(areas));
});

describe("areasOf(address)", () => {
  it("is the rectangle around the areas, with the rows and columns they cover", () => {
    const { address, rows, columns } = areasOf("T!A3:A5,T!D4:E9");
    expect(address).toBe("A3:E9");
    expect([...columns].sort()).toEqual([0, 3, 4]);
    expect([...rows].sort()).toEqual([2, 3, 4, 5, 6, 7, 8]);
  });
});
