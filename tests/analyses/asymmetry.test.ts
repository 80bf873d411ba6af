import { hopTest } from "../../sample-workbooks/hopTest";
import { plantedAsymmetries } from "../../sample-workbooks/plantedTruths";
import { chanceFrom } from "../../sample-workbooks/random";
import { type AsymmetryRow, asymmetry } from "../../src/analyses/asymmetry/asymmetry";
import { unwrap } from "../../src/engine/result";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";
import type { BatteryTest } from "../../src/store/battery";
import { batteryTest } from "./batteryTest";

const squad: readonly TestResult[] = hopTest().flatMap(({ athlete, left, right }) =>
  (["left", "right"] as const).flatMap((side) =>
    (side === "left" ? left : right).map((value) => testResult({ athlete: athlete.name, side, value })),
  ),
);

const answer = (results: readonly TestResult[], settings: object = {}) =>
  unwrap(asymmetry.compute(results, asymmetry.settings.parse(settings), noBackground));

const rowOf = (rows: readonly AsymmetryRow[], athlete: string): AsymmetryRow => {
  const row = rows.find((one) => one.athlete === athlete);
  if (!row) throw new Error(`${athlete} has no row.`);
  return row;
};

describe("asymmetry on the sample squad", () => {
  const { rows, summary } = answer(squad);

  it.each(plantedAsymmetries.map((planted) => [planted.athlete, planted] as const))(
    "finds the planted truth of %s",
    (athlete, planted) => {
      const row = rowOf(rows, athlete);
      const found = row.beyond === null ? "neither" : row.stronger.toLowerCase();
      expect(found).toBe(planted.strongerSide);
    },
  );

  it("does not cry wolf: of the athletes without a planted difference at most two are beyond noise", () => {
    const names = plantedAsymmetries.map(({ athlete }) => athlete);
    const falseAlarms = rows.filter((row) => row.beyond !== null && !names.includes(row.athlete));
    expect(falseAlarms.length).toBeLessThanOrEqual(2);
  });

  it("gives every athlete a row, the largest difference first", () => {
    expect(rows).toHaveLength(new Set(squad.map((result) => result.athlete)).size);
    const sizes = rows.map((row) => Math.abs(row.asymmetry ?? 0));
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
  });

  it("says in plain words who differs, and who might by noise", () => {
    expect(summary[0]).toMatch(
      /^4 of 26 athletes differ between left and right beyond the noise, 2 of them by more than 10 %\.$/,
    );
    expect(summary.join(" ")).toContain(
      "Gudvi Solgangsbris (left stronger, 10.7 %): above 10 %, but noise can do that.",
    );
  });
});

describe("asymmetry of one athlete", () => {
  const trials = (side: "left" | "right", ...values: number[]): TestResult[] =>
    values.map((value) => testResult({ athlete: "A", side, value }));

  it("is 10 % of the larger side for 180 and 200 (worked example of Bishop et al. 2018: the smaller over the larger)", () => {
    const { rows } = answer([...trials("left", 178, 182, 180), ...trials("right", 196, 204, 200)], {
      reduction: "mean",
    });
    expect(rows[0]).toMatchObject({ left: 180, right: 200, asymmetry: 10, stronger: "Right" });
  });

  it("names the faster side as the stronger where lower is better, and keeps the sign on the larger value", () => {
    const results = [...trials("left", 2.4, 2.5), ...trials("right", 2.6, 2.7)];
    const [row] = answer(results, { direction: "lower" }).rows;
    expect(row).toMatchObject({ left: 2.4, right: 2.6, stronger: "Left" });
    expect(row!.asymmetry).toBeCloseTo((100 * 0.2) / 2.6, 12);
  });

  it("takes which side is stronger from the battery, and a time as better when shorter without one", () => {
    const timed = [...trials("left", 2.4, 2.5), ...trials("right", 2.6, 2.7)].map((result) => ({
      ...result,
      unit: "s",
    }));
    const stronger = (battery: readonly BatteryTest[]) =>
      unwrap(asymmetry.compute(timed, asymmetry.settings.parse({}), { ...noBackground, battery })).rows[0]!.stronger;
    expect(stronger([])).toBe("Left");
    expect(stronger([batteryTest({ test: "", direction: "higher" })])).toBe("Right");
  });

  it("is that of the athlete's latest day", () => {
    const earlier = trials("left", 190, 190).map((result) => ({ ...result, date: "2026-08-11" }));
    const later = [...trials("left", 150, 150), ...trials("right", 140, 140)].map((result) => ({
      ...result,
      date: "2026-09-11",
    }));
    const { rows, cautions } = answer([...later, ...earlier]);
    expect(rows[0]).toMatchObject({ left: 150, right: 140, leftTrials: 2 });
    expect(cautions).toContain("Of several days, each athlete's latest was used.");
  });

  it("has no answer with one side missing, and says which", () => {
    const { rows } = answer(trials("left", 150, 152));
    expect(rows[0]).toMatchObject({
      left: 152,
      right: null,
      asymmetry: null,
      noise: null,
      verdict: "No answer: right has no trial",
    });
  });

  it("cannot tell from one trial a side, but still shows the difference", () => {
    const { rows } = answer([...trials("left", 150), ...trials("right", 165)]);
    expect(rows[0]!.asymmetry).toBeCloseTo(9.0909, 4);
    expect(rows[0]!.verdict).toMatch(/^Cannot tell/);
  });

  it("is even for equal sides", () => {
    expect(answer([...trials("left", 150, 149), ...trials("right", 150, 148)]).rows[0]!.stronger).toBe("Even");
  });
});

describe("the noise limit in a group", () => {
  it("is crossed by about 5 % of athletes whose legs are truly equal (simulation, 300 squads of 20)", () => {
    const chance = chanceFrom(1);
    let beyond = 0;
    let athletes = 0;
    for (let squad = 0; squad < 300; squad++) {
      const results = Array.from({ length: 20 }, (_, athlete) => {
        // Athletes differ in how much they scatter: 2 to 5 %.
        const scatter = 0.02 + 0.03 * chance.share();
        return (["left", "right"] as const).flatMap((side) =>
          [1, 2, 3].map(() => {
            const value = 160 * Math.exp(scatter * chance.deviation());
            return testResult({ athlete: String(athlete), side, value });
          }),
        );
      }).flat();
      const { rows } = answer(results);
      beyond += rows.filter((row) => row.beyond !== null).length;
      athletes += rows.length;
    }
    expect(beyond / athletes).toBeGreaterThan(0.035);
    expect(beyond / athletes).toBeLessThan(0.065);
  });
});
