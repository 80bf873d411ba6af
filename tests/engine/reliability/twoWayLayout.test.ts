import { twoWayLayout } from "../../../src/engine/reliability/twoWayLayout";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";

describe("analysis of variance of athletes by sessions", () => {
  // Source: R 4.2.2 sums of squares.
  test.each(reliabilitySets)("mean squares: $name", ({ results, reference }) => {
    const layout = unwrap(twoWayLayout(results));
    expectRelative(layout.betweenAthletes, reference.anova.MSR, 1e-10);
    expectRelative(layout.betweenSessions, reference.anova.MSC, 1e-10);
    expectRelative(layout.residual, reference.anova.MSE, 1e-10);
    expectRelative(layout.withinAthletes, reference.anova.MSW, 1e-10);
    expectRelative(layout.grandMean, reference.anova.grand_mean, 1e-10);
  });

  test("one session of two athletes, and copied columns, are refused", () => {
    expect(twoWayLayout([[1], [2]])).toMatchObject({
      reasons: [
        { code: "tooFew", facts: { what: "sessions", needed: 2, got: 1 } },
        { code: "tooFew", facts: { what: "athletes with every result", needed: 3, got: 2 } },
      ],
    });
    expect(twoWayLayout([])).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "sessions", needed: 2, got: 0 } }, { code: "tooFew" }],
    });
    expect(
      twoWayLayout([
        [1.1, 1.4],
        [2.3, 2.6],
        [3.7, 4],
      ]),
    ).toMatchObject({ reasons: [{ code: "noSpread", facts: { what: "repeated results" } }] });
  });

  test("athletes who miss a result are left out and counted", () => {
    const complete = [
      [1, 2],
      [3, 3],
      [2, 5],
    ];
    const { leftOut, ...layout } = unwrap(twoWayLayout([...complete, [4, null], [null, null]]));
    expect(leftOut).toBe(2);
    expect(unwrap(twoWayLayout(complete))).toEqual({ ...layout, leftOut: 0 });
  });

  test("a large constant costs no digits", () => {
    const results = [
      [1, 2, 4],
      [3, 3, 5],
      [2, 5, 5],
      [4, 4, 7],
    ];
    const plain = unwrap(twoWayLayout(results));
    const shifted = unwrap(twoWayLayout(results.map((row) => row.map((value) => value + 1e12))));
    expectRelative(shifted.residual, plain.residual, 1e-12);
    expectRelative(shifted.betweenAthletes, plain.betweenAthletes, 1e-12);
  });
});
