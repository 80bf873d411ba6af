import type { Catalogue } from "../say";
import { counted, errorShown } from "./grammar";

/** German of src/pane. */
export const pane: Catalogue = {
  // parts/Amount
  "{0}-trouble": "{0}-trouble",
  // pictures/Bars
  "{0}-title {1}-text": "{0}-title {1}-text",
  "{0}-title": "{0}-title",
  "{0}-text": "{0}-text",
  // screens/OutcomeScreen
  "new": "new",
  done: "done",
  // screens/ReportCard
  "{0}|kept|": "{0}|kept|",
  // words/functions
  "This cell": "Diese Zelle",
  "Select a cell with a TAPELINE formula: here stands what it asks and, should it show an error, why.":
    "Wähle eine Zelle mit einer TAPELINE-Formel: Hier steht, was sie fragt und, wenn sie einen Fehler zeigt, warum.",
  "{0} asks {1}": "{0} fragt {1}",
  "left out": "weggelassen",
  "Why it shows {0}": (error) => `Warum dort ${errorShown(error)} steht`,
  "The reason can be found only for cells and values; {0} is worked out by another formula. In general:": (parts) =>
    `Der Grund ist nur bei Zellen und Werten zu finden; ${parts.replace(" and ", " und ")} kommt aus einer anderen Formel. Allgemein:`,
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
  "Left as formulas, since they show an error: {0}.": "Als Formeln belassen, da sie einen Fehler zeigen: {0}.",
  "Errors that stand among the values now: {0}.": "Fehler, die jetzt unter den Werten stehen: {0}.",
  "Working…": "In Arbeit …",
  "1 formula was": "1 Formel wurde",
  "{0} formulas were": "{0} Formeln wurden",
  "{0} and {1} more places": "{0} und {1} weitere Stellen",
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
  "{0} and {1} are set up. Next come results.": (athletes, tests) =>
    `${counted(athletes, "Athlet:in", "Athlet:innen")} und ${counted(tests, "Messwert", "Messwerte")} sind eingerichtet. Als Nächstes kommen Ergebnisse.`,
  "test number": "Messwert",
  "Make a sheet for a test day": "Blatt für einen Testtag anlegen",
  "There are results. Ask them anything below, then decide what to work on.":
    "Es gibt Ergebnisse. Frag sie unten, was du willst, und entscheide dann, woran zu arbeiten ist.",
  "See priorities": "Prioritäten ansehen",
  "The priorities are written. Overrule them where you know better, then plan.":
    "Die Prioritäten sind geschrieben. Entscheide anders, wo du es besser weißt, und plane dann.",
  "The block is under way: {0} left.": (days) => `Der Block läuft: noch ${counted(days, "Tag", "Tage")}.`,
  "Print sessions, keep the diary": "Einheiten drucken, Tagebuch führen",
  "The block is over and new results are in.": "Der Block ist vorbei, und neue Ergebnisse sind da.",
  "Was the change real?": "War die Veränderung echt?",
  "{0}: {1} for {2}.": (series, what, athletes) =>
    `${series}: ${what} bei ${counted(athletes, "Athlet:in", "Athlet:innen")}.`,
  "not tested yet": "noch nicht getestet",
  "a retest is due": "Retest fällig",
  "And {0}.": (tests) => `Und ${counted(tests, "weiterer Test", "weitere Tests")}.`,
  "more test": "weiterer Test",
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
  "weights for {0}": (roles) => `Gewichte für ${counted(roles, "Rolle", "Rollen")}`,
  "one row for each result": "eine Zeile je Ergebnis",
  "Plain tables: change, add and delete rows as you like; add columns of your own.":
    "Einfache Tabellen: Ändere, ergänze und lösche Zeilen, wie du willst; füge eigene Spalten hinzu.",
  "{0} in these tables cannot be used": (cells) =>
    `${counted(cells, "Zelle", "Zellen")} in diesen Tabellen nicht brauchbar`,
  "{0} in what you have selected on “{1}”:": (athletes, sheet) =>
    `${counted(athletes, "Athlet:in", "Athlet:innen")} in deiner Auswahl auf „${sheet}“:`,
  "Select your list of names (with its headings) on any sheet, or start with an empty table.":
    "Wähle deine Namensliste (samt Überschriften) auf einem beliebigen Blatt, oder beginne mit einer leeren Tabelle.",
  " and {0} more": " und {0} weitere",
  Tests: "Tests",
  "Ready-made sets to start from. Everything in them can be changed in the table.":
    "Fertige Zusammenstellungen für den Anfang. Alles darin lässt sich in der Tabelle ändern.",
  "Set up on {0}": (sheets) => `Auf ${counted(sheets, "neuem Blatt", "neuen Blättern")} einrichten`,
  "new sheet": "neues Blatt",
  "Squad and tests first": "Zuerst Kader und Tests",
  "A sheet for a test day is made from the squad and the tests of this workbook.":
    "Ein Blatt für einen Testtag entsteht aus dem Kader und den Tests dieser Mappe.",
  When: "Wann",
  "Day of the test": "Tag des Tests",
  "Which tests": "Welche Tests",
  Other: "Andere",
  "Who: {0}": (athletes) => `Wer: ${counted(athletes, "Athlet:in", "Athlet:innen")}`,
  "No role": "Keine Rolle",
  "Make a sheet to test {0} again": (athletes) =>
    `Blatt anlegen, um ${counted(athletes, "Athlet:in", "Athlet:innen")} noch einmal zu testen`,
  "Only the athletes who are to be tested again.": "Nur wer noch einmal getestet werden soll.",
  "Choose at least one test": "Wähle mindestens einen Test",
  "Make “{0}” for {1}": (sheet, athletes) => `„${sheet}“ für ${counted(athletes, "Athlet:in", "Athlet:innen")} anlegen`,
  "Made: {0}": "Angelegt: {0}",
  "Type results there, or print it and take a pencil. Afterwards:":
    "Tippe Ergebnisse dort ein, oder drucke es und nimm einen Bleistift. Danach:",
  "There is no table of results yet": "Es gibt noch keine Tabelle der Ergebnisse",
  "Set up squad and tests; the table of results comes with them.":
    "Richte Kader und Tests ein; die Tabelle der Ergebnisse kommt mit.",
  "Sheets for test days": "Blätter für Testtage",
  "nothing typed yet": "noch nichts eingetippt",
  "{0} typed": (results) => `${counted(results, "Ergebnis", "Ergebnisse")} eingetippt`,
  ", {0} cannot be read": (cells) => `, ${counted(cells, "Zelle", "Zellen")} nicht lesbar`,
  "Not found on the sheet, so not read: {0}. Write the headings as they were.":
    "Auf dem Blatt nicht gefunden, also nicht gelesen: {0}. Schreib die Überschriften, wie sie waren.",
  "Keep {0}": (results) => `${counted(results, "Ergebnis", "Ergebnisse")} übernehmen`,
  "Or select any cells with results.": "Oder wähle beliebige Zellen mit Ergebnissen.",
  "Day of these results": "Tag dieser Ergebnisse",
  "{0} cannot be kept": (results) => `${counted(results, "Ergebnis lässt", "Ergebnisse lassen")} sich nicht übernehmen`,
  "Nothing new": "Nichts Neues",
  "{0} kept": (results) => `${counted(results, "neues Ergebnis", "neue Ergebnisse")} übernommen`,
  "new result": "neues Ergebnis",
  "{0} corrected on the sheet since: renewed.": (results) =>
    `${counted(results, "Ergebnis", "Ergebnisse")} seitdem auf dem Blatt berichtigt: erneuert.`,
  "{0} had been kept before.": (results) => `${counted(results, "Ergebnis war", "Ergebnisse waren")} schon übernommen.`,
  "Nothing was kept": "Nichts wurde übernommen",
  "{0}: {1}, {2}: {3} here, {4} in the table{5}.": "{0}: {1}, {2}: hier {3}, in der Tabelle {4}{5}.",
  " (from {0})": " (aus {0})",
  "{0} not kept: the table already holds another value for the same athlete, test and day.": (results) =>
    `${counted(results, "Ergebnis", "Ergebnisse")} nicht übernommen: In der Tabelle steht schon ein anderer Wert für dieselbe Athlet:in, denselben Test und Tag.`,
  "No results are kept yet": "Noch keine Ergebnisse übernommen",
  "This rests on the workbook's own table of results.": "Das beruht auf der Tabelle der Ergebnisse in dieser Mappe.",
  "Nothing was written": "Nichts wurde geschrieben",
  "Written: {0}, {1}": (sheet, where) =>
    `Geschrieben: ${sheet}, ${/ rows?$/.test(where) ? counted(where, "Zeile", "Zeilen") : where}`,
  "{0} of yours, or changed by you, stayed as they are.": (rows) =>
    `${counted(rows, "Zeile", "Zeilen")} von dir oder von dir geändert: unverändert gelassen.`,
  "One thing is missing": "Eines fehlt",
  "{0} things are missing": "{0} Dinge fehlen",
  "And {0} more.": "Und {0} weitere.",
  "Priorities of {0}": (athletes) => `Prioritäten für ${counted(athletes, "Athlet:in", "Athlet:innen")}`,
  "Show all {0}": "Alle {0} zeigen",
  "Show fewer": "Weniger zeigen",
  "At most for each athlete": "Höchstens je Athlet:in",
  "A short list is worked on; a long one is not.": "An einer kurzen Liste wird gearbeitet, an einer langen nicht.",
  "May train together": "Kann zusammen trainieren",
  "The weight of a quality for the role times how far the athlete stands below the squad. Common practice, no source: an aid to a conversation, not a diagnosis.":
    "Das Gewicht einer Fähigkeit für die Rolle mal dem Abstand unter dem Kader. Gängige Praxis, ohne Quelle: eine Hilfe fürs Gespräch, keine Diagnose.",
  "Write the priorities": "Prioritäten schreiben",
  "Overrule there under “Coach's choice” and say why: both stay when the priorities are made anew.":
    "Entscheide dort unter „Eigene Wahl“ anders und sag, warum: Beides bleibt, wenn die Prioritäten neu entstehen.",
  "The block": "Der Block",
  "First day": "Erster Tag",
  "{0} to choose from": (exercises) => `${counted(exercises, "Übung", "Übungen")} zur Auswahl`,
  "From the table “Exercises” of this workbook.": "Aus der Tabelle „Übungen“ dieser Mappe.",
  "Ready-made ones. Put them into the workbook to change them.":
    "Fertige Übungen. Nimm sie in die Mappe auf, um sie zu ändern.",
  "Put them into the workbook": "In die Mappe aufnehmen",
  "Priorities first": "Zuerst Prioritäten",
  "A block is planned from the priorities in this workbook, with what you have decided otherwise.":
    "Ein Block wird aus den Prioritäten dieser Mappe geplant, mit dem, was du anders entschieden hast.",
  "A plan to start from: see every athlete lift before you load. Loads come from estimates, not from maxima; minors get basic exercises and keep three repetitions in reserve. After an injury the clinician in charge decides.":
    "Ein Plan für den Anfang: Sieh allen beim Heben zu, bevor du auflegst. Lasten kommen aus Schätzungen, nicht aus Maxima; Minderjährige bekommen Grundübungen und behalten drei Wiederholungen in Reserve. Nach einer Verletzung entscheiden die Behandelnden.",
  "Write the plan: {0} for {1}": (rows, athletes) =>
    `Plan schreiben: ${counted(rows, "Zeile", "Zeilen")} für ${counted(athletes, "Athlet:in", "Athlet:innen")}`,
  "There is nothing in the diary yet.": "Im Tagebuch steht noch nichts.",
  "{0} so far.": (entries) => `Bisher ${counted(entries, "Eintrag", "Einträge")}.`,
  "A table with one row per athlete and session: minutes, rating, throws, jumps.":
    "Eine Tabelle mit einer Zeile je Athlet:in und Einheit: Minuten, Bewertung, Würfe, Sprünge.",
  "Put a diary into the workbook": "Tagebuch in die Mappe aufnehmen",
  "There is no plan to print yet": "Es gibt noch keinen Plan zum Drucken",
  "Session sheets": "Pläne für die Einheiten",
  "Which session": "Welche Einheit",
  "Laid out": "Aufteilung",
  "A page for each athlete": "Eine Seite je Athlet:in",
  "One list for the group": "Eine Liste für die Gruppe",
  "Make {0} to print": (pages) => `${counted(pages, "Seite", "Seiten")} zum Drucken anlegen`,
  "There is nothing in the diary yet": "Im Tagebuch steht noch nichts",
  "the table Tapeline_Diary": "der Tabelle Tapeline_Diary",
  "Whose weeks": "Wessen Wochen",
  "The squad's mean": "Mittel des Kaders",
  "Nothing to review yet": "Noch nichts zu überprüfen",
  "This holds the latest results against earlier ones of the same athletes, from another day.":
    "Hier werden die neuesten Ergebnisse mit früheren derselben Athlet:innen verglichen, von einem anderen Tag.",
  "the table Tapeline_Results": "der Tabelle Tapeline_Results",
  "Next cycle": "Nächster Zyklus",
  "Of the priorities, {0} are carried over, {1} are done, {2} are set aside, and {3} are new.":
    "Von den Prioritäten laufen {0} weiter, {1} sind erledigt, {2} zurückgestellt und {3} neu.",
  "See the new priorities": "Neue Prioritäten ansehen",
  "Where the athlete stands, what to work on, what has changed since the last test, and what comes next. Nobody else's results are on it.":
    "Der Stand, woran zu arbeiten ist, was sich seit dem letzten Test verändert hat und was als Nächstes kommt. Ergebnisse anderer stehen nicht darauf.",
  "Personal data: hand each page to its athlete, or to the parents of a minor, and to nobody else.":
    "Persönliche Daten: Gib jede Seite der Athlet:in selbst, bei Minderjährigen den Eltern, und sonst niemandem.",
  "{0} made": (pages) => `${counted(pages, "Seite", "Seiten")} angelegt`,
  "Stopped after {0} of {1}": (written, pages) => `Nach ${written} von ${counted(pages, "Seite", "Seiten")} angehalten`,
  Stop: "Anhalten",
  "Not in squad or battery": "Nicht in Kader oder Testbatterie",
  "{0}{1}: not in the squad. Their results are kept all the same, without a role.":
    "{0}{1}: nicht im Kader. Die Ergebnisse werden trotzdem übernommen, ohne Rolle.",
  "“{0}” is not in the battery: without quality, range and retest.":
    "„{0}“ ist nicht in der Testbatterie: ohne Fähigkeit, Bereich und Retest.",
  "Read as “{0}”": "Als „{0}“ gelesen",
  "Results from": "Ergebnisse aus",
  "The cells I select": "Den Zellen, die ich auswähle",
  "The workbook's table of results": "Der Tabelle der Ergebnisse",
  "One person or two?": "Eine Athlet:in oder zwei?",
  "One person: read as “{0}”": "Nur eine: als „{0}“ lesen",
  "“{0}” is read as “{1}”.": "„{0}“ wird als „{1}“ gelesen.",
  "Mark {0} on the sheet": (cells) => `${counted(cells, "Zelle", "Zellen")} auf dem Blatt markieren`,
  "Clear all marks": "Alle Markierungen löschen",
  "{0} marked{1}.": (cells, missing) => `${counted(cells, "Zelle", "Zellen")} markiert${missing}.`,
  "; not found: {0}": "; nicht gefunden: {0}",
  "There are no marks.": "Es gibt keine Markierungen.",
  "{0} cleared.": (marks) => `${counted(marks, "Markierung", "Markierungen")} gelöscht.`,
  "Nothing to read there": "Dort ist nichts zu lesen",
  "{0} holds no values.": "{0} enthält keine Werte.",
  "The workbook's results": "Die Ergebnisse der Mappe",
  "1 series of results": "1 Reihe von Ergebnissen",
  "{0} series of results": "{0} Reihen von Ergebnissen",
  "Read as the block of cells around {0}.": "Gelesen als der Block von Zellen um {0}.",
  "{0}, one row each; {1}{2}.": (athletes, results, unit) =>
    `${counted(athletes, "Athlet:in", "Athlet:innen")}, je eine Zeile; ${counted(results, "Ergebnis", "Ergebnisse")}${unit}.`,
  "{0}, one row per attempt; {1}{2}.": (athletes, results, unit) =>
    `${counted(athletes, "Athlet:in", "Athlet:innen")}, eine Zeile je Versuch; ${counted(results, "Ergebnis", "Ergebnisse")}${unit}.`,
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
  "Body mass": "Körpergewicht",
  Stature: "Körpergröße",
  "Not used": "Nicht verwendet",
  "Unit of the results": "Einheit der Ergebnisse",
  "Not set": "Nicht gesetzt",
  "Which test": "Welcher Test",
  "(no name)": "(kein Name)",
  "Also read {0}": (rows) => `Auch ${counted(rows, "ausgeblendete Zeile", "ausgeblendete Zeilen")} lesen`,
  "hidden row": "ausgeblendete Zeile",
  "Read with a remark": "Mit Anmerkung gelesen",
  "{0} left out": (cells) => `${counted(cells, "Zelle", "Zellen")} weggelassen`,
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
};
