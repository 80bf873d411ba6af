import type { AthleteFound } from "../../sheet/removeAthlete";

const many = (count: number, noun: string): string => (count === 1 ? `1 ${noun}` : `${count} ${noun}s`);

/** What the pane says about removing an athlete from the workbook. */
export const removeAthleteWords = {
  title: "Remove an athlete",
  text: "Takes an athlete out of everything Tapeline keeps in this workbook.",
  who: "Who",
  nobody: "There is nobody to remove: neither the squad nor the results name an athlete.",
  choose: "Choose an athlete",
  looking: "Looking for the name on every sheet…",
  goes: (name: string) => `What goes of ${name}`,
  nothing: (name: string) => `Nothing of ours names ${name}.`,
  rows: ({ sheet, rows }: AthleteFound["tables"][number]) =>
    `${sheet}: ${many(rows, "row")}, with your own cells beside`,
  lines: (lines: number) => `${many(lines, "sentence")} on written sheets`,
  pages: (names: readonly string[]) => `${many(names.length, "page")} to print: ${names.join(", ")}`,
  marks: "All marks on cells, since one of them names the athlete; mark again afterwards",
  stays: (places: number) => `The name also stands in ${many(places, "place")} of your own`,
  staysText: "These are left as they are. Empty them yourself where nothing of the athlete may stay.",
  left: (count: number) => `and ${many(count, "more place")}`,
  copies: "Copies of this workbook, earlier versions kept by a cloud and printed pages are not reached from here.",
  press: (name: string) => `Remove ${name}`,
  sure: (name: string) => `Remove ${name} from this workbook?`,
  sureText: (hasPages: boolean) =>
    `It can be taken back until you close the workbook or this pane${hasPages ? "; pages are not brought back, but can be made again" : ""}. After that it cannot.`,
  yes: "Yes, remove",
  no: "No, keep",
  removing: "Removing…",
  done: (name: string) => `${name} is removed`,
  doneText:
    "Save the workbook to make it last. Until you close it, “Take back” above brings everything but pages back.",
} as const;
