import { shuttleSpeed } from "../../../src/engine/endurance/shuttleSpeed";
import { unwrap } from "../../../src/engine/result";

describe("the speed of a shuttle stage", () => {
  // Source: Leger et al. 1988 (from memory): 8.5 km/h first, 0.5 km/h more each minute; speed = 8 + 0.5 stage.
  test("rises by half a kilometre per hour", () => {
    for (const stage of [1, 9, 21]) expect(unwrap(shuttleSpeed(stage))).toBe(8 + 0.5 * stage);
    expect(unwrap(shuttleSpeed(9, { firstStageSpeed: 8 }))).toBe(12);
  });

  test("a stage or first speed outside the test is refused", () => {
    expect(shuttleSpeed(0, { firstStageSpeed: 12 })).toMatchObject({
      ok: false,
      reasons: [
        { code: "outOfRange", facts: { what: "stage", low: 1, high: 23, value: 0 } },
        { code: "outOfRange", facts: { what: "speed of the first stage", low: 8, high: 8.5, value: 12 } },
      ],
    });
  });
});
