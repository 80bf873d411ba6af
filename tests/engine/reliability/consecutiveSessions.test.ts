import { consecutiveSessions } from "../../../src/engine/reliability/consecutiveSessions";
import { unwrap } from "../../../src/engine/result";
import { expectRelative, rows } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";

describe("pairs of neighbouring sessions", () => {
  // Source: R 4.2.2 t.test(paired = TRUE), sd, qchisq.
  test.each(reliabilitySets.filter(({ name }) => !name.includes("missing")))(
    "mean change and typical error: $name",
    ({ results, reference }) => {
      const pairs = consecutiveSessions(results, { confidence: 0.95 });
      expect(pairs.length).toBe(reference.consecutive.length);
      pairs.forEach((pair, index) => {
        const { mean_change, TE } = reference.consecutive[index];
        const change = unwrap(pair.meanChange);
        expectRelative(change.change.value, mean_change.mean, 1e-9);
        expectRelative(change.change.low, mean_change.ci_low, 1e-8);
        expectRelative(change.change.high, mean_change.ci_high, 1e-8);
        expectRelative(change.t, mean_change.t, 1e-9);
        expectRelative(change.p, mean_change.p, 1e-8);
        const { error } = unwrap(pair.typicalError);
        expectRelative(error.value, TE.value, 1e-10);
        expectRelative(error.low, TE.ci_low, 1e-9);
        expectRelative(error.high, TE.ci_high, 1e-9);
      });
    },
  );

  test("without any athlete, or with one session, there is no pair", () => {
    expect(consecutiveSessions([], { confidence: 0.95 })).toEqual([]);
    expect(consecutiveSessions([[1], [2]], { confidence: 0.95 })).toEqual([]);
  });

  test("each pair uses the athletes who have both, whatever else they miss", () => {
    const results = rows("orthodont_missing", ["age8", "age10", "age12", "age14"]);
    const counts = consecutiveSessions(results, { confidence: 0.95 }).map((pair) => unwrap(pair.typicalError).athletes);
    const both = [0, 1, 2].map(
      (column) => results.filter((row) => row[column] !== null && row[column + 1] !== null).length,
    );
    expect(counts).toEqual(both);
    expect(Math.min(...counts)).toBeGreaterThan(20);
  });
});
