import { groupBy } from "../analyses/groupBy";
import type { TestResult } from "../reading/testResult";
import { type Background, memberCalled } from "../store/background";
import { nameKey } from "../store/sameName";
import { estimatedMaxima } from "./keptSeries";
import type { Planned } from "./planBlock";
import type { WeakerSide } from "./weakerSides";

/** Until the year in which athletes turn 18 is over: the year alone does not say whether they have. */
const lastMinorAge = 18;

/**
 * Whether an athlete is to be treated as a minor in a year. Where nothing says how old they are, they are, to be on the
 * safe side.
 */
export function isMinorIn(year: number, athlete: string, background: Background): boolean {
  const born = memberCalled(background, athlete)?.birthYear ?? null;
  return born === null || year - born <= lastMinorAge;
}

/**
 * The squad as a plan sees it: every athlete of the squad, with what was decided for them. An athlete without priorities
 * comes without, so that the plan can say what is missing.
 *
 * @param decided what is to be worked on, with the coach's own decisions in it (`store/priorityTable`).
 * @param begins ISO day on which the block begins.
 */
export function plannedSquad(
  decided: readonly {
    readonly athlete: string;
    readonly rank: number;
    readonly quality: string;
    readonly why: string;
  }[],
  { results, sides }: { readonly results: readonly TestResult[]; readonly sides: readonly WeakerSide[] },
  background: Background,
  begins: string,
): Planned[] {
  const maxima = estimatedMaxima(results, background);
  const byAthlete = groupBy(decided, ({ athlete }) => nameKey(athlete));
  const largestSide = new Map([...sides].reverse().map((side) => [nameKey(side.athlete), side]));
  return background.squad.map(({ athlete }) => {
    const side = largestSide.get(nameKey(athlete));
    return {
      athlete,
      isMinor: isMinorIn(Number(begins.slice(0, 4)), athlete, background),
      priorities: [...(byAthlete.get(nameKey(athlete)) ?? [])].sort((a, b) => a.rank - b.rank),
      weakerSide: side ? { side: side.side, why: side.why } : null,
      maxima: maxima.get(athlete) ?? new Map(),
    };
  });
}
