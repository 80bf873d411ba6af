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
    expect(kappa(["right", "left", "right", "left"])).toMatchObject({ value: -1, low: -1, words: "poor" });
  });

  // Source: Landis & Koch 1977, Biometrics 33:159-174 (from memory): bands end at 0, .20, .40, .60 and .80, ends included.
  // With both sides equally frequent kappa is 2 x the share alike - 1.
  test.each([
    [10, 0, "poor"],
    [12, 0.2, "slight"],
    [14, 0.4, "fair"],
    [16, 0.6, "moderate"],
    [18, 0.8, "substantial"],
  ])("%d alike of twenty is a kappa of %d: %s", (alike, kappa, words) => {
    const first = Array.from({ length: 20 }, (_, index): LargerSide => (index % 2 === 0 ? "left" : "right"));
    const second = first.map((side, index) => (index < alike ? side : side === "left" ? "right" : "left"));
    const agreement = unwrap(directionAgreement(first, second, { confidence: 0.95 }));
    expect(unwrap(agreement.kappa)).toMatchObject({ value: kappa, words });
  });

  test("limits never leave -1 to 1", () => {
    const first: LargerSide[] = ["left", "right", "left", "right", "left"];
    const oneOff = unwrap(directionAgreement(first, [...first.slice(1), "left"], { confidence: 0.95 }));
    expect(unwrap(oneOff.kappa).low).toBe(-1);
    const almost = unwrap(directionAgreement(first, [...first.slice(0, 4), "right"], { confidence: 0.95 }));
    expect(unwrap(almost.kappa).high).toBe(1);
  });

  test("everything that is wrong is said at once", () => {
    expect(directionAgreement(["left"], [], { confidence: 95 })).toMatchObject({
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        {
          code: "unequalLengths",
          facts: { first: "first directions", second: "second directions", firstCount: 1, secondCount: 0 },
        },
        { code: "tooFew", facts: { what: "athletes with a direction in both sessions", needed: 2, got: 0 } },
      ],
    });
    expect(directionAgreement(["left", "right"], ["left", "right"], { confidence: 0.95 }).ok).toBe(true);
  });
});
