import { atStart, say } from "../../language/say";
import { fewestCompared } from "../../programme/comparedWith";
import { listedUpTo } from "../../programme/listed";
import type { Comparison } from "../../store/comparison";
import { many } from "./many";

/** What the pane says where priorities are overruled and athletes compared. */
export const priorityWords = {
  earlier: (quality: string) => say`Work on ${quality} earlier`,
  later: (quality: string) => say`Work on ${quality} later`,
  decide: (quality: string, athlete: string) => say`What to make of ${quality}, ${athlete}`,
  asProposed: say`As proposed`,
  setAside: say`Set aside`,
  instead: (quality: string) => say`Instead: ${quality}`,
  insteadOf: (quality: string) => say`instead of ${quality}`,
  wasSetAside: say`set aside`,
  reason: say`Why you decide so`,
  reasonFor: (quality: string, athlete: string) => say`Why, ${quality} of ${athlete}`,
  notDecided: say`Nothing was changed`,
  outdated: (athletes: number) =>
    say`For ${many(athletes, "athlete")} the rule says something else by now. Write the priorities to renew them: what you have decided stays.`,
  profile: say`Profile and numbers behind it`,
  noRatios: say`No ratios: they need drop jumps with contact times, squat jumps, peak forces, or sprints with split times.`,
  caution: say`Pain, or back from an injury: what is trained and tested is for those who treat the athlete to say. Maximal tests and heavy loads of under-18s only under qualified supervision.`,

  comparison: {
    title: say`Compared with`,
    label: say`Athletes are compared with`,
    meaning: say`Whom each athlete's standing is reckoned among. It holds for priorities, pages and the next cycle alike, and is kept in the workbook.`,
    options: {
      squad: say`The whole squad`,
      group: say`Their group`,
      role: say`Their role`,
      age: say`Under-18s or adults`,
    } satisfies Record<Comparison, string>,
    fallback: (athletes: readonly string[]) =>
      say`Compared with the whole squad all the same, since fewer than ${fewestCompared} of theirs are tested or nothing says where they belong: ${listedUpTo(athletes, 6)}.`,
    small: (name: string, athletes: number) =>
      say`${atStart(name)}: only ${athletes} tested. The middle of so few is itself uncertain by some ±${Math.round(10 / Math.sqrt(athletes))} points.`,
  },

  leftOut: {
    title: (count: number) =>
      count === 1 ? say`1 kept result was left out` : say`${count} kept results were left out`,
    more: (count: number) => say`And ${count} more.`,
  },
} as const;
