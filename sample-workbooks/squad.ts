import { type Athlete, juniors, type Role, seniors, type Team } from "./athletes";
import { injured, lateJoiner } from "./plantedTruths";
import { chanceFrom } from "./random";

export type Member = Athlete & {
  readonly team: Team;
  readonly throwingHand: "Left" | "Right";
  readonly takeOffLeg: "Left" | "Right";
  readonly birthYear: number;
  /** kg */
  readonly bodyMass: number;
  /** cm */
  readonly stature: number;
};

/** Means by role, kg and cm, and the spread about them: invented, to look like a women's handball club. */
const builds: Readonly<Record<Role, { readonly bodyMass: number; readonly stature: number }>> = {
  Goalkeeper: { bodyMass: 72, stature: 176 },
  Wing: { bodyMass: 62, stature: 168 },
  Back: { bodyMass: 70, stature: 175 },
  Pivot: { bodyMass: 76, stature: 176 },
};
const massSpread = 4;
const statureSpread = 4;
const juniorsLighterBy = 4;
const juniorsShorterBy = 2;
const leftHanded = 0.15;
/** Most throw off the leg opposite to the throwing hand; some do not. */
const sameSideLeg = 0.15;

/** Everyone who plays for the club this season, seniors first. */
export const squad: readonly Member[] = drawSquad(20260701);

export const memberOf = (name: string): Member => {
  const member = squad.find((each) => each.name === name);
  if (!member) throw new Error(`${name} does not play for Fjordvik HK.`);
  return member;
};

/** What the coach notes beside a name. */
export const noteOn = (name: string): string | null =>
  [lateJoiner, injured].find(({ athlete }) => athlete === name)?.note ?? null;

function drawSquad(seed: number): Member[] {
  const { share, deviation } = chanceFrom(seed);
  const member = (athlete: Athlete, team: Team): Member => {
    const build = builds[athlete.role];
    const isJunior = team === "Under-18";
    const tallness = deviation();
    const throwingHand = share() < leftHanded ? "Left" : "Right";
    const opposite = throwingHand === "Left" ? "Right" : "Left";
    return {
      ...athlete,
      team,
      throwingHand,
      takeOffLeg: share() < sameSideLeg ? throwingHand : opposite,
      birthYear: isJunior ? 2009 + Math.floor(3 * share()) : 1993 + Math.floor(15 * share()),
      stature: Math.round(build.stature + statureSpread * tallness - (isJunior ? juniorsShorterBy : 0)),
      bodyMass:
        Math.round(
          2 * (build.bodyMass + massSpread * (0.6 * tallness + 0.8 * deviation()) - (isJunior ? juniorsLighterBy : 0)),
        ) / 2,
    };
  };
  return [
    ...seniors.map((athlete) => member(athlete, "Seniors")),
    ...juniors.map((athlete) => member(athlete, "Under-18")),
  ];
}
