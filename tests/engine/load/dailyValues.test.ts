import { dailyValueRefusals } from "../../../src/engine/load/dailyValues";

describe("one value per day", () => {
  test("rest days and missing days are fine", () => {
    expect(dailyValueRefusals([0, null, 350], "load")).toEqual([]);
  });

  test("every value below zero is refused", () => {
    expect(dailyValueRefusals([-1, 0, null, -0.5], "load")).toMatchObject([
      { code: "negative", facts: { what: "load", value: -1 } },
      { code: "negative", facts: { what: "load", value: -0.5 } },
    ]);
  });
});
