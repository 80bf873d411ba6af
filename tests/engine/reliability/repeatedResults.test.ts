import { completePairs, completeRows, largestSize } from "../../../src/engine/reliability/repeatedResults";

describe("athletes by sessions", () => {
  const results = [
    [1, 2, 3],
    [4, null, 6],
    [null, 8, 9],
  ];

  test("complete athletes", () => {
    expect(completeRows(results)).toEqual([[1, 2, 3]]);
  });

  test("athletes who have both of two sessions", () => {
    expect(completePairs(results, 0, 2)).toEqual([
      [1, 3],
      [4, 6],
    ]);
    expect(completePairs(results, 1, 2)).toEqual([
      [2, 3],
      [8, 9],
    ]);
    expect(completePairs(results, 2, 3)).toEqual([]);
  });

  test("the largest size, whatever its sign", () => {
    expect(largestSize([[1, -7], [3]])).toBe(7);
    expect(largestSize([])).toBe(0);
  });
});
