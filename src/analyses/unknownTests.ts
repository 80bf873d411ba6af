import { isBodyUse } from "../reading/columns";
import type { MeasureKey } from "../reading/measures";
import type { Reading } from "../reading/readResults";
import { unitOf } from "../reading/units";
import type { Background } from "../store/background";
import { type BatteryTest, isEntered } from "../store/battery";
import { isSameName } from "../store/sameName";
import { groupBy } from "./groupBy";
import { jumpNamed } from "./jumps/jumpNames";
import { nameOf } from "./seriesOf";
import { isTurnTest } from "./sprints/turnNames";

/** A series of results whose test is in no row of the battery. */
export type UnknownTest = {
  readonly test: string;
  readonly measure: MeasureKey | null;
  /** How a coach calls it, e.g. "Sprint, 10 m". */
  readonly name: string;
  /** Rows of the battery that may mean the same, the likeliest first; often none. */
  readonly near: readonly BatteryTest[];
};

/**
 * Series that the battery does not know by their test's name, so that neither quality nor direction nor range of the
 * battery hold for them, each with the rows it may be: of the same words in any order ("10 m sprint" and the 10 m of
 * "Sprint"), of a name within the other ("505" and "505 change of direction"), or of another name for the same jump or
 * turn. Units of another kind are never near. None where there is no battery.
 */
export function unknownTests({ results }: Pick<Reading, "results">, { battery }: Background): UnknownTest[] {
  if (battery.length === 0) return [];
  const unknown = results.filter(
    ({ test, measure }) =>
      test !== "" && !(measure !== null && isBodyUse(measure)) && !battery.some((row) => isSameName(row.test, test)),
  );
  return [...groupBy(unknown, nameOf)].map(([name, own]) => {
    const { test, measure, unit } = own[0]!;
    const ranked = battery
      .filter((row) => isEntered(row) && isSameKind(row.unit, unit))
      .map((row) => ({ row, likeness: likeness({ test, measure }, row) }))
      .filter((one) => one.likeness > 0)
      .sort((a, b) => b.likeness - a.likeness);
    return { test, measure, name, near: ranked.map(({ row }) => row) };
  });
}

type Named = { readonly test: string; readonly measure: MeasureKey | null };

/** 3: the same words; 2: another name for the same; 1: a name within the other; 0: not near. */
function likeness(one: Named, other: Named): 0 | 1 | 2 | 3 {
  const [words, others] = [wordsOf(nameOf(one)), wordsOf(nameOf(other))];
  if (isWithin(words, others) && isWithin(others, words)) return 3;
  if (one.measure !== other.measure) return 0;
  const jump = jumpNamed(one.test);
  if (jump !== null && jump === jumpNamed(other.test)) return 2;
  if (isTurnTest(one.test) && isTurnTest(other.test)) return 2;
  return isWithin(words, others) || isWithin(others, words) ? 1 : 0;
}

/** Words of a name as they are compared: "10m" and "10 m" are one, and the small words say nothing. */
const wordsOf = (name: string): ReadonlySet<string> =>
  new Set((name.toLowerCase().match(/\p{L}+|\p{N}+/gu) ?? []).filter((word) => !smallWords.includes(word)));

const smallWords: readonly string[] = ["test", "the", "of", "a", "in", "time"];

const isWithin = (words: ReadonlySet<string>, others: ReadonlySet<string>): boolean =>
  words.size > 0 && [...words].every((word) => others.has(word));

function isSameKind(one: string | null, other: string | null): boolean {
  const [first, second] = [unitOf(one ?? ""), unitOf(other ?? "")];
  return !first || !second || first.quantity === second.quantity;
}
