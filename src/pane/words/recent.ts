import { say } from "../../language/say";

/** What the pane says of what was asked a moment ago. */
export const recentWords = {
  title: say`Asked a moment ago`,
  forget: say`Forget these`,
  gone: (sheet: string) => say`“${sheet}” is not there any more.`,
} as const;
