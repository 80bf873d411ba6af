import { unwrap } from "../../../src/engine/result";
import { changeOfDirectionDeficit } from "../../../src/engine/sprints/changeOfDirectionDeficit";

describe("the change-of-direction deficit", () => {
  // Source: R 4.2.2 arithmetic, 505 in 2.45 s, 10 m in 1.80 s and 20 m in 3.05 s.
  test("by the first 10 m and by the flying 10 m", () => {
    const standing = changeOfDirectionDeficit(2.45, { straight: "first 10 m", tenMetres: 1.8 });
    expect(unwrap(standing).seconds).toBeCloseTo(0.65, 12);
    const flying = changeOfDirectionDeficit(2.45, { straight: "10 to 20 m", tenMetres: 1.8, twentyMetres: 3.05 });
    expect(unwrap(flying).seconds).toBeCloseTo(1.2, 12);
    expect(unwrap(flying).typicalError).toBeNull();
  });

  // Source: error propagation for a difference of independent times, by hand: 3-4-5 and sqrt(7^2 + 2 * 4^2) = 9.
  test("carries the noise of every time in it", () => {
    const typicalErrors = { turn: 0.03, splits: 0.04 };
    const standing = changeOfDirectionDeficit(2.45, { straight: "first 10 m", tenMetres: 1.8 }, { typicalErrors });
    expect(unwrap(standing).typicalError).toBeCloseTo(0.05, 12);
    const flying = changeOfDirectionDeficit(
      2.45,
      { straight: "10 to 20 m", tenMetres: 1.8, twentyMetres: 3.05 },
      { typicalErrors: { turn: 0.07, splits: 0.04 } },
    );
    expect(unwrap(flying).typicalError).toBeCloseTo(0.09, 12);
  });

  test("a turn no slower than the straight is given with a caution", () => {
    const { cautions } = unwrap(changeOfDirectionDeficit(1.5, { straight: "first 10 m", tenMetres: 1.75 }));
    expect(cautions).toEqual([
      {
        code: "fasterThanStraight",
        message: "The 505 was no slower than the straight run; one of the times must be wrong.",
        facts: { seconds: -0.25 },
      },
    ]);
    const equal = unwrap(changeOfDirectionDeficit(1.8, { straight: "first 10 m", tenMetres: 1.8 }));
    expect(equal.cautions).toMatchObject([{ code: "fasterThanStraight", facts: { seconds: 0 } }]);
    expect(unwrap(changeOfDirectionDeficit(1.81, { straight: "first 10 m", tenMetres: 1.8 })).cautions).toEqual([]);
  });

  test("times that are not positive, a 20 m below the 10 m, and negative errors are refused", () => {
    const typicalErrors = { turn: -0.03, splits: -0.04 };
    expect(
      changeOfDirectionDeficit(0, { straight: "10 to 20 m", tenMetres: -3, twentyMetres: -4 }, { typicalErrors }),
    ).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "505 time", value: 0 } },
        { code: "notPositive", facts: { what: "10 m time", value: -3 } },
        { code: "notPositive", facts: { what: "time of the straight 10 m", value: -1 } },
        { code: "negative", facts: { what: "typical error of the 505", value: -0.03 } },
        { code: "negative", facts: { what: "typical error of the splits", value: -0.04 } },
      ],
    });
    expect(changeOfDirectionDeficit(2.4, { straight: "first 10 m", tenMetres: Number.NaN }).ok).toBe(false);
    expect(changeOfDirectionDeficit(2.4, { straight: "10 to 20 m", tenMetres: 3, twentyMetres: 1.8 }).ok).toBe(false);
  });
});
