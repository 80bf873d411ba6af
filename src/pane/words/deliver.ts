import { say } from "../../language/say";

/** What the pane says of session sheets. */
export const deliverWords = {
  noPlan: say`There is no plan to print yet`,
  sheets: say`Session sheets`,
  session: say`Which session`,
  sessionOf: (week: number, session: number, begins: string) =>
    say`Week ${week}, session ${session} (week of ${begins})`,
  layout: say`Laid out`,
  perAthlete: say`A page for each athlete`,
  perGroup: say`A list for each group`,
  forSquad: say`One list for the squad`,
  squad: say`Squad`,
  noGroup: say`Without a group`,
} as const;
