import { type BatteryTest, gates, isLift, shareOfMaximum, type TestKey, testKeys, testOf } from "./battery";
import { gateError, noise } from "./noise";
import { implausible, injured, lateJoiner, lucky, misspelt, overdue, slips, swappedSides } from "./plantedTruths";
import { type Chance, chanceFrom } from "./random";
import { sprintTimes } from "./sprintTimes";
import { type Member, squad } from "./squad";
import { type TruthOfAthlete, trueScores } from "./trueScores";

/** Two sessions a week apart before the block, one after it; each has a day on the field and one in the gym. */
export const occasions = [
  { name: "pre-season, first session", field: "2026-08-18", gym: "2026-08-20", after: false, seed: 20260818 },
  { name: "pre-season, second session", field: "2026-08-25", gym: "2026-08-27", after: false, seed: 20260825 },
  { name: "retest after the block", field: "2026-10-27", gym: "2026-10-29", after: true, seed: 20261027 },
] as const;

export type TestDayRow = {
  readonly athlete: Member;
  /** The name as it was typed. */
  readonly typed: string;
  /** One for each heading. */
  readonly cells: readonly (number | string)[];
};

export type TestDay = {
  /** Name of the sheet, e.g. "Field 18 Aug". */
  readonly sheet: string;
  readonly occasion: number;
  readonly place: "field" | "gym";
  readonly date: Date;
  readonly title: string;
  readonly headings: readonly string[];
  readonly rows: readonly TestDayRow[];
};

/** All test days of the season in the order of their dates. */
export function testDays(): readonly TestDay[] {
  const truths = trueScores();
  return occasions.flatMap(({ name, seed, after, ...dates }, occasion) => {
    const chance = chanceFrom(seed);
    return (["field", "gym"] as const).map((place): TestDay => {
      const date = new Date(`${dates[place]}T00:00:00Z`);
      const sheet = `${place === "field" ? "Field" : "Gym"} ${date.getUTCDate()} ${monthOf(date)}`;
      const keys = testKeys.filter((key) => testOf(key).day === place);
      const headings = keys.flatMap(headingsOf);
      const rows = squad
        .map((athlete) => ({
          athlete,
          typed: athlete.name,
          cells: keys.flatMap((key) =>
            measure(key, { athlete, truth: truths.get(athlete.name)!, occasion, after, chance }),
          ),
        }))
        .filter(({ athlete }) => takesPart(athlete.name, after))
        .map((row) => withPlanted(row, sheet, headings, after));
      return {
        sheet,
        occasion,
        place,
        date,
        title: `${place === "field" ? "Field" : "Gym"} tests, ${name}`,
        headings,
        rows,
      };
    });
  });
}

const monthOf = (date: Date): string => date.toLocaleString("en-GB", { month: "short", timeZone: "UTC" });

/** Headings as a coach writes them: test, side, trial, and the unit in brackets. */
export function headingsOf(key: TestKey): string[] {
  const { heading, unit, sides, trials }: BatteryTest = testOf(key);
  const trialNumbers = Array.from({ length: trials }, (_, trial) => (trials === 1 ? "" : ` ${trial + 1}`));
  if (isLift(key)) return [`${heading} load (kg)`, `${heading} reps`];
  if (key === "sprint")
    return trialNumbers.flatMap((trial) => gates.map((gate) => `${heading} ${gate} m${trial} (${unit})`));
  return (sides === 2 ? [" left", " right"] : [""]).flatMap((side) =>
    trialNumbers.map((trial) => `${heading}${side}${trial} (${unit})`),
  );
}

const takesPart = (athlete: string, after: boolean): boolean =>
  after ? athlete !== overdue.athlete : athlete !== lateJoiner.athlete;

type Attempted = {
  readonly athlete: Member;
  readonly truth: TruthOfAthlete;
  readonly occasion: number;
  readonly after: boolean;
  readonly chance: Chance;
};

/** One athlete's results of one test on one day, in the order of its headings. */
function measure(key: TestKey, { athlete, truth, occasion, after, chance }: Attempted): number[] {
  const { sides, trials, step }: BatteryTest = testOf(key);
  const { before, change, difference } = truth[key];
  const { trial, session } = noise[key];
  const { deviation } = chance;
  const ofTheDay = before * (after ? 1 + change / 100 : 1) * (1 + (session / 100) * deviation());
  const ofTrial = () => 1 + (trial / 100) * deviation();

  if (isLift(key)) return lift(ofTheDay, before * (after ? 1 + change / 100 : 1), step, deviation());
  if (key === "sprint") {
    return Array.from({ length: trials }, () =>
      sprintTimes(ofTheDay * ofTrial(), truth.timeConstant).map((time) =>
        rounded(time + gateError * deviation(), step),
      ),
    ).flat();
  }
  const swapped = athlete.name === swappedSides.athlete && key === swappedSides.test && occasion === 1;
  const shares = sides === 1 ? [1] : [1 - difference / 2, 1 + difference / 2];
  const drawn = (swapped ? shares.reverse() : shares).flatMap((share) =>
    Array.from({ length: trials }, () => rounded(ofTheDay * share * ofTrial(), step)),
  );
  return athlete.name === lucky.athlete && key === lucky.test ? [...lucky.trials[occasion]!] : drawn;
}

/**
 * Load and repetitions to failure: the coach judges the maximum within some 4 % and takes plates of 2.5 kg; each repetition
 * more is a thirtieth of the load more (Epley's relation).
 */
function lift(maximumOfTheDay: number, maximum: number, plate: number, misjudged: number): number[] {
  const load = rounded(shareOfMaximum * maximum * (1 + 0.04 * misjudged), plate);
  return [load, Math.max(1, Math.round(30 * (maximumOfTheDay / load - 1)))];
}

/** To the step of the instrument, without the tail that binary fractions leave. */
const rounded = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(2));

function withPlanted(row: TestDayRow, sheet: string, headings: readonly string[], after: boolean): TestDayRow {
  const { name } = row.athlete;
  if (after && name === injured.athlete) return { ...row, cells: row.cells.map(() => "inj") };
  const cells = [...row.cells];
  for (const slip of slips) {
    const column = headings.indexOf(slip.heading);
    if (slip.athlete === name && slip.sheet === sheet) cells[column] = rounded(Number(cells[column]) * slip.times, 1);
  }
  if (implausible.athlete === name && implausible.sheet === sheet) {
    cells[headings.indexOf(implausible.heading)] = implausible.typed;
  }
  const typed = misspelt.athlete === name && misspelt.sheet === sheet ? misspelt.typed : row.typed;
  return { ...row, typed, cells };
}
