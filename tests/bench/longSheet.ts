import type { AnyAnalysis } from "../../src/analyses/analysis";
import { measureOf } from "../../src/reading/measures";

export type SheetCell = number | string;

/** A long sheet of so many athletes, each with the results of an analysis' own example, a little apart from each other. */
export function longSheet({ example }: AnyAnalysis, athletes: number): SheetCell[][] {
  const first = example.results[0]!.athlete;
  const own = example.results.filter(({ athlete }) => athlete === first);
  const rows = Array.from({ length: athletes }, (_, number) =>
    own.map(({ date, test, measure, side, attempt, value, unit }): SheetCell[] => [
      `Athlete ${number + 1}`,
      date ?? "2026-08-11",
      test || "Test",
      measure === null ? "" : measureOf(measure).label,
      side ?? "",
      attempt,
      measure === "repetitions" ? value : Math.round(value * (1 + (number % 17) / 100) * 1000) / 1000,
      unit ?? "",
    ]),
  ).flat();
  const filled = headings.map((_, column) => rows.some((row) => row[column] !== ""));
  return [[...headings], ...rows].map((row) => row.filter((_, column) => filled[column]));
}

const headings = ["Athlete", "Date", "Test", "Measure", "Side", "Trial", "Result", "Unit"];
