import { say } from "../../language/say";
import type { AthleteFound } from "../../sheet/removeAthlete";
import { many } from "./many";

/** What the pane says about removing an athlete from the workbook. */
export const removeAthleteWords = {
  title: say`Remove an athlete`,
  text: say`Takes an athlete out of everything Tapeline keeps in this workbook.`,
  who: say`Who`,
  nobody: say`There is nobody to remove: neither the squad nor the results name an athlete.`,
  choose: say`Choose an athlete`,
  looking: say`Looking for the name on every sheet…`,
  goes: (name: string) => say`What goes of ${name}`,
  nothing: (name: string) => say`Nothing of ours names ${name}.`,
  rows: ({ sheet, rows }: AthleteFound["tables"][number]) =>
    say`${sheet}: ${many(rows, "row")}, with your own cells beside`,
  lines: (lines: number) => say`${many(lines, "sentence")} on written sheets`,
  pages: (names: readonly string[]) => say`${many(names.length, "page")} to print: ${names.join(", ")}`,
  marks: say`All marks on cells, since one of them names the athlete; mark again afterwards`,
  stays: (places: number) => say`The name also stands in ${many(places, "place")} of your own`,
  staysText: say`These are left as they are. Empty them yourself where nothing of the athlete may stay.`,
  left: (count: number) => say`and ${many(count, "more place")}`,
  copies: say`Copies of this workbook, earlier versions kept by a cloud and printed pages are not reached from here.`,
  press: (name: string) => say`Remove ${name}`,
  sure: (name: string) => say`Remove ${name} from this workbook?`,
  sureText: (hasPages: boolean) =>
    hasPages
      ? say`It can be taken back until you close the workbook or this pane; pages are not brought back, but can be made again. After that it cannot.`
      : say`It can be taken back until you close the workbook or this pane. After that it cannot.`,
  yes: say`Yes, remove`,
  no: say`No, keep`,
  removing: say`Removing…`,
  done: (name: string) => say`${name} is removed`,
  doneText: say`Save the workbook to make it last. Until you close it, “Take back” above brings everything but pages back.`,
} as const;
