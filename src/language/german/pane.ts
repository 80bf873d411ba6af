import type { Catalogue } from "../say";
import { counted, errorShown } from "./grammar";

/** Cells with their errors, "A1 (#N/A)", as German Excel shows these. */
const errorsShown = (cells: string): string => cells.replace(/#[A-Z/0]+[!?]?/g, errorShown);

/** German of src/pane. */
export const pane: Catalogue = {
  // words/functions
  "This cell": "Diese Zelle",
  "Select a cell with a TAPELINE formula: here stands what it asks and, should it show an error, why.":
    "Wähle eine Zelle mit einer TAPELINE-Formel: Hier steht, was sie fragt und, wenn sie einen Fehler zeigt, warum.",
  "{0} asks {1}": "{0} fragt {1}",
  "left out": "weggelassen",
  "Why it shows {0}": (error) => `Warum dort ${errorShown(error)} steht`,
  "The reason can be found only for cells and values; {0} is worked out by another formula. In general:": (parts) =>
    `Der Grund ist nur bei Zellen und Werten zu finden; ${parts} ${parts.includes(" und ") ? "kommen" : "kommt"} aus einer anderen Formel. Allgemein:`,
  "The function itself answers now. The error comes from the rest of the formula, or the cell waits to be calculated.":
    "Die Funktion selbst antwortet jetzt. Der Fehler kommt aus dem Rest der Formel, oder die Zelle wartet auf die Berechnung.",
  "The cells cannot answer the question: too few results, or results that are no possible ones.":
    "Die Zellen können die Frage nicht beantworten: zu wenig Ergebnisse, oder solche, die nicht möglich sind.",
  "A part of the call is not what the function takes: text in place of a number, several cells for one value, or a word it does not know.":
    "Ein Teil des Aufrufs passt nicht zur Funktion: Text statt einer Zahl, mehrere Zellen statt eines Werts, oder ein unbekanntes Wort.",
  "The workbook does not know the function. Repair the formulas below; if that does not help, check its name.":
    "Die Arbeitsmappe kennt die Funktion nicht. Repariere unten die Formeln; hilft das nicht, prüfe den Namen.",
  "The answer needs more cells than are free. Empty the cells below and beside it.":
    "Die Antwort braucht mehr Zellen, als frei sind. Leere die Zellen darunter und daneben.",
  "It is being calculated.": "Sie wird gerade berechnet.",
  "Cells the formula refers to have been deleted.": "Zellen, auf die sich die Formel bezieht, wurden gelöscht.",
  "A number is outside what the function can take.": "Eine Zahl liegt außerhalb dessen, was die Funktion annimmt.",
  "Something in the formula is divided by zero or by an empty cell.":
    "Etwas in der Formel wird durch null oder durch eine leere Zelle geteilt.",
  "The answer has no cells.": "Die Antwort hat keine Zellen.",
  "The error comes from a cell the formula refers to.":
    "Der Fehler kommt aus einer Zelle, auf die sich die Formel bezieht.",
  "All functions": "Alle Funktionen",
  "Search by name or by what you want to know": "Suche nach Namen oder nach dem, was du wissen willst",
  "Nothing found. Try another word.": "Nichts gefunden. Versuch ein anderes Wort.",
  "{0} found": "{0} gefunden",
  "may be left out": "darf fehlen",
  Gives: "Ergibt",
  Example: "Beispiel",
  "Typed by hand, some languages of Excel want a semicolon between the parts.":
    "Von Hand getippt verlangen manche Sprachen von Excel, auch Deutsch, ein Semikolon zwischen den Teilen.",
  "Put the example into the active cell": "Beispiel in die aktive Zelle schreiben",
  "Written into {0}. Put your own cells in place of its numbers.":
    "In {0} geschrieben. Setze deine eigenen Zellen an die Stelle der Zahlen.",
  "Nothing was written: {0} is not empty. Select a free cell.":
    "Nichts geschrieben: {0} ist nicht leer. Wähle eine freie Zelle.",
  "Nothing was written: {0} is merged. Select a free cell.":
    "Nichts geschrieben: {0} ist verbunden. Wähle eine freie Zelle.",
  "Nothing was written: the answer fills several cells, which the table {0} does not allow.":
    "Nichts geschrieben: Die Antwort füllt mehrere Zellen, und das geht in der Tabelle {0} nicht.",
  "Nothing was written: the answer would reach over the edge of the sheet.":
    "Nichts geschrieben: Die Antwort würde über den Rand des Blatts reichen.",
  "Repair and share": "Reparieren und weitergeben",
  "Formulas that show #NAME?, because they were opened or typed before Tapeline was there, are written once more.":
    "Formeln, die #NAME? zeigen, weil sie vor Tapeline geöffnet oder getippt wurden, werden noch einmal geschrieben.",
  "Repair formulas": "Formeln reparieren",
  "All TAPELINE formulas are known. Nothing was changed.": "Alle TAPELINE-Formeln sind bekannt. Nichts wurde geändert.",
  "{0} written anew: {1}.": "{0} neu geschrieben: {1}.",
  "Still not known: {0}. Check the names of the functions, or load Tapeline again.":
    "Noch nicht bekannt: {0}. Prüfe die Namen der Funktionen, oder lade Tapeline noch einmal.",
  "People without Tapeline see errors once their workbook calculates. Before you share it, replace our formulas by their values. They no longer follow your results then: keep a copy of the workbook.":
    "Wer Tapeline nicht hat, sieht Fehler, sobald die Mappe rechnet. Ersetze vor dem Weitergeben unsere Formeln durch ihre Werte. Sie folgen deinen Ergebnissen dann nicht mehr: Behalte eine Kopie der Mappe.",
  Where: "Wo",
  "In the selected cells": "In den ausgewählten Zellen",
  "On this sheet": "Auf diesem Blatt",
  "In the whole workbook": "In der ganzen Mappe",
  "Replace formulas by values": "Formeln durch Werte ersetzen",
  "There is no TAPELINE formula with a value there. Nothing was changed.":
    "Dort steht keine TAPELINE-Formel mit einem Wert. Nichts wurde geändert.",
  "{0} replaced: {1}.": "{0} ersetzt: {1}.",
  "Left as formulas, since they show an error: {0}.": (cells) =>
    `Als Formeln belassen, da sie einen Fehler zeigen: ${errorsShown(cells)}.`,
  "Errors that stand among the values now: {0}.": (cells) =>
    `Fehler, die jetzt unter den Werten stehen: ${errorsShown(cells)}.`,
  "Working…": "In Arbeit …",
  "1 formula was": "1 Formel wurde",
  "{0} formulas were": "{0} Formeln wurden",
  "{0} and {1} more places": "{0} und {1} weitere Stellen",
  missing: "fehlt",
  // words
  Tapeline: "Tapeline",
  "What is “{0}”?": "Was ist „{0}“?",
  "One moment…": "Einen Moment …",
  "Reading the results…": "Ergebnisse werden gelesen …",
  "What do you want to do?": "Was möchtest du tun?",
  "‹ Start": "‹ Start",
  Understand: "Verstehen",
  "Plan and deliver": "Planen und umsetzen",
  "Was it real? What next?": "War es echt? Was nun?",
  "In your own cells": "In deinen eigenen Zellen",
  "Squad and tests": "Kader und Tests",
  "Who is in the squad, and what are they tested on?": "Wer ist im Kader, und was wird getestet?",
  "Sheet for a test day": "Blatt für einen Testtag",
  "Make a sheet to type or pencil today's results into.":
    "Ein Blatt, um die Ergebnisse von heute einzutippen oder mit Bleistift einzutragen.",
  "Keep results": "Ergebnisse übernehmen",
  "Put results into the workbook's own table, each of them once.":
    "Ergebnisse in die Tabelle der Mappe übernehmen, jedes einmal.",
  "What should each athlete work on first, and why?": "Woran soll jede Athlet:in zuerst arbeiten, und warum?",
  "Plan a block": "Block planen",
  "Which exercises, sets and loads follow from the priorities?":
    "Welche Übungen, Sätze und Lasten folgen aus den Prioritäten?",
  "Sessions and diary": "Einheiten und Tagebuch",
  "Print session sheets, and keep a diary of what was done.":
    "Pläne für die Einheiten drucken und ein Tagebuch darüber führen, was gemacht wurde.",
  "Training load": "Trainingsbelastung",
  "How much was done week by week, and what has changed?":
    "Wie viel wurde Woche für Woche gemacht, und was hat sich verändert?",
  "Who changed, who did the work": "Wer sich verändert, wer gearbeitet hat",
  "Did the block show in the retests, and what comes next?":
    "Hat sich der Block in den Retests gezeigt, und was kommt als Nächstes?",
  "Pages for athletes": "Seiten für Athlet:innen",
  "A page for each athlete: where they stand, and what to work on.":
    "Eine Seite je Athlet:in: der Stand, und woran zu arbeiten ist.",
  Functions: "Funktionen",
  "Which TAPELINE functions are there for your own formulas?":
    "Welche TAPELINE-Funktionen gibt es für deine eigenen Formeln?",
  "Next step": "Nächster Schritt",
  "Ask a question of any results you select, or set up squad and tests to keep results over the season.":
    "Frag beliebige ausgewählte Ergebnisse etwas, oder richte Kader und Tests ein, um Ergebnisse über die Saison zu behalten.",
  "Set up squad and tests": "Kader und Tests einrichten",
  "{0} and {1} are set up. Next come results.": "{0} und {1} sind eingerichtet. Als Nächstes kommen Ergebnisse.",
  "Make a sheet for a test day": "Blatt für einen Testtag anlegen",
  "There are results. Ask them anything below, then decide what to work on.":
    "Es gibt Ergebnisse. Frag sie unten, was du willst, und entscheide dann, woran zu arbeiten ist.",
  "See priorities": "Prioritäten ansehen",
  "The priorities are written. Overrule them where you know better, then plan.":
    "Die Prioritäten sind geschrieben. Entscheide anders, wo du es besser weißt, und plane dann.",
  "The block is under way: {0} left.": "Der Block läuft: noch {0}.",
  "Print sessions, keep the diary": "Einheiten drucken, Tagebuch führen",
  "The block is over and new results are in.": "Der Block ist vorbei, und neue Ergebnisse sind da.",
  "{0}: {1} for {2}.": "{0}: {1} bei {2}.",
  "not tested yet": "noch nicht getestet",
  "a retest is due": "Retest fällig",
  "And {0}.": "Und {0}.",
  "No diary entry for {0} days.": "Seit {0} Tagen kein Eintrag im Tagebuch.",
  "Last thing written": "Zuletzt geschrieben",
  "Take back": "Zurücknehmen",
  "Taking back…": "Wird zurückgenommen …",
  "You have changed cells since": "Du hast seitdem Zellen geändert",
  "Taking back would overwrite {0}{1}.": "Zurücknehmen würde überschreiben: {0}{1}.",
  " and more": " und mehr",
  "Take back all the same": "Trotzdem zurücknehmen",
  "Reading the workbook…": "Die Arbeitsmappe wird gelesen …",
  "In this workbook": "In dieser Mappe",
  "{0} numbers to test": "{0} Messwerte zu testen",
  "no roles yet": "noch keine Rollen",
  "weights for {0}": "Gewichte für {0}",
  "one row for each result": "eine Zeile je Ergebnis",
  "Plain tables: change, add and delete rows as you like; add columns of your own.":
    "Einfache Tabellen: Ändere, ergänze und lösche Zeilen, wie du willst; füge eigene Spalten hinzu.",
  "{0} in these tables cannot be used": "{0} in diesen Tabellen nicht brauchbar",
  "{0} in what you have selected on “{1}”:": "{0} in deiner Auswahl auf „{1}“:",
  "Select your list of names (with its headings) on any sheet, or start with an empty table.":
    "Wähle deine Namensliste (samt Überschriften) auf einem beliebigen Blatt, oder beginne mit einer leeren Tabelle.",
  " and {0} more": " und {0} weitere",
  Tests: "Tests",
  "Ready-made sets to start from. Everything in them can be changed in the table.":
    "Fertige Zusammenstellungen für den Anfang. Alles darin lässt sich in der Tabelle ändern.",
  "Set up on {0}": (sheets) => `Auf ${counted(sheets, "neuem Blatt", "neuen Blättern")} einrichten`,
  "Squad and tests first": "Zuerst Kader und Tests",
  "A sheet for a test day is made from the squad and the tests of this workbook.":
    "Ein Blatt für einen Testtag entsteht aus dem Kader und den Tests dieser Mappe.",
  When: "Wann",
  "Day of the test": "Tag des Tests",
  "Which tests": "Welche Tests",
  Other: "Andere",
  "Who: {0}": "Wer: {0}",
  "No role": "Keine Rolle",
  "Make a sheet to test {0} again": "Blatt anlegen, um {0} noch einmal zu testen",
  "Only the athletes who are to be tested again.": "Nur wer noch einmal getestet werden soll.",
  "Choose at least one test": "Wähle mindestens einen Test",
  "Make “{0}” for {1}": "„{0}“ für {1} anlegen",
  "Made: {0}": "Angelegt: {0}",
  "Type results there, or print it and take a pencil. Afterwards:":
    "Tippe Ergebnisse dort ein, oder drucke es und nimm einen Bleistift. Danach:",
  "There is no table of results yet": "Es gibt noch keine Tabelle der Ergebnisse",
  "Set up squad and tests; the table of results comes with them.":
    "Richte Kader und Tests ein; die Tabelle der Ergebnisse kommt mit.",
  "Sheets for test days": "Blätter für Testtage",
  "nothing typed yet": "noch nichts eingetippt",
  "{0} typed": "{0} eingetippt",
  ", {0} cannot be read": ", {0} nicht lesbar",
  "Not found on the sheet, so not read: {0}. Write the headings as they were.":
    "Auf dem Blatt nicht gefunden, also nicht gelesen: {0}. Schreib die Überschriften, wie sie waren.",
  "Keep {0}": "{0} übernehmen",
  "Or select any cells with results.": "Oder wähle beliebige Zellen mit Ergebnissen.",
  "Day of these results": "Tag dieser Ergebnisse",
  "{0} cannot be kept": (results) => `${counted(results, "Ergebnis lässt", "Ergebnisse lassen")} sich nicht übernehmen`,
  "Nothing new": "Nichts Neues",
  "{0} kept": "{0} übernommen",
  "{0} corrected on the sheet since: renewed.": "{0} seitdem auf dem Blatt berichtigt: erneuert.",
  "{0} had been kept before.": (results) => `${counted(results, "Ergebnis war", "Ergebnisse waren")} schon übernommen.`,
  "Nothing was kept": "Nichts wurde übernommen",
  "{0}: {1}, {2}: {3} here, {4} in the table{5}.": "{0}: {1}, {2}: hier {3}, in der Tabelle {4}{5}.",
  " (from {0})": " (aus {0})",
  "{0} not kept: the table already holds another value for the same athlete, test and day.":
    "{0} nicht übernommen: In der Tabelle steht schon ein anderer Wert für dieselbe Athlet:in, denselben Test und Tag.",
  "No results are kept yet": "Noch keine Ergebnisse übernommen",
  "This rests on the workbook's own table of results.": "Das beruht auf der Tabelle der Ergebnisse in dieser Mappe.",
  "Nothing was written": "Nichts wurde geschrieben",
  "Written: {0}, {1}": "Geschrieben: {0}, {1}",
  "{0} of yours, or changed by you, stayed as they are.": "{0} von dir oder von dir geändert: unverändert gelassen.",
  "One thing is missing": "Eines fehlt",
  "{0} things are missing": "{0} Dinge fehlen",
  "And {0} more.": "Und {0} weitere.",
  "Priorities of {0}": "Prioritäten für {0}",
  "Show all {0}": "Alle {0} zeigen",
  "Show fewer": "Weniger zeigen",
  "At most for each athlete": "Höchstens je Athlet:in",
  "A short list is worked on; a long one is not.": "An einer kurzen Liste wird gearbeitet, an einer langen nicht.",
  "May train together": "Kann zusammen trainieren",
  "The weight of a quality for the role times how far the athlete stands below the squad. Common practice, no source: an aid to a conversation, not a diagnosis.":
    "Das Gewicht einer Fähigkeit für die Rolle mal dem Abstand unter dem Kader. Gängige Praxis, ohne Quelle: eine Hilfe fürs Gespräch, keine Diagnose.",
  "Write the priorities": "Prioritäten schreiben",
  "The block": "Der Block",
  "First day": "Erster Tag",
  "{0} to choose from": "{0} zur Auswahl",
  "From the table “Exercises” of this workbook.": "Aus der Tabelle „Übungen“ dieser Mappe.",
  "Ready-made ones. Put them into the workbook to change them.":
    "Fertige Übungen. Nimm sie in die Mappe auf, um sie zu ändern.",
  "Put them into the workbook": "In die Mappe aufnehmen",
  "Priorities first": "Zuerst Prioritäten",
  "A block is planned from the priorities in this workbook, with what you have decided otherwise.":
    "Ein Block wird aus den Prioritäten dieser Mappe geplant, mit dem, was du anders entschieden hast.",
  "A plan to start from: see every athlete lift before you load. Loads come from estimates, not from maxima; minors get basic exercises and keep three repetitions in reserve. After an injury the clinician in charge decides.":
    "Ein Plan für den Anfang: Sieh allen beim Heben zu, bevor du auflegst. Lasten kommen aus Schätzungen, nicht aus Maxima; Minderjährige bekommen Grundübungen und behalten drei Wiederholungen in Reserve. Nach einer Verletzung entscheiden die Behandelnden.",
  "Write the plan: {0} for {1}": "Plan schreiben: {0} für {1}",
  "There is nothing in the diary yet.": "Im Tagebuch steht noch nichts.",
  "{0} so far.": "Bisher {0}.",
  "A table with one row per athlete and session: minutes, rating, throws, jumps.":
    "Eine Tabelle mit einer Zeile je Athlet:in und Einheit: Minuten, Bewertung, Würfe, Sprünge.",
  "There is no plan to print yet": "Es gibt noch keinen Plan zum Drucken",
  "Session sheets": "Pläne für die Einheiten",
  "Which session": "Welche Einheit",
  "Laid out": "Aufteilung",
  "A page for each athlete": "Eine Seite je Athlet:in",
  "Make {0} to print": "{0} zum Drucken anlegen",
  "There is nothing in the diary yet": "Im Tagebuch steht noch nichts",
  "the table Tapeline_Diary": "der Tabelle Tapeline_Diary",
  "Whose weeks": "Wessen Wochen",
  "The squad's mean": "Mittel des Kaders",
  "Nothing to review yet": "Noch nichts zu überprüfen",
  "This holds the latest results against earlier ones of the same athletes, from another day.":
    "Hier werden die neuesten Ergebnisse mit früheren derselben Athlet:innen verglichen, von einem anderen Tag.",
  "Next cycle": "Nächster Zyklus",
  "Where the athlete stands, what to work on, what has changed since the last test, and what comes next. Nobody else's results are on it.":
    "Der Stand, woran zu arbeiten ist, was sich seit dem letzten Test verändert hat und was als Nächstes kommt. Ergebnisse anderer stehen nicht darauf.",
  "Personal data: hand each page to its athlete, or to the parents of a minor, and to nobody else.":
    "Persönliche Daten: Gib jede Seite der Athlet:in selbst, bei Minderjährigen den Eltern, und sonst niemandem.",
  "{0} made": "{0} angelegt",
  "Stopped after {0} of {1}": "Nach {0} von {1} angehalten",
  Stop: "Anhalten",
  "Not in squad or battery": "Nicht in Kader oder Testbatterie",
  "“{0}” is not in the battery: without quality, range and retest.":
    "„{0}“ ist nicht in der Testbatterie: ohne Fähigkeit, Bereich und Retest.",
  "Read as “{0}”": "Als „{0}“ gelesen",
  "Results from": "Ergebnisse aus",
  "The cells I select": "Den Zellen, die ich auswähle",
  "The workbook's table of results": "Der Tabelle der Ergebnisse",
  "One person or two?": "Eine Athlet:in oder zwei?",
  "One person: read as “{0}”": "Nur eine: als „{0}“ lesen",
  "“{0}” is read as “{1}”.": "„{0}“ wird als „{1}“ gelesen.",
  "Mark {0} on the sheet": "{0} auf dem Blatt markieren",
  "Clear all marks": "Alle Markierungen löschen",
  "{0} marked{1}.": "{0} markiert{1}.",
  "; not found: {0}": "; nicht gefunden: {0}",
  "There are no marks.": "Es gibt keine Markierungen.",
  "{0} cleared.": "{0} gelöscht.",
  "Nothing to read there": "Dort ist nichts zu lesen",
  "{0} holds no values.": "{0} enthält keine Werte.",
  "The workbook's results": "Die Ergebnisse der Mappe",
  "1 series of results": "1 Reihe von Ergebnissen",
  "{0} series of results": "{0} Reihen von Ergebnissen",
  "Read as the block of cells around {0}.": "Gelesen als der Block von Zellen um {0}.",
  "{0}, one row each; {1}{2}.": "{0}, je eine Zeile; {1}{2}.",
  "{0}, one row per attempt; {1}{2}.": "{0}, eine Zeile je Versuch; {1}{2}.",
  "Say below which columns to use.": "Gib unten an, welche Spalten zu nehmen sind.",
  " in {0}": " in {0}",
  ", unit not known": ", Einheit nicht bekannt",
  "Columns and unit": "Spalten und Einheit",
  "Column {0}": "Spalte {0}",
  "Side of each row": "Seite jeder Zeile",
  "Attempt number": "Nummer des Versuchs",
  "Role or group": "Rolle oder Gruppe",
  "What was measured": "Was gemessen wurde",
  "Unit of each row": "Einheit jeder Zeile",
  "Not used": "Nicht verwendet",
  "Unit of the results": "Einheit der Ergebnisse",
  "Not set": "Nicht gesetzt",
  "Which test": "Welcher Test",
  "(no name)": "(kein Name)",
  "Also read {0}": "Auch {0} lesen",
  "Read with a remark": "Mit Anmerkung gelesen",
  "{0} left out": "{0} weggelassen",
  "Show {0} more": "{0} weitere zeigen",
  "Go to {0}": "Gehe zu {0}",
  "How to judge": "Wie zu urteilen ist",
  "Type a number from {0} to {1} {2}.": "Tippe eine Zahl von {0} bis {1} {2} ein.",
  Answer: "Antwort",
  "Show the largest only": "Nur die größten zeigen",
  "No answer yet": "Noch keine Antwort",
  "Write to a new sheet “{0}”": "Auf ein neues Blatt „{0}“ schreiben",
  "Renew the table on “{0}”": "Tabelle auf „{0}“ erneuern",
  "Writing…": "Wird geschrieben …",
  "With formulas that follow the results": "Mit Formeln, die den Ergebnissen folgen",
  "Renewed: {0}, {1}": "Erneuert: {0}, {1}",
  "Your own cells were not touched. Change a result and press again: the same table is renewed.":
    "Deine eigenen Zellen wurden nicht berührt. Ändere ein Ergebnis und drücke noch einmal: Dieselbe Tabelle wird erneuert.",
  "Show me": "Zeigen",
  "Write to a new sheet instead": "Stattdessen auf ein neues Blatt",
  "The table on “{0}” was not changed": "Die Tabelle auf „{0}“ wurde nicht geändert",
  "Its headings were changed, so its columns cannot be told apart any more.":
    "Ihre Überschriften wurden geändert; deshalb sind ihre Spalten nicht mehr zu unterscheiden.",
  "It has a total row. Switch the total row off, or write to a new sheet.":
    "Sie hat eine Ergebniszeile. Schalte sie aus, oder schreib auf ein neues Blatt.",
  "It needs more rows, but below it stands something of yours: {0}.":
    "Sie braucht mehr Zeilen, aber darunter steht etwas von dir: {0}.",
  "It needs more columns, but there stands something of yours: {0}.":
    "Sie braucht mehr Spalten, aber dort steht etwas von dir: {0}.",
  "This workbook was last used with a newer Tapeline. Update the add-in, then try again.":
    "Diese Mappe wurde zuletzt mit einem neueren Tapeline benutzt. Aktualisiere das Add-In und versuch es noch einmal.",
  "The workbook did not let Tapeline do that": "Die Arbeitsmappe hat Tapeline das nicht erlaubt",
  "A cell is being edited. Press Enter or Esc in the sheet, then try again.":
    "Eine Zelle wird gerade bearbeitet. Drücke im Blatt Eingabe oder Esc und versuch es noch einmal.",
  "The sheet or the workbook is protected. Take the protection off, then try again.":
    "Das Blatt oder die Mappe ist geschützt. Hebe den Schutz auf und versuch es noch einmal.",
  "That is more than can be handled at once. Select fewer rows, then try again.":
    "Das ist mehr, als auf einmal geht. Wähle weniger Zeilen und versuch es noch einmal.",
  "It said: {0}": "Die Meldung: {0}",
  "Try again": "Nochmals versuchen",
  "Tapeline made a mistake": "Tapeline hat einen Fehler gemacht",
  "Your workbook was not changed by it. Load the pane again; if it happens once more, please report it.":
    "Deine Arbeitsmappe wurde davon nicht verändert. Lade den Bereich noch einmal; passiert es wieder, melde es bitte.",
  "Load again": "Noch einmal laden",
  "{0} of 1 page": "{0} von 1 Seite",
  "{0} of {1} pages": "{0} von {1} Seiten",
  "“{0}”": "„{0}“",
  " and ": " und ",
  "Keep apart": "Getrennt lassen",
  // words/many
  "1 day": "1 Tag",
  "{0} days": "{0} Tage",
  "1 entry": "1 Eintrag",
  "{0} entries": "{0} Einträge",
  "1 exercise": "1 Übung",
  "{0} exercises": "{0} Übungen",
  "1 hidden row": "1 ausgeblendete Zeile",
  "{0} hidden rows": "{0} ausgeblendete Zeilen",
  "1 mark": "1 Markierung",
  "{0} marks": "{0} Markierungen",
  "1 more place": "1 weitere Stelle",
  "{0} more places": "{0} weitere Stellen",
  "1 more test": "1 weiterer Test",
  "{0} more tests": "{0} weitere Tests",
  "1 new result": "1 neues Ergebnis",
  "{0} new results": "{0} neue Ergebnisse",
  "1 new sheet": "1 neues Blatt",
  "{0} new sheets": "{0} neue Blätter",
  "1 place": "1 Stelle",
  "{0} places": "{0} Stellen",
  "1 role": "1 Rolle",
  "{0} roles": "{0} Rollen",
  "1 sentence": "1 Satz",
  "{0} sentences": "{0} Sätze",
  "1 test number": "1 Messwert",
  "{0} test numbers": "{0} Messwerte",
  "1 weight": "1 Gewicht",
  "{0} weights": "{0} Gewichte",
  // words/deliver
  "Week {0}, session {1} (week of {2})": "Woche {0}, Einheit {1} (Woche ab {2})",
  "A list for each group": "Eine Liste je Gruppe",
  "One list for the squad": "Eine Liste für den Kader",
  "Without a group": "Ohne Gruppe",
  Paper: "Papier",
  Letter: "Letter (US)",
  // words/demands
  "What the sport asks for": "Was die Sportart verlangt",
  Sport: "Sportart",
  "Fills the table of weights with how much each quality counts for each role. Common practice, no source: change every number as you know your game.":
    "Füllt die Tabelle der Gewichte damit, wie viel jede Fähigkeit für jede Rolle zählt. Gängige Praxis, ohne Quelle: Ändere jede Zahl so, wie du dein Spiel kennst.",
  "No template: all count alike": "Keine Vorlage: alle zählen gleich",
  "{0} to write.": "{0} zu schreiben.",
  "The weights stand as the template has them.": "Die Gewichte stehen schon so wie in der Vorlage.",
  "The template does not know this role of the squad, so all counts 1 for it: {0}.":
    "Die Vorlage kennt diese Rolle des Kaders nicht, deshalb zählt für sie alles 1: {0}.",
  "The template does not know these roles of the squad, so all counts 1 for them: {0}.":
    "Die Vorlage kennt diese Rollen des Kaders nicht, deshalb zählt für sie alles 1: {0}.",
  "The template does not know what {0} may be: it counts 1.": "Die Vorlage weiß nicht, was {0} sein soll; das zählt 1.",
  "Asked for, but no test in the battery stands for it: {0}.":
    "Verlangt, aber kein Test der Testbatterie steht dafür: {0}.",
  "{0} in the table are your own": (weights) =>
    `${counted(weights, "Gewicht in der Tabelle ist dein eigenes", "Gewichte in der Tabelle sind deine eigenen")}`,
  "Keep mine, fill what is empty": "Meine behalten, Leeres füllen",
  "Replace mine, too": "Auch meine ersetzen",
  "Write the weights for {0}": "Gewichte für {0} schreiben",
  "Written: {0} on {1}": "Geschrieben: {0} auf {1}",
  "A plain table: change any number there.": "Eine einfache Tabelle: Ändere dort jede Zahl, wie du willst.",
  "What the game asks for, and where the squad is": "Was das Spiel verlangt, und wo der Kader steht",
  "What is asked of {0}, and where she or he stands": "{0}: was verlangt ist und wie der Stand ist",
  below: "darunter",
  above: "darüber",
  "As a table": "Als Tabelle",
  "One line for each athlete; dark: stands out by more than noise":
    "Ein Strich je Athlet:in; dunkel: Abstand über dem Rauschen",
  "Dark: for certain. Light: may be, by the noise of the tests":
    "Dunkel: sicher. Hell: möglich, je nach Rauschen der Tests",
  "{0} below, {1} above, of {2}": "{0} darunter, {1} darüber, von {2}",
  "{0}{1} points{2}: {3}": "{0}{1} Punkte{2}: {3}",
  ", noise not known": ", Rauschen nicht bekannt",
  "10 points are one standard deviation; 0 is the middle of those compared.":
    "10 Punkte sind eine Standardabweichung; 0 ist die Mitte derer, die verglichen werden.",
  // words/diary
  "Put an empty diary into the workbook": "Leeres Tagebuch in die Mappe aufnehmen",
  "A diary of your own": "Ein eigenes Tagebuch",
  "Keep one already? Select it on its sheet, with its headings: date, athlete, minutes, rating.":
    "Du führst schon eines? Wähle es auf seinem Blatt aus, samt Überschriften: Datum, Athlet:in, Minuten, Bewertung.",
  "{0} of {1}, {2} to {3}.": "{0} von {1}, {2} bis {3}.",
  "None of its rows names a day and an athlete.": "Keine der Zeilen nennt einen Tag und eine Athlet:in.",
  "Not used: {0}.": "Nicht verwendet: {0}.",
  "1 hidden row was not read.": "1 ausgeblendete Zeile wurde nicht gelesen.",
  "{0} hidden rows were not read.": "{0} ausgeblendete Zeilen wurden nicht gelesen.",
  "Not in the squad: {0}{1}. Their entries are taken as they are.":
    "Nicht im Kader: {0}{1}. Die Einträge werden genommen, wie sie sind.",
  "1 cell cannot be read": "1 Zelle ist nicht lesbar",
  "{0} cells cannot be read": "{0} Zellen sind nicht lesbar",
  "Add {0} to the diary": "{0} ins Tagebuch übernehmen",
  "{0} added": "{0} übernommen",
  "{0} stood there already.": (entries) => `${counted(entries, "Eintrag stand", "Einträge standen")} schon dort.`,
  "{0} not added: the diary holds other numbers for the same athlete, day and session. Correct them there.":
    "{0} nicht übernommen: Im Tagebuch stehen andere Zahlen für dieselbe Athlet:in, denselben Tag und dieselbe Einheit. Berichtige sie dort.",
  "Nothing was added": "Nichts wurde übernommen",
  // words/keep
  "{0} of 1 result": "{0} von 1 Ergebnis",
  "{0} of {1} results": "{0} von {1} Ergebnissen",
  "Stopped: nothing was kept": "Angehalten: Nichts wurde übernommen",
  "What had been written was taken back. The table is as it was before.":
    "Was schon geschrieben war, wurde zurückgenommen. Die Tabelle ist wie vorher.",
  // words/load
  "Everybody's": "Die aller",
  "Not counted in the diary: {0}. They tell something of a {1}.":
    "Im Tagebuch nicht gezählt: {0}. Bei der Rolle {1} sagen sie etwas aus.",
  "{0} by week: {1}": "{0} je Woche: {1}",
  "Mean of the four weeks before": "Mittel der vier Wochen davor",
  "Lowest to highest athlete": "Spanne der Athlet:innen",
  "Stands out": "Fällt auf",
  "week of {0}: {1}": "Woche ab {0}: {1}",
  "{0} Jan": "{0}. Jan.",
  "{0} Feb": "{0}. Feb.",
  "{0} Mar": "{0}. März",
  "{0} Apr": "{0}. Apr.",
  "{0} May": "{0}. Mai",
  "{0} Jun": "{0}. Juni",
  "{0} Jul": "{0}. Juli",
  "{0} Aug": "{0}. Aug.",
  "{0} Sep": "{0}. Sep.",
  "{0} Oct": "{0}. Okt.",
  "{0} Nov": "{0}. Nov.",
  "{0} Dec": "{0}. Dez.",
  // words/marks
  "You have rewritten the note there, so it stays: {0}.":
    "Du hast die Notiz dort umgeschrieben, deshalb bleibt sie: {0}.",
  "No mark stands any more at {0}. If rows were sorted since, it may have moved: look for notes that begin with “Check:” and for dashed frames, and take them off by hand.":
    "An diesen Stellen steht keine Markierung mehr: {0}. Wurden seitdem Zeilen sortiert, ist sie vielleicht gewandert: Suche nach Notizen, die mit „Check:“ beginnen, und nach gestrichelten Rahmen, und entferne sie von Hand.",
  // words/nextStep
  "The block is planned, and begins in {0}.": (days) =>
    `Der Block ist geplant und beginnt in ${counted(days, "Tag", "Tagen")}.`,
  "Print sessions": "Einheiten drucken",
  "The block is over. Test again to see what has changed.":
    "Der Block ist vorbei. Teste noch einmal, um zu sehen, was sich verändert hat.",
  "See who changed, and what comes next": "Ansehen, wer sich verändert hat und was nun kommt",
  "The new priorities are written. Overrule them where you know better, then plan the next block.":
    "Die neuen Prioritäten sind geschrieben. Entscheide anders, wo du es besser weißt, und plane dann den nächsten Block.",
  "Plan the next block": "Nächsten Block planen",
  "The block ends in {0}: get the retest ready.": (days) =>
    `Der Block endet in ${counted(days, "Tag", "Tagen")}: Bereite den Retest vor.`,
  // words/notSetUp
  "{0}{1}: not in the squad. Their results count all the same, without a role.":
    "{0}{1}: nicht im Kader. Die Ergebnisse zählen trotzdem, ohne Rolle.",
  "Read as it stands": "Lesen, wie es dasteht",
  "If it is “{0}”, give both tables the same name.": "Ist es „{0}“, gib ihm in beiden Tabellen denselben Namen.",
  // words/numbers
  "What the numbers mean": "Was die Zahlen bedeuten",
  "How it is worked out, and by whose method": "Wie gerechnet wird, und nach wessen Methode",
  // words/outcome
  "the tables Tapeline_Results and Tapeline_Diary": "den Tabellen Tapeline_Results und Tapeline_Diary",
  "What to see": "Was zu sehen ist",
  "The squad, test by test": "Der Kader, Test für Test",
  "Who did the work, who changed": "Wer gearbeitet, wer sich verändert hat",
  "Every change, in words": "Jede Veränderung, in Worten",
  "What comes next": "Was als Nächstes kommt",
  "The block from {0} to {1}.": "Der Block vom {0} bis zum {1}.",
  "No plan is kept, so it goes from the first test day to the last: {0} to {1}.":
    "Es gibt keinen Plan, deshalb geht es vom ersten Testtag bis zum letzten: {0} bis {1}.",
  "Better by what matters: {0}; worse: {1}.": "Bedeutsam besser: {0}; schlechter: {1}.",
  "Carried over": "Läuft weiter",
  New: "Neu",
  Done: "Erledigt",
  "Set aside": "Zurückgestellt",
  "To the new priorities": "Zu den neuen Prioritäten",
  "Attendance and mean change": "Anwesenheit und mittlere Veränderung",
  "Sessions attended (%)": "Besuchte Einheiten (%)",
  "over 99 %": "über 99 %",
  "under 1 %": "unter 1 %",
  // words/pages
  "For whom": "Für wen",
  "One page for the head coach": "Eine Seite für die Cheftrainer:in",
  About: "Über wen",
  "The whole squad": "Ganzer Kader",
  "A page for the head coach": "Eine Seite für die Cheftrainer:in",
  "What the game asks for and who stands out, who has changed for real, who was there, who is away or back, and what is next.":
    "Was das Spiel verlangt und wer auffällt, wer sich wirklich verändert hat, wer da war, wer fehlt oder zurück ist, und was als Nächstes kommt.",
  "Personal data: for the coaching staff, not for the notice board. It says who is away, never why; return from an injury is decided by those who treat the athlete.":
    "Persönliche Daten: für das Trainerteam, nicht fürs Schwarze Brett. Sie sagt, wer fehlt, nie warum; über die Rückkehr nach einer Verletzung entscheiden die Behandelnden.",
  "Make the page": "Seite anlegen",
  // words/priorities
  "Work on {0} earlier": "{0} früher angehen",
  "Work on {0} later": "{0} später angehen",
  "What to make of {0}, {1}": "Was mit {0} geschieht, {1}",
  "Instead: {0}": "Stattdessen: {0}",
  "instead of {0}": "statt {0}",
  "Why you decide so": "Warum du so entscheidest",
  "Why, {0} of {1}": "Warum, {0}, {1}",
  "Nothing was changed": "Nichts wurde geändert",
  "For {0} the rule says something else by now. Write the priorities to renew them: what you have decided stays.":
    "Für {0} sagt die Regel inzwischen etwas anderes. Schreib die Prioritäten, um sie zu erneuern: Was du entschieden hast, bleibt.",
  "Profile and numbers behind it": "Profil und Zahlen dahinter",
  "No ratios: they need drop jumps with contact times, squat jumps, peak forces, or sprints with split times.":
    "Keine Verhältniszahlen: Dafür braucht es Drop Jumps mit Kontaktzeiten, Squat Jumps, Spitzenkräfte oder Sprints mit Zwischenzeiten.",
  "Pain, or back from an injury: what is trained and tested is for those who treat the athlete to say. Maximal tests and heavy loads of under-18s only under qualified supervision.":
    "Schmerzen, oder zurück nach einer Verletzung: Was trainiert und getestet wird, sagen die Behandelnden. Maximaltests und schwere Lasten bei unter 18-Jährigen nur unter fachkundiger Aufsicht.",
  "Athletes are compared with": "Verglichen wird mit",
  "Whom each athlete's standing is reckoned among. It holds for priorities, pages and the next cycle alike, and is kept in the workbook.":
    "Unter wem der Stand jeder Athlet:in berechnet wird. Das gilt für Prioritäten, Seiten und den nächsten Zyklus gleichermaßen und bleibt in der Mappe.",
  "Their group": "Der eigenen Gruppe",
  "Their role": "Der eigenen Rolle",
  "Under-18s or adults": "Unter 18 oder Erwachsene",
  "Compared with the whole squad all the same, since fewer than {0} of theirs are tested or nothing says where they belong: {1}.":
    "Trotzdem mit dem ganzen Kader verglichen, da weniger als {0} der Ihren getestet sind oder nichts sagt, wohin sie gehören: {1}.",
  // The name of whom athletes are compared with is a dative: "dem Kader".
  "{0}: only {1} tested. The middle of so few is itself uncertain by some ±{2} points.": (name, count, points) =>
    `Verglichen mit ${name.charAt(0).toLowerCase()}${name.slice(1)}: nur ${count} getestet. Die Mitte von so wenigen ist selbst um etwa ±${points} Punkte unsicher.`,
  "1 kept result was left out": "1 übernommenes Ergebnis weggelassen",
  "{0} kept results were left out": "{0} übernommene Ergebnisse weggelassen",
  // words/recent
  "Asked a moment ago": "Eben gefragt",
  "Forget these": "Diese vergessen",
  "“{0}” is not there any more.": "„{0}“ gibt es nicht mehr.",
  // words/removeAthlete
  "Remove an athlete": "Athlet:in entfernen",
  "Takes an athlete out of everything Tapeline keeps in this workbook.":
    "Nimmt eine Athlet:in aus allem heraus, was Tapeline in dieser Mappe behält.",
  Who: "Wen",
  "There is nobody to remove: neither the squad nor the results name an athlete.":
    "Es gibt niemanden zu entfernen: Weder der Kader noch die Ergebnisse nennen eine Athlet:in.",
  "Choose an athlete": "Athlet:in wählen",
  "Looking for the name on every sheet…": "Der Name wird auf jedem Blatt gesucht …",
  "What goes of {0}": "Was von {0} entfernt wird",
  "Nothing of ours names {0}.": "Nichts von Tapeline nennt {0}.",
  "{0}: {1}, with your own cells beside": "{0}: {1}, samt deinen eigenen Zellen daneben",
  "{0} on written sheets": "{0} auf geschriebenen Blättern",
  "{0} to print: {1}": "{0} zum Drucken: {1}",
  "All marks on cells, since one of them names the athlete; mark again afterwards":
    "Alle Markierungen an Zellen, da eine davon die Athlet:in nennt; markiere danach noch einmal",
  "The name also stands in {0} of your own": (places) =>
    `Der Name steht auch an ${counted(places, "Stelle", "Stellen")} von dir`,
  "These are left as they are. Empty them yourself where nothing of the athlete may stay.":
    "Diese bleiben, wie sie sind. Leere sie selbst, wo nichts von der Athlet:in bleiben darf.",
  "and {0}": "und {0}",
  "Copies of this workbook, earlier versions kept by a cloud and printed pages are not reached from here.":
    "Kopien dieser Mappe, frühere Versionen in einer Cloud und gedruckte Seiten sind von hier aus nicht zu erreichen.",
  "Remove {0}": "{0} entfernen",
  "Remove {0} from this workbook?": "{0} aus dieser Mappe entfernen?",
  "It can be taken back until you close the workbook or this pane; pages are not brought back, but can be made again. After that it cannot.":
    "Das lässt sich zurücknehmen, bis du die Mappe oder diesen Bereich schließt; Seiten kommen nicht zurück, lassen sich aber neu anlegen. Danach geht es nicht mehr.",
  "It can be taken back until you close the workbook or this pane. After that it cannot.":
    "Das lässt sich zurücknehmen, bis du die Mappe oder diesen Bereich schließt. Danach geht es nicht mehr.",
  "Yes, remove": "Ja, entfernen",
  "No, keep": "Nein, behalten",
  "Removing…": "Wird entfernt …",
  "{0} is removed": "{0} ist entfernt",
  "Save the workbook to make it last. Until you close it, “Take back” above brings everything but pages back.":
    "Speichere die Mappe, damit es so bleibt. Bis du sie schließt, bringt „Zurücknehmen“ oben alles außer Seiten zurück.",
  // words/search
  "Find what you can do": "Finde, was du tun kannst",
  "What was found": "Was gefunden wurde",
  "Function for your own formulas": "Funktion für eigene Formeln",
  "Nothing found.": "Nichts gefunden.",
  "1 found.": "1 gefunden.",
  "{0} found.": "{0} gefunden.",
  "outlier typing error mistake check data quality implausible swapped":
    "Ausreißer Tippfehler Fehler prüfen Datenqualität unplausibel vertauscht",
  "typical error noise CV ICC repeatability smallest worthwhile change SWC MDC":
    "typischer Fehler Messfehler Rauschen CV ICC Reliabilität Wiederholbarkeit kleinste bedeutsame Veränderung SWC MDC",
  "progress improvement before after pre post better worse":
    "Fortschritt Verbesserung vorher nachher Vortest Nachtest besser schlechter",
  "imbalance symmetry side leg limb dominant weaker difference":
    "Dysbalance Asymmetrie Symmetrie Seite Bein Arm dominant schwächer Unterschied",
  "percentile z-score compare norm profile average":
    "Perzentil Prozentrang z-Wert vergleichen Norm Profil Durchschnitt",
  "order best table total score": "Reihenfolge Beste Tabelle Gesamtwert Punkte",
  "1RM one repetition maximum max percent plates lift squat bench":
    "1RM Einerwiederholung Maximum Maximalkraft Prozent Scheiben Heben Kniebeuge Bankdrücken",
  "velocity-based bar speed force m/s": "geschwindigkeitsbasiert VBT Stange Tempo Kraft m/s",
  "CMJ countermovement drop jump height RSI reactive power":
    "CMJ Countermovement Drop Jump Sprunghöhe RSI Reaktivkraft Leistung",
  "speed acceleration split force-velocity gate 30 m":
    "Schnelligkeit Beschleunigung Antritt Zwischenzeit Kraft-Geschwindigkeit Lichtschranke 30 m",
  "MAS aerobic yo-yo intermittent run VO2 interval": "MAS aerob Yo-Yo Intervall Lauf Sauerstoffaufnahme VO2 Kondition",
  "repetitions hold muscle endurance calf hamstring": "Wiederholungen Halten Kraftausdauer Wade Oberschenkelrückseite",
  "athletes players names team roster battery roles weights":
    "Athlet:innen Spieler:innen Namen Team Mannschaft Kaderliste Testbatterie Rollen Gewichte",
  "entry form protocol paper print": "Eingabe Formular Protokoll Papier drucken Messblatt",
  "import save store collect results": "importieren speichern sichern sammeln Ergebnisse",
  "weakness need focus what to train": "Schwäche Bedarf Schwerpunkt Defizit was trainieren",
  "programme periodisation exercises sets loads block training":
    "Programm Trainingsplan Periodisierung Übungen Sätze Lasten Block Training",
  "print session log diary attendance RPE wellness": "drucken Einheit Trainingstagebuch Anwesenheit RPE Befinden",
  "workload RPE acute chronic week monitoring throws": "Belastung RPE akut chronisch Woche Verlauf Würfe",
  "review evaluate effect retest": "Rückblick auswerten Wirkung Erfolg Retest",
  "report print handout PDF parents": "Bericht drucken Handzettel PDF Eltern",
  "delete forget privacy data protection leave": "löschen vergessen Datenschutz DSGVO Austritt",
  "formula TAPELINE custom function cell": "Formel TAPELINE benutzerdefinierte Funktion Zelle",
  // words/setUp
  "Maximal tests are for those who are well, warmed up and used to them; under-18s only under qualified supervision. Pain, or back from an injury: whoever treats the athlete says what may be tested. Each test's own caution stands in its row of the table.":
    "Maximaltests sind für alle, die gesund, aufgewärmt und daran gewöhnt sind; unter 18-Jährige nur unter fachkundiger Aufsicht. Schmerzen, oder zurück nach einer Verletzung: Was getestet werden darf, sagen die Behandelnden. Worauf bei jedem Test zu achten ist, steht in seiner Zeile der Tabelle.",
  // words/testDay
  "No number typed for {0} will be questioned: the battery gives no lowest and highest plausible value.":
    "Für {0} wird keine eingetippte Zahl hinterfragt: Die Testbatterie nennt keine Untergrenze und Obergrenze.",
  "This workbook was last used with a newer Tapeline, so the sheet will not be listed under “Keep results”: select its cells there.":
    "Diese Mappe wurde zuletzt mit einem neueren Tapeline benutzt, deshalb erscheint das Blatt nicht unter „Ergebnisse übernehmen“: Wähle dort seine Zellen aus.",
  // words/tryIt
  "Try it on a sample squad": "An einem Beispielkader ausprobieren",
  "Two minutes, on a sheet of its own. Removed without a trace.":
    "Zwei Minuten, auf einem eigenen Blatt. Verschwindet spurlos.",
  "Trying it on a sample squad": "Ausprobieren am Beispielkader",
  "Sample squad, step {0} of {1}": "Beispielkader, Schritt {0} von {1}",
  "Ten invented players, each leg hopped three times. The cells are selected: ask them a question.":
    "Zehn erfundene Spielerinnen, dreimal gesprungen mit jedem Bein. Die Zellen sind ausgewählt: Frag sie etwas.",
  "Is one leg weaker?": "Ist ein Bein schwächer?",
  "The pane follows what you select. Solid bars go beyond the test's own noise; outlined ones may be chance. Nothing has been written yet: press the button at the bottom.":
    "Der Bereich folgt deiner Auswahl. Gefüllte Balken gehen über das Rauschen des Tests hinaus; umrandete können Zufall sein. Noch ist nichts geschrieben: Drücke den Knopf ganz unten.",
  "It stands on “{0}”: a plain table, with the method and its source below it.":
    "Sie steht auf „{0}“: eine einfache Tabelle, darunter die Methode und ihre Quelle.",
  "Go on": "Weiter",
  "Your own results go the same way: select them and ask. Home shows what else there is.":
    "Deine eigenen Ergebnisse gehen genauso: auswählen und fragen. Der Start zeigt, was es sonst noch gibt.",
  "To the start": "Zum Start",
  "Remove the sample ({0})": "Beispiel entfernen ({0})",
};
