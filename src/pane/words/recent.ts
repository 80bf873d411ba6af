/** What the pane says of what was asked a moment ago. */
export const recentWords = {
  title: "Asked a moment ago",
  forget: "Forget these",
  gone: (sheet: string) => `“${sheet}” is not there any more.`,
} as const;
