import { intervalRunLength } from "../../../src/engine/endurance/intervalRunLength";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";

describe("the run length of an interval", () => {
  // Source: by hand: 18 km/h are 5 m/s; 15 s at 100 % are 75 m, at 90 % 67.5 m.
  test("at a percentage of a speed", () => {
    expectRelative(unwrap(intervalRunLength(18, 100, 15)), 75, 1e-14);
    expectRelative(unwrap(intervalRunLength(18, 90, 15)), 67.5, 1e-14);
  });

  test("values that are not positive are refused by their names", () => {
    expect(intervalRunLength(0, -90, -15)).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "speed", value: 0 } },
        { code: "notPositive", facts: { what: "percentage of the speed", value: -90 } },
        { code: "notPositive", facts: { what: "interval time", value: -15 } },
      ],
    });
  });
});
