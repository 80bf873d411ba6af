import type { Role, Team } from "./athletes";
import { block } from "./block";
import { injured, lateJoiner, spike } from "./plantedTruths";
import { type Chance, chanceFrom } from "./random";
import { type Member, squad } from "./squad";

export type DiaryRow = {
  readonly date: Date;
  readonly athlete: string;
  readonly session: string;
  readonly minutes: number;
  /** 0 to 10, asked after the session; null where nobody asked. */
  readonly rating: number | null;
  readonly throws: number;
  readonly jumps: number;
};

/** A session of the week: what it asks of an athlete of middling build. `day` counts from Monday, 0. */
type Session = Omit<DiaryRow, "date" | "athlete" | "rating"> & { readonly day: number; readonly rating: number };

/** The club's week. Invented. */
const weeks: Readonly<Record<Team, readonly Session[]>> = {
  Seniors: [
    { day: 0, session: "Team training", minutes: 90, rating: 5.5, throws: 70, jumps: 45 },
    { day: 1, session: "Strength", minutes: 60, rating: 6, throws: 0, jumps: 20 },
    { day: 2, session: "Team training", minutes: 90, rating: 6, throws: 80, jumps: 50 },
    { day: 3, session: "Strength", minutes: 50, rating: 5.5, throws: 0, jumps: 15 },
    { day: 4, session: "Team training", minutes: 75, rating: 4.5, throws: 60, jumps: 35 },
    { day: 5, session: "Match", minutes: 45, rating: 7.5, throws: 35, jumps: 40 },
  ],
  "Under-18": [
    { day: 0, session: "Team training", minutes: 75, rating: 5, throws: 60, jumps: 40 },
    { day: 2, session: "Strength", minutes: 45, rating: 5, throws: 0, jumps: 15 },
    { day: 3, session: "Team training", minutes: 75, rating: 5.5, throws: 60, jumps: 40 },
    { day: 5, session: "Match", minutes: 35, rating: 7, throws: 25, jumps: 30 },
  ],
};

/** The planted spike: evenings on top of the club's week. */
const evening: Omit<Session, "day"> = { session: "Selection camp", minutes: 105, rating: 8.5, throws: 110, jumps: 70 };
const camp: readonly Session[] = [1, 3, 6].map((day) => ({ ...evening, day }));

const throwsOfRole: Readonly<Record<Role, number>> = { Goalkeeper: 0.4, Wing: 0.9, Back: 1.2, Pivot: 0.7 };
const jumpsOfRole: Readonly<Record<Role, number>> = { Goalkeeper: 0.8, Wing: 1.1, Back: 1.2, Pivot: 0.7 };

const attendance = 0.93;
const notAsked = 0.015;
/** Minutes of the light week, as a share, and how much lower its ratings are. */
const lightMinutes = 0.75;
const lightRating = 0.7;

/** The diary of the block by day, then by athlete. Days of rest have no row. */
export function diary(): readonly DiaryRow[] {
  const chance = chanceFrom(20260831);
  // Some find everything harder than others do.
  const leanings = new Map(squad.map(({ name }) => [name, 0.5 * chance.deviation()]));
  const rows: DiaryRow[] = [];
  for (let week = 0; week < block.weeks; week++) {
    for (let day = 0; day < 7; day++) {
      const date = dayAfter(block.firstDay, 7 * week + day);
      for (const member of squad) {
        for (const session of sessionsOf(member, dayAfter(block.firstDay, 7 * week))) {
          if (session.day !== day) continue;
          const row = attend(chance, member, session, date, leanings.get(member.name)!, week + 1 === block.lightWeek);
          if (row && isThere(member.name, date)) rows.push(row);
        }
      }
    }
  }
  return rows;
}

const sessionsOf = ({ name, team }: Member, monday: Date): readonly Session[] =>
  name === spike.athlete && isoOf(monday) === spike.week ? [...weeks[team], ...camp] : weeks[team];

function isThere(athlete: string, date: Date): boolean {
  if (athlete === injured.athlete) return isoOf(date) <= injured.lastDay;
  return athlete !== lateJoiner.athlete || isoOf(date) >= lateJoiner.joined;
}

/** What the diary says of one athlete in one session; null where she was not there. */
function attend(
  { share, deviation }: Chance,
  { name, role }: Member,
  session: Session,
  date: Date,
  leaning: number,
  isLight: boolean,
): DiaryRow | null {
  const isAway = share() > attendance;
  const isUnasked = share() < notAsked;
  const isMatch = session.session === "Match";
  const minutes = session.minutes * (isLight && !isMatch ? lightMinutes : 1) + (isMatch ? 10 * deviation() : 0);
  const rating = session.rating - (isLight ? lightRating : 0) + leaning + 0.7 * deviation();
  const counted = (usual: number, ofRole: number) =>
    Math.max(0, Math.round(usual * ofRole * (1 + 0.12 * deviation()) * (minutes / session.minutes)));
  const throws = counted(session.throws, throwsOfRole[role]);
  const jumps = counted(session.jumps, jumpsOfRole[role]);
  if (isAway && session.session !== "Selection camp") return null;
  return {
    date,
    athlete: name,
    session: session.session,
    minutes: 5 * Math.max(1, Math.round(minutes / 5)),
    rating: isUnasked ? null : Math.max(1, Math.min(10, Math.round(rating))),
    throws,
    jumps,
  };
}

const dayAfter = (iso: string, days: number): Date => new Date(Date.parse(`${iso}T00:00:00Z`) + days * 86_400_000);

export const isoOf = (date: Date): string => date.toISOString().slice(0, 10);
