import { intervalRunLength } from "../../../src/engine/endurance/intervalRunLength";
import { maximalAerobicSpeed } from "../../../src/engine/endurance/maximalAerobicSpeed";
import { shuttleSpeed } from "../../../src/engine/endurance/shuttleSpeed";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";

describe("running speeds", () => {
  // Source: R 4.2.2 arithmetic, 1500 m in 5:00.
  test("maximal aerobic speed of 1500 m in 300 s", () => {
    const { metresPerSecond, kilometresPerHour } = unwrap(maximalAerobicSpeed(1500, 300));
    expectRelative(metresPerSecond, 5, 1e-15);
    expectRelative(kilometresPerHour, 18, 1e-15);
    expect(maximalAerobicSpeed(1500, 0).ok).toBe(false);
  });

  // Source: by hand: 18 km/h are 5 m/s; 15 s at 100 % are 75 m, at 90 % 67.5 m.
  test("run length of an interval", () => {
    expectRelative(unwrap(intervalRunLength(18, 100, 15)), 75, 1e-14);
    expectRelative(unwrap(intervalRunLength(18, 90, 15)), 67.5, 1e-14);
    expect(intervalRunLength(18, -90, 15).ok).toBe(false);
  });

  // Source: Leger et al. 1988 (from memory): 8.5 km/h first, 0.5 km/h more each minute; speed = 8 + 0.5 stage.
  test("speed of a shuttle stage", () => {
    for (const stage of [1, 9, 21]) expect(unwrap(shuttleSpeed(stage))).toBe(8 + 0.5 * stage);
    expect(unwrap(shuttleSpeed(9, { firstStageSpeed: 8 }))).toBe(12);
    expect(shuttleSpeed(0).ok).toBe(false);
    expect(shuttleSpeed(3, { firstStageSpeed: 12 }).ok).toBe(false);
  });
});
