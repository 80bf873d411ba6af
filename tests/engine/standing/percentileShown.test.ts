import { percentileShown } from "../../../src/engine/standing/percentileShown";

describe("a percentile as it is shown", () => {
  test.each([
    [63.2, 7, null],
    [63.2, 8, 65],
    [62.4, 19, 60],
    [63.2, 20, 63],
  ])("%d in a squad of %d is shown as %p", (percentile, squadSize, shown) => {
    expect(percentileShown(percentile, squadSize)).toBe(shown);
  });
});
