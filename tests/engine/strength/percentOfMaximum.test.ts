import { unwrap } from "../../../src/engine/result";
import { handbookTable, percentOfMaximum } from "../../../src/engine/strength/percentOfMaximum";

const percent = (repetitions: number) => unwrap(percentOfMaximum(repetitions)).percent;

describe("the percentage of the maximum from a table", () => {
  // Source: training-load chart of the NSCA, as quoted by secondary pages.
  test("is the handbook's in every row", () => {
    expect([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 15].map(percent)).toEqual([
      100, 95, 93, 90, 87, 85, 83, 80, 77, 75, 70, 67, 65,
    ]);
  });

  test("says where copies of the table disagree", () => {
    expect(unwrap(percentOfMaximum(11)).cautions).toEqual([
      {
        code: "copiesDisagree",
        message: "Copies of this table disagree at 11 repetitions: 70, 73 %.",
        facts: { repetitions: 11, percent: 70, others: "73" },
      },
    ]);
    expect(unwrap(percentOfMaximum(12)).cautions).toMatchObject([{ facts: { percent: 67, others: "70" } }]);
    expect(unwrap(percentOfMaximum(10)).cautions).toEqual([]);
  });

  test("is taken in a straight line between two rows, with a caution", () => {
    const { percent: value, cautions } = unwrap(percentOfMaximum(14));
    expect(value).toBeCloseTo(67 - (2 * 2) / 3, 12);
    expect(cautions).toEqual([
      {
        code: "betweenRows",
        message: "The table has no such row; the percentage is taken between 12 and 15 repetitions.",
        facts: { lower: 12, upper: 15 },
      },
    ]);
  });

  test("follows the coach's own table", () => {
    const table = [
      { repetitions: 1, percent: 100 },
      { repetitions: 5, percent: 90 },
    ];
    expect(unwrap(percentOfMaximum(3, { table })).percent).toBe(95);
    const disputed = [{ repetitions: 1, percent: 90, alsoPrinted: [92, 93] }];
    expect(unwrap(percentOfMaximum(1, { table: disputed })).cautions).toMatchObject([{ facts: { others: "92, 93" } }]);
    expect(percentOfMaximum(6, { table })).toMatchObject({ reasons: [{ code: "outOfRange", facts: { high: 5 } }] });
  });

  test.each([
    ["percentages that rise", [...handbookTable, { repetitions: 20, percent: 70 }]],
    ["repetitions that fall", [...handbookTable, { repetitions: 12, percent: 60 }]],
    ["a percentage above 100", [{ repetitions: 1, percent: 105 }]],
    ["a percentage of zero", [{ repetitions: 1, percent: 0 }]],
    ["a percentage that is not a number", [{ repetitions: 1, percent: Number.NaN }]],
    [
      "repetitions that stand still",
      [
        { repetitions: 1, percent: 90 },
        { repetitions: 1, percent: 80 },
      ],
    ],
    [
      "percentages that stand still",
      [
        { repetitions: 1, percent: 90 },
        { repetitions: 2, percent: 90 },
      ],
    ],
  ])("a table with %s is refused", (_, table) => {
    expect(percentOfMaximum(1, { table })).toEqual({
      ok: false,
      reasons: [
        {
          code: "tableOutOfOrder",
          message:
            "From row to row of the table the repetitions must rise and the percentages fall, from at most 100 and above zero.",
          facts: {},
        },
      ],
    });
  });

  test("a table that begins at no repetition at all is refused", () => {
    const table = [
      { repetitions: 0, percent: 100 },
      { repetitions: 1, percent: 95 },
    ];
    expect(percentOfMaximum(1, { table })).toMatchObject({ ok: false, reasons: [{ code: "tableOutOfOrder" }] });
  });

  test("an empty table is refused", () => {
    expect(percentOfMaximum(1, { table: [] })).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { what: "rows in the table", needed: 1, got: 0 } }],
    });
  });

  test.each([0, 16, -3])("%d repetitions are refused", (value) => {
    expect(percentOfMaximum(value)).toMatchObject({
      ok: false,
      reasons: [{ code: "outOfRange", facts: { what: "repetitions", low: 1, high: 15, value } }],
    });
  });

  test("repetitions that are no number are refused", () => {
    expect(percentOfMaximum(Number.NaN)).toMatchObject({ ok: false, reasons: [{ code: "notFinite" }] });
  });
});
