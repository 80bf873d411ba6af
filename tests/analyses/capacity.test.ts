import { capacity } from "../../src/analyses/capacity/capacity";
import { unwrap } from "../../src/engine/result";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";

const both = (athlete: string, left: number | null, right: number | null, said: Partial<TestResult> = {}) =>
  (
    [
      ["left", left],
      ["right", right],
    ] as const
  ).flatMap(([side, value]) =>
    value === null ? [] : [testResult({ athlete, test: "Calf raise", side, value, unit: "reps", ...said })],
  );

const answer = (results: readonly TestResult[], settings: object = {}) =>
  unwrap(capacity.compute(results, capacity.settings.parse(settings), noBackground));

describe("the capacity of each side", () => {
  it("is the best of the latest day, and differs where a retest alone would not", () => {
    const { rows, summary } = answer([
      ...both("A", 20, 40, { date: "2026-08-11" }),
      ...both("A", 24, 31, { date: "2026-10-06" }),
      ...both("A", 22, 30, { date: "2026-10-06", attempt: 2 }),
      ...both("B", 30, 24),
    ]);
    expect(rows).toMatchObject([
      {
        athlete: "A",
        left: 24,
        right: 31,
        difference: 7,
        verdict: "The right lasts longer by more than a retest brings.",
      },
      { athlete: "B", difference: -6, share: 80, verdict: "Within what a retest brings." },
    ]);
    expect(summary[0]).toBe("1 of 2 athletes differ between the sides by more than 6.");
    expect(answer(both("B", 30, 24), { retestRepetitions: 5 }).rows[0]!.verdict).toBe(
      "The left lasts longer by more than a retest brings.",
    );
  });

  it("stopped at a cap is at least so large, and unknown where both were stopped", () => {
    const { rows, cautions } = answer([...both("A", 40, 60), ...both("B", 57, 60), ...both("C", 60, 60)], { stop: 60 });
    expect(rows.map(({ athlete, difference, verdict }) => [athlete, difference, verdict])).toEqual([
      [
        "A",
        20,
        "The right lasts longer by more than a retest brings. The right was stopped, so the difference is at least this.",
      ],
      ["B", 3, "Cannot tell: the right was stopped, so the difference is at least this."],
      ["C", null, expect.stringMatching(/^No answer: A side was stopped at the cap/)],
    ]);
    expect(cautions).toContain("4 of 6 results were stopped: their true size is not known.");
  });

  // Source: R 4.2.2 quantile(c(10, 20, 20, 30, 40), c(.25, .5, .75), type = 7).
  it("of the squad is told by median and quartiles", () => {
    const { summary, cautions } = answer([40, 20, 10, 30, 20].flatMap((left, index) => both(String(index), left, 25)));
    expect(summary[1]).toBe("Left: the middle of 5 is 20, the middle half from 20 to 30.");
    expect(cautions[0]).toMatch(/^With small numbers one repetition/);
  });

  it("in seconds is judged only by what a retest is said to bring", () => {
    const planks = both("A", 80, 65, { unit: "s" });
    const unjudged = answer(planks);
    expect(unjudged.rows[0]).toMatchObject({
      difference: -15,
      verdict: "Not judged: say what a retest of this test brings.",
    });
    expect(unjudged.summary[0]).toMatch(/^What a retest brings is not known/);
    expect(answer(planks, { retestSeconds: 10 }).rows[0]!.verdict).toMatch(/^The left lasts longer/);
    const fine = both("A", 80000, 65000, { unit: "ms" });
    expect(answer(fine, { retestSeconds: 20 }).rows[0]!.verdict).toBe("Within what a retest brings.");
  });

  it("has no answer with a side missing, and leaves out what has no side or is below zero", () => {
    const { rows, leftOut } = answer([
      ...both("A", 20, null),
      testResult({ athlete: "B", value: 20, cell: "B3" }),
      testResult({ athlete: "B", side: "left", value: -1, cell: "B4" }),
    ]);
    expect(rows).toMatchObject([
      { athlete: "A", left: 20, right: null, verdict: "No answer: the right side has no result." },
    ]);
    expect(leftOut).toEqual([
      { cell: "B3", why: "No side is given; left or right is needed." },
      { cell: "B4", why: "A result to failure cannot be below zero." },
    ]);
  });
});
