import { averageRanks } from "../../../src/engine/standing/averageRanks";

describe("average ranks", () => {
  // Source: scipy 1.17.1 stats.rankdata.
  test("ties share the mean of their ranks", () => {
    expect(averageRanks([3, 1, 4, 1, 5, 9, 2, 6, 5, 3, 5])).toEqual([4.5, 1.5, 6, 1.5, 8, 11, 3, 10, 8, 4.5, 8]);
  });

  test("no values, no ranks", () => {
    expect(averageRanks([])).toEqual([]);
  });
});
