import type { Catalogue } from "../say";
import { errorShown } from "./grammar";

/** German of src/store. */
export const store: Catalogue = {
  // battery
  Battery: "Testbatterie",
  "Test battery": "Testbatterie",
  "One row per number: a test, or one measure of a test. A measure computed from others (an estimated maximum) is listed, never typed in.":
    "Eine Zeile je Zahl: ein Test, oder ein Messwert eines Tests. Ein Messwert, der aus anderen errechnet wird (ein geschätztes Maximum), steht hier, wird aber nie eingetippt.",
  "Name of the test as it stands on your test sheets.": "Name des Tests, wie er auf deinen Testblättern steht.",
  "What the number is, where a test gives several (load and repetitions); else empty.":
    "Was die Zahl ist, wo ein Test mehrere gibt (Last und Wiederholungen); sonst leer.",
  "The physical quality the test stands for. Tests of one quality count together.":
    "Die körperliche Fähigkeit, für die der Test steht. Tests einer Fähigkeit zählen zusammen.",
  "Unit in which results are kept, e.g. cm, s, kg. Empty: the usual unit of the measure.":
    "Einheit, in der Ergebnisse übernommen werden, z. B. cm, s, kg. Leer: die übliche Einheit des Messwerts.",
  "Which results are better: higher (a jump) or lower (a sprint time).":
    "Welche Ergebnisse besser sind: higher (höher, ein Sprung) oder lower (niedriger, eine Sprintzeit).",
  "neither higher nor lower": "weder higher (höher) noch lower (niedriger)",
  "2 where left and right are tested by themselves, else 1.":
    "2, wo links und rechts einzeln getestet werden, sonst 1.",
  "How many trials each athlete has, on each side.": "Wie viele Versuche es je Athlet:in gibt, auf jeder Seite.",
  "How the trials of a day become one score: best, mean, median, or mean of best two.":
    "Wie aus den Versuchen eines Tages ein Wert wird: best (bester), mean (Mittel), median (mittlerer) oder mean of best two (Mittel der zwei besten).",
  "no score; best, mean, median or mean of best two is needed":
    "kein Weg zum Wert; gebraucht wird best, mean, median oder mean of best two",
  "Lowest plausible result, in the unit of the row. A result below is asked about, not refused.":
    "Niedrigstes plausibles Ergebnis, in der Einheit der Zeile. Nach einem Ergebnis darunter wird gefragt, abgelehnt wird es nicht.",
  "Highest plausible result, in the unit of the row. A result above is asked about, not refused.":
    "Höchstes plausibles Ergebnis, in der Einheit der Zeile. Nach einem Ergebnis darüber wird gefragt, abgelehnt wird es nicht.",
  "After how many weeks the test is due again.": "Nach wie vielen Wochen der Test wieder fällig ist.",
  "How the test is done, the same way each time. Printed on entry sheets.":
    "Wie der Test gemacht wird, jedes Mal gleich. Wird auf Testtagsblätter gedruckt.",
  "What to mind before and during the test. Printed on entry sheets.":
    "Was vor und während des Tests zu beachten ist. Wird auf Testtagsblätter gedruckt.",
  // cellSchemas
  "“{0}” is {1}.": "„{0}“ ist {1}.",
  "“{0}” is no measure we know; leave it empty or choose one.":
    "„{0}“ ist kein bekannter Messwert; lass die Zelle leer oder wähle einen.",
  "{0} is not a whole number.": "{0} ist keine ganze Zahl.",
  "from {0} up": "ab {0}",
  "from {0} to {1}": "von {0} bis {1}",
  "{0} is not {1}.": "{0} liegt außerhalb: erlaubt {1}.",
  "The cell shows the error {0}; words are needed.": (error) =>
    `Die Zelle zeigt den Fehler ${errorShown(error)}; gebraucht werden Wörter.`,
  // diary
  Diary: "Tagebuch",
  "One row per athlete and session. Ask for the rating half an hour after it. A day without a row counts as a rest day.":
    "Eine Zeile je Athlet:in und Einheit. Frag eine halbe Stunde danach nach der Bewertung. Ein Tag ohne Zeile zählt als Ruhetag.",
  "Day of the session.": "Tag der Einheit.",
  "Name as in the squad.": "Name wie im Kader.",
  "What it was, in your words.": "Was es war, in deinen Worten.",
  "Yes or no; empty counts as yes.": "yes (ja) oder no (nein); leer zählt als ja.",
  "neither yes nor no": "weder yes (ja) noch no (nein)",
  "Length of the session.": "Dauer der Einheit.",
  "How hard the whole session was, as the athlete says: 0 rest, 10 maximal.":
    "Wie hart die ganze Einheit war, nach eigener Angabe: 0 Ruhe, 10 maximal.",
  "How many throws at full effort.": "Wie viele Würfe mit voller Anstrengung.",
  "How many jumps at full effort.": "Wie viele Sprünge mit voller Anstrengung.",
  "How many sprints at full effort.": "Wie viele Sprints mit voller Anstrengung.",
  "How many deliveries bowled or pitched.": "Wie viele Würfe als Bowler oder Pitcher.",
  // entrySheet
  "Test day {0}": "Testtag {0}",
  "One row per athlete. Leave a trial empty or write why it is missing (DNS, injured, foul). Columns of your own may stand between.":
    "Eine Zeile je Athlet:in. Lass einen Versuch leer oder schreib, warum er fehlt (DNS, verletzt, ungültig). Eigene Spalten dürfen dazwischenstehen.",
  "from {0} to {1}{2}": "von {0} bis {1}{2}",
  "{0}{1} or more": "{0}{1} oder mehr",
  "{0}{1} or less": "{0}{1} oder weniger",
  "{0} is usually {1}. Keep this number only if it was read right; words such as DNS may stand here.":
    "{0}: üblich {1}. Behalte diese Zahl nur, wenn sie richtig abgelesen wurde; Wörter wie DNS dürfen hier stehen.",
  // exercises
  Exercises: "Übungen",
  "What plans are made of. Change, add and delete as you like; a quality is spelled as in the battery.":
    "Woraus Pläne gemacht werden. Ändere, ergänze und lösche, wie du willst; eine Fähigkeit wird geschrieben wie in der Testbatterie.",
  "Name of the exercise.": "Name der Übung.",
  "The physical quality it trains.": "Die körperliche Fähigkeit, die sie trainiert.",
  "Part of the body it works on.": "Körperteil, an dem sie arbeitet.",
  "Both together, or one at a time: one-limb exercises get a set more on a weaker side.":
    "both (beide zusammen) oder one (einzeln): Einzelne Übungen bekommen auf einer schwächeren Seite einen Satz mehr.",
  "neither both nor one": "weder both (beide) noch one (einzeln)",
  "What is needed for it.": "Was dafür gebraucht wird.",
  "Basic: for everybody who has been shown it. Trained: for those who have the technique; never planned for minors.":
    "basic (Grundübung): für alle, denen sie gezeigt wurde. trained (geübt): für alle, die die Technik haben; nie für Minderjährige geplant.",
  "neither basic nor trained": "weder basic (Grundübung) noch trained (geübt)",
  "Repetitions, seconds, contacts, metres or minutes.":
    "repetitions (Wiederholungen), seconds (Sekunden), contacts (Kontakte), metres (Meter) oder minutes (Minuten).",
  "none of {0}": "keines von {0}",
  "Test of the battery whose estimated maximum sets the load in kg; empty where no load is reckoned.":
    "Test der Testbatterie, dessen geschätztes Maximum die Last in kg bestimmt; leer, wo keine Last berechnet wird.",
  "How much of that maximum counts as the maximum of this exercise: 100 for the lift itself.":
    "Wie viel dieses Maximums als Maximum dieser Übung zählt: 100 für die Übung selbst.",
  "What to mind.": "Was zu beachten ist.",
  // keptReading
  "the table {0}": "der Tabelle {0}",
  // keptResults
  Results: "Ergebnisse",
  "One row per trial, kept from your test sheets or typed in here. Rows may be sorted, filtered, corrected and deleted.":
    "Eine Zeile je Versuch, von deinen Testblättern übernommen oder hier eingetippt. Zeilen dürfen sortiert, gefiltert, berichtigt und gelöscht werden.",
  "Day of the test.": "Tag des Tests.",
  "Name as in the battery.": "Name wie in der Testbatterie.",
  "What the number is, where the test gives several; else empty.":
    "Was die Zahl ist, wo der Test mehrere gibt; sonst leer.",
  "left or right, where the test is done on each side; else empty.":
    "left (links) oder right (rechts), wo der Test auf jeder Seite gemacht wird; sonst leer.",
  "Which trial of the day it was. Empty: the next one.": "Der wievielte Versuch des Tages es war. Leer: der nächste.",
  "The result, in the unit beside it.": "Das Ergebnis, in der Einheit daneben.",
  "Unit of the value.": "Einheit des Werts.",
  "Cell it was kept from. When that cell is corrected and kept again, this row is renewed.":
    "Zelle, aus der übernommen wurde. Wird diese Zelle berichtigt und wieder übernommen, wird diese Zeile erneuert.",
  "Trial {0} of “{1}” in this test": "Versuch {0} von „{1}“ in diesem Test",
  "Nothing says which test this is; give its column the name of a test.":
    "Nichts sagt, welcher Test das ist; gib der Spalte den Namen eines Tests.",
  "Nothing says on which day this was tested.": "Nichts sagt, an welchem Tag das getestet wurde.",
  // planTable
  "One row per athlete, session and exercise. A row you have changed stays as it is when the block is planned anew; weeks that are over stay too, as a record.":
    "Eine Zeile je Athlet:in, Einheit und Übung. Eine Zeile, die du geändert hast, bleibt, wie sie ist, wenn der Block neu geplant wird; vergangene Wochen bleiben auch, zum Nachlesen.",
  Plan: "Plan",
  "Week of the block.": "Woche des Blocks.",
  "Day on which the week begins.": "Tag, an dem die Woche beginnt.",
  "Session of the week.": "Einheit der Woche.",
  "As in the table of exercises.": "Wie in der Tabelle der Übungen.",
  "Number of sets; 0 leaves it out.": "Zahl der Sätze; 0 lässt sie weg.",
  "Amount of each set, with its unit.": "Umfang je Satz, mit Einheit.",
  "Share of the estimated maximum, and repetitions left in reserve.":
    "Anteil am geschätzten Maximum, und Wiederholungen in Reserve.",
  "Bar and plates together.": "Stange und Scheiben zusammen.",
  "Of the whole exercise in this session, both sides together.":
    "Der ganzen Übung in dieser Einheit, beide Seiten zusammen.",
  "The priority behind it.": "Die Priorität dahinter.",
  "The mark by which a row is known as planned. Change the others; clear this to make the row your own.":
    "Das Zeichen, an dem eine Zeile als geplant erkannt wird. Ändere die anderen; lösche es, um die Zeile zu deiner zu machen.",
  // priorityTable
  "The coach's choice": "Entscheidung im Trainerteam",
  Priorities: "Prioritäten",
  "What to work on first, by the rule. Overrule under “Coach's choice” (another quality, or none) and say why: both stay when priorities are made anew.":
    "Woran zuerst zu arbeiten ist, nach der Regel. Entscheide unter „Eigene Wahl“ anders (eine andere Fähigkeit, oder none für keine) und sag, warum: Beides bleibt, wenn die Prioritäten neu entstehen.",
  "1 is the most urgent.": "1 ist am dringendsten.",
  "The physical quality to work on, by the rule.": "Die körperliche Fähigkeit, an der zu arbeiten ist, nach der Regel.",
  "The reason, with the numbers behind it.": "Der Grund, mit den Zahlen dahinter.",
  "Another quality to work on instead, or none. Yours: it is never overwritten.":
    "Eine andere Fähigkeit, an der stattdessen zu arbeiten ist, oder none für keine. Deine: Sie wird nie überschrieben.",
  "Why you decide otherwise. Yours.": "Warum du anders entscheidest. Deiner.",
  "The mark by which a row is known as proposed. Clear it to make the row your own.":
    "Das Zeichen, an dem eine Zeile als vorgeschlagen erkannt wird. Lösche es, um die Zeile zu deiner zu machen.",
  "Rank {0} of “{1}”": "Rang {0} von „{1}“",
  // qualityWeights
  Weights: "Gewichte",
  "Weights of qualities by role": "Gewichte der Fähigkeiten nach Rolle",
  "0: does not count for the role. 1: counts as any other. 2: counts twice. Your judgement. Add a column for a new role.":
    "0: zählt für die Rolle nicht. 1: zählt wie jede andere. 2: zählt doppelt. Dein Urteil. Füge für eine neue Rolle eine Spalte hinzu.",
  "Spelled as in the battery.": "Geschrieben wie in der Testbatterie.",
  "How much each quality counts for this role, from 0 up; empty counts as 1.":
    "Wie viel jede Fähigkeit für diese Rolle zählt, ab 0; leer zählt als 1.",
  // readyBatteries
  "Maximal effort: warm up fully first; minors only with a qualified person beside them. Pain stops the test.":
    "Maximale Anstrengung: vorher voll aufwärmen; Minderjährige nur mit einer Fachkraft daneben. Bei Schmerz endet der Test.",
  "Loads knee and ankle on landing: warm up with easy jumps first; minors only with a qualified person beside them. Pain stops the test.":
    "Belastet Knie und Sprunggelenk beim Landen: vorher mit leichten Sprüngen aufwärmen; Minderjährige nur mit einer Fachkraft daneben. Bei Schmerz endet der Test.",
  "Heavy load: practised technique, warm-up sets and spotters or safety bars; minors only with a qualified person beside them. Pain stops the set.":
    "Schwere Last: geübte Technik, Aufwärmsätze und Hilfestellung oder Sicherheitsablagen; Minderjährige nur mit einer Fachkraft daneben. Bei Schmerz endet der Satz.",
  "Runs to exhaustion: only athletes who are well and used to hard running; minors only with a qualified person beside them. Pain, dizziness or illness stops the test.":
    "Lauf bis zur Erschöpfung: nur wer gesund und hartes Laufen gewohnt ist; Minderjährige nur mit einer Fachkraft daneben. Bei Schmerz, Schwindel oder Unwohlsein endet der Test.",
  "Ends in local fatigue: stop when form is lost; minors only with a qualified person beside them. Pain stops the test.":
    "Endet in örtlicher Ermüdung: aufhören, wenn die Form verloren geht; Minderjährige nur mit einer Fachkraft daneben. Bei Schmerz endet der Test.",
  "Standing start 0.5 m behind the first gate, start when ready, run through the last gate.\nThree runs with 3 min rest; same floor and shoes each time.":
    "Hochstart 0,5 m hinter der ersten Schranke, Start, wenn bereit, durch die letzte Schranke durchlaufen.\nDrei Läufe mit 3 min Pause; jedes Mal gleicher Boden und gleiche Schuhe.",
  "Computed from the splits of one run.\nNothing to enter.":
    "Errechnet aus den Zwischenzeiten eines Laufs.\nNichts einzutragen.",
  "Hands on the hips, dip and jump in one movement, legs straight until landing.\nThree jumps with 30 s rest; repeat one with bent legs or a free arm.":
    "Hände an den Hüften, ausholen und springen in einer Bewegung, Beine gestreckt bis zur Landung.\nDrei Sprünge mit 30 s Pause; mit gebeugten Beinen oder freiem Arm wiederholen.",
  "Step off a 30 cm box, touch the floor as briefly as you can and jump as high as you can.\nThree jumps with 60 s rest; same box each time.":
    "Von einem 30-cm-Kasten steigen, den Boden so kurz wie möglich berühren und so hoch wie möglich springen.\nDrei Sprünge mit 60 s Pause; jedes Mal derselbe Kasten.",
  "Computed: jump height over contact time of one jump.\nNothing to enter.":
    "Errechnet: Sprunghöhe durch Kontaktzeit eines Sprungs.\nNichts einzutragen.",
  "Stand on one leg, hop forward, land on the same leg and hold for 2 s; toe to heel is measured.\nTwo practice hops, then three for each leg, legs in turn; arms free.":
    "Auf einem Bein stehen, nach vorn springen, auf demselben Bein landen und 2 s halten; gemessen wird von der Zehe zur Ferse.\nZwei Probesprünge, dann drei je Bein, Beine im Wechsel; Arme frei.",
  "{0}\nAfter an injury of the leg only as the treating practitioner allows.":
    "{0}\nNach einer Verletzung des Beins nur, wie die Behandelnden es erlauben.",
  "Three hops on one leg without a stop, last landing held for 2 s; toe to heel is measured.\nTwo practice runs, then three for each leg, legs in turn; arms free.":
    "Drei Sprünge auf einem Bein ohne Halt, letzte Landung 2 s halten; gemessen wird von der Zehe zur Ferse.\nZwei Probedurchgänge, dann drei je Bein, Beine im Wechsel; Arme frei.",
  "Both feet behind the line, ball (3 kg) from behind the head with both hands, feet stay down.\nThree throws with 60 s rest; first touch of the ball is measured.":
    "Beide Füße hinter der Linie, Ball (3 kg) mit beiden Händen von hinter dem Kopf, Füße bleiben am Boden.\nDrei Würfe mit 60 s Pause; gemessen wird der erste Bodenkontakt des Balls.",
  "Back against the wall, ball (3 kg) at the chest, push with both hands without leaving the wall.\nThree pushes with 60 s rest; measured from the wall to the first touch of the ball.":
    "Rücken an der Wand, Ball (3 kg) an der Brust, mit beiden Händen stoßen, ohne die Wand zu verlassen.\nDrei Stöße mit 60 s Pause; gemessen von der Wand bis zum ersten Bodenkontakt des Balls.",
  "Computed from load and repetitions of one set.\nNothing to enter.":
    "Errechnet aus Last und Wiederholungen eines Satzes.\nNichts einzutragen.",
  "Computed: estimated maximum over body mass.\nNothing to enter.":
    "Errechnet: geschätztes Maximum durch Körpergewicht.\nNichts einzutragen.",
  "One set with a load that allows 3 to 8 full repetitions; stop when the next would fail.\nSame depth, bar place and shoes each time.":
    "Ein Satz mit einer Last, die 3 bis 8 volle Wiederholungen erlaubt; aufhören, wenn die nächste misslingen würde.\nJedes Mal gleiche Tiefe, gleiche Lage der Stange und gleiche Schuhe.",
  "One set with a load that allows 3 to 8 full repetitions; stop when the next would fail.\nBar touches the chest, seat and feet stay down.":
    "Ein Satz mit einer Last, die 3 bis 8 volle Wiederholungen erlaubt; aufhören, wenn die nächste misslingen würde.\nDie Stange berührt die Brust, Gesäß und Füße bleiben unten.",
  "On a step, knee straight, full height in the beat of one raise per 2 s, fingertips on the wall.\nCount until the height or the beat is lost.":
    "Auf einer Stufe, Knie gestreckt, volle Höhe im Takt von einer Hebung je 2 s, Fingerspitzen an der Wand.\nZählen, bis Höhe oder Takt verloren gehen.",
  "On the back, heel on a 60 cm box, knee slightly bent, other leg up; lift the hips to a straight line.\nCount until the line or the beat of one lift per 2 s is lost.":
    "In Rückenlage, Ferse auf einem 60-cm-Kasten, Knie leicht gebeugt, anderes Bein oben; die Hüfte zu einer geraden Linie heben.\nZählen, bis die Linie oder der Takt von einer Hebung je 2 s verloren geht.",
  "On forearm and foot, body in one line, upper hand on the hip.\nTime until the hips sink for the second time.":
    "Auf Unterarm und Fuß, Körper in einer Linie, obere Hand an der Hüfte.\nZeit, bis die Hüfte zum zweiten Mal sinkt.",
  "Run 15 m, turn on the named leg on the line, run back 5 m; timed from the gate 5 m before the line and back.\nThree runs for each leg with 2 min rest.":
    "15 m laufen, auf der Linie mit dem genannten Bein wenden, 5 m zurücklaufen; gestoppt von der Schranke 5 m vor der Linie und zurück.\nDrei Läufe je Bein mit 2 min Pause.",
  "{0}\nA dry, even floor; sharp turns load knee and ankle.":
    "{0}\nTrockener, ebener Boden; scharfe Wenden belasten Knie und Sprunggelenk.",
  "Computed: the turn's time less the 10 m sprint.\nNothing to enter.":
    "Errechnet: die Zeit der Wende weniger den 10-m-Sprint.\nNichts einzutragen.",
  "Shuttles of 20 m there and back at rising speed by the signal, short rest after each; two misses end it.\nThe metres of the last full shuttle count; same recording and floor each time.":
    "Pendelläufe von 20 m hin und zurück mit steigendem Tempo nach dem Signal, nach jedem kurze Pause; zwei Fehler beenden ihn.\nEs zählen die Meter des letzten vollen Laufs; jedes Mal gleiche Aufnahme und gleicher Boden.",
  "Splits of a 30 m sprint: how an athlete starts and how fast they become.":
    "Zwischenzeiten eines 30-m-Sprints: wie der Start ist und wie schnell es wird.",
  "Countermovement and drop jumps by flight and contact time: power of the legs.":
    "Countermovement und Drop Jumps mit Flug- und Kontaktzeit: Schnellkraft der Beine.",
  Hops: "Einbeinsprünge",
  "Hops for distance on each leg: power and its difference between sides.":
    "Weite Sprünge auf jedem Bein: Schnellkraft und ihr Seitenunterschied.",
  "Medicine-ball throws: power of the upper body.": "Medizinballwürfe: Schnellkraft des Oberkörpers.",
  "Sets to near failure with a known load: an estimated maximum without lifting it.":
    "Sätze bis nah ans Versagen mit bekannter Last: ein geschätztes Maximum, ohne es zu heben.",
  "Repetitions or time until form is lost, on each side.":
    "Wiederholungen oder Zeit, bis die Form verloren geht, auf jeder Seite.",
  "A timed turn on each leg, and what it costs over a straight run.":
    "Eine gestoppte Wende mit jedem Bein, und was sie gegenüber einem geraden Lauf kostet.",
  "An intermittent run to exhaustion.": "Ein Lauf mit Pausen bis zur Erschöpfung.",
  // squad
  Squad: "Kader",
  "One row per athlete; everything but the name may stay empty. Add columns of your own, sort and filter as you like.":
    "Eine Zeile je Athlet:in; alles außer dem Namen darf leer bleiben. Füge eigene Spalten hinzu, sortiere und filtere, wie du willst.",
  "Name as it stands on your test sheets. Each athlete stands here once.":
    "Name, wie er auf deinen Testblättern steht. Jede Athlet:in steht hier einmal.",
  "Playing position, or any other role by which athletes are compared and qualities are weighted.":
    "Spielposition oder eine andere Rolle, nach der verglichen und Fähigkeiten gewichtet werden.",
  "Team, age group or training group.": "Mannschaft, Altersklasse oder Trainingsgruppe.",
  "Left or right: the throwing arm or the leg of choice, as it matters in your sport.":
    "left (links) oder right (rechts): der Wurfarm oder das bevorzugte Bein, wie es in deinem Sport zählt.",
  "The year alone; no formula here needs the day.": "Nur das Jahr; keine Formel hier braucht den Tag.",
  "Latest body mass in kg: for strength per body mass, and for power from jump heights.":
    "Neuestes Körpergewicht in kg: für die Kraft je Körpergewicht und für die Leistung aus Sprunghöhen.",
  "Standing height in cm: for hops by stature.": "Größe im Stand in cm: für Sprünge je Körpergröße.",
  "Yours. Nothing here is read into any result.": "Deine. Nichts hier geht in ein Ergebnis ein.",
  // storeTable
  "No column is headed “{0}”{1}.": "Keine Spalte heißt „{0}“{1}.",
  "; no row can be read": "; keine Zeile ist lesbar",
  "{0} also stands in {1}; only the first row counts.": "{0} steht auch in {1}; nur die erste Zeile zählt.",
  " The row was left out.": " Die Zeile wurde weggelassen.",
  "Nothing stands under “{0}”; the row was left out.": "Unter „{0}“ steht nichts; die Zeile wurde weggelassen.",
  // trySample
  "Tapeline sample": "Tapeline-Beispiel",
  "A sample squad to try Tapeline on": "Ein Beispielkader, um Tapeline auszuprobieren",
  "Invented: nobody is called so, and nobody has hopped so. Single-leg hop for distance, three trials a leg, in cm.":
    "Erfunden: Niemand heißt so, und niemand ist so gesprungen. Einbeinsprung auf Weite, drei Versuche je Bein, in cm.",
  "Left 1": "Links 1",
  "Left 2": "Links 2",
  "Left 3": "Links 3",
  "Right 1": "Rechts 1",
  "Right 2": "Rechts 2",
  "Right 3": "Rechts 3",
};
