import { exerciseLibrary } from "../../src/programme/exerciseLibrary";
import type { Page } from "../../src/programme/page";
import { athleteSession, groupSession } from "../../src/programme/sessionSheets";
import { asPlanned } from "../../src/store/planTable";
import { plannedRow } from "../sheet/plannedRows";

const squat = asPlanned(plannedRow("Ane Berg", "Back squat"));
const bounding = asPlanned(plannedRow("Kari Dahl", "Bounding", { load: null, repetitions: "8 contacts" }));

const headingsOf = (page: Page | null) =>
  page!.parts.flatMap((part) => (part.kind === "table" ? [part.columns.map(({ heading }) => heading)] : []));
const texts = (page: Page | null) => page!.parts.flatMap((part) => (part.kind === "text" ? [part.text] : []));

describe("session sheets", () => {
  it("name week, day and session, and leave the load out where none is reckoned", () => {
    const page = athleteSession([squat, bounding], 1, 1);
    expect(page).toMatchObject({ title: "Ane Berg", subtitle: "Week 1 (from 2026-08-31), session 1" });
    expect(headingsOf(page)[0]).toContain("Load (kg)");
    expect(headingsOf(athleteSession([bounding], 1, 1))[0]).not.toContain("Load (kg)");
    // One page, one shape: in a group the load has its column for everybody.
    for (const headings of headingsOf(groupSession([squat, bounding], "Seniors", 1, 1))) {
      expect(headings).toContain("Load (kg)");
    }
  });

  it("say once what to mind in the exercises planned, and in none that are not", () => {
    const told = texts(groupSession([squat, bounding, squat], "Seniors", 1, 1, exerciseLibrary));
    expect(told.filter((text) => text.startsWith("Back squat: "))).toHaveLength(1);
    expect(told.filter((text) => text.startsWith("Bounding: "))).toHaveLength(1);
    expect(told.some((text) => text.includes("Bench press"))).toBe(false);
  });

  it("leave out what the coach has set to no sets, and are none where nothing is planned", () => {
    const none = asPlanned(plannedRow("Ane Berg", "Back squat", { sets: 0 }));
    expect(athleteSession([none], 1, 1)).toBeNull();
    expect(groupSession([squat], "Seniors", 2, 1)).toBeNull();
  });
});
