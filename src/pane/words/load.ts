import type { LoadMeasure } from "../../programme/loadReport";
import type { Exposure } from "../../programme/loadWeeks";

/** What the pane says of the training load. */
export const loadWords = {
  noDiary: "There is nothing in the diary yet",
  source: "the table Tapeline_Diary",
  whose: "Whose weeks",
  squad: "The squad's mean",
  everybody: "Everybody's",
  measure: "What",
  measures: {
    load: "Load",
    throws: "Throws",
    jumps: "Jumps",
    sprints: "Sprints",
    deliveries: "Deliveries",
  } satisfies Record<LoadMeasure, string>,
  notCounted: (exposures: readonly Exposure[], role: string) =>
    `Not counted in the diary: ${exposures.join(", ")}. They tell something of a ${role.toLowerCase()}.`,
  picture: (measure: LoadMeasure, whose: string) => `${loadWords.measures[measure]} by week: ${whose}`,
  bar: { squad: "Squad's mean", athlete: "Week" },
  usual: "Mean of the four weeks before",
  range: "Lowest to highest athlete",
  risen: "Stands out",
  week: (monday: string) => `${Number(monday.slice(8))} ${months[Number(monday.slice(5, 7)) - 1]}`,
  told: (week: string, value: number | null) => `week of ${week}: ${value === null ? "nothing" : value.toFixed(0)}`,
} as const;

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
