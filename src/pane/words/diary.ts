import type { DiaryEntry } from "../../store/diary";

const entries = (count: number): string => (count === 1 ? "1 entry" : `${count} entries`);

/** What the pane says of the diary, and of taking over a coach's own. */
export const diaryWords = {
  title: "Diary",
  entries: (count: number) => (count === 0 ? "There is nothing in the diary yet." : `${entries(count)} so far.`),
  none: "A table with one row per athlete and session: minutes, rating, throws, jumps.",
  make: "Put an empty diary into the workbook",
  own: "A diary of your own",
  select: "Keep one already? Select it on its sheet, with its headings: date, athlete, minutes, rating.",
  found: (count: number, athletes: number, from: string, to: string) =>
    `${entries(count)} of ${athletes === 1 ? "1 athlete" : `${athletes} athletes`}, ${from} to ${to}.`,
  nothingFound: "None of its rows names a day and an athlete.",
  unused: (headings: readonly string[]) => `Not used: ${headings.join(", ")}.`,
  hidden: (count: number) => `${count === 1 ? "1 hidden row was" : `${count} hidden rows were`} not read.`,
  strangers: (names: readonly string[]) =>
    `Not in the squad: ${names.slice(0, 4).join(", ")}${names.length > 4 ? ` and ${names.length - 4} more` : ""}. Their entries are taken as they are.`,
  unread: (count: number) => (count === 1 ? "1 cell cannot be read" : `${count} cells cannot be read`),
  more: (count: number) => `Show ${count} more`,
  fewer: "Show fewer",
  keep: (count: number) => `Add ${entries(count)} to the diary`,
  kept: (added: number) => (added === 0 ? "Nothing new" : `${entries(added)} added`),
  same: (count: number) => `${entries(count)} stood there already.`,
  differing: (count: number) =>
    `${entries(count)} not added: the diary holds other numbers for the same athlete, day and session. Correct them there.`,
  differs: ({ date, athlete, session }: DiaryEntry) => `${date}, ${athlete}${session === null ? "" : `, ${session}`}`,
  nothingKept: "Nothing was added",
} as const;
