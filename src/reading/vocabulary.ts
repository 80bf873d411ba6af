import { say } from "../language/say";
/** The words by which coaches head their columns, English and German, in lower case. */
export const headingWords = {
  athlete: [
    "athlete",
    "athletes",
    "name",
    "player",
    "players",
    "athletin",
    "athlet",
    "spielerin",
    "spieler",
    "surname",
  ],
  side: ["side", "leg", "limb", "foot", "arm", "hand", "seite", "bein", "fuß", "fuss"],
  attempt: ["trial", "attempt", "try", "jump no", "trial no", "attempt no", "versuch", "nr", "no", "set"],
  date: ["date", "day", "session", "datum", "tag"],
  test: ["test", "test name", "exercise", "task", "übung"],
  measure: ["measure", "measurement", "metric", "variable", "quantity", "messgröße", "kenngröße", "kennwert"],
  unit: ["unit", "units", "einheit"],
  group: ["group", "role", "position", "team", "squad", "line", "gruppe", "rolle", "mannschaft"],
  result: ["result", "distance", "value", "score", "weite", "ergebnis", "wert", "mark", "best"],
} as const;

/** Words of columns that describe the athlete, or the way of the test, and are no results. */
export const otherNumbers = [
  ...["mass", "weight", "stature", "height", "age", "born", "birth", "year", "jersey", "shirt", "number", "bmi"],
  ...["gewicht", "größe", "alter", "jahrgang", "nummer", "rank", "rang", "id"],
] as const;

/** Words of columns that a coach computed from the trials beside them: no results of their own. */
export const computedWords = [
  ...["mean", "average", "avg", "sum", "total", "difference", "diff", "asymmetry", "symmetry", "lsi", "sd", "cv"],
  ...["mittelwert", "mittel", "schnitt", "summe", "differenz"],
] as const;

/** Headings of body mass and stature. The last two of each are a body's only where no test stands beside them. */
export const bodyWords = {
  bodyMass: [
    ...["body mass", "bodymass", "body weight", "bodyweight", "mass", "bm", "bw", "körpergewicht", "körpermasse"],
    ...["weight", "gewicht"],
  ],
  stature: [
    ...["stature", "standing height", "body height", "körpergröße", "körperhöhe", "größe"],
    ...["height", "höhe"],
  ],
} as const;

export const leftWords = ["left", "lft", "lt", "l", "links", "li"] as const;
export const rightWords = ["right", "rgt", "rt", "r", "rechts", "re"] as const;

/** What coaches type for a trial that was not done or did not count. Each is a missing trial, never a zero. */
export const absenceWords: Readonly<Record<string, string>> = {
  "-": "a dash",
  "–": "a dash",
  "—": "a dash",
  x: "a mark for no valid trial",
  dns: "did not start",
  dnf: "did not finish",
  dnt: "did not test",
  "n/a": "not available",
  na: "not available",
  nt: "no trial",
  inj: "injured",
  injured: "injured",
  injury: "injured",
  ill: "ill",
  sick: "ill",
  abs: "absent",
  absent: "absent",
  foul: "a foul",
  verletzt: "injured",
  krank: "ill",
};

export type Side = "left" | "right";

/** The side as it stands in a sentence and in a cell. */
export const wordOfSide = (side: Side): string => (side === "left" ? say`left` : say`right`);

/** The side a word names, "left" for "L", "links" ..; null where it names none. */
export function sideOf(word: string): Side | null {
  const wanted = word.trim().toLowerCase().replace(/\.$/, "");
  if ((leftWords as readonly string[]).includes(wanted)) return "left";
  if ((rightWords as readonly string[]).includes(wanted)) return "right";
  return null;
}
