import { say } from "../../language/say";
import type { DiaryEntry } from "../../store/diary";
import { many } from "./many";

/** What the pane says of the diary, and of taking over a coach's own. */
export const diaryWords = {
  title: say`Diary`,
  entries: (count: number) =>
    count === 0 ? say`There is nothing in the diary yet.` : say`${many(count, "entry")} so far.`,
  none: say`A table with one row per athlete and session: minutes, rating, throws, jumps.`,
  make: say`Put an empty diary into the workbook`,
  own: say`A diary of your own`,
  select: say`Keep one already? Select it on its sheet, with its headings: date, athlete, minutes, rating.`,
  found: (count: number, athletes: number, from: string, to: string) =>
    say`${many(count, "entry")} of ${many(athletes, "athlete")}, ${from} to ${to}.`,
  nothingFound: say`None of its rows names a day and an athlete.`,
  unused: (headings: readonly string[]) => say`Not used: ${headings.join(", ")}.`,
  hidden: (count: number) => (count === 1 ? say`1 hidden row was not read.` : say`${count} hidden rows were not read.`),
  strangers: (names: readonly string[]) =>
    say`Not in the squad: ${names.slice(0, 4).join(", ")}${names.length > 4 ? say` and ${names.length - 4} more` : ""}. Their entries are taken as they are.`,
  unread: (count: number) => (count === 1 ? say`1 cell cannot be read` : say`${count} cells cannot be read`),
  more: (count: number) => say`Show ${count} more`,
  fewer: say`Show fewer`,
  keep: (count: number) => say`Add ${many(count, "entry")} to the diary`,
  kept: (added: number) => (added === 0 ? say`Nothing new` : say`${many(added, "entry")} added`),
  same: (count: number) => say`${many(count, "entry")} stood there already.`,
  differing: (count: number) =>
    say`${many(count, "entry")} not added: the diary holds other numbers for the same athlete, day and session. Correct them there.`,
  differs: ({ date, athlete, session }: DiaryEntry) => `${date}, ${athlete}${session === null ? "" : `, ${session}`}`,
  nothingKept: say`Nothing was added`,
} as const;
