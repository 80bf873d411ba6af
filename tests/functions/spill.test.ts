import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import { tooFew } from "../../src/engine/refusals";
import { ok, refuse } from "../../src/engine/result";
import { counted, measured } from "../../src/functions/border";
import { cellByCell, inPlaces, labelled, line, rowByRow } from "../../src/functions/spill";
import { across, down, expectError, failing } from "./cells";

const product = (left: unknown[][], right: unknown[][]) =>
  cellByCell({ left: measured(left), right: counted(right) }, (values) =>
    values.left > 100 ? refuse(tooFew("left values", 1, 0)) : ok(values.left * values.right),
  );

describe("cellByCell(ranges, compute)", () => {
  it("answers in the shape of the ranges, a single cell serving all", () => {
    expect(product(down([1, 2]), down([3, 4]))).toEqual([[3], [8]]);
    expect(
      product(
        [
          [1, 2],
          [3, 4],
        ],
        across(10),
      ),
    ).toEqual([
      [10, 20],
      [30, 40],
    ]);
    expect(product(across(5), across(2))).toEqual([[10]]);
  });

  it("makes a table of a column and a row", () => {
    expect(product(down([1, 2]), across(3, 4, 5))).toEqual([
      [3, 4, 5],
      [6, 8, 10],
    ]);
  });

  it("leaves a cell empty where nothing was given but what serves all, and keeps errors to their cells", () => {
    expect(product(down([1, 0, 101, "x1", 2]), across(10))).toEqual([
      [10],
      [""],
      [failing("#N/A", /left values/)],
      [failing("#VALUE!", /x1/)],
      [20],
    ]);
  });

  it("names every gap of a cell that has some values", () => {
    expect(product(down([null, 1]), down([3, "-"]))).toEqual([
      [failing("#N/A", /The left is missing/)],
      [failing("#N/A", /The right is missing/)],
    ]);
    expect(product(across(null), down([3, null]))).toEqual([[failing("#N/A", /left is missing/)], [""]]);
  });

  it("refuses ranges that do not match, by what they hold", () => {
    expectError(() => product(down([1, 2]), down([1, 2, 3])), "#VALUE!", /right has 3 rows, left has 2/);
    expectError(() => product(across(1, 2), across(1, 2, 3)), "#VALUE!", /right has 3 columns, left has 2/);
  });
});

describe("rowByRow(ranges, width, compute)", () => {
  const spans = (rows: unknown[][], shared: unknown[][]) =>
    rowByRow({ values: measured(rows), shared: counted(shared) }, 2, ({ values, shared }, row) =>
      values[0] === 9 ? refuse(tooFew("values", 2, 1)) : ok([row, values[0] === null ? null : values[0]! + shared[0]!]),
    );

  it("has one line of answers for each row, with errors and gaps in their rows", () => {
    expect(
      spans(
        [
          [1, 2],
          [null, 3],
          [0, null],
          [9, 1],
          [1, "x1"],
        ],
        across(10),
      ),
    ).toEqual([
      [0, 11],
      [1, ""],
      ["", ""],
      [failing("#N/A", /At least 2 values/), failing("#N/A", /At least 2 values/)],
      [failing("#VALUE!", /x1/), failing("#VALUE!", /x1/)],
    ]);
  });

  it("refuses ranges of different height", () => {
    expectError(() => spans([[1], [2], [3]], down([1, 2])), "#VALUE!", /values has 3 rows, shared has 2/);
  });
});

describe("tables", () => {
  it("are filled up with empty cells, since Excel shows null as 0", () => {
    expect(
      labelled([
        ["", "Value", "Lower"],
        ["Count", 3],
        ["Mean", null, 2],
      ]),
    ).toEqual([
      ["", "Value", "Lower"],
      ["Count", 3, ""],
      ["Mean", "", 2],
    ]);
    expect(
      inPlaces(
        [
          [1, 2],
          [3, 4],
        ],
        [10, null, 30],
      ),
    ).toEqual([
      [10, ""],
      [30, ""],
    ]);
  });

  it("have lines with limits, without, or with an error of their own", () => {
    expect(line("Mean", ok({ value: 2, low: 1, high: 3 }))).toEqual(["Mean", 2, 1, 3]);
    expect(line("Mean", ok(2))).toEqual(["Mean", 2]);
    expect(line("Mean", refuse(tooFew("scores", 3, 1)))).toEqual(["Mean", failing("#N/A", /scores/)]);
  });
});
