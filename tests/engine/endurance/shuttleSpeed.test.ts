import { shuttleSpeed } from "../../../src/engine/endurance/shuttleSpeed";
import { unwrap } from "../../../src/engine/result";

describe("the speed of a shuttle stage", () => {
  // Source: Leger et al. 1988 (from memory): 8.5 km/h first, 0.5 km/h more each minute; speed = 8 + 0.5 stage.
  test("speed of a shuttle stage", () => {
    for (const stage of [1, 9, 21]) expect(unwrap(shuttleSpeed(stage))).toBe(8 + 0.5 * stage);
    expect(unwrap(shuttleSpeed(9, { firstStageSpeed: 8 }))).toBe(12);
    expect(shuttleSpeed(0).ok).toBe(false);
    expect(shuttleSpeed(3, { firstStageSpeed: 12 }).ok).toBe(false);
  });
});
