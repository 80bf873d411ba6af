import { unwrap } from "../../../src/engine/result";
import { tScores } from "../../../src/engine/standing/tScores";
import { expectRelative } from "../../reference/reference";
import { standingSets } from "../../reference/standingSets";

describe("T scores", () => {
  // Source: R 4.2.2 mean and sd.
  test.each(standingSets)("$name", ({ scores, direction, inOrder }) => {
    const reference = inOrder("T_score");
    unwrap(tScores(scores, { direction })).forEach((score, index) => {
      expectRelative(score!, reference[index]!, 1e-10);
    });
  });

  test("missing scores stay missing, a squad of two is refused", () => {
    expect(unwrap(tScores([1, null, 2, 3], { direction: "higher" }))).toEqual([40, null, 50, 60]);
    expect(tScores([1, 2, null], { direction: "higher" })).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "scores", needed: 3, got: 2 } }],
    });
  });
});
