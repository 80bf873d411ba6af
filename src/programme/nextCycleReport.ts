import type { Report } from "../analyses/report";
import { say } from "../language/say";
import type { NextPriority } from "./nextCycle";

const fateLabels: Readonly<Record<NextPriority["fate"], string>> = {
  "carried over": say`carried over`,
  new: say`new`,
  done: say`done`,
  "set aside": say`set aside`,
};

/** How many priorities of each fate there are, in a sentence. */
function fateWords(next: readonly NextPriority[]): string {
  const count = (fate: NextPriority["fate"]) => next.filter((one) => one.fate === fate).length;
  return say`${count("carried over")} priorities are carried over and ${count("new")} are new; ${count("done")} are done and ${count("set aside")} set aside.`;
}

/** The next cycle, a row for each athlete and priority: what is carried over, new, done or set aside, and why. */
export function nextCycleReport(
  next: readonly NextPriority[],
  { source, date }: { readonly source: string; readonly date: string },
): Report {
  return {
    analysis: "nextCycle",
    sheet: say`Next cycle`,
    title: say`From one cycle to the next`,
    summary: [fateWords(next)],
    table: {
      name: "Tapeline_NextCycle",
      columns: [
        { key: "athlete", heading: say`Athlete`, meaning: say`Name as in the squad.` },
        { key: "quality", heading: say`Quality`, meaning: say`The physical quality to work on.` },
        { key: "fate", heading: say`What becomes of it`, meaning: say`Carried over, new, done, or set aside.` },
        {
          key: "before",
          heading: say`Rank before`,
          meaning: say`Its place in the last block; 1 had the most work.`,
          format: "0",
        },
        {
          key: "next",
          heading: say`Rank next`,
          meaning: say`Its place in the next; 1 is the most urgent.`,
          format: "0",
        },
        { key: "why", heading: say`Why`, meaning: say`What changed in its tests, and why it stands as it does.` },
        { key: "row", heading: say`Row`, meaning: say`Athlete and quality: by it a row is found again.`, quiet: true },
      ],
      rows: next.map(({ athlete, quality, fate, rankBefore, rankNext, why }) => [
        ...[athlete, quality, fateLabels[fate], rankBefore, rankNext, why, `${athlete}, ${quality}`],
      ]),
      rowKey: "row",
    },
    cautions: [
      say`“Done” means improved beyond the noise and no longer among the first needs; what is not worked on can be lost again.`,
      say`An aid to a conversation: overrule it on the sheet of priorities, and say why.`,
    ],
    provenance: {
      ...{ source, date, leftOut: [] },
      method: say`What was worked on in the last block, by the exercises planned, against the priorities that follow from the retest. Common practice, no source.`,
      used: say`${new Set(next.map(({ athlete }) => athlete)).size} athletes, ${next.length} priorities`,
    },
    ...{ marks: [], testAgain: [] },
  };
}
