import { cycleState, type WorkbookFacts } from "../../src/programme/cycle";

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

const nothing: WorkbookFacts = { squad: [], battery: [], kept: [], diary: [], hasPriorities: false, block: null };
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

  it("then to delivery, and once the block is over to new tests and the review", () => {
    const planned = { ...tested, hasPriorities: true, block: { start: "2026-08-17", weeks: 6 } };
    expect(cycleState(planned, "2026-08-20")).toMatchObject({ stage: "deliver", daysOfBlockLeft: 39 });
    expect(stage(planned, "2026-09-29")).toBe("test");
    expect(stage({ ...planned, kept: [...planned.kept, result("A", "2026-09-28")] }, "2026-09-29")).toBe("review");
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
