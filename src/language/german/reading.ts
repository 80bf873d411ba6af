import type { Catalogue } from "../say";
import { absent, errorShown, quantity, truthShown } from "./grammar";

/** German of src/reading. */
export const reading: Catalogue = {
  // cellReader
  "Part of the merged cells {0}: no value of its own.": "Teil der verbundenen Zellen {0}: kein eigener Wert.",
  "Empty: taken as a missing trial.": "Leer: als fehlender Versuch genommen.",
  "{0} is not a possible result; it must be above zero.": "{0} ist kein mögliches Ergebnis; es muss über null liegen.",
  // inOneUnit
  "No unit is given, and this test has results in {0}.": (units) =>
    `Keine Einheit angegeben, und dieser Test hat Ergebnisse in ${units.replaceAll(" and ", " und ")}.`,
  "{0} {1} cannot be given in {2}, as this test is.": "{0} {1} lässt sich nicht in {2} ausdrücken, wie dieser Test.",
  // readBodies
  "{0} was not used: the unit is not known.": "{0} wurde nicht verwendet: Die Einheit ist nicht bekannt.",
  "{0} {1} cannot be a {2}; it was not used.": (value, unit, what) =>
    `${value} ${unit} ist nicht möglich (${quantity(what)}) und wurde nicht verwendet.`,
  // readDate
  "The cell shows the error {0}; a date is needed.": (error) =>
    `Die Zelle zeigt den Fehler ${errorShown(error)}; gebraucht wird ein Datum.`,
  "{0} is not a date.": (value) => `${truthShown(value)} ist kein Datum.`,
  "{0} is not a date from 1990 to 2099.": "{0} ist kein Datum von 1990 bis 2099.",
  "“{0}” is not a date.": "„{0}“ ist kein Datum.",
  "“{0}” could be two days; type it as a date, or as {1}-MM-DD.":
    "„{0}“ könnte zwei Tage meinen; tippe es als Datum oder als {1}-MM-TT.",
  "“{0}” is not a date from 1990 to 2099.": "„{0}“ ist kein Datum von 1990 bis 2099.",
  // readNames
  "{0} (row {1})": "{0} (Zeile {1})",
  "“{0}” was read as “{1}”, as you said.": "„{0}“ wurde als „{1}“ gelesen, wie du gesagt hast.",
  "“{0}” also stands in {1}. The two rows were kept apart.":
    "„{0}“ steht auch in {1}. Die zwei Zeilen wurden getrennt gehalten.",
  "“{0}” looks like “{1}” in {2}. They were kept apart; give them one spelling if they are one person.":
    "„{0}“ sieht aus wie „{1}“ in {2}. Sie wurden getrennt gehalten; gib ihnen eine Schreibweise, wenn dieselbe Athlet:in gemeint ist.",
  "The cell shows the error {0}; a name is needed.": (error) =>
    `Die Zelle zeigt den Fehler ${errorShown(error)}; gebraucht wird ein Name.`,
  "No name stands here; the row was left out.": "Hier steht kein Name; die Zeile wurde weggelassen.",
  "The name has a blank before or after it; read as “{0}”.":
    "Vor oder nach dem Namen steht ein Leerzeichen; gelesen als „{0}“.",
  // readNumber
  "{0} is not a number.": (value) => `${truthShown(value)} ist keine Zahl.`,
  "The cell shows the error {0}.": (error) => `Die Zelle zeigt den Fehler ${errorShown(error)}.`,
  "“{0}” stands for {1}: no trial.": (text, absence) => `„${text}“ heißt: ${absent(absence)}. Kein Versuch.`,
  "“{0}” is text; a number is needed.": "„{0}“ ist Text; gebraucht wird eine Zahl.",
  "“{0}” could be thousands or decimals; type it as a number.":
    "„{0}“ könnte Tausender oder Dezimalen meinen; tippe es als Zahl.",
  "Text “{0}” was read as {1}.": "Der Text „{0}“ wurde als {1} gelesen.",
  "“{0}” carries a unit, but the column's unit is not set.":
    "„{0}“ trägt eine Einheit, aber die Einheit der Spalte ist nicht gesetzt.",
  "“{0}” is in {1}, the column in {2}.": "„{0}“ ist in {1}, die Spalte in {2}.",
  "Text “{0}” was read as {1} {2}.": "Der Text „{0}“ wurde als {1} {2} gelesen.",
  "{0} cannot be a result.": "{0} kann kein Ergebnis sein.",
  // readResults
  "The row{0} is hidden and was left out.": "Die Zeile{0} ist ausgeblendet und wurde weggelassen.",
  " of {0}": " von {0}",
  // rowReader
  "The cell shows the error {0}; the row was read without it.": (error) =>
    `Die Zelle zeigt den Fehler ${errorShown(error)}; die Zeile wurde ohne sie gelesen.`,
  "“{0}” is no measure known here; its results were read as the test “{1}”.":
    "„{0}“ ist hier kein bekannter Messwert; die Ergebnisse wurden als Test „{1}“ gelesen.",
  "“{0}” is no unit known here; its results were read without a unit.":
    "„{0}“ ist hier keine bekannte Einheit; die Ergebnisse wurden ohne Einheit gelesen.",
  "“{0}” is no number of a trial; the trial is numbered by its row.":
    "„{0}“ ist keine Nummer eines Versuchs; der Versuch wird nach seiner Zeile nummeriert.",
  "No side is given; left or right is needed.": "Es ist keine Seite angegeben; gebraucht wird links oder rechts.",
  "“{0}” is neither left nor right.": "„{0}“ ist weder links noch rechts.",
  // unitSlips
  "{0}{1} is about {2} times too {3} for this test: another unit, or a slip of the comma?": (
    value,
    unit,
    factor,
    way,
  ) =>
    `${value}${unit} ist für diesen Test etwa ${factor}-mal zu ${way.replace("small", "klein").replace("large", "groß")}: eine andere Einheit oder ein verrutschtes Komma?`,
  // units
  reps: "Wdh.",
};
