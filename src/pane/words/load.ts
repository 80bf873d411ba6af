import { say } from "../../language/say";
import type { LoadMeasure } from "../../programme/loadReport";
import type { Exposure } from "../../programme/loadWeeks";

/** What the pane says of the training load. */
export const loadWords = {
  noDiary: say`There is nothing in the diary yet`,
  source: say`the table Tapeline_Diary`,
  whose: say`Whose weeks`,
  squad: say`The squad's mean`,
  everybody: "Everybody's",
  measure: say`What`,
  measures: {
    load: say`Load`,
    throws: say`Throws`,
    jumps: say`Jumps`,
    sprints: say`Sprints`,
    deliveries: say`Deliveries`,
  } satisfies Record<LoadMeasure, string>,
  notCounted: (exposures: readonly Exposure[], role: string) =>
    say`Not counted in the diary: ${exposures.join(", ")}. They tell something of a ${role.toLowerCase()}.`,
  picture: (measure: LoadMeasure, whose: string) => say`${loadWords.measures[measure]} by week: ${whose}`,
  bar: { squad: say`Squad's mean`, athlete: say`Week` },
  usual: say`Mean of the four weeks before`,
  range: say`Lowest to highest athlete`,
  risen: say`Stands out`,
  week: (monday: string) => `${Number(monday.slice(8))} ${months[Number(monday.slice(5, 7)) - 1]}`,
  told: (week: string, value: number | null) => say`week of ${week}: ${value === null ? "nothing" : value.toFixed(0)}`,
} as const;

const months = [
  say`Jan`,
  say`Feb`,
  say`Mar`,
  say`Apr`,
  say`May`,
  say`Jun`,
  say`Jul`,
  say`Aug`,
  say`Sep`,
  say`Oct`,
  say`Nov`,
  say`Dec`,
];
