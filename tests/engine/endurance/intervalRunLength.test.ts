import { intervalRunLength } from "../../../src/engine/endurance/intervalRunLength";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";

describe("the run length of an interval", () => {
  // Source: by hand: 18 km/h are 5 m/s; 15 s at 100 % are 75 m, at 90 % 67.5 m.
  test("run length of an interval", () => {
    expectRelative(unwrap(intervalRunLength(18, 100, 15)), 75, 1e-14);
    expectRelative(unwrap(intervalRunLength(18, 90, 15)), 67.5, 1e-14);
    expect(intervalRunLength(18, -90, 15).ok).toBe(false);
  });
});
