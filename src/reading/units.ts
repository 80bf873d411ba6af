import { say } from "../language/say";

/** Units a coach writes in a heading or behind a number, and how they convert. */
export type Unit = {
  /** The symbol we show. */
  readonly symbol: string;
  readonly quantity: "length" | "time" | "mass" | "speed" | "force" | "power" | "count" | "ratio";
  /** How many of the quantity's base unit (m, s, kg, m/s, N, W, 1, %) one of this unit is. */
  readonly toBase: number;
  readonly spellings: readonly string[];
};

/** Exact by definition (inch, foot, pound: international yard and pound, 1959). */
export const units: readonly Unit[] = [
  { symbol: "cm", quantity: "length", toBase: 0.01, spellings: ["cm", "centimetre", "centimetres", "centimeter"] },
  { symbol: "m", quantity: "length", toBase: 1, spellings: ["m", "metre", "metres", "meter", "meters"] },
  { symbol: "mm", quantity: "length", toBase: 0.001, spellings: ["mm"] },
  { symbol: "in", quantity: "length", toBase: 0.0254, spellings: ["in", "inch", "inches", '"', "zoll"] },
  { symbol: "ft", quantity: "length", toBase: 0.3048, spellings: ["ft", "foot", "feet"] },
  { symbol: "s", quantity: "time", toBase: 1, spellings: ["s", "sec", "secs", "second", "seconds", "sek", "sekunden"] },
  { symbol: "ms", quantity: "time", toBase: 0.001, spellings: ["ms", "msec"] },
  { symbol: "kg", quantity: "mass", toBase: 1, spellings: ["kg", "kgs", "kilo", "kilos"] },
  { symbol: "lb", quantity: "mass", toBase: 0.45359237, spellings: ["lb", "lbs", "pound", "pounds"] },
  { symbol: "m/s", quantity: "speed", toBase: 1, spellings: ["m/s", "mps"] },
  { symbol: "km/h", quantity: "speed", toBase: 1 / 3.6, spellings: ["km/h", "kmh", "kph"] },
  { symbol: "N", quantity: "force", toBase: 1, spellings: ["n", "newton", "newtons"] },
  { symbol: "W", quantity: "power", toBase: 1, spellings: ["w", "watt", "watts"] },
  { symbol: "reps", quantity: "count", toBase: 1, spellings: ["reps", "rep", "repetitions", "wdh"] },
  { symbol: "%", quantity: "ratio", toBase: 1, spellings: ["%", "percent", "prozent"] },
];

/** A unit as it is shown: its symbol, or its word in the language spoken. */
export const wordOfUnit = (symbol: string): string => (symbol === "reps" ? say`reps` : symbol);

export const unitOf = (spelling: string): Unit | null => {
  const wanted = spelling.trim().toLowerCase().replace(/\.$/, "");
  return units.find((unit) => unit.spellings.includes(wanted)) ?? null;
};

/** `value` of one unit in another of the same quantity; null where the quantities differ. */
export const convert = (value: number, from: Unit, to: Unit): number | null =>
  from.quantity === to.quantity ? (value * from.toBase) / to.toBase : null;

/** Columns are numbered by the trial at most this far: a larger number in a heading is part of a name. */
export const mostTrials = 12;

/** The unit in a heading, e.g. "cm" of "Left 1 (cm)", "Left 1 [cm]", "Left 1, cm" or "Left 1 cm"; and the rest. */
export function splitHeading(heading: string): { name: string; unit: Unit | null } {
  const text = heading.trim().replace(/\s+/g, " ");
  const bracketed = /^(.*?)\s*[([]\s*([^()[\]]+?)\s*[)\]]\s*(.*)$/.exec(text);
  if (bracketed) {
    const unit = unitOf(bracketed[2]!);
    if (unit) return { name: `${bracketed[1]} ${bracketed[3]}`.trim(), unit };
  }
  const trailing = /^(.+?)(\s*,\s*|\s+in\s+|\s+)([A-Za-z/%"]+)$/.exec(text);
  if (trailing) {
    const [, name, between, spelling] = trailing as unknown as [string, string, string, string];
    const unit = unitOf(spelling);
    // "Hop m" may be a column of metres; "L" or "R" never are units, and one letter alone is too little to go by.
    const isSaid = spelling.length > 1 || between.trim() !== "";
    // "Drop jump 40 cm" is a jump from 40 cm; "Left 1 cm" is the first trial.
    const isQuantity = between.trim() === "" && Number(/\d+$/.exec(name)?.[0] ?? 0) > mostTrials;
    if (unit && isSaid && !isQuantity) return { name: name.trim(), unit };
  }
  return { name: text, unit: null };
}
