import { unwrap } from "../../../src/engine/result";
import { momentum } from "../../../src/engine/sprints/momentum";

describe("sprint momentum", () => {
  // Source: R 4.2.2 arithmetic, 80 kg at 8 m/s.
  test("of 80 kg at 8 m/s", () => {
    expect(unwrap(momentum(80, 8))).toBe(640);
  });

  test.each([
    [0, 8, "body mass"],
    [80, -8, "velocity"],
    [Number.NaN, 8, "body mass"],
  ])("%d kg at %d m/s is refused for the %s", (mass, velocity, what) => {
    expect(momentum(mass, velocity)).toMatchObject({ ok: false, reasons: [{ facts: { what } }] });
  });
});
