import { bodyUses, type ColumnUse } from "./columns";
import type { DescribedColumn } from "./describeColumn";
import { computedWords, otherNumbers } from "./vocabulary";

/** What each column is used for, in the order of the columns: those of the whole row first, then the results. */
export function assignUses(columns: readonly DescribedColumn[]): ColumnUse[] {
  const uses = columns.map((): ColumnUse => "none");
  const free = (column: DescribedColumn) => column.selected && uses[column.offset] === "none";
  const give = (use: ColumnUse, candidates: readonly DescribedColumn[]) => {
    const column = candidates.find(free);
    if (column) uses[column.offset] = use;
    return column;
  };
  const named = (use: ColumnUse) => columns.filter(({ heading }) => heading.named === use);

  give("athlete", named("athlete"));
  const side = give("side", columns.filter(holdsSides));
  for (const use of ["attempt", "test", "measure", "unit", "date", "group"] as const) give(use, named(use));
  for (const use of bodyUses) {
    give(
      use,
      columns.filter(({ heading }) => heading.body === use),
    );
  }
  if (!uses.includes("athlete"))
    give(
      "athlete",
      columns.filter(({ texts, numbers }) => texts > numbers),
    );

  const candidates = columns.filter(free).filter(({ heading }) => heading.named !== "athlete" && heading.body === null);
  for (const column of side ? resultsOfRows(candidates) : resultsOfColumns(candidates)) {
    uses[column.offset] = (side ? null : column.heading.side) ?? "result";
  }
  return uses;
}

const holdsSides = ({ sides, texts, numbers }: DescribedColumn): boolean =>
  sides > 0 && sides >= 0.6 * (texts + numbers);

const isNumeric = ({ numbers, texts }: DescribedColumn): boolean => numbers > 0 && numbers >= texts;

const speaksOf = ({ heading }: DescribedColumn, words: readonly string[]): boolean =>
  heading.measure === null && heading.words.some((word) => words.includes(word));

/** Beside a column of sides: the columns that say what they hold, else the last column of numbers. */
function resultsOfRows(columns: readonly DescribedColumn[]): readonly DescribedColumn[] {
  const numeric = columns.filter((column) => isNumeric(column) && !speaksOf(column, otherNumbers));
  const named = columns.filter(({ heading }) => heading.named === "result" || heading.measure !== null);
  const inUnit = named.filter(({ heading }) => heading.measure !== null || heading.unit !== null);
  if (inUnit.length > 0) return withPartners(inUnit, numeric);
  const measured = numeric.filter(({ heading }) => heading.unit !== null);
  if (measured.length > 0) return measured.filter((column) => !speaksOf(column, computedWords));
  if (named.length > 0) return named.slice(0, 1);
  const numbered = numeric.filter(({ heading }) => heading.isNumbered);
  return numbered.length > 0 ? numbered : numeric.slice(-1);
}

/** "Squat (kg)" beside "Reps": a column in a unit goes along where the others are measures. */
const withPartners = (
  found: readonly DescribedColumn[],
  numeric: readonly DescribedColumn[],
): readonly DescribedColumn[] =>
  found.every(({ heading }) => heading.measure !== null)
    ? [...found, ...numeric.filter((column) => !found.includes(column) && column.heading.unit !== null)]
    : found;

/** Where headings name the sides, or nothing does: sides and trials, and numbers under a unit or a measure; else all numbers under the name of a test. */
function resultsOfColumns(columns: readonly DescribedColumn[]): readonly DescribedColumn[] {
  const open = columns.filter((column) => !speaksOf(column, computedWords) && !isBestOf(column, columns));
  const sided = open.filter(({ heading }) => heading.side !== null && heading.named === null);
  const others = open.filter(
    (column) => !sided.includes(column) && isNumeric(column) && !speaksOf(column, otherNumbers),
  );
  const told = others.filter(({ heading }) => {
    const { unit, measure, named, isNumbered } = heading;
    return unit !== null || measure !== null || named === "result" || isNumbered;
  });
  const found = [...sided, ...told];
  return found.length > 0 ? found : others.filter(({ heading }) => heading.stem !== "");
}

/** "Hop L best" beside "Hop L 1" and "Hop L 2" is one of them once more. */
function isBestOf({ heading }: DescribedColumn, columns: readonly DescribedColumn[]): boolean {
  if (!heading.words.some((word) => bestWords.includes(word))) return false;
  const rest = heading.stem
    .toLowerCase()
    .split(" ")
    .filter((word) => !bestWords.includes(word))
    .join(" ");
  return columns.some(
    ({ heading: other }) =>
      other.isNumbered && other.side === heading.side && (rest === "" || rest === other.stem.toLowerCase()),
  );
}

const bestWords: readonly string[] = ["best", "max", "maximum", "beste", "bestes"];
