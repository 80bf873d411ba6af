import fc from "fast-check";
import { individualChange } from "../../../src/engine/change/individualChange";
import { unwrap } from "../../../src/engine/result";
import { column, expected, expectRelative, labels } from "../../reference/reference";
import { cell, measurement, notFinitePaths } from "../measurements";

describe("one athlete's change", () => {
  // Source: R 4.2.2 pnorm.
  test.each([
    ["sleepstudy_day0_2", "change_day0_day2", "day0", "day2", "lower"],
    ["sleep_student", "change", "drug1", "drug2", "higher"],
  ] as const)("%s", (dataset, key, earlierName, laterName, direction) => {
    const { individual } = expected(dataset)[key];
    const later = column(dataset, laterName);
    const earlier = column(dataset, earlierName);
    labels(dataset, "id").forEach((athlete, index) => {
      const change = unwrap(
        individualChange({
          earlier: earlier[index]!,
          later: later[index]!,
          typicalError: individual.TE,
          smallestWorthwhileChange: individual.SWC,
          direction,
          confidence: 0.95,
        }),
      );
      expect(change.change.value).toBeCloseTo(individual.change[athlete], 9);
      expect(change.change.low).toBeCloseTo(individual.ci95_low[athlete], 8);
      expect(change.change.high).toBeCloseTo(individual.ci95_high[athlete], 8);
      expectRelative(change.chances.better, individual.prob_true_change_better_than_SWC[athlete], 1e-8);
    });
  });

  const example = {
    earlier: 40,
    later: 44,
    typicalError: 1.5,
    smallestWorthwhileChange: 1,
    direction: "higher",
    confidence: 0.95,
  } as const;

  // Source: R 4.2.2 pnorm.
  test("a change within the detectable change can still be 92 % likely worthwhile: both are told", () => {
    const change = unwrap(individualChange(example));
    expectRelative(change.minimalDetectableChange, 4.15778787, 1e-8);
    expectRelative(change.change.low, -0.157787873, 1e-8);
    expectRelative(change.change.high, 8.157787873, 1e-8);
    expectRelative(change.chances.better, 0.921350397, 1e-8);
    expectRelative(change.chances.trivial, 0.0694385408, 1e-8);
    expectRelative(change.chances.worse, 0.00921106273, 1e-8);
    expect(change.verdict).toBe("withinNoise");
  });

  // Source: R 4.2.2 pt and qt.
  test("with 9 degrees of freedom", () => {
    const change = unwrap(individualChange({ ...example, degreesOfFreedom: 9 }));
    expectRelative(change.minimalDetectableChange, 4.79876001, 1e-8);
    expectRelative(change.chances.better, 0.904526441, 1e-8);
  });

  // Source: by hand from the detectable change of 4.16 above: 10 - 4.16 is beyond 1.
  test("a change beyond noise and worthwhile is judged by its direction", () => {
    expect(unwrap(individualChange({ ...example, later: 50 })).verdict).toBe("clearImprovement");
    const slower = unwrap(individualChange({ ...example, later: 50, direction: "lower" }));
    expect(slower).toMatchObject({ improvement: -10, verdict: "clearDecline" });
  });

  test("sizes that are not above zero are refused though both scores are there", () => {
    expect(individualChange({ ...example, typicalError: -1 })).toMatchObject({
      reasons: [{ code: "notPositive", facts: { what: "the typical error", value: -1 } }],
    });
  });

  test("missing scores and sizes that are not above zero are refused together", () => {
    expect(
      individualChange({
        ...example,
        earlier: null,
        later: null,
        typicalError: 0,
        smallestWorthwhileChange: 0,
        degreesOfFreedom: 0,
        confidence: 95,
      }),
    ).toMatchObject({
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        { code: "missing", facts: { what: "the earlier score" } },
        { code: "missing", facts: { what: "the later score" } },
        { code: "notPositive", facts: { what: "the typical error", value: 0 } },
        { code: "notPositive", facts: { what: "the smallest worthwhile change", value: 0 } },
        { code: "notPositive", facts: { what: "the degrees of freedom", value: 0 } },
      ],
    });
  });

  test("turning the direction swaps better and worse; chances sum to 1; dirty input stays finite", () => {
    fc.assert(
      fc.property(cell(-1e6, 1e6), cell(-1e6, 1e6), measurement(0.001, 100), (earlier, later, typicalError) => {
        const input = { ...example, earlier, later, typicalError };
        const higher = individualChange(input);
        expect(notFinitePaths(higher)).toEqual([]);
        if (!higher.ok) return;
        const lower = unwrap(individualChange({ ...input, direction: "lower" }));
        expect(lower.chances.better).toBe(higher.value.chances.worse);
        const { better, trivial, worse } = higher.value.chances;
        expect(better + trivial + worse).toBeCloseTo(1, 9);
      }),
    );
  });
});
