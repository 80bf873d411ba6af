import { reducedScoreMoments } from "../../../src/engine/trials/reducedScoreMoments";

describe("what noise does to a reduced score", () => {
  // Source: scipy 1.17.1 integrate.quad over stats.norm; the first five digits are those of Teichroew 1956,
  // Ann Math Stat 27:410-426 (from memory).
  test.each([
    [2, 0.5641895835, 0.6816901138],
    [3, 0.8462843753, 0.5594672038],
    [4, 1.029375373, 0.4917152369],
    [5, 1.1629644736, 0.447534069],
    [6, 1.2672063606, 0.415927109],
    [10, 1.5387527308, 0.3443438233],
  ])("best of %d: expectation %d, variance %d", (count, expectation, variance) => {
    expect(reducedScoreMoments(count, "best").expectation).toBeCloseTo(expectation, 9);
    expect(reducedScoreMoments(count, "best").variance).toBeCloseTo(variance, 9);
  });

  // Source: scipy 1.17.1 integrate.quad and dblquad over the joint density of two neighbouring order statistics.
  test.each([
    [2, 0.5],
    [3, 0.4486711046],
    [4, 0.2981996184],
    [5, 0.2868336616],
    [6, 0.2147426666],
    [7, 0.2104468615],
  ])("median of %d: variance %d", (count, variance) => {
    expect(reducedScoreMoments(count, "median").expectation).toBe(0);
    expect(reducedScoreMoments(count, "median").variance).toBeCloseTo(variance, 9);
  });

  test.each([
    [2, 0, 0.5],
    [3, 0.4231421877, 0.3898668009],
    [4, 0.6631933776, 0.3358389916],
    [5, 0.828991722, 0.3019287351],
    [6, 0.9544806997, 0.2781277132],
  ])("mean of the best two of %d: expectation %d, variance %d", (count, expectation, variance) => {
    expect(reducedScoreMoments(count, "meanOfBestTwo").expectation).toBeCloseTo(expectation, 9);
    expect(reducedScoreMoments(count, "meanOfBestTwo").variance).toBeCloseTo(variance, 9);
  });

  test("the mean of m trials has a variance of 1/m", () => {
    expect(reducedScoreMoments(4, "mean").variance).toBe(0.25);
    expect(reducedScoreMoments(4, "mean").expectation).toBe(0);
  });

  test("one trial is itself, whatever the reduction", () => {
    for (const reduction of ["best", "mean", "median"] as const)
      expect(reducedScoreMoments(1, reduction)).toEqual({ expectation: 0, variance: 1 });
  });

  test("too few trials for the reduction, and part of a trial, are a programming error", () => {
    expect(() => reducedScoreMoments(1, "meanOfBestTwo")).toThrow("1 trials cannot be reduced by meanOfBestTwo.");
    expect(() => reducedScoreMoments(0, "best")).toThrow("0 trials cannot be reduced by best.");
    expect(() => reducedScoreMoments(2.5, "mean")).toThrow(RangeError);
  });
});
