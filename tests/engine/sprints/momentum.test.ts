import { unwrap } from "../../../src/engine/result";
import { momentum } from "../../../src/engine/sprints/momentum";

describe("sprint momentum", () => {
  // Source: R 4.2.2 arithmetic, 80 kg at 8 m/s.
  test("of 80 kg at 8 m/s", () => {
    expect(unwrap(momentum(80, 8))).toBe(640);
  });

  test.each([
    [0, 8],
    [80, -8],
    [Number.NaN, 8],
  ])("%d kg at %d m/s is refused", (mass, velocity) => {
    expect(momentum(mass, velocity).ok).toBe(false);
  });
});
