import * as refusals from "../../src/engine/refusals";

describe("reasons for not answering", () => {
  const all = [
    refusals.tooFew("trials", 2, 0),
    refusals.notPositive("the load", 0),
    refusals.negative("the time", -1),
    refusals.outOfRange("confidence", 0.01, 0.9999, 95),
    refusals.noSpread("scores"),
    refusals.notFinite("the target"),
    refusals.unequalLengths("earlier scores", "later scores", [3, 4]),
    refusals.missing("the left value"),
    refusals.noTrueSpread("ICC(2,k)"),
    refusals.mostEqual("scores"),
    refusals.agreementUndefined(),
  ];

  test.each(all)("$code is a whole sentence with its facts", ({ message, facts }) => {
    expect(message).toMatch(/^[A-Z].*\.$/);
    expect(message).not.toMatch(/undefined|NaN/);
    for (const fact of Object.values(facts)) expect(["number", "string"]).toContain(typeof fact);
  });

  test("each says what is wrong with the numbers at hand", () => {
    expect(refusals.tooFew("trials", 2, 1).message).toBe("At least 2 trials are needed; there is 1.");
    expect(refusals.outOfRange("confidence", 0.01, 0.9999, 95).message).toBe(
      "Confidence must be from 0.01 to 0.9999; 95 is not.",
    );
  });
});
