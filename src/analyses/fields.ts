import { z } from "zod";
import { atStart, say } from "../language/say";

/** What a field of an analysis says about itself; from it come pickers, form controls, headings and formats. */
export type FieldMeta = {
  readonly label: string;
  /** One or two plain sentences: what the number means. */
  readonly meaning: string;
  /** "as measured" stands for the unit of the coach's own column. */
  readonly unit?: string;
  /** Number format; "as measured" has the decimals of the coach's own results, "finer" one more. */
  readonly format?: string;
  readonly quiet?: boolean;
  /** The column is left out where no row has anything to say in it. */
  readonly whereSaid?: boolean;
  /** Words for the values of a choice. */
  readonly choices?: Readonly<Record<string, string>>;
};

const described = <Schema extends z.ZodType>(schema: Schema, meta: FieldMeta): Schema => schema.meta(meta) as Schema;

/* Fields of an answer: one column each. `null` is an empty cell. */

export const text = (label: string, meaning: string) => described(z.string(), { label, meaning });

/** A text of which most answers have nothing to say; the column is there only where one has. */
export const textWhereSaid = (label: string, meaning: string) =>
  described(z.string(), { label, meaning, whereSaid: true });

export const measured = (label: string, meaning: string) =>
  described(z.number().nullable(), { label, meaning, unit: "as measured", format: "as measured" });

/** A number in the unit of the results that is computed from many of them, hence worth one more decimal. */
export const derived = (label: string, meaning: string) =>
  described(z.number().nullable(), { label, meaning, unit: "as measured", format: "finer" });

export const percent = (label: string, meaning: string) =>
  described(z.number().nullable(), { label, meaning, unit: "%", format: "0.0" });

/** A percentage with a direction: its sign is always shown. */
export const signedPercent = (label: string, meaning: string) =>
  described(z.number().nullable(), { label, meaning, unit: "%", format: "+0.0;-0.0;0.0" });

/** A number without a unit, such as a correlation. */
export const index = (label: string, meaning: string) =>
  described(z.number().nullable(), { label, meaning, format: "0.00" });

export const count = (label: string, meaning: string) => described(z.number().int(), { label, meaning, format: "0" });

/** A number of whole steps that not every row has: a rank, a percentile rank, a T score. */
export const place = (label: string, meaning: string) =>
  described(z.number().nullable(), { label, meaning, format: "0" });

/** A number without a unit whose sign is always shown, such as a z score. */
export const signedIndex = (label: string, meaning: string) =>
  described(z.number().nullable(), { label, meaning, format: "+0.00;-0.00;0.00" });

/** A number in a unit of its own, whatever the unit of the results: kg on the bar, m/s, W. */
export const quantity = (label: string, meaning: string, unit: string, format: string) =>
  described(z.number().nullable(), { label, meaning, unit, format });

/** As `quantity`, for a column that is there only where a row has something to say in it. */
export const quantityWhereSaid = (label: string, meaning: string, unit: string, format: string) =>
  described(z.number().nullable(), { label, meaning, unit, format, whereSaid: true });

/** A column that only serves the chart; it is written last and in grey. */
export const forChart = (label: string, meaning: string) =>
  described(z.number().nullable(), { label, meaning, unit: "%", format: "+0.0;-0.0;0.0", quiet: true });

/** As `forChart`, for a number without a unit. */
export const indexForChart = (label: string, meaning: string) =>
  described(z.number().nullable(), { label, meaning, format: "+0.00;-0.00;0.00", quiet: true });

/* Settings: one control each, with a default. */

/** A choice among few; `choices` maps each value to its words, in the order shown, the default first. */
export const choice = <const Value extends string>(
  label: string,
  meaning: string,
  choices: Readonly<Record<Value, string>>,
) => {
  const values = Object.keys(choices) as [Value, ...Value[]];
  return z.enum(values).default(values[0]).meta({ label, meaning, choices });
};

/** A number in a unit, from `low` to `high`. */
export const amount = (
  label: string,
  meaning: string,
  unit: string,
  { low, high, initial }: { readonly low: number; readonly high: number; readonly initial: number },
) => z.number().min(low).max(high).default(initial).meta({ label, meaning, unit });

export const share = (label: string, meaning: string, low: number, high: number, initial: number) =>
  amount(label, meaning, "%", { low, high, initial });

/* Settings that several analyses share; `testFacts.ts` says what "as set up" comes to. */

export const scoredBy = (label: string, meaning: string) =>
  choice(label, meaning, {
    asSetUp: say`As set up, else the best trial`,
    best: say`Best trial`,
    mean: say`Mean of all trials`,
    median: say`Middle trial`,
    meanOfBestTwo: say`Mean of the best two`,
  });

export const betterIs = () =>
  choice(
    say`Better is`,
    say`Whether a larger result is the better one, as in a jump, or a smaller one, as in a sprint time. The battery says it where it knows the test; else a time counts as better when shorter, all else when larger.`,
    {
      asSetUp: say`As set up, else by the unit`,
      higher: atStart(say`higher`),
      lower: atStart(say`lower`),
    },
  );
