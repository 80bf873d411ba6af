import { groupBy } from "../analyses/groupBy";
import { jumpAttempts } from "../analyses/jumps/jumpAttempts";
import type { JumpKind } from "../analyses/jumps/jumpNames";
import { jumps } from "../analyses/jumps/jumps";
import { ofLatestDays } from "../analyses/sessions";
import { sprintRuns } from "../analyses/sprints/sprintRuns";
import { sprints } from "../analyses/sprints/sprints";
import { dynamicStrengthIndex } from "../engine/jumps/dynamicStrengthIndex";
import { median } from "../engine/moments";
import { valueOr } from "../engine/result";
import { say } from "../language/say";
import type { TestResult } from "../reading/testResult";
import type { Background } from "../store/background";
import { isSameName, nameKey } from "../store/sameName";
import { squadNames } from "./squadNames";

/** A number made of several of an athlete's, such as the trade uses beside the tests themselves. */
export type Ratio = {
  readonly athlete: string;
  readonly name: string;
  readonly value: number;
  /** "" for a plain number. */
  readonly unit: string;
  readonly decimals: number;
  /** Median of everybody who has one; null for fewer than three. */
  readonly middle: number | null;
  /** Quality of the test it comes from; null where the battery does not say. */
  readonly quality: string | null;
  /** What it is, and what not to read from it. */
  readonly meaning: string;
};

type Kind = Pick<Ratio, "name" | "unit" | "decimals" | "meaning">;

const reactive: Kind = {
  ...{ name: say`Reactive strength index`, unit: "m/s", decimals: 2 },
  meaning: say`Height of the drop jump over its time on the ground. Depends on the height of the box: compare like with like.`,
};
const utilisation: Kind = {
  ...{ name: say`Eccentric utilisation ratio`, unit: "", decimals: 2 },
  meaning: say`Countermovement jump over squat jump; about 1.0 to 1.2. It carries the noise of both jumps.`,
};
const dynamic: Kind = {
  ...{ name: say`Dynamic strength index`, unit: "", decimals: 2 },
  meaning: say`Peak force of the jump over that of the isometric pull. It also rises when the pull gets worse; its use is disputed.`,
};
const startForce: Kind = {
  ...{ name: say`Sprint force at the start`, unit: "N/kg", decimals: 1 },
  meaning: say`From the curve of the split times. From a few gates it carries several percent of error.`,
};
const endSpeed: Kind = {
  ...{ name: say`Sprint maximal speed`, unit: "m/s", decimals: 2 },
  meaning: say`The speed that the curve of the split times tends to. A guess where the run was too short to reach it.`,
};

/**
 * The ratios that each athlete's tests allow, of their latest day: reactive strength index, eccentric utilisation ratio,
 * dynamic strength index, and the two ends of the sprint's force-velocity line. What a test is missing for is not there.
 *
 * @param results with derived ones among them (`keptSeries`).
 */
export function ratiosOf(results: readonly TestResult[], background: Background): Ratio[] {
  const nameOf = squadNames(background);
  const jumped = valueOr(jumps.compute(results, jumps.settings.parse({}), background), null)?.rows ?? [];
  const ran = valueOr(sprints.compute(results, sprints.settings.parse({}), background), null)?.rows ?? [];
  const attempts = jumpAttempts(results, null).jumps;
  const ofJump = (kind: JumpKind) => qualityOf(attempts.find((one) => one.kind === kind)?.attempt.test, background);
  const ofSprints = qualityOf(sprintRuns(results, "gates").runs[0]?.attempt.test, background);
  return [
    ...ratios(
      reactive,
      ofJump("drop"),
      jumped.map(({ athlete, reactive: value }) => [nameOf(athlete), value]),
    ),
    ...ratios(
      utilisation,
      ofJump("countermovement"),
      jumped.map(({ athlete, utilisation: value }) => [nameOf(athlete), value]),
    ),
    ...dynamicStrength(results, background, nameOf),
    ...ratios(
      startForce,
      ofSprints,
      ran.map(({ athlete, force }) => [nameOf(athlete), force]),
    ),
    ...ratios(
      endSpeed,
      ofSprints,
      ran.map(({ athlete, maximal }) => [nameOf(athlete), maximal]),
    ),
  ];
}

/** "Reactive strength index 1.32 m/s (the middle of all 1.41)". */
export function ratioSentence({ name, value, unit, decimals, middle }: Ratio): string {
  const beside = middle === null ? "" : say` (the middle of all ${middle.toFixed(decimals)})`;
  return `${name} ${value.toFixed(decimals)}${unit === "" ? "" : ` ${unit}`}${beside}`;
}

/** A median of two says nothing about either. */
const fewestForMiddle = 3;

function ratios(
  kind: Kind,
  quality: string | null,
  found: readonly (readonly [athlete: string, value: number | null])[],
): Ratio[] {
  const values = found.flatMap(([athlete, value]) => (value === null ? [] : [{ athlete, value }]));
  const middle = values.length < fewestForMiddle ? null : median(values.map(({ value }) => value));
  return values.map(({ athlete, value }) => ({ ...kind, athlete, value, middle, quality }));
}

/** Peak forces in newtons: the tests' names say which is the jump and which the isometric pull. Both of one day. */
function dynamicStrength(
  results: readonly TestResult[],
  background: Background,
  nameOf: (athlete: string) => string,
): Ratio[] {
  const forces = results.filter(({ unit, side }) => unit === "N" && side === null);
  const pulls = forces.filter(({ test }) => /isomet|pull|zug/.test(nameKey(test)));
  const jumped = forces.filter(({ test }) => /jump|sprung/.test(nameKey(test)));
  const best = (own: readonly TestResult[]) =>
    new Map(
      [...groupBy(ofLatestDays(own), ({ athlete }) => nameOf(athlete))].map(([athlete, trials]) => [
        athlete,
        { date: trials[0]!.date, force: Math.max(...trials.map(({ value }) => value)) },
      ]),
    );
  const [pull, jump] = [best(pulls), best(jumped)];
  return ratios(
    dynamic,
    qualityOf(pulls[0]?.test, background),
    [...jump].map(([athlete, { date, force }]) => {
      const other = pull.get(athlete);
      if (!other || other.date !== date) return [athlete, null] as const;
      return [athlete, valueOr(dynamicStrengthIndex(force, other.force), null)?.index ?? null] as const;
    }),
  );
}

const qualityOf = (test: string | undefined, { battery }: Background): string | null =>
  battery.find((one) => isSameName(one.test, test ?? "") && one.quality !== null)?.quality ?? null;
