import { exerciseLibrary } from "../../src/programme/exerciseLibrary";
import { type BlockSettings, type Planned, planBlock } from "../../src/programme/planBlock";
import type { Exercise } from "../../src/store/exercises";

const plates = [20, 15, 10, 5, 2.5, 1.25].map((weight) => ({ weight, pairs: null }));

const settings: BlockSettings = {
  begins: "2026-08-17",
  weeks: 4,
  sessionsPerWeek: 2,
  exercisesPerSession: 4,
  phase: "strength",
  deload: true,
  barAndPlates: { bar: 20, plates },
};

const athlete: Planned = {
  athlete: "A",
  isMinor: false,
  priorities: [
    { quality: "Strength", why: "Strength: 1.2 below the squad." },
    { quality: "Speed", why: "Speed: 0.6 below the squad." },
  ],
  weakerSide: null,
  maxima: new Map([["Back squat", 100]]),
};

const squat: Exercise = exerciseLibrary.find(({ exercise }) => exercise === "Back squat")!;

describe("a block", () => {
  it("loads the bar by the handbook's table, rounded down to the plates", () => {
    const { rows } = planBlock([athlete], [squat], settings);
    // 5 repetitions with 3 in reserve are 8 to failure: 80 % by the NSCA training-load chart (from memory, as quoted in
    // engine/strength/percentOfMaximum); 2 in reserve are 7: 83 %, of 100 kg 83 kg, on a 20 kg bar with pairs down to
    // 1.25 kg at most 82.5 kg.
    const loads = [1, 2, 3, 4].map((week) => rows.find((row) => row.week === week)!);
    expect(loads.map(({ load }) => load)).toEqual([80, 80, 82.5, 80]);
    expect(loads.map(({ sets }) => sets)).toEqual([4, 4, 4, 2]);
    expect(loads.map(({ begins }) => begins)).toEqual(["2026-08-17", "2026-08-24", "2026-08-31", "2026-09-07"]);
    expect(loads[0]).toMatchObject({ repetitions: "5", intensity: "80 %, leave 3 in reserve" });
  });

  it("says what is missing rather than inventing a load", () => {
    const { rows, missing } = planBlock([{ ...athlete, maxima: new Map() }], [squat], settings);
    expect(rows.every(({ load }) => load === null)).toBe(true);
    expect(missing).toContain("A: no estimated maximum of Back squat, so Back squat has no load in kg.");
  });

  it("plans nothing for an athlete without priorities, and says so", () => {
    const { rows, missing } = planBlock([{ ...athlete, priorities: [] }], exerciseLibrary, settings);
    expect(rows).toEqual([]);
    expect(missing).toEqual(["A: no priorities, so nothing is planned. Test first."]);
  });

  it("gives the first priority most of the work, no exercise twice in a session, and every week the same exercises", () => {
    const { rows } = planBlock([athlete], exerciseLibrary, settings);
    const session = (week: number, number: number) =>
      rows.filter((row) => row.week === week && row.session === number).map((row) => row.exercise);
    expect(session(1, 1)).toHaveLength(4);
    expect(new Set(session(1, 1)).size).toBe(4);
    expect(session(1, 1)).toEqual(session(3, 1));
    const quality = (exercise: string) => exerciseLibrary.find((one) => one.exercise === exercise)!.quality;
    const counts = rows.filter(({ week }) => week === 1).map(({ exercise }) => quality(exercise));
    expect(counts.filter((one) => one === "Strength").length).toBeGreaterThan(
      counts.filter((one) => one === "Speed").length,
    );
  });

  it("gives minors basic exercises and at least three in reserve", () => {
    const { rows } = planBlock([{ ...athlete, isMinor: true }], exerciseLibrary, { ...settings, weeks: 6 });
    const levels = rows.map(({ exercise }) => exerciseLibrary.find((one) => one.exercise === exercise)!.level);
    expect(new Set(levels)).toEqual(new Set(["basic"]));
    expect(rows.filter(({ intensity }) => /leave [12] in reserve/.test(intensity ?? ""))).toEqual([]);
  });

  it("has one set more on a side that is weaker beyond noise, in one-limb exercises, which come first", () => {
    const weakerSide = { side: "left", why: "The left is 9 % weaker, beyond noise." } as const;
    const { rows } = planBlock([{ ...athlete, weakerSide }], exerciseLibrary, settings);
    expect(rows[0]!.repetitions).toContain("each side, one set more on the left");
    expect(rows[0]!.why).toContain("beyond noise");
  });

  it("counts contacts and metres of a session", () => {
    const jumps = exerciseLibrary.filter(({ exercise }) => exercise === "Single-leg hop and hold");
    const priorities = [{ quality: "Lower-body power", why: "x" }];
    const { rows } = planBlock([{ ...athlete, priorities }], jumps, settings);
    // 3 sets of 6 on each of two sides.
    expect(rows[0]).toMatchObject({ sets: 3, repetitions: "6 contacts each side", total: 36 });
  });
});
