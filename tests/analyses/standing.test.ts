import { chanceFrom } from "../../sample-workbooks/random";
import { type StandingRow, standing } from "../../src/analyses/standing/standing";
import { unwrap } from "../../src/engine/result";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { type Background, noBackground } from "../../src/store/background";
import { standingSets } from "../reference/standingSets";
import { batteryTest } from "./batteryTest";

const answer = (results: readonly TestResult[], settings: object = {}, background: Background = noBackground) =>
  unwrap(standing.compute(results, standing.settings.parse(settings), background));

const rowOf = (rows: readonly StandingRow[], athlete: string): StandingRow => {
  const row = rows.find((one) => one.athlete === athlete);
  if (!row) throw new Error(`${athlete} has no row.`);
  return row;
};

const singles = (...scores: number[]): TestResult[] =>
  scores.map((value, index) => testResult({ athlete: `A${index + 1}`, value, unit: "cm" }));

describe("standing", () => {
  // Source: R 4.2.2, see tests/reference/SOURCES.md.
  it.each(standingSets.map((set) => [set.name, set] as const))("is R's for %s", (_, { scores, direction, inOrder }) => {
    const results = scores.map((value, index) => testResult({ athlete: String(index), value: value! }));
    const { rows } = answer(results, { direction });
    const shown = (percentile: number) =>
      scores.length >= 20 ? Math.round(percentile) : 5 * Math.round(percentile / 5);
    inOrder("z").forEach((z, index) => {
      const row = rowOf(rows, String(index));
      expect(row.z).toBeCloseTo(z, 8);
      expect(row.t).toBeCloseTo(inOrder("T_score")[index]!, 8);
      expect(row.modified).toBeCloseTo(inOrder("modified_z")[index]!, 8);
      expect(row.rank).toBe(inOrder("rank_competition_best1")[index]);
      expect(row.percentile).toBe(shown(inOrder("pr_midrank_hazen")[index]!));
    });
    for (const [percentile, key] of [
      ["inclusive", "pr_inc"],
      ["exclusive", "pr_exc"],
    ] as const) {
      const other = answer(results, { direction, percentile }).rows;
      inOrder(key).forEach((value, index) => {
        expect(rowOf(other, String(index)).percentile).toBe(shown(value));
      });
    }
  });

  it("puts the best first, whichever way is better, and lets equal scores share a rank", () => {
    const byRank = (settings: object) => answer(singles(30, 40, 40, 20), settings).rows.map(({ rank }) => rank);
    expect(byRank({})).toEqual([1, 1, 3, 4]);
    expect(byRank({ direction: "lower" })).toEqual([1, 2, 3, 3]);
  });

  it("gives no percentile below 8 athletes, no z below 3, and says both", () => {
    const { rows, cautions } = answer(singles(30, 40));
    expect(rows[0]).toMatchObject({ rank: 1, percentile: null, z: null, t: null, verdict: "Too few to compare" });
    expect(cautions.join(" ")).toContain("Below 8 athletes there is no percentile rank");
    expect(answer(singles(1, 2, 3, 4, 5, 6, 7, 8)).rows[0]!.percentile).toBe(95);
  });

  it("judges nothing as clear where no trial was repeated", () => {
    const { rows, summary } = answer(singles(10, 20, 30, 40, 50));
    expect(rows[0]).toMatchObject({
      places: "",
      noise: null,
      clear: null,
      verdict: "Above the middle; noise not known",
    });
    expect(summary[0]).toBe("5 athletes ranked.");
  });

  it("takes both sides together, and none for an athlete with one side alone", () => {
    const sides = (athlete: string, left: number, right: number | null) => [
      testResult({ athlete, side: "left", value: left }),
      ...(right === null ? [] : [testResult({ athlete, side: "right", value: right })]),
    ];
    const results = [...sides("A", 100, 110), ...sides("B", 104, 104), ...sides("C", 120, null)];
    const scores = (settings: object) =>
      Object.fromEntries(answer(results, settings).rows.map(({ athlete, score }) => [athlete, score]));
    expect(scores({})).toEqual({ A: 105, B: 104, C: null });
    expect(scores({ sides: "better" })).toEqual({ A: 110, B: 104, C: null });
    expect(scores({ sides: "weaker" })).toEqual({ A: 100, B: 104, C: null });
    expect(scores({ sides: "better", direction: "lower" })).toEqual({ A: 100, B: 104, C: null });
    expect(answer(results).rows.at(-1)).toMatchObject({ athlete: "C", rank: null, verdict: "No score: no right side" });
  });

  it("takes the latest day or the best one, and names the day where they differ", () => {
    const results = [
      testResult({ athlete: "A", date: "2026-08-11", value: 50 }),
      testResult({ athlete: "A", date: "2026-09-11", value: 45 }),
      testResult({ athlete: "B", date: "2026-08-11", value: 47 }),
    ];
    const latest = answer(results);
    expect(latest.rows.map(({ athlete, score, date }) => [athlete, score, date])).toEqual([
      ["B", 47, "2026-08-11"],
      ["A", 45, "2026-09-11"],
    ]);
    expect(latest.cautions.join(" ")).toContain("see the column Day");
    expect(answer(results, { day: "best" }).rows.map(({ athlete, score, date }) => [athlete, score, date])).toEqual([
      ["A", 50, ""],
      ["B", 47, ""],
    ]);
  });

  it("compares within a role, and with nobody where the role is not known", () => {
    const results = singles(30, 40, 50, 20).map((result, index) => ({
      ...result,
      group: ["Wing", "Wing", "Back", null][index]!,
    }));
    const { rows } = answer(results, { among: "role" });
    expect(rows.map(({ athlete, group, rank, verdict }) => [athlete, group, rank, verdict])).toEqual([
      ["A3", "Back", 1, "Too few to compare"],
      ["A2", "Wing", 1, "Too few to compare"],
      ["A1", "Wing", 2, "Too few to compare"],
      ["A4", "", null, "No role known"],
    ]);
  });

  it("follows the battery's direction and score", () => {
    const battery = [batteryTest({ test: "", direction: "lower", reduction: "mean" })];
    const results = [
      ...[1, 3].map((value) => testResult({ athlete: "A", value })),
      ...[2, 2.5].map((value) => testResult({ athlete: "B", value })),
    ];
    const { rows } = answer(results, {}, { ...noBackground, battery });
    expect(rows.map(({ athlete, score }) => [athlete, score])).toEqual([
      ["A", 2],
      ["B", 2.25],
    ]);
  });
});

