import { unwrap } from "../../../src/engine/result";
import { squadRanks } from "../../../src/engine/standing/squadRanks";
import { standingSets } from "../../reference/standingSets";

describe("rank in a squad", () => {
  // Source: R 4.2.2 rank(ties.method = "min" and "average").
  test.each(standingSets)("competition and average ranks: $name", ({ scores, direction, inOrder }) => {
    expect(unwrap(squadRanks(scores, { direction }))).toEqual(inOrder("rank_competition_best1"));
    expect(unwrap(squadRanks(scores, { direction, ties: "average" }))).toEqual(inOrder("rank_average_best1"));
  });

  test("ties at the recorded resolution share a place; missing scores have none", () => {
    const scores = [1.84, 1.8399999, null, 1.79, 1.9];
    expect(unwrap(squadRanks(scores, { direction: "lower", resolution: 0.01 }))).toEqual([2, 2, null, 1, 4]);
    expect(unwrap(squadRanks(scores, { direction: "lower" }))).toEqual([3, 2, null, 1, 4]);
  });

  test("a single athlete is first", () => {
    expect(unwrap(squadRanks([null, 5], { direction: "higher" }))).toEqual([null, 1]);
  });

  test("no scores are refused, and a resolution of zero is a programming error", () => {
    expect(squadRanks([null], { direction: "higher" })).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "scores", needed: 1, got: 0 } }],
    });
    expect(() => squadRanks([1], { direction: "higher", resolution: 0 })).toThrow(RangeError);
  });
});
