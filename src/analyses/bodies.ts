import type { Reading } from "../reading/readResults";
import type { TestResult } from "../reading/testResult";
import { type Background, memberCalled } from "../store/background";
import type { SquadMember } from "../store/squad";
import { groupBy } from "./groupBy";
import { measuredAttempts, ofLatestDay } from "./measuredAttempts";

/** What the formulas need to know of an athlete's body; null where nothing says it. */
export type Body = {
  /** kg */
  readonly mass: number | null;
  /** cm */
  readonly stature: number | null;
};

/**
 * Body mass and stature of an athlete on a day: as measured among the results on that day, else on the latest day, else
 * as the squad's table says.
 */
export function bodiesOf(
  results: readonly TestResult[],
  background: Background,
): (athlete: string, date: string | null) => Body {
  const measured = measuredAttempts(
    results.filter(({ measure }) => measure === "bodyMass" || measure === "stature"),
  ).attempts;
  const byAthlete = groupBy(measured, ({ athlete }) => athlete);
  return (athlete, date) => {
    const own = byAthlete.get(athlete) ?? [];
    const member = memberCalled(background, athlete);
    const find = (measure: "bodyMass" | "stature"): number | null => {
      const known = own.filter(({ values }) => values[measure] !== undefined);
      const sameDay = known.filter((attempt) => attempt.date === date);
      const first = [...(sameDay.length > 0 ? sameDay : ofLatestDay(known))].sort((a, b) => a.attempt - b.attempt)[0];
      return first?.values[measure] ?? null;
    };
    return { mass: find("bodyMass") ?? member?.bodyMass ?? null, stature: find("stature") ?? member?.stature ?? null };
  };
}

/** The squad with body mass and stature as the sheet has them, which was written on the day; also of athletes new to it. */
export function withBodies(background: Background, { bodies }: Pick<Reading, "bodies">): Background {
  const measured = bodies.map(({ athlete, bodyMass, stature }): SquadMember => {
    const member = memberCalled(background, athlete) ?? { ...unknownMember, athlete };
    return { ...member, bodyMass: bodyMass ?? member.bodyMass, stature: stature ?? member.stature };
  });
  const replaced = new Set(measured.map(({ athlete }) => athlete));
  return { ...background, squad: [...background.squad.filter(({ athlete }) => !replaced.has(athlete)), ...measured] };
}

const unknownMember: Omit<SquadMember, "athlete"> = {
  role: null,
  group: null,
  dominantSide: null,
  birthYear: null,
  bodyMass: null,
  stature: null,
  notes: null,
};
