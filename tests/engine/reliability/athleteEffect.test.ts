import { designOf, leastSquaresAt } from "../../../src/engine/reliability/athleteEffect";
import { twoWayLayout } from "../../../src/engine/reliability/twoWayLayout";
import { unwrap } from "../../../src/engine/result";
import { expectRelative, rows } from "../../reference/reference";

describe("least squares with an athlete effect", () => {
  const results = rows("orthodont_missing", ["age8", "age10", "age12", "age14"]);

  test("the design leaves out sessions without results and counts from the first result", () => {
    expect(
      designOf([
        [null, 5, 7],
        [null, null, 4],
      ]),
    ).toEqual({
      sessions: 2,
      resultCount: 3,
      athletes: [
        [
          { session: 0, value: 0 },
          { session: 1, value: 2 },
        ],
        [{ session: 1, value: -1 }],
      ],
    });
  });

  // Outside check: for complete data the sums of squares are those of the analysis of variance, residual + athletes / (1 + k lambda).
  test("squares at a ratio, complete data", () => {
    const complete = rows("orthodont", ["age8", "age10", "age12", "age14"]);
    const { athletes, sessions, residual, betweenAthletes } = unwrap(twoWayLayout(complete));
    for (const ratio of [0, 0.5, 20]) {
      const squares = (athletes - 1) * ((sessions - 1) * residual + betweenAthletes / (1 + sessions * ratio));
      expectRelative(leastSquaresAt(designOf(complete), ratio).squares, squares, 1e-12);
    }
  });

  // Outside check: the slope against a central difference of the deviance.
  test("the slope is that of the deviance, missing data", () => {
    const design = designOf(results);
    const step = 1e-5;
    for (const ratio of [0.3, 2, 9]) {
      const rise = leastSquaresAt(design, ratio + step).deviance - leastSquaresAt(design, ratio - step).deviance;
      expect(leastSquaresAt(design, ratio).devianceSlope).toBeCloseTo(rise / (2 * step), 5);
    }
  });

  test("athletes without any result are no part of the design", () => {
    expect(designOf([...results, results[0]!.map(() => null)])).toEqual(designOf(results));
  });
});
