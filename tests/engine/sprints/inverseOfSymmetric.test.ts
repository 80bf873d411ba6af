import { inverseOfSymmetric } from "../../../src/engine/sprints/inverseOfSymmetric";

describe("the inverse of a small symmetric matrix", () => {
  // Source: the inverse of the 3 x 3 Hilbert matrix in whole numbers (Choi 1983, Am Math Mon 90:301-312, from memory).
  test("of Hilbert's matrix", () => {
    const hilbert = [0, 1, 2].map((i) => [0, 1, 2].map((j) => 1 / (i + j + 1)));
    const wanted = [
      [9, -36, 30],
      [-36, 192, -180],
      [30, -180, 180],
    ];
    inverseOfSymmetric(hilbert)!.forEach((row, i) => {
      row.forEach((value, j) => {
        expect(value).toBeCloseTo(wanted[i]![j]!, 9);
      });
    });
  });

  test("of a singular matrix there is none", () => {
    expect(inverseOfSymmetric([[1, 1], [1, 1]])).toBeNull(); // biome-ignore format: a matrix
    for (const useless of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(inverseOfSymmetric([[useless, 0], [0, 1]])).toBeNull(); // biome-ignore format: a matrix
      expect(inverseOfSymmetric([[1, 0], [0, useless]])).toBeNull(); // biome-ignore format: a matrix
    }
  });
});
