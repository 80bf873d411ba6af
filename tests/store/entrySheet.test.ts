import { entryMap, planEntrySheet } from "../../src/store/entrySheet";
import { batteryTest, squadMember } from "../sheet/storeRows";

const hop = batteryTest("Single-leg hop", {
  ...{ unit: "cm", sides: 2, trials: 2, lowest: 30, highest: 320, protocol: "One leg.\nHold it.", caution: "Warm up." },
});
const plan = (tests: readonly ReturnType<typeof batteryTest>[], more = {}) =>
  planEntrySheet({ date: "2026-08-11", tests, athletes: [squadMember("Ane Berg", { role: "Back" })], ...more });
const headingsOf = (tests: readonly ReturnType<typeof batteryTest>[]) =>
  plan(tests).columns.map(({ heading }) => heading);

describe("planEntrySheet", () => {
  it("names the sheet by its day, and lists athletes with their roles", () => {
    expect(plan([hop])).toMatchObject({
      sheet: "Test day 11 Aug",
      title: "Test day 11 Aug 2026",
      athletes: [{ athlete: "Ane Berg", role: "Back" }],
      protocols: [{ test: "Single-leg hop", lines: ["One leg.", "Hold it."] }],
      cautions: ["Warm up."],
      paper: "a4",
    });
    expect(plan([hop], { sheetName: "Friday" }).sheet).toBe("Friday");
  });

  it("prints what to mind once, however many tests say it", () => {
    const triple = batteryTest("Triple hop", { unit: "cm", caution: "Warm up. \n\nMind the landing." });
    expect(plan([hop, triple]).cautions).toEqual(["Warm up.", "Mind the landing."]);
  });

  it("goes test by test, side by side, trial by trial, with what belongs to one trial together", () => {
    expect(
      headingsOf([
        hop,
        batteryTest("Drop jump", { measure: "contactTime", unit: "ms", trials: 2 }),
        batteryTest("Sprint", { measure: "time5", unit: "s" }),
        batteryTest("Drop jump", { measure: "flightTime", unit: "ms", trials: 2 }),
        batteryTest("Drop jump", { measure: "reactiveStrengthIndex", unit: "m/s", trials: 2 }),
      ]),
    ).toEqual([
      ...["Athlete", "Role"],
      ...["Single-leg hop left 1 (cm)", "Single-leg hop left 2 (cm)"],
      ...["Single-leg hop right 1 (cm)", "Single-leg hop right 2 (cm)"],
      ...["Drop jump contact time 1 (ms)", "Drop jump flight time 1 (ms)"],
      ...["Drop jump contact time 2 (ms)", "Drop jump flight time 2 (ms)"],
      "Sprint 5 m (s)",
    ]);
  });

  it("never gives two columns one heading", () => {
    const headings = headingsOf([
      hop,
      batteryTest("Single-leg hop left", { unit: "cm", trials: 2 }),
      batteryTest("Role"),
    ]);
    expect(new Set(headings.map((heading) => heading.toLowerCase())).size).toBe(headings.length);
  });

  it("says in words which numbers are plausible, and asks of nothing where no range is set", () => {
    const rules = plan([hop, batteryTest("Plank", { unit: "s", lowest: 5 }), batteryTest("Free")]).columns.map(
      ({ rule }) => rule,
    );
    expect(rules[2]).toMatchObject({ lowest: 30, highest: 320 });
    expect(rules[2]!.message).toContain("Single-leg hop is usually from 30 to 320 cm.");
    expect(rules[6]!.message).toContain("5 s or more");
    expect(rules.at(-1)).toBeNull();
    for (const rule of rules) expect((rule?.message ?? "").length).toBeLessThanOrEqual(255);
  });

  it("knows how to read itself", () => {
    const { map, columns } = plan([hop]);
    expect(map).toMatchObject({ firstDataRow: 1, date: "2026-08-11" });
    expect(map.columns.map(({ use }) => use)).toEqual(["athlete", "group", "left", "left", "right", "right"]);
    expect(map.columns[3]).toEqual({
      ...{ offset: 3, letters: "D", heading: columns[3]!.heading, use: "left", test: "Single-leg hop" },
      ...{ measure: null, unit: "cm", attempt: 2 },
    });
  });

  it("keeps a trial's number when the column of the one before it is gone", () => {
    const { columns } = plan([hop]);
    const headings = columns
      .map(({ heading }) => heading)
      .filter((heading) => heading !== "Single-leg hop left 1 (cm)");
    const map = entryMap(columns, { headings, firstColumn: 0, date: "2026-08-11" });
    expect(map.columns.map(({ attempt }) => attempt)).toEqual([undefined, undefined, 2, 1, 2]);
  });
});
