import type { PlannedRow } from "../../src/store/planTable";
import type { Priority } from "../../src/store/priorityTable";

/** Rows of plan and priorities of which only what matters is said. */
export const plannedRow = (athlete: string, exercise: string, said: Partial<PlannedRow> = {}): PlannedRow => ({
  ...{ week: 1, begins: "2026-08-31", session: 1, athlete, exercise, sets: 4, repetitions: "5" },
  ...{ intensity: "80 %, leave 3 in reserve", load: 80, total: null, why: "1.2 SD below the squad." },
  ...said,
});

export const priority = (athlete: string, rank: number, quality: string): Priority => ({
  ...{ athlete, rank, quality, why: `${quality} is low.` },
});
