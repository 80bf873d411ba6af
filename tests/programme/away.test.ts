import { whoIsAway } from "../../src/programme/away";
import { noBackground } from "../../src/store/background";
import type { DiaryEntry } from "../../src/store/diary";
import { squadMember } from "../sheet/storeRows";

const names = ["Here", "Steady", "Gone", "Back", "New", "Never"];
const background = { ...noBackground, squad: names.map((name) => squadMember(name, { group: "Seniors" })) };

const entry = (athlete: string, day: number, attended: "yes" | "no" = "yes"): DiaryEntry => ({
  ...{
    athlete,
    date: `2026-09-${String(day).padStart(2, "0")}`,
    session: "Training",
    attended,
    minutes: 60,
    rating: 5,
  },
  ...{ throws: null, jumps: null, sprints: null, deliveries: null },
});

const days = [1, 3, 5, 7, 9, 11, 13, 15, 17, 19];
const diary = (there: Readonly<Record<string, readonly number[]>>) =>
  Object.entries(there).flatMap(([athlete, own]) =>
    days.map((day) => entry(athlete, day, own.includes(day) ? "yes" : "no")),
  );

describe("whoIsAway(diary, background)", () => {
  const { away, returning } = whoIsAway(
    diary({
      Here: days,
      Steady: days,
      Gone: days.slice(0, 6),
      Back: [1, 3, 5, 15, 17, 19],
      New: days.slice(6),
      Never: [],
    }),
    background,
  );

  it("names who missed the group's last four days, with the last day they were there", () => {
    expect(away).toEqual([{ athlete: "Gone", lastThere: "2026-09-11" }]);
  });

  it("names who is back after missing four in a row; who is new is not back", () => {
    expect(returning).toEqual([{ athlete: "Back", since: "2026-09-15" }]);
  });

  it("says nothing from a diary of three days", () => {
    const short = diary({ Here: [1, 3, 5], Gone: [1] }).filter(({ date }) => date <= "2026-09-05");
    expect(whoIsAway(short, background)).toEqual({ away: [], returning: [] });
  });
});
