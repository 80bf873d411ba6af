import { tooFew } from "../../src/engine/refusals";
import { ok, refuse, unwrap, valueOr } from "../../src/engine/result";

describe("one way to say no", () => {
  test("a good result holds its value, a refusal all its reasons", () => {
    expect(unwrap(ok(7))).toBe(7);
    const refused = refuse(tooFew("trials", 2, 1), tooFew("athletes", 3, 0));
    expect(refused.ok).toBe(false);
    expect(refused.reasons.map(({ code }) => code)).toEqual(["tooFew", "tooFew"]);
  });

  test("taking the value of a refusal is a programming error that tells the reasons", () => {
    expect(() => unwrap(refuse(tooFew("trials", 2, 1), tooFew("athletes", 3, 0)))).toThrow(
      "At least 2 trials are needed; there is 1. At least 3 athletes are needed; there are 0.",
    );
  });

  test("where there is no value, another can stand for it", () => {
    expect(valueOr(ok(0), null)).toBe(0);
    expect(valueOr(refuse(tooFew("trials", 2, 1)), null)).toBeNull();
  });
});
