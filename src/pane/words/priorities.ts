import { fewestCompared } from "../../programme/comparedWith";
import { listedUpTo } from "../../programme/listed";
import type { Comparison } from "../../store/comparison";

/** What the pane says where priorities are overruled and athletes compared. */
export const priorityWords = {
  earlier: (quality: string) => `Work on ${quality} earlier`,
  later: (quality: string) => `Work on ${quality} later`,
  decide: (quality: string, athlete: string) => `What to make of ${quality}, ${athlete}`,
  asProposed: "As proposed",
  setAside: "Set aside",
  instead: (quality: string) => `Instead: ${quality}`,
  insteadOf: (quality: string) => `instead of ${quality}`,
  wasSetAside: "set aside",
  reason: "Why you decide so",
  reasonFor: (quality: string, athlete: string) => `Why, ${quality} of ${athlete}`,
  notDecided: "Nothing was changed",
  outdated: (athletes: number) =>
    `For ${athletes === 1 ? "1 athlete" : `${athletes} athletes`} the rule says something else by now. Write the priorities to renew them: what you have decided stays.`,
  profile: "Profile and numbers behind it",
  noRatios:
    "No ratios: they need drop jumps with contact times, squat jumps, peak forces, or sprints with split times.",
  caution:
    "Pain, or back from an injury: what is trained and tested is for those who treat the athlete to say. Maximal tests and heavy loads of under-18s only under qualified supervision.",

  comparison: {
    title: "Compared with",
    label: "Athletes are compared with",
    meaning:
      "Whom each athlete's standing is reckoned among. It holds for priorities, pages and the next cycle alike, and is kept in the workbook.",
    options: {
      squad: "The whole squad",
      group: "Their group",
      role: "Their role",
      age: "Under-18s or adults",
    } satisfies Record<Comparison, string>,
    fallback: (athletes: readonly string[]) =>
      `Compared with the whole squad all the same, since fewer than ${fewestCompared} of theirs are tested or nothing says where they belong: ${listedUpTo(athletes, 6)}.`,
    small: (name: string, athletes: number) =>
      `${name.charAt(0).toUpperCase()}${name.slice(1)}: only ${athletes} tested. The middle of so few is itself uncertain by some ±${Math.round(10 / Math.sqrt(athletes))} points.`,
  },

  leftOut: {
    title: (count: number) => (count === 1 ? "1 kept result was left out" : `${count} kept results were left out`),
    more: (count: number) => `And ${count} more.`,
  },
} as const;
