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
    expect(unwrap(percentOfMaximum(11)).cautions).toMatchObject([{ code: "copiesDisagree", facts: { others: "73" } }]);
    expect(unwrap(percentOfMaximum(10)).cautions).toEqual([]);
  });

  test("is taken in a straight line between two rows, with a caution", () => {
    const { percent: value, cautions } = unwrap(percentOfMaximum(14));
    expect(value).toBeCloseTo(67 - (2 * 2) / 3, 12);
    expect(cautions).toMatchObject([{ code: "betweenRows", facts: { lower: 12, upper: 15 } }]);
  });

  test("follows the coach's own table", () => {
    const table = [
      { repetitions: 1, percent: 100 },
      { repetitions: 5, percent: 90 },
    ];
    expect(unwrap(percentOfMaximum(3, { table })).percent).toBe(95);
    expect(percentOfMaximum(6, { table }).ok).toBe(false);
  });

  test.each([
    ["empty", []],
    ["percentages that rise", [...handbookTable, { repetitions: 20, percent: 70 }]],
    ["repetitions that fall", [...handbookTable, { repetitions: 12, percent: 60 }]],
    ["a percentage above 100", [{ repetitions: 1, percent: 105 }]],
    ["a percentage that is not a number", [{ repetitions: 1, percent: Number.NaN }]],
  ])("a table with %s is refused", (_, table) => {
    expect(percentOfMaximum(1, { table }).ok).toBe(false);
  });

  test.each([0, 16, -3, Number.NaN])("%d repetitions are refused", (repetitions) => {
    expect(percentOfMaximum(repetitions).ok).toBe(false);
  });
});
