import { atStart } from "../say";

/**
 * What German needs of the words that fill a place. English words that the code puts there as they are (a side, a
 * counted noun) are turned here; a word that is German already passes unchanged.
 */

/** "3 athletes" with a German noun: the number is taken from what stands in the place. */
export function counted(place: string, one: string, several: string): string {
  const count = /^[\d.,]+/.exec(place)?.[0] ?? place;
  return `${count} ${count === "1" ? one : several}`;
}

/** "left and right" as "links und rechts". */
export const side = (place: string): string =>
  place
    .replace(/\bleft\b/g, "links")
    .replace(/\bright\b/g, "rechts")
    .replace(/\bLeft\b/g, "Links")
    .replace(/\bRight\b/g, "Rechts")
    .replace(" and ", " und ");

/** The side before a noun: "linke", "rechte", or with another ending. */
export const sided = (place: string, ending = "e"): string =>
  side(place)
    .replace(/links/i, `link${ending}`)
    .replace(/rechts/i, `recht${ending}`);

/** Which results are better: "höher", "niedriger". */
export const direction = (place: string): string =>
  place.replace(/\bhigher\b/g, "höher").replace(/\blower\b/g, "niedriger");

const errors: Readonly<Record<string, string>> = {
  "#N/A": "#NV",
  "#VALUE!": "#WERT!",
  "#REF!": "#BEZUG!",
  "#NUM!": "#ZAHL!",
  "#SPILL!": "#ÜBERLAUF!",
  "#CALC!": "#KALK!",
};

/** An error value as German Excel shows it. */
export const errorShown = (place: string): string => errors[place] ?? place;

/** TRUE and FALSE as German Excel shows them. */
export const truthShown = (place: string): string => place.replace("TRUE", "WAHR").replace("FALSE", "FALSCH");

// Names of quantities that refusals take from the code as they are.
const quantities: Readonly<Record<string, string>> = {
  "10 m time": "10-m-Zeit",
  "20 m time": "20-m-Zeit",
  "505 time": "Zeit des 505",
  age: "Alter",
  average: "Mittel",
  bar: "Stange",
  "body height": "Körpergröße",
  "body mass": "Körpergewicht",
  cap: "Obergrenze",
  "capacity score": "Wert der Kraftausdauer",
  confidence: "Vertrauensniveau",
  "contact time": "Kontaktzeit",
  correction: "Korrektur",
  "countermovement jump": "Countermovement Jump",
  dates: "Daten",
  direction: "Richtung",
  distance: "Strecke",
  distances: "Strecken",
  "distance run": "gelaufene Strecke",
  divisor: "Teiler",
  earlier: "früher",
  "earlier result": "früheres Ergebnis",
  exponent: "Exponent",
  "final speed": "Endtempo",
  "flight time": "Flugzeit",
  "force of the jump": "Kraft des Sprungs",
  "force of the pull": "Kraft des Zugs",
  "half-stage": "halbe Stufe",
  "hand time": "Handzeit",
  "hop distance": "Sprungweite",
  "interval time": "Intervalldauer",
  "jump height": "Sprunghöhe",
  "last half-stage": "letzte halbe Stufe",
  "last week's total": "Summe der letzten Woche",
  later: "später",
  "later result": "späteres Ergebnis",
  left: "links",
  "left score": "linker Wert",
  level: "Stufe",
  load: "Last",
  loads: "Lasten",
  masses: "Körpergewichte",
  maximum: "Maximum",
  "minimum velocity threshold": "Geschwindigkeit beim Maximum",
  minutes: "Zahl der Minuten",
  "net impulse": "Nettoimpuls",
  pairs: "Paare",
  "peak force of the jump": "Spitzenkraft des Sprungs",
  "peak force of the pull": "Spitzenkraft des Zugs",
  percent: "Prozentsatz",
  "percentage of the speed": "Anteil des Tempos",
  plates: "Scheiben",
  rating: "Bewertung",
  "reference length": "Bezugslänge",
  repetitions: "Zahl der Wiederholungen",
  "repetitions in reserve": "Zahl der Wiederholungen in Reserve",
  reserve: "Reserve",
  right: "rechts",
  "right score": "rechter Wert",
  "running time": "Laufzeit",
  score: "Wert",
  seconds: "Zahl der Sekunden",
  "session load": "Belastung der Einheit",
  sex: "Geschlecht",
  span: "Spanne",
  speed: "Tempo",
  "split time": "Zwischenzeit",
  "squat jump": "Squat Jump",
  stage: "Stufe",
  "standard deviation between athletes": "Standardabweichung zwischen den Athlet:innen",
  start: "Start",
  statures: "Körpergrößen",
  stature: "Körpergröße",
  strength: "Kraft",
  "take-off velocity": "Absprunggeschwindigkeit",
  "target load": "Ziellast",
  "this week's total": "Summe dieser Woche",
  threshold: "Schwelle",
  "time of the straight 10 m": "Zeit der geraden 10 m",
  "time to take-off": "Zeit bis zum Absprung",
  times: "Zeiten",
  "typical error": "typischer Fehler",
  "typical error of the 505": "typischer Fehler des 505",
  "typical error of the splits": "typischer Fehler der Zwischenzeiten",
  uncertainty: "Unsicherheit",
  velocities: "Geschwindigkeiten",
  velocity: "Geschwindigkeit",
  weight: "Gewicht",
};

/** The name of a quantity; with a capital where it stood with one at the head of a sentence. */
export function quantity(place: string): string {
  const small = place.charAt(0).toLowerCase() + place.slice(1);
  const name = quantities[small];
  if (name === undefined) return place;
  return small === place ? name : atStart(name);
}

/** Units that have no symbol but a word. */
const units: Readonly<Record<string, string>> = { repetitions: "Wiederholungen", rating: "Punkte" };

export const unitShown = (place: string): string => units[place] ?? place;

const absences: Readonly<Record<string, string>> = {
  "a dash": "ein Strich",
  "a mark for no valid trial": "kein gültiger Versuch",
  "did not start": "nicht angetreten",
  "did not finish": "nicht beendet",
  "did not test": "nicht getestet",
  "not available": "nicht verfügbar",
  "no trial": "kein Versuch",
  injured: "verletzt",
  ill: "krank",
  absent: "abwesend",
  "a foul": "ungültig",
};

/** Why a trial is missing, by the word typed in its cell. */
export const absent = (place: string): string => absences[place] ?? place;
