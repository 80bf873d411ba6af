/** What the pane says of session sheets. */
export const deliverWords = {
  noPlan: "There is no plan to print yet",
  sheets: "Session sheets",
  session: "Which session",
  sessionOf: (week: number, session: number, begins: string) => `Week ${week}, session ${session} (week of ${begins})`,
  layout: "Laid out",
  perAthlete: "A page for each athlete",
  perGroup: "A list for each group",
  forSquad: "One list for the squad",
  squad: "Squad",
  noGroup: "Without a group",
  paper: "Paper",
  papers: { a4: "A4", letter: "Letter" },
} as const;
