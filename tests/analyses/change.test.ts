import { chanceFrom } from "../../sample-workbooks/random";
import { type ChangeRow, change } from "../../src/analyses/change/change";
import { unwrap } from "../../src/engine/result";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";
import { column, expected, labels } from "../reference/reference";

const answer = (results: readonly TestResult[], settings: object = {}) =>
  unwrap(change.compute(results, change.settings.parse(settings), noBackground));

const rowOf = (rows: readonly ChangeRow[], athlete: string): ChangeRow => rows.find((row) => row.athlete === athlete)!;

describe("change", () => {
  // Source: R 4.2.2, see tests/reference/SOURCES.md: reaction times of 18 people on days 0 and 2 of a sleep study.
  it("is R's for each athlete", () => {
    const { individual } = expected("sleepstudy_day0_2").change_day0_day2;
    const ids = labels("sleepstudy_day0_2", "id");
    const results = (["day0", "day2"] as const).flatMap((name, day) =>
      column("sleepstudy_day0_2", name).map((value, index) =>
        testResult({ athlete: ids[index]!, date: `2026-0${day + 1}-01`, value: value!, unit: "ms" }),
      ),
    );
    const { rows } = answer(results, { error: 5, worthwhile: 2 });
    for (const id of ids) expect(rowOf(rows, id).change).toBeCloseTo(individual.change[id], 9);
  });

  /** Three sessions of 26 athletes: two a week apart without a change, one after a block in which half gained 12. */
  const squad = (seed: number): TestResult[] => {
    const chance = chanceFrom(seed);
    return Array.from({ length: 26 }, (_, athlete) => {
      const own = 160 + 12 * chance.deviation();
      return ["2026-08-20", "2026-08-27", "2026-10-29"].map((date, session) =>
        testResult({
          athlete: `A${athlete}`,
          date,
          unit: "cm",
          value: own + (session === 2 && athlete < 13 ? 12 : 0) + 3 * chance.deviation(),
        }),
      );
    }).flat();
  };

  it("takes the noise from the sessions a week apart, and its 95 % intervals hold the true change (simulation)", () => {
    let held = 0;
    let count = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const { rows, method } = answer(squad(seed));
      expect(method).toContain("from two earlier sessions within a fortnight");
      for (const { athlete, low, high } of rows) {
        const truth = Number(athlete.slice(1)) < 13 ? 12 : 0;
        if (low! <= truth && truth <= high!) held++;
        count++;
      }
    }
    expect(held / count).toBeGreaterThan(0.93);
    expect(held / count).toBeLessThan(0.97);
  });

  it("says so where only the trials tell the noise, and where nothing does", () => {
    const day = (date: string, ...values: number[]) =>
      values.map((value, index) => testResult({ athlete: "A", date, attempt: index + 1, value }));
    const trials = answer([...day("2026-08-20", 40, 41), ...day("2026-10-29", 44, 45)], { worthwhile: 2 });
    expect(trials.cautions.join(" ")).toContain("a lower bound");
    expect(answer([...day("2026-08-20", 40), ...day("2026-10-29", 44)]).rows[0]).toMatchObject({
      change: 4,
      low: null,
      better: null,
      verdict: expect.stringMatching(/^Cannot tell/),
    });
  });

  it("takes no noise from the sessions compared where there are others, and says so where there are none", () => {
    const days = ["2026-08-20", "2026-08-27", "2026-10-22", "2026-10-29"];
    const results = (of: readonly string[], shift: number) =>
      [0, 1, 2, 3, 4, 5].flatMap((athlete) =>
        of.map((date, session) =>
          testResult({
            athlete: `A${athlete}`,
            date,
            // Half of them change by 20 from the third day to the fourth; else all vary by 1.
            value:
              100 + 10 * athlete + ((athlete + session) % 2) + (session === of.length - 1 && athlete < 3 ? shift : 0),
          }),
        ),
      );
    const quiet = answer(results(days, 0));
    const changed = answer(results(days, 20));
    expect(changed.method).toContain("two earlier sessions");
    const width = ({ rows }: typeof changed) => rowOf(rows, "A0").high! - rowOf(rows, "A0").low!;
    expect(width(changed)).toBeCloseTo(width(quiet), 9);

    const alone = answer(results(days.slice(2), 20));
    expect(alone.method).toContain("the two sessions compared");
    expect(alone.cautions.join(" ")).toContain("from the very sessions that are compared");
    expect(width(alone)).toBeGreaterThan(width(changed));
  });

  it("calls a shorter time an improvement, and compares with the first session where asked", () => {
    const results = [5, 4.9, 4.5].map((value, index) =>
      testResult({ athlete: "A", date: `2026-0${index + 1}-01`, value, unit: "s" }),
    );
    const { rows } = answer(results, { error: 1, worthwhile: 1, from: "first" });
    expect(rows[0]).toMatchObject({ earlier: 5, later: 4.5, verdict: "Clear improvement" });
    expect(answer(results, { error: 1, worthwhile: 1 }).rows[0]!.earlier).toBe(4.9);
  });

  it("needs two days", () => {
    expect(change.compute([testResult({ athlete: "A", value: 1 })], change.settings.parse({}), noBackground).ok).toBe(
      false,
    );
  });
});
