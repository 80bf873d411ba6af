import { exerciseLibrary } from "../../src/programme/exerciseLibrary";
import { loadWeeks } from "../../src/programme/loadWeeks";
import { type BlockSettings, planBlock } from "../../src/programme/planBlock";
import { plannedSquad } from "../../src/programme/plannedSquad";
import { priorities } from "../../src/programme/priorities";
import { qualityProfiles } from "../../src/programme/qualityProfile";
import { review } from "../../src/programme/review";
import { reviewGroupReport, reviewReport } from "../../src/programme/reviewReport";
import { weakerSides } from "../../src/programme/weakerSides";
import { testResult } from "../../src/reading/testResult";
import type { Background } from "../../src/store/background";
import type { DiaryEntry } from "../../src/store/diary";
import { batteryTest, squadMember } from "../sheet/storeRows";

const tests = ["Jump", "Throw", "Bridge", "Run"];
const qualities = ["Lower-body power", "Upper-body power", "Muscle capacity", "Endurance"];
const block = { begins: "2026-08-31", ends: "2026-10-25" };
const settings: BlockSettings = {
  ...{ begins: block.begins, weeks: 4, sessionsPerWeek: 2, exercisesPerSession: 4, phase: "buildUp", deload: true },
  barAndPlates: { bar: 20, plates: [{ weight: 1.25, pairs: null }] },
};

const squadOf = (size: number): Background => ({
  squad: Array.from({ length: size }, (_, index) => squadMember(`Athlete ${index}`, { birthYear: 2000 })),
  battery: tests.map((test, index) => batteryTest(test, { quality: qualities[index]!, unit: "cm", trials: 2 })),
  weights: [],
});

/** Results that need no chance: athletes differ by a fixed pattern, and so do their trials. */
const resultsOf = ({ squad }: Background, date: string, plus = 0) =>
  squad.flatMap(({ athlete }, index) =>
    tests.flatMap((test, at) =>
      [1, 2].map((attempt) =>
        testResult({
          ...{ athlete, test, date, attempt, unit: "cm", cell: `${test}!${date}!${index}!${attempt}` },
          value: 100 + ((index * (7 + at)) % 23) + ((index + attempt) % 3) + (plus > 0 ? plus + (index % 4) : 0),
        }),
      ),
    ),
  );

function goRound(background: Background, results: ReturnType<typeof resultsOf>, diary: readonly DiaryEntry[] = []) {
  const profiles = qualityProfiles(results, background);
  const sides = weakerSides(results, background);
  const proposed = priorities(profiles, sides, background, { most: 3 });
  const squad = plannedSquad(proposed.priorities, { results, sides }, background, settings.begins);
  const plan = planBlock(squad, exerciseLibrary, settings);
  return { proposed, plan, weeks: loadWeeks(diary), reviewed: review(results, diary, background, block) };
}

describe("once round the cycle", () => {
  it("works for a squad of three, and leaves the change of the group to the eye", () => {
    const background = squadOf(3);
    const results = [...resultsOf(background, "2026-08-20"), ...resultsOf(background, "2026-10-28", 5)];
    const { proposed, plan, reviewed } = goRound(background, results);
    expect(proposed.missing).toEqual([]);
    expect(new Set(plan.rows.map(({ athlete }) => athlete)).size).toBe(3);
    expect(reviewed.changes).toHaveLength(3 * tests.length);
    expect(reviewed.groups.every(({ change, athletes }) => change === null && athletes === 3)).toBe(true);
  });

  it("says what is missing for two athletes, and without any test", () => {
    const two = squadOf(2);
    expect(goRound(two, resultsOf(two, "2026-08-20")).proposed.missing).toHaveLength(2);
    const { plan, reviewed } = goRound(two, []);
    expect(plan.rows).toEqual([]);
    expect(plan.missing).toHaveLength(2);
    expect(reviewed.missing).toEqual([
      ...tests.map((test) => `${test}: never tested.`),
      "Athlete 0: never tested.",
      "Athlete 1: never tested.",
    ]);
  });

  it("leaves an athlete who is no longer in the squad out of the plan", () => {
    const background = squadOf(6);
    const results = resultsOf(background, "2026-08-20");
    const left = { ...background, squad: background.squad.slice(1) };
    const { plan } = goRound(left, results);
    expect(plan.rows.some(({ athlete }) => athlete === "Athlete 0")).toBe(false);
    expect(plan.rows.length).toBeGreaterThan(0);
  });

  it("takes a squad of four hundred, and reads each row no more often than in one of fifty", () => {
    const large = countedRound(400);
    const { plan, reviewed, weeks } = large.round;
    expect(plan.rows.length).toBeGreaterThan(400 * 4 * 2);
    expect(weeks.length).toBeGreaterThan(400);
    const report = reviewReport(reviewed, { source: "Results!A4:I3204", date: "2026-10-29" });
    expect(report.table.rows).toHaveLength(400 * tests.length);
    const groups = reviewGroupReport(reviewed, { source: "Results!A4:I3204", date: "2026-10-29" });
    expect(groups.table.rows.map((row) => row.at(-1))).toEqual(tests.map(() => "Better as a group"));
    expect(large.readsPerRow).toBeLessThan(1.2 * countedRound(50).readsPerRow);
  });
});

/** Once round with a diary, and how often each result and entry was asked for its athlete. */
function countedRound(size: number) {
  const background = squadOf(size);
  let reads = 0;
  const counting = <Row extends { readonly athlete: string }>(row: Row): Row =>
    Object.defineProperty({ ...row }, "athlete", {
      enumerable: true,
      get: () => {
        reads += 1;
        return row.athlete;
      },
    });
  const results = [...resultsOf(background, "2026-08-20"), ...resultsOf(background, "2026-10-28", 5)].map(counting);
  const diary = background.squad.flatMap(({ athlete }) =>
    Array.from(
      { length: 20 },
      (_, day): DiaryEntry => ({
        ...{ date: `2026-09-${String(day + 1).padStart(2, "0")}`, athlete, session: "Training", attended: "yes" },
        ...{ minutes: 60, rating: 5, throws: null, jumps: null, sprints: null, deliveries: null },
      }),
    ).map(counting),
  );
  const round = goRound(background, results, diary);
  return { round, readsPerRow: reads / (results.length + diary.length) };
}
