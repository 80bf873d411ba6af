import * as refusals from "../../src/engine/refusals";
import type { Refusal } from "../../src/engine/result";

describe("reasons for not answering", () => {
  const each: readonly [() => Refusal, string, string, Refusal["facts"]][] = [
    [
      () => refusals.tooFew("trials", 2, 0),
      "tooFew",
      "At least 2 trials are needed; there are 0.",
      { what: "trials", needed: 2, got: 0 },
    ],
    [
      () => refusals.tooFew("trials", 2, 1),
      "tooFew",
      "At least 2 trials are needed; there is 1.",
      { what: "trials", needed: 2, got: 1 },
    ],
    [
      () => refusals.notPositive("the load", 0),
      "notPositive",
      "The load must be above zero; 0 is not.",
      { what: "the load", value: 0 },
    ],
    [
      () => refusals.negative("the time", -1),
      "negative",
      "The time cannot be below zero; -1 is.",
      { what: "the time", value: -1 },
    ],
    [
      () => refusals.outOfRange("confidence", 0.01, 0.9999, 95),
      "outOfRange",
      "Confidence must be from 0.01 to 0.9999; 95 is not.",
      { what: "confidence", low: 0.01, high: 0.9999, value: 95 },
    ],
    [
      () => refusals.noSpread("scores"),
      "noSpread",
      "All scores are equal, so there is no spread to compare with. Check for copied data.",
      { what: "scores" },
    ],
    [() => refusals.notFinite("the target"), "notFinite", "The target must be a number.", { what: "the target" }],
    [
      () => refusals.unequalLengths("earlier scores", "later scores", [3, 4]),
      "unequalLengths",
      "Earlier scores and later scores must be equally many; there are 3 and 4.",
      { first: "earlier scores", second: "later scores", firstCount: 3, secondCount: 4 },
    ],
    [() => refusals.missing("the left value"), "missing", "The left value is missing.", { what: "the left value" }],
    [
      () => refusals.noTrueSpread("ICC(2,k)"),
      "noTrueSpread",
      "ICC(2,k) cannot be told: the athletes differ no more from each other than their own results do.",
      { what: "ICC(2,k)" },
    ],
    [
      () => refusals.mostEqual("scores"),
      "mostEqual",
      "More than half of the scores are equal, so their median spread is zero.",
      { what: "scores" },
    ],
    [
      () => refusals.agreementUndefined(),
      "agreementUndefined",
      "Everybody has the same side larger both times, so agreement beyond chance cannot be told.",
      {},
    ],
  ];

  for (const [refuse, code, message, facts] of each) {
    test(message, () => expect(refuse()).toEqual({ code, message, facts }));
  }

  test("there is no kind without its sentence here", () => {
    const said = new Set(each.map(([, code]) => code));
    expect([...said].sort()).toEqual(Object.keys(refusals).sort());
  });
});
