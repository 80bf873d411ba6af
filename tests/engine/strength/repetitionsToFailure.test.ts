import { unwrap } from "../../../src/engine/result";
import { repetitionsToFailure } from "../../../src/engine/strength/repetitionsToFailure";

const cautionsOf = (done: number, reserve: number) => unwrap(repetitionsToFailure(done, reserve)).cautions;

describe("repetitions a set would have had at failure", () => {
  // Source: by hand.
  test.each([
    [5, 2, 7],
    [5.9, 0.5, 5.5],
    [1, 0, 1],
    [15, 0, 15],
  ])("%d done with %d in reserve are %d", (done, reserve, repetitions) => {
    expect(unwrap(repetitionsToFailure(done, reserve)).repetitions).toBe(repetitions);
  });

  test("a set of two to ten to failure needs no caution, reserve up to three only the one", () => {
    expect(cautionsOf(2, 0)).toEqual([]);
    expect(cautionsOf(10, 0)).toEqual([]);
    expect(cautionsOf(7, 3).map(({ code }) => code)).toEqual(["estimatedFromReserve"]);
  });

  test("everything that makes the count less sure is said", () => {
    expect(cautionsOf(7.5, 3.5)).toEqual([
      {
        code: "incompleteRepetition",
        message: "Only complete repetitions count: 7.5 is taken as 7.",
        facts: { done: 7.5, counted: 7 },
      },
      {
        code: "estimatedFromReserve",
        message: "The set was not taken to failure: 3.5 in reserve is the lifter's own estimate.",
        facts: { reserve: 3.5 },
      },
      {
        code: "reserveIsAGuess",
        message: "More than 3 repetitions in reserve (3.5) can hardly be judged; take the set closer to failure.",
        facts: { reserve: 3.5 },
      },
      {
        code: "rough",
        message: "10.5 repetitions say little about a single one: a rough estimate. Use 2 to 10.",
        facts: { repetitions: 10.5 },
      },
    ]);
  });

  test.each([
    [0.9, 0, "repetitions done"],
    [15.1, 0, "repetitions done"],
    [15, 0.5, "repetitions with those in reserve"],
  ])("%d with %d in reserve are out of range: %s", (done, reserve, what) => {
    expect(repetitionsToFailure(done, reserve)).toMatchObject({
      ok: false,
      reasons: [{ code: "outOfRange", facts: { what, low: 1, high: 15 } }],
    });
  });

  test("a reserve below zero is refused by its name", () => {
    expect(repetitionsToFailure(5, -1)).toMatchObject({
      ok: false,
      reasons: [{ code: "negative", facts: { what: "repetitions in reserve", value: -1 } }],
    });
  });
});
