import { directionAgreement, type LargerSide } from "../../../src/engine/asymmetry/directionAgreement";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, labels } from "../../reference/reference";

const directions = (name: string): LargerSide[] =>
  labels("direction", name).map((letter) => ({ L: "left", R: "right", E: "equal" })[letter] as LargerSide);

describe("agreement of direction between two sessions", () => {
  // Source: psych::cohen.kappa (R 4.2.2, psych 2.2.9).
  test("twenty athletes", () => {
    const agreement = unwrap(
      directionAgreement([...directions("session1"), null, "left"], [...directions("session2"), "left", null], {
        confidence: 0.95,
      }),
    );
    const reference = expected("direction");
    expect(agreement.count).toBe(20);
    expectRelative(agreement.observed, reference.po, 1e-12);
    expectRelative(agreement.expected, reference.pe, 1e-12);
    const kappa = unwrap(agreement.kappa);
    expectRelative(kappa.value, reference.psych_kappa, 1e-10);
    expectRelative(kappa.low, reference.psych_ci[0], 1e-9);
    expectRelative(kappa.high, reference.psych_ci[2], 1e-9);
    expect(kappa.words).toBe("moderate");
  });

  test("with everybody on one side both times there is agreement but no kappa", () => {
    const agreement = unwrap(directionAgreement(["left", "left"], ["left", "left"], { confidence: 0.95 }));
    expect(agreement.observed).toBe(1);
    expect(agreement.kappa).toMatchObject({ ok: false, reasons: [{ code: "agreementUndefined" }] });
  });

  test("perfect agreement is 1, perfect disagreement is below 0", () => {
    const kappa = (second: LargerSide[]) =>
      unwrap(unwrap(directionAgreement(["left", "right", "left", "right"], second, { confidence: 0.9 })).kappa);
    expect(kappa(["left", "right", "left", "right"])).toMatchObject({ value: 1, high: 1, words: "almost perfect" });
    expect(kappa(["right", "left", "right", "left"])).toMatchObject({ value: -1, words: "poor" });
  });

  test("lists of different length are refused", () => {
    expect(directionAgreement(["left"], [], { confidence: 0.95 })).toMatchObject({
      reasons: [{ code: "unequalLengths" }, { code: "tooFew" }],
    });
  });
});
