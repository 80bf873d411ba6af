import { groupBy } from "../analyses/groupBy";
import { daysOf } from "../analyses/sessions";
import { say } from "../language/say";
import { dayNumber } from "../reading/days";
import type { TestResult } from "../reading/testResult";
import type { Background } from "../store/background";
import type { DiaryEntry } from "../store/diary";
import type { PlannedRow } from "../store/planTable";
import type { Priority } from "../store/priorityTable";
import { isSameName, nameKey } from "../store/sameName";
import { athletePage } from "./athletePage";
import { type Attendance, attendanceOf } from "./attendance";
import { whoIsAway } from "./away";
import { askedOf, squadDemands } from "./demands";
import type { Page } from "./page";
import { isMinorIn } from "./plannedSquad";
import type { QualityProfile } from "./qualityProfile";
import type { Review } from "./review";
import { squadNames } from "./squadNames";
import { squadPage } from "./squadPage";
import type { WeakerSide } from "./weakerSides";

/** All that pages are made from. */
export type PrintedFacts = {
  readonly results: readonly TestResult[];
  readonly profiles: readonly QualityProfile[];
  readonly sides: readonly WeakerSide[];
  /** What is worked on, with the coach's decisions in it. */
  readonly priorities: readonly Priority[];
  /** Null before the first retest. */
  readonly review: Review | null;
  readonly plan: readonly PlannedRow[];
  readonly diary: readonly DiaryEntry[];
  /** ISO day. */
  readonly today: string;
};

/** A page for each athlete who has been tested; each is made from that athlete's own rows alone. */
export function athletePages(facts: PrintedFacts, background: Background): Page[] {
  const date = latestDay(facts);
  return facts.profiles.filter(isTested).map((profile) => {
    const own = <Row extends { readonly athlete: string }>(rows: readonly Row[]): Row[] =>
      rows.filter(({ athlete }) => isSameName(athlete, profile.athlete));
    return athletePage({
      ...{ profile, asked: askedOf(profile, background), date },
      priorities: [...own(facts.priorities)].sort((a, b) => a.rank - b.rank),
      ...{ sides: own(facts.sides), changes: own(facts.review?.changes ?? []), plan: own(facts.plan) },
      isMinor: isMinorIn(Number(facts.today.slice(0, 4)), profile.athlete, background),
    });
  });
}

/** The page for the head coach, of the whole squad or of one of its groups. */
export function overviewPage(facts: PrintedFacts, background: Background, group: string | null): Page {
  const members = new Set(
    background.squad
      .filter((member) => group === null || isSameName(member.group ?? "", group))
      .map(({ athlete }) => nameKey(athlete)),
  );
  const isMember = ({ athlete }: { readonly athlete: string }): boolean =>
    members.has(nameKey(athlete)) || (group === null && members.size === 0);
  const profiles = facts.profiles.filter(isMember);
  const diary = facts.diary.filter(isMember);
  return squadPage({
    ...{ name: group ?? say`Squad`, athletes: profiles.length, date: latestDay(facts) },
    comparedWith: [...new Set(profiles.map((profile) => profile.comparedWith.name))],
    demands: squadDemands(profiles, background),
    changes: (facts.review?.changes ?? []).filter(isMember),
    attendance: attendances(diary, background),
    away: whoIsAway(diary, background),
    untested: notLately(facts, background).filter((athlete) => isMember({ athlete })),
    ...{ priorities: facts.priorities.filter(isMember), plan: facts.plan.filter(isMember) },
  });
}

const isTested = ({ qualities }: QualityProfile): boolean => qualities.some(({ z }) => z !== null);

const latestDay = ({ results, today }: PrintedFacts): string => daysOf(results).at(-1) ?? today;

/** Over the whole diary. */
function attendances(diary: readonly DiaryEntry[], background: Background): (Attendance & { athlete: string })[] {
  const days = diary.map(({ date }) => date).sort();
  if (days.length === 0) return [];
  const found = attendanceOf(diary, background, { from: days[0]!, to: days.at(-1)! });
  const nameOf = squadNames(background);
  const names = [...new Set(diary.map(({ athlete }) => nameOf(athlete)))];
  return names.flatMap((athlete) => {
    const own = found.get(nameKey(athlete));
    return own ? [{ athlete, ...own }] : [];
  });
}

/** A test day of a squad is often spread over so many days. */
const daysOfTesting = 21;

/** Athletes of the squad without any result of the latest test days. */
function notLately(facts: PrintedFacts, background: Background): string[] {
  const since = dayNumber(latestDay(facts)) - daysOfTesting;
  const nameOf = squadNames(background);
  const byAthlete = groupBy(facts.results, ({ athlete }) => nameKey(nameOf(athlete)));
  return background.squad.flatMap(({ athlete }) => {
    const own = byAthlete.get(nameKey(athlete)) ?? [];
    return own.some(({ date }) => date === null || dayNumber(date) > since) ? [] : athlete;
  });
}
