import { groupBy } from "../analyses/groupBy";
import { daysOf } from "../analyses/sessions";
import { say } from "../language/say";
import type { TestResult } from "../reading/testResult";
import { type Background, memberCalled } from "../store/background";
import type { Comparison } from "../store/comparison";
import { nameKey } from "../store/sameName";
import type { SquadMember } from "../store/squad";
import { isMinorIn } from "./plannedSquad";
import { squadNames } from "./squadNames";

/** Whom an athlete is compared with. The same object for all of whom it says the same. */
export type ComparedWith = {
  /** In words: "the squad", "the group Seniors", "the under-18s". */
  readonly name: string;
  /** How many of them have results, the athlete among them. */
  readonly athletes: number;
  /** Names as `nameKey` has them; null for everybody. */
  readonly among: ReadonlySet<string> | null;
};

/**
 * Fewer tested athletes than this say little about each other: they are compared with the whole squad. Common practice,
 * no source.
 */
export const fewestCompared = 6;

/**
 * Whom each athlete (as the squad spells them) is compared with, as the coach has chosen. Who belongs to no group, or to
 * one too small, is compared with the whole squad. Ages are those in the year of the latest result.
 */
export function comparedWith(
  results: readonly TestResult[],
  background: Background,
): (athlete: string) => ComparedWith {
  const nameOf = squadNames(background);
  const tested = [...new Set(results.map(({ athlete }) => nameOf(athlete)))];
  const everybody: ComparedWith = { name: say`the squad`, athletes: tested.length, among: null };
  const circleOf = circleName(results, background);
  const circles = new Map(
    [...groupBy(tested, (athlete) => circleOf(athlete) ?? "")]
      .filter(([name, athletes]) => name !== "" && athletes.length >= fewestCompared)
      .map(([name, athletes]): [string, ComparedWith] => [
        name,
        { name, athletes: athletes.length, among: new Set(athletes.map(nameKey)) },
      ]),
  );
  return (athlete) => circles.get(circleOf(athlete) ?? "") ?? everybody;
}

/** What the athlete's circle is called; null where nothing says it. */
function circleName(results: readonly TestResult[], background: Background): (athlete: string) => string | null {
  const year = Number(daysOf(results).at(-1)?.slice(0, 4) ?? Number.NaN);
  const names: Readonly<Partial<Record<Comparison, (member: SquadMember) => string | null>>> = {
    group: ({ group }) => (group === null ? null : say`the group ${group}`),
    role: ({ role }) => (role === null ? null : say`the role ${role}`),
    age: ({ athlete, birthYear }) => {
      if (birthYear === null || Number.isNaN(year)) return null;
      return isMinorIn(year, athlete, background) ? say`the under-18s` : say`those over 18`;
    },
  };
  const named = names[background.comparedWith ?? "squad"];
  return (athlete) => {
    const member = memberCalled(background, athlete);
    return named && member ? named(member) : null;
  };
}
