import { say } from "../../language/say";
import type { DiaryEntry } from "../../store/diary";

const entries = (count: number): string => (count === 1 ? say`1 entry` : say`${count} entries`);

/** What the pane says of the diary, and of taking over a coach's own. */
export const diaryWords = {
  title: say`Diary`,
  entries: (count: number) => (count === 0 ? say`There is nothing in the diary yet.` : say`${entries(count)} so far.`),
  none: say`A table with one row per athlete and session: minutes, rating, throws, jumps.`,
  make: say`Put an empty diary into the workbook`,
  own: say`A diary of your own`,
  select: say`Keep one already? Select it on its sheet, with its headings: date, athlete, minutes, rating.`,
  found: (count: number, athletes: number, from: string, to: string) =>
    say`${entries(count)} of ${athletes === 1 ? say`1 athlete` : say`${athletes} athletes`}, ${from} to ${to}.`,
  nothingFound: say`None of its rows names a day and an athlete.`,
  unused: (headings: readonly string[]) => say`Not used: ${headings.join(", ")}.`,
  hidden: (count: number) => say`${count === 1 ? say`1 hidden row was` : say`${count} hidden rows were`} not read.`,
  strangers: (names: readonly string[]) =>
    say`Not in the squad: ${names.slice(0, 4).join(", ")}${names.length > 4 ? say` and ${names.length - 4} more` : ""}. Their entries are taken as they are.`,
  unread: (count: number) => (count === 1 ? say`1 cell cannot be read` : say`${count} cells cannot be read`),
  more: (count: number) => say`Show ${count} more`,
  fewer: say`Show fewer`,
  keep: (count: number) => say`Add ${entries(count)} to the diary`,
  kept: (added: number) => (added === 0 ? say`Nothing new` : say`${entries(added)} added`),
  same: (count: number) => say`${entries(count)} stood there already.`,
  differing: (count: number) =>
    say`${entries(count)} not added: the diary holds other numbers for the same athlete, day and session. Correct them there.`,
  differs: ({ date, athlete, session }: DiaryEntry) => `${date}, ${athlete}${session === null ? "" : `, ${session}`}`,
  nothingKept: say`Nothing was added`,
} as const;
