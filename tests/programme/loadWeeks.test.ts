import { loadWeeks } from "../../src/programme/loadWeeks";
import type { DiaryEntry } from "../../src/store/diary";

const session = (date: string, rating: number | null, minutes: number | null, more: Partial<DiaryEntry> = {}) => ({
  date,
  athlete: "A",
  session: null,
  attended: "yes" as const,
  minutes,
  rating,
  throws: null,
  jumps: null,
  sprints: null,
  deliveries: null,
  ...more,
});

describe("weeks of the diary", () => {
  // Day loads 400 0 300 0 500 600 0: total 1800; mean and SD of R 4.2.2: x <- c(400,0,300,0,500,600,0); mean(x)/sd(x).
  const week = [
    session("2026-09-07", 5, 80),
    session("2026-09-09", 5, 60),
    session("2026-09-11", 5, 100),
    session("2026-09-12", 6, 100),
  ];

  it("add up rating x minutes, rest days counting as 0 (Foster 1998)", () => {
    const [first] = loadWeeks(week);
    expect(first).toMatchObject({ monday: "2026-09-07", total: 1800, sessions: 4, attended: 4, change: null });
    const mean = 1800 / 7;
    const spread = Math.sqrt([400, 0, 300, 0, 500, 600, 0].reduce((sum, x) => sum + (x - mean) ** 2, 0) / 6);
    expect(first!.monotony).toBeCloseTo(mean / spread, 12);
    expect(first!.strain).toBeCloseTo((1800 * mean) / spread, 9);
  });

  it("count a session that was missed as no load, and an unrated one as unknown", () => {
    const [first] = loadWeeks([...week, session("2026-09-10", 9, 90, { attended: "no" })]);
    expect(first).toMatchObject({ total: 1800, sessions: 5, attended: 4, unrated: 0 });
    const [unrated] = loadWeeks([...week, session("2026-09-10", null, 90)]);
    expect(unrated).toMatchObject({ total: 1800, unrated: 1, monotony: null });
  });

  it("leave a week without entries open, and do not compare with it", () => {
    const weeks = loadWeeks([...week, session("2026-09-21", 5, 72)]);
    expect(weeks.map(({ monday, total, change }) => [monday, total, change])).toEqual([
      ["2026-09-07", 1800, null],
      ["2026-09-14", null, null],
      ["2026-09-21", 360, null],
    ]);
    const next = loadWeeks([...week, session("2026-09-14", 5, 72)]);
    expect(next[1]!.change).toBeCloseTo(-80, 12);
  });

  it("add up what was counted, and leave open what nobody counted", () => {
    const [first] = loadWeeks([
      session("2026-09-07", 5, 80, { throws: 60 }),
      session("2026-09-09", 5, 60, { throws: 45 }),
    ]);
    expect(first!.counts).toEqual({ throws: 105, jumps: null, sprints: null, deliveries: null });
  });
});
