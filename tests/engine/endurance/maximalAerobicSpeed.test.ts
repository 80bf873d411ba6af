import { maximalAerobicSpeed } from "../../../src/engine/endurance/maximalAerobicSpeed";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";

describe("maximal aerobic speed", () => {
  // Source: R 4.2.2 arithmetic, 1500 m in 5:00.
  test("maximal aerobic speed of 1500 m in 300 s", () => {
    const { metresPerSecond, kilometresPerHour } = unwrap(maximalAerobicSpeed(1500, 300));
    expectRelative(metresPerSecond, 5, 1e-15);
    expectRelative(kilometresPerHour, 18, 1e-15);
    expect(maximalAerobicSpeed(1500, 0).ok).toBe(false);
  });
});
