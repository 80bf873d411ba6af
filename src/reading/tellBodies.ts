import { isPlausibleBody, unitOfBodies } from "./bodyFacts";
import type { DescribedColumn } from "./describeColumn";

/**
 * Headings with two meanings, told by the rest of the sheet: "Weight" beside repetitions is what was lifted, and
 * "Height" is a stature only where its numbers can be one; else it is how high a jump was.
 */
export const tellBodies = (columns: readonly DescribedColumn[]): DescribedColumn[] =>
  columns.map((column) => {
    const { heading } = column;
    if (heading.body === null || isBody(column, columns)) return column;
    const measure = heading.body === "bodyMass" ? ("load" as const) : ("jumpHeight" as const);
    return { ...column, heading: { ...heading, body: null, measure, stem: "" } };
  });

function isBody({ heading, middle }: DescribedColumn, columns: readonly DescribedColumn[]): boolean {
  const words = heading.words.join(" ");
  if (["weight", "gewicht"].includes(words)) return !columns.some(isPlainRepetitions);
  if (!["height", "höhe"].includes(words) || middle === null) return true;
  return heading.unit ? isPlausibleBody("stature", middle, heading.unit) : unitOfBodies("stature", middle) !== null;
}

const isPlainRepetitions = ({ heading }: DescribedColumn): boolean =>
  heading.stem === "" && (heading.measure === "repetitions" || heading.unit?.quantity === "count");