describe("the noise of a rank", () => {
  /** A squad of 20 with truly equal first two athletes; three trials a head with 3 % noise. */
  const squad = (seed: number): TestResult[] => {
    const chance = chanceFrom(seed);
    return Array.from({ length: 20 }, (_, athlete) => {
      const distance = athlete < 2 ? 160 : 160 + 12 * chance.deviation();
      return [1, 2, 3].map((attempt) =>
        testResult({ athlete: `A${athlete}`, attempt, value: distance * Math.exp(0.03 * chance.deviation()) }),
      );
    }).flat();
  };

  it.each(["best", "mean"])(
    "holds the rank of a truly equal athlete 19 times in 20 (simulation, 400 squads; %s)",
    (reduction) => {
      let held = 0;
      for (let seed = 1; seed <= 400; seed++) {
        const { rows } = answer(squad(seed), { reduction });
        const [first, last] = rowOf(rows, "A0").places.split(" to ").map(Number);
        const other = rowOf(rows, "A1").rank!;
        if (other >= first! && other <= (last ?? first)!) held++;
      }
      expect(held / 400).toBeGreaterThan(0.93);
      expect(held / 400).toBeLessThan(0.97);
    },
  );

  it("says how far apart two athletes must be, and calls only clear standings clear", () => {
    const { rows, summary } = answer(squad(7));
    expect(summary.join(" ")).toMatch(
      /Two athletes less than \d+(\.\d+)? apart cannot be told apart by these trials\./,
    );
    for (const { z, noise, clear, unclear } of rows) {
      const isClear = Math.abs(z!) >= 0.5 && Math.abs(z!) >= noise!;
      expect([clear, unclear]).toEqual(isClear ? [z, null] : [null, z]);
    }
  });
});
