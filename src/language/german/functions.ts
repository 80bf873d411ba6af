import type { Catalogue } from "../say";
import { quantity } from "./grammar";

/** German of src/functions. */
export const functions: Catalogue = {
  // asymmetry
  "formula of asymmetry": "Formel des Seitenunterschieds",
  // asymmetryNoise
  "The left cells have {0} rows, the right cells {1}; each row is one athlete.":
    "Die Zellen links haben {0} Zeilen, die Zellen rechts {1}; jede Zeile ist eine Athlet:in.",
  poor: "schlecht",
  slight: "gering",
  fair: "mäßig",
  moderate: "mittel",
  substantial: "beachtlich",
  "almost perfect": "fast vollkommen",
  "source of noise": "Quelle des Rauschens",
  "first differences": "erste Unterschiede",
  "second differences": "zweite Unterschiede",
  // border
  "meaning of zero": "Bedeutung von null",
  "“{0}” is text. Type it as a number.": "„{0}“ ist Text. Tippe es als Zahl.",
  "The cell shows an error; a {0} is needed.": (what) =>
    `Die Zelle zeigt einen Fehler; gebraucht wird: ${quantity(what)}.`,
  "“{0}” is no {1}. Use {2} or {3}.": (word, what, words, last) =>
    `„${word}“ passt hier nicht (${quantity(what)}). Nimm ${words} oder ${last}.`,
  "There are {0} cells with {1} and {2} with {3}; they belong together one by one.": (
    ofFirst,
    first,
    ofSecond,
    second,
  ) =>
    `Ungleich viele Zellen: ${quantity(first)} ${ofFirst}, ${quantity(second)} ${ofSecond}; sie gehören Zelle für Zelle zusammen.`,
  "The {0} is missing.": (what) => `Es fehlt: ${quantity(what)}.`,
  "The {0} must be 1, 2, 3 or more; {1} is not.": (what, value) =>
    `Hier geht nur 1, 2, 3 oder mehr, nicht ${value} (${quantity(what)}).`,
  "The {0} must be above zero; {1} is not.": (what, value) =>
    `Der Wert muss über null liegen, nicht bei ${value} (${quantity(what)}).`,
  "way to score trials": "Weg vom Versuch zum Wert",
  // change
  "degrees of freedom": "Zahl der Freiheitsgrade",
  "typical error": "typischer Fehler",
  "smallest worthwhile change": "kleinste bedeutsame Veränderung",
  "minimal detectable change": "kleinste nachweisbare Veränderung",
  Difference: "Unterschied",
  "Improved beyond noise": "Über dem Rauschen verbessert",
  "Declined beyond noise": "Über dem Rauschen verschlechtert",
  "False alarms expected each way": "Erwartete Fehlalarme je Richtung",
  "Chance of any false alarm": "Chance auf irgendeinen Fehlalarm",
  "Mean change": "Mittlere Veränderung",
  "Standard deviation of the changes": "Standardabweichung der Veränderungen",
  "Degrees of freedom": "Freiheitsgrade",
  "p (two-sided)": "p (zweiseitig)",
  "Hedges g, average spread": "Hedges g, mittlere Streuung",
  "Hedges g, earlier spread": "Hedges g, frühere Streuung",
  "earlier results": "frühere Ergebnisse",
  "later results": "spätere Ergebnisse",
  "Athletes in the first group": "Athlet:innen in der ersten Gruppe",
  "Athletes in the second group": "Athlet:innen in der zweiten Gruppe",
  "Mean of the first group": "Mittel der ersten Gruppe",
  "Mean of the second group": "Mittel der zweiten Gruppe",
  "t (Welch)": "t (Welch)",
  "Hedges g": "Hedges g",
  "intraclass correlation": "Intraklassenkorrelation",
  "squad mean": "Mittel des Kaders",
  // endurance
  "sex for the equation": "Geschlecht für die Formel",
  "at least": "mindestens",
  "The level must be 1 or 2; {0} is not.": "Die Stufe ist 1 oder 2, nicht {0}.",
  Median: "Median",
  "Stopped at the cap": "An der Obergrenze abgebrochen",
  "Lower quartile": "Unteres Quartil",
  "Upper quartile": "Oberes Quartil",
  // jumps
  "The equation {0} needs the body heights in cm as fourth argument.":
    "Die Formel {0} braucht die Körpergrößen in cm als viertes Argument.",
  "power equation": "Leistungsformel",
  // load
  "first day": "erster Tag",
  "last day": "letzter Tag",
  "meaning of a day without sessions": "Bedeutung eines Tages ohne Einheiten",
  "number of days": "Zahl der Tage",
  "number of reported days": "Zahl der gemeldeten Tage",
  Total: "Summe",
  "Days reported": "Gemeldete Tage",
  "Standard deviation": "Standardabweichung",
  "form of the ratio": "Form des Verhältnisses",
  "Largest day": "Größter Tag",
  "Largest four days in a row": "Größte vier Tage in Folge",
  // loadVelocity
  "Velocity without load (m/s)": "Geschwindigkeit ohne Last (m/s)",
  "Load without velocity": "Last ohne Geschwindigkeit",
  "Slope (m/s per unit of load)": "Steigung (m/s je Einheit der Last)",
  "r squared": "r²",
  "velocity of a maximal lift": "Geschwindigkeit beim Maximum",
  "exercise with a known velocity of a maximal lift": "Übung mit bekannter Geschwindigkeit beim Maximum",
  // reliability
  "treatment of a shared shift": "Umgang mit einer gemeinsamen Verschiebung",
  "Athletes left out": "Weggelassene Athlet:innen",
  "Mean change, session 1 to 2": "Mittlere Veränderung, Termin 1 zu 2",
  "Typical error in percent": "Typischer Fehler in Prozent",
  "Smallest worthwhile change": "Kleinste bedeutsame Veränderung",
  "Minimal detectable change": "Kleinste nachweisbare Veränderung",
  "form of the intraclass correlation": "Form der Intraklassenkorrelation",
  From: "Von",
  To: "Zu",
  Pairs: "Paare",
  "first results": "erste Ergebnisse",
  "second results": "zweite Ergebnisse",
  "kind of confidence limits": "Art der Vertrauensgrenzen",
  "scale of agreement": "Skala der Übereinstimmung",
  "Mean ratio": "Mittleres Verhältnis",
  "Mean difference": "Mittlerer Unterschied",
  "Lower limit of agreement": "Untere Grenze der Übereinstimmung",
  "Upper limit of agreement": "Obere Grenze der Übereinstimmung",
  "spread between athletes": "Streuung zwischen den Athlet:innen",
  "share of the spread": "Anteil der Streuung",
  // spill
  Lower: "Untere Grenze",
  Upper: "Obere Grenze",
  "The ranges do not match: {0} has {1} rows, {2} has {3}.": (first, ofFirst, second, ofSecond) =>
    `Die Bereiche passen nicht zusammen: ${quantity(first)} hat ${ofFirst} Zeilen, ${quantity(second)} hat ${ofSecond}.`,
  "The ranges do not match: {0} has {1} columns, {2} has {3}.": (first, ofFirst, second, ofSecond) =>
    `Die Bereiche passen nicht zusammen: ${quantity(first)} hat ${ofFirst} Spalten, ${quantity(second)} hat ${ofSecond}.`,
  "the {0}": (what) => quantity(what),
  // sprintCurves
  "kind of residuals": "Art der Residuen",
  "the body height": "die Körpergröße",
  // standing
  "step of the instrument": "Schritt des Messgeräts",
  "rule for ties": "Regel bei Gleichstand",
  "kind of percentile rank": "Art des Prozentrangs",
  "test {0}": "Test {0}",
  weights: "Gewichte",
  directions: "Richtungen",
  "There are {0} tests and {1} {2}; each test has one.": "Es sind {0} Tests und {1} {2}; jeder Test hat eins davon.",
  // strength
  "strength equation": "Kraftformel",
  "way to round": "Art zu runden",
  "weight of the bar": "Gewicht der Stange",
};
