import { byReason } from "../../src/programme/byReason";
import type { Review } from "../../src/programme/review";
import { review } from "../../src/programme/review";
import { reviewGroupReport, reviewReport, reviewWorkReport } from "../../src/programme/reviewReport";
import { testResult } from "../../src/reading/testResult";
import type { Background } from "../../src/store/background";
import type { DiaryEntry } from "../../src/store/diary";
import { batteryTest, squadMember } from "../sheet/storeRows";

const origin = { source: "Results!A4:I99", date: "2026-10-29" };
const names = ["A", "B", "C", "D", "E", "F", "G"];
const background: Background = {
  squad: names.map((name) => squadMember(name)),
  battery: [batteryTest("Jump", { unit: "cm", trials: 1 }), batteryTest("Sprint", { unit: "s", direction: "lower" })],
  weights: [],
};
const block = { begins: "2026-08-31", ends: "2026-10-25" };

const score = (athlete: string, test: string, date: string, value: number) =>
  testResult({ athlete, test, date, value, unit: test === "Jump" ? "cm" : "s", cell: `${athlete} ${test} ${date}` });

/** Two days before the block that differ by noise alone, and the retest after it, better by so much. */
const results = names.flatMap((name, index) => {
  const jitter = [0.5, -0.5, 0.3, -0.3, 0.4, -0.4, 0.2][index]!;
  return [
    score(name, "Jump", "2026-08-18", 30 + 2 * index),
    score(name, "Jump", "2026-08-25", 30 + 2 * index + jitter),
    score(name, "Jump", "2026-10-27", 34 + 2 * index + jitter / 2),
    score(name, "Sprint", "2026-08-18", 4.5 - index / 20),
    score(name, "Sprint", "2026-08-25", 4.5 - index / 20 + jitter / 20),
    score(name, "Sprint", "2026-10-27", 4.4 - index / 20 - jitter / 40),
  ];
});

const entries = names.flatMap((athlete, index) =>
  Array.from(
    { length: 10 },
    (_, day): DiaryEntry => ({
      ...{ date: `2026-09-${String(day + 10)}`, athlete, session: "Training", minutes: 60, rating: 5 },
      attended: day < 10 - index ? "yes" : "no",
      ...{ throws: null, jumps: null, sprints: null, deliveries: null },
    }),
  ),
);

const rowOf = ({ table }: ReturnType<typeof reviewReport>, key: string) => {
  const row = table.rows.find(([first]) => first === key)!;
  return Object.fromEntries(table.columns.map((column, index) => [column.key, row[index]!]));
};

describe("the review of the squad", () => {
  const report = () => reviewGroupReport(review(results, entries, background, block), origin);

  it("gives the mean change with its interval, in the unit and in standard deviations", () => {
    const jump = rowOf(report(), "Jump");
    // Mean of (34 + jitter / 2) - (30 + jitter) over the seven: 4 minus half the mean jitter of 0.2 / 7.
    expect(jump.change as number).toBeCloseTo(4 - 0.1 / 7, 10);
    expect(jump.low as number).toBeLessThan(jump.change as number);
    expect(jump.effect as number).toBeGreaterThan(jump.effectLow as number);
    expect(jump.words).toBe("Better as a group");
    expect(report().chart).toMatchObject({ kind: "bar", series: [{ column: "effect" }] });
  });

  it("tells less time as better, though the change is negative", () => {
    const sprint = rowOf(report(), "Sprint");
    expect(sprint.change as number).toBeLessThan(0);
    expect(sprint.effect as number).toBeGreaterThan(0);
    expect(sprint.effectLow as number).toBeLessThan(sprint.effectHigh as number);
    expect(sprint.words).toBe("Better as a group");
  });

  it("is short: what got better, and what did not be told for sure", () => {
    expect(report().summary).toEqual([expect.stringContaining("better in 2 of 2 tests")]);
    const none: Review = { changes: [], groups: [], missing: [] };
    expect(reviewGroupReport(none, origin).summary).toEqual([expect.stringContaining("better in 0 of 0 tests")]);
  });
});

describe("who did the work, beside who changed", () => {
  it("has a row for each athlete with attendance, mean change and the tests that changed", () => {
    const reviewed = review(results, entries, background, block);
    const report = reviewWorkReport(reviewed, origin);
    expect(report.table.rows.map(([athlete]) => athlete).sort()).toEqual(names);
    // Of ten sessions at least half of the seven were at all; G was at four of them.
    expect(rowOf(report, "G")).toMatchObject({ attended: 4, held: 7, tests: 2 });
    expect(rowOf(report, "A")).toMatchObject({ attended: 10, improved: expect.stringContaining("Jump") });
    expect(report.chart).toMatchObject({ kind: "scatter", categories: "share" });
    const silent = reviewWorkReport(review(results, [], background, block), origin);
    expect(silent.summary[1]).toContain("nobody's attendance is known");
    expect(silent.chart).toBeUndefined();
  });
});

describe("the review of every change", () => {
  it("tells the counts in one short answer, and what is missing by reason", () => {
    const more = { ...background, squad: [...background.squad, squadMember("H"), squadMember("I")] };
    const report = reviewReport(review(results, [], more, block), origin);
    expect(report.summary).toHaveLength(1);
    expect(report.summary[0]!.length).toBeLessThan(140);
    expect(report.cautions).toContain("Never tested: H, I.");
  });

  it("holds the latest retest against the last day before the block, whatever came between", () => {
    const between = names.map((name, index) => score(name, "Jump", "2026-09-20", 50 + index));
    const { changes } = review([...results, ...between], [], background, block);
    const own = changes.filter(({ series }) => series === "Jump");
    expect(own).toHaveLength(names.length);
    expect(own.find(({ athlete }) => athlete === "A")).toMatchObject({ before: 30.5, after: 34.25 });
  });
});

describe("byReason(sentences)", () => {
  it("names everybody of one reason once, at most so many, and leaves other sentences as they are", () => {
    const told = ["A: never tested.", "Nothing else.", "B: never tested.", "C: never tested."];
    expect(byReason(told)).toEqual(["Never tested: A, B, C.", "Nothing else."]);
    expect(byReason(told, 2)).toEqual(["Never tested: A, B and 1 more.", "Nothing else."]);
  });
});
