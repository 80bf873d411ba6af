import { sessionLoad } from "../../../src/engine/load/sessionLoad";
import { unwrap } from "../../../src/engine/result";

describe("session load", () => {
  // Source: by hand, rating x minutes (Foster et al. 2001).
  test.each([
    [6, 70, 420],
    [4.5, 80, 360],
    [0, 30, 0],
  ])("rating %d for %d minutes is %d", (rating, minutes, load) => {
    expect(unwrap(sessionLoad(rating, minutes))).toBe(load);
  });

  test("a rating above 10, negative minutes and nonsense are refused", () => {
    expect(sessionLoad(10.5, -1)).toMatchObject({
      ok: false,
      reasons: [
        { code: "outOfRange", facts: { what: "perceived exertion", low: 0, high: 10, value: 10.5 } },
        { code: "outOfRange", facts: { what: "minutes of the session", low: 0, high: 1440, value: -1 } },
      ],
    });
    expect(sessionLoad(Number.NaN, 60)).toMatchObject({ ok: false, reasons: [{ code: "notFinite" }] });
    expect(unwrap(sessionLoad(10, 1440))).toBe(14400);
  });
});
