import { maximalAerobicSpeed } from "../../../src/engine/endurance/maximalAerobicSpeed";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";

describe("maximal aerobic speed", () => {
  // Source: R 4.2.2 arithmetic, 1500 m in 5:00.
  test("of 1500 m in 300 s", () => {
    const { metresPerSecond, kilometresPerHour } = unwrap(maximalAerobicSpeed(1500, 300));
    expectRelative(metresPerSecond, 5, 1e-15);
    expectRelative(kilometresPerHour, 18, 1e-15);
  });

  test("of no distance or time is refused", () => {
    expect(maximalAerobicSpeed(-1500, 0)).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "distance run", value: -1500 } },
        { code: "notPositive", facts: { what: "running time", value: 0 } },
      ],
    });
  });
});
