import { meanOfNeighbours, normalOrderStatistic } from "../../../src/engine/trials/normalOrderStatistics";

describe("order statistics of normal noise", () => {
  // Source: Teichroew 1956, Ann Math Stat 27:410-426, expectations of five (from memory): 1.16296, .49502, 0.
  test("the five of five are symmetric and sum to nothing", () => {
    const expectations = [1, 2, 3, 4, 5].map((position) => normalOrderStatistic(position, 5).expectation);
    [-1.16296, -0.49502, 0, 0.49502, 1.16296].forEach((expectation, index) => {
      expect(expectations[index]).toBeCloseTo(expectation, 5);
    });
  });

  // Outside check: ordering changes no sum of squares, so expectations squared plus variances sum to the number of trials.
  test("moments of all positions add up to those of the unordered trials", () => {
    for (const count of [2, 4, 9, 30]) {
      const all = Array.from({ length: count }, (_, index) => normalOrderStatistic(index + 1, count));
      const squares = all.reduce((sum, { expectation, variance }) => sum + expectation ** 2 + variance, 0);
      expect(squares).toBeCloseTo(count, 9);
    }
  });

  // Source: scipy 1.17.1 integrate.dblquad: covariance .2359438935 of the middle two of four gives .2981996184.
  test("the mean of two neighbours", () => {
    expect(meanOfNeighbours(2, 4).variance).toBeCloseTo(0.2981996184, 9);
    expect(meanOfNeighbours(1, 2).variance).toBeCloseTo(0.5, 9);
  });
});
