import { atStart, inSentence, say } from "../../language/say";
import type { LoadMeasure } from "../../programme/loadReport";
import type { Exposure } from "../../programme/loadWeeks";

/** What the pane says of the training load. */
export const loadWords = {
  noDiary: say`There is nothing in the diary yet`,
  source: say`the table Tapeline_Diary`,
  whose: say`Whose weeks`,
  squad: say`The squad's mean`,
  everybody: say`Everybody's`,
  measure: say`What`,
  measures: {
    load: atStart(say`load`),
    throws: say`Throws`,
    jumps: say`Jumps`,
    sprints: say`Sprints`,
    deliveries: say`Deliveries`,
  } satisfies Record<LoadMeasure, string>,
  notCounted: (exposures: readonly Exposure[], role: string) =>
    say`Not counted in the diary: ${exposures.map((one) => inSentence(loadWords.measures[one])).join(", ")}. They tell something of a ${inSentence(role)}.`,
  picture: (measure: LoadMeasure, whose: string) => say`${loadWords.measures[measure]} by week: ${whose}`,
  bar: { squad: say`Squad's mean`, athlete: say`Week` },
  usual: say`Mean of the four weeks before`,
  range: say`Lowest to highest athlete`,
  risen: say`Stands out`,
  week: (monday: string) => months[Number(monday.slice(5, 7)) - 1]!(Number(monday.slice(8))),
  told: (week: string, value: number | null) =>
    say`week of ${week}: ${value === null ? say`nothing` : value.toFixed(0)}`,
} as const;

const months = [
  (day: number) => say`${day} Jan`,
  (day: number) => say`${day} Feb`,
  (day: number) => say`${day} Mar`,
  (day: number) => say`${day} Apr`,
  (day: number) => say`${day} May`,
  (day: number) => say`${day} Jun`,
  (day: number) => say`${day} Jul`,
  (day: number) => say`${day} Aug`,
  (day: number) => say`${day} Sep`,
  (day: number) => say`${day} Oct`,
  (day: number) => say`${day} Nov`,
  (day: number) => say`${day} Dec`,
];
