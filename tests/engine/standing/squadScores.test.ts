import { fillPlaces, higherIsBetter } from "../../../src/engine/standing/squadScores";

describe("scores of a squad", () => {
  test("turned so that higher is better, missing ones where they were", () => {
    expect(higherIsBetter([1.9, null, 1.8], { direction: "lower" })).toEqual([-1.9, null, -1.8]);
  });

  test("counted in steps of the instrument", () => {
    expect(higherIsBetter([41.2, 41.200000001, 41.26], { direction: "higher", resolution: 0.1 })).toEqual([
      412, 412, 413,
    ]);
    expect(() => higherIsBetter([1], { direction: "higher", resolution: 0 })).toThrow("A resolution of 0 is no step.");
  });

  test("answers go back to the places of the scores that are there", () => {
    expect(fillPlaces([5, null, 7, null], [1, 2])).toEqual([1, null, 2, null]);
  });
});
