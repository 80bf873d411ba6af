import type { Catalogue } from "../say";
import { counted } from "./grammar";

/** German of src/sheet. */
export const sheet: Catalogue = {
  // createStoreTable
  "One of these is needed: {0}.": "Gebraucht wird eines von diesen: {0}.",
  "Not in the list": "Nicht in der Liste",
  "Choose one from the list, or leave the cell empty.": "Wähle aus der Liste, oder lass die Zelle leer.",
  // createTable
  "{0} chart": "{0} Diagramm",
  // fillPage
  "Picture {0}": "Bild {0}",
  // insertExample
  "Wrote an example into {0}": "Beispiel in {0} geschrieben",
  // keepDiary
  "Wrote nothing.": "Nichts geschrieben.",
  "Added one entry to {0}.": "Einen Eintrag auf „{0}“ hinzugefügt.",
  "Added {0} entries to {1}.": "{0} Einträge auf „{1}“ hinzugefügt.",
  // keepResults
  "Kept nothing new.": "Nichts Neues übernommen.",
  "1 result": "1 Ergebnis",
  "{0} results": "{0} Ergebnisse",
  "Kept {0} on {1}.": "{0} auf „{1}“ übernommen.",
  "Renewed {0} on {1}.": "{0} auf „{1}“ erneuert.",
  "Kept {0} and renewed {1} on {2}.": "{0} auf „{2}“ übernommen und {1} erneuert.",
  // makeEntrySheet
  "Made {0}.": "{0} angelegt.",
  Mind: "Beachten",
  "Is this right?": "Stimmt das?",
  // marks
  "Check: ": "Prüfen: ",
  "The marks in this workbook were made by a newer version of the add-in.":
    "Die Markierungen in dieser Mappe stammen von einer neueren Fassung des Add-Ins.",
  "Marked {0}": "{0} markiert",
  "1 cell": "1 Zelle",
  "{0} cells": "{0} Zellen",
  "Cleared the marks": "Markierungen gelöscht",
  // removeAthlete
  "Removed {0} from {1}.": (athlete, tables) => `${athlete} aus ${counted(tables, "Tabelle", "Tabellen")} entfernt.`,
  // removeAthleteTraces
  "What is remembered in this workbook was written by a newer version of the add-in.":
    "Was in dieser Mappe gemerkt ist, stammt von einer neueren Fassung des Add-Ins.",
  "{0}!{1} (note)": "{0}!{1} (Notiz)",
  // renewPlanned
  "1 row": "1 Zeile",
  "{0} rows": "{0} Zeilen",
  "Wrote {0} on {1}{2}.": "{0} auf „{1}“ geschrieben{2}.",
  ", and left {0} of yours as they were": ", {0} von dir belassen, wie sie waren",
  // repairFormulas
  "Repaired {0}": "{0} repariert",
  "1 formula": "1 Formel",
  "{0} formulas": "{0} Formeln",
  // replaceByValues
  "Replaced {0} by values": "{0} durch Werte ersetzt",
  // reportLines
  "Read from {0} on {1}: {2}.": "Gelesen aus {0} am {1}: {2}.",
  "Below the table: how it was computed.": "Unter der Tabelle: wie gerechnet wurde.",
  "Below the table: how it was computed, and {0} to keep in mind.":
    "Unter der Tabelle: wie gerechnet wurde, und was zu bedenken ist ({0}).",
  "one thing": "ein Punkt",
  "{0} things": "{0} Punkte",
  "Nothing was left out.": "Nichts wurde weggelassen.",
  "{0} left out.": "{0} weggelassen.",
  "1 cell was": "1 Zelle wurde",
  "{0} cells were": "{0} Zellen wurden",
  "How it was computed": "Wie gerechnet wurde",
  "Keep in mind": "Zu bedenken",
  "Left out ({0})": "Weggelassen ({0})",
  // rewriteRows
  "No column is headed “{0}”; without it nothing can be renewed.":
    "Keine Spalte heißt „{0}“; ohne sie lässt sich nichts erneuern.",
  "The row of totals is in the way; switch it off for the table to grow.":
    "Die Ergebniszeile ist im Weg; schalte sie aus, damit die Tabelle wachsen kann.",
  "Cells below the table are in the way; move them for the table to grow.":
    "Zellen unter der Tabelle sind im Weg; verschiebe sie, damit die Tabelle wachsen kann.",
  // setUp
  "Set up nothing: all tables stand.": "Nichts eingerichtet: Alle Tabellen stehen schon.",
  "Set up {0}.": "Eingerichtet: {0}.",
  // storeTables
  "This table was found by its name: what the workbook remembers of our tables was written by a newer version of the add-in, or is damaged.":
    "Diese Tabelle wurde an ihrem Namen gefunden: Was die Mappe sich von unseren Tabellen merkt, stammt von einer neueren Fassung des Add-Ins oder ist beschädigt.",
  // trySample
  "Made “{0}”": "„{0}“ angelegt",
  // writeComparison
  "The comparison in this workbook was chosen in a newer version of the add-in.":
    "Der Vergleich in dieser Mappe wurde in einer neueren Fassung des Add-Ins gewählt.",
  "Changed whom athletes are compared with.": "Geändert, mit wem verglichen wird.",
  // writePages
  Page: "Seite",
  "1 page": "1 Seite",
  "{0} pages": "{0} Seiten",
  "an earlier one, which is": "einer früheren, die nicht zurückgeholt wird",
  "{0} earlier ones, which are": "{0} früheren, die nicht zurückgeholt werden",
  "Wrote {0}.": "{0} geschrieben.",
  "Wrote {0}, in place of {1} not brought back.": "{0} geschrieben, anstelle von {1}.",
  // writePriorities
  "There is no row for this priority, or no column headed “Coach's choice” and “Coach's reason”.":
    "Für diese Priorität gibt es keine Zeile, oder keine Spalte heißt „Eigene Wahl“ und keine „Eigener Grund“.",
  "Overruled a priority of {0} on {1}.": "{1}: bei einer Priorität von {0} anders entschieden.",
  // writeReport
  "Renewed {0}!{1}": "{0}!{1} erneuert",
  "Wrote {0}!{1}": "{0}!{1} geschrieben",
  // writeWeights
  "No column is headed “Quality”; no weight can be placed.":
    "Keine Spalte heißt „Fähigkeit“; kein Gewicht lässt sich eintragen.",
  "Cells beside or below the table are in the way; move them for it to grow.":
    "Zellen neben oder unter der Tabelle sind im Weg; verschiebe sie, damit sie wachsen kann.",
  "Wrote weights on {0}.": "{0}: Gewichte geschrieben.",
};
