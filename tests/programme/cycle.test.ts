import { cycleState, type WorkbookFacts } from "../../src/programme/cycle";
import { prioritiesStand } from "../../src/programme/prioritiesStand";
import type { DiaryEntry } from "../../src/store/diary";
import { asProposed } from "../../src/store/priorityTable";
import { priority } from "../sheet/plannedRows";

const squad = ["A", "B"].map((athlete) => ({
  athlete,
  role: null,
  group: null,
  dominantSide: null,
  birthYear: null,
  bodyMass: null,
  stature: null,
  notes: null,
}));

const jump = {
  test: "Jump",
  measure: null,
  quality: "Lower-body power",
  unit: "cm",
  direction: "higher",
  sides: 1,
  trials: 3,
  reduction: "best",
  lowest: null,
  highest: null,
  retestAfterWeeks: 8,
  protocol: null,
  caution: null,
} as const;

const result = (athlete: string, date: string) => ({
  date,
  athlete,
  test: "Jump",
  measure: null,
  side: null,
  trial: 1,
  value: 30,
  unit: "cm",
  source: null,
});

const nothing: WorkbookFacts = {
  squad: [],
  battery: [],
  kept: [],
  diary: [],
  hasPriorities: false,
  arePrioritiesNew: false,
  block: null,
};
const tested: WorkbookFacts = {
  ...nothing,
  squad,
  battery: [jump],
  kept: [result("A", "2026-08-11"), result("B", "2026-08-11")],
};

describe("where the squad is in the cycle", () => {
  const stage = (facts: WorkbookFacts, today = "2026-08-20") => cycleState(facts, today).stage;

  it("goes from set-up over tests and priorities to the plan", () => {
    expect(stage(nothing)).toBe("setUp");
    expect(stage({ ...tested, kept: [] })).toBe("test");
    expect(stage(tested)).toBe("understand");
    expect(stage({ ...tested, hasPriorities: true })).toBe("plan");
  });

  const block = { begins: "2026-08-17", ends: "2026-09-27" };
  const planned: WorkbookFacts = { ...tested, hasPriorities: true, block };
  const retested: WorkbookFacts = { ...planned, kept: [...planned.kept, result("A", "2026-09-28")] };

  it("then to delivery, and once the block is over to new tests and the review", () => {
    expect(cycleState(planned, "2026-08-20")).toMatchObject({ stage: "deliver", daysOfBlockLeft: 39 });
    expect(cycleState(planned, "2026-09-27")).toMatchObject({ stage: "deliver", daysOfBlockLeft: 1 });
    expect(cycleState(planned, "2026-09-28")).toMatchObject({ stage: "retest", daysOfBlockLeft: 0 });
    expect(stage(retested, "2026-09-29")).toBe("review");
    // Tests of the last week of the block are its retest, those of the week before are not.
    const kept = (date: string) => ({ ...planned, kept: [...planned.kept, result("A", date)] });
    expect(stage(kept("2026-09-21"), "2026-09-29")).toBe("review");
    expect(stage(kept("2026-09-20"), "2026-09-29")).toBe("retest");
  });

  it("and round again: to the next plan once the priorities are new, and to its delivery", () => {
    const renewed = { ...retested, arePrioritiesNew: true };
    expect(stage(renewed, "2026-10-01")).toBe("planNext");
    expect(stage({ ...renewed, hasPriorities: false }, "2026-10-01")).toBe("review");
    const next = { ...renewed, block: { begins: "2026-10-05", ends: "2026-11-01" } };
    expect(cycleState(next, "2026-10-01")).toMatchObject({ stage: "deliver", daysToBlock: 4, daysWithoutDiary: null });
    expect(stage(next, "2026-11-02")).toBe("retest");
    expect(stage({ ...next, kept: [...next.kept, result("A", "2026-11-03")] }, "2026-11-03")).toBe("planNext");
  });

  it("counts days without a diary from the last entry, or from the first day of the block", () => {
    const entry = (date: string): DiaryEntry => ({
      ...{ date, athlete: "A", session: null, attended: "yes", minutes: 60, rating: 5 },
      ...{ throws: null, jumps: null, sprints: null, deliveries: null },
    });
    const gap = (dates: string[], today: string) =>
      cycleState({ ...planned, diary: dates.map(entry) }, today).daysWithoutDiary;
    expect(gap(["2026-08-18", "2026-08-17"], "2026-08-23")).toBe(5);
    expect(gap([], "2026-08-20")).toBe(4);
    // An entry of the block before says nothing about this one.
    expect(gap(["2026-08-01"], "2026-08-20")).toBe(4);
    expect(gap([], "2026-08-16")).toBeNull();
    expect(gap([], "2026-09-28")).toBeNull();
  });

  it("names tests that are due, and whom they concern", () => {
    const due = { ...tested, kept: [result("A", "2026-08-11"), result("B", "2026-10-05")] };
    expect(cycleState(due, "2026-10-06").overdue).toEqual([]);
    expect(cycleState(due, "2026-10-07").overdue).toEqual([{ series: "Jump", athletes: 1, never: false }]);
    expect(cycleState({ ...tested, kept: [] }, "2026-10-07").overdue).toEqual([]);
    expect(cycleState({ ...tested, kept: [result("A", "2026-10-01")] }, "2026-10-07").overdue).toEqual([
      { series: "Jump", athletes: 1, never: true },
    ]);
  });
});

describe("prioritiesStand(rows, fresh)", () => {
  const fresh = ["A", "B", "C"].map((athlete) => priority(athlete, 1, "Speed"));
  it("is so when most first priorities read as they would be proposed now, whatever the coach decided", () => {
    const [first, ...others] = fresh.map(asProposed);
    expect(prioritiesStand([{ ...first!, choice: "Strength" }, ...others], fresh)).toBe(true);
    expect(prioritiesStand([{ ...first!, quality: "Strength" }, ...others], fresh)).toBe(true);
    expect(prioritiesStand([first!, ...others.map((row) => ({ ...row, why: "Speed was low." }))], fresh)).toBe(false);
    expect(prioritiesStand([], fresh)).toBe(false);
    expect(prioritiesStand([], [])).toBe(false);
  });
});
