import type { Catalogue } from "../say";
import { counted, side } from "./grammar";

/** Whom somebody is compared with, from the dative to the genitive: "dem Kader" as "des Kaders". */
const ofThem = (whom: string): string =>
  whom
    .replace(/^dem Kader$/, "des Kaders")
    .replace(/^den unter/, "der unter")
    .replace(/^den Voll/, "der Voll");

/** German of src/programme. */
export const programme: Catalogue = {
  // athletePage
  "For the picture.": "Für das Bild.",
  "Asked for": "Gefragt",
  "How much it counts for the role; 1 as any other.": "Wie viel sie für die Rolle zählt; 1 wie jede andere.",
  "From the middle: 10 points are one standard deviation; above 0 is better. ± what noise may add.":
    "Von der Mitte: 10 Punkte sind eine Standardabweichung; über 0 ist besser. ±: was das Rauschen ausmachen kann.",
  "May be, below": "Möglich, darunter",
  "May be, above": "Möglich, darüber",
  "For certain": "Sicher",
  "You, against the middle (0)": "Du, gegen die Mitte (0)",
  "Points from the middle: right is better": "Punkte von der Mitte: rechts ist besser",
  "Asked for: how much it counts {0}; 1 is as any other. ": "Gefragt: wie viel sie {0} zählt; 1 ist wie jede andere. ",
  "for you": "für dich",
  "for your role ({0})": "für deine Rolle ({0})",
  "0 is the middle of {0} ({1} tested); two in three lie between −10 and +10. ": (whom, tested) =>
    `0 ist die Mitte ${ofThem(whom)} (${tested} getestet); zwei von drei liegen zwischen −10 und +10. `,
  "Dark bar: that far for certain. Light bar: as far as the noise of the tests lets it be; “?” where that is not known.":
    "Dunkler Balken: so weit sicher. Heller Balken: so weit, wie das Rauschen der Tests es zulässt; „?“, wo es nicht bekannt ist.",
  "How noisy the tests are is not known yet, so the bars are light: nothing is for certain.":
    "Wie stark die Tests rauschen, ist noch nicht bekannt, darum sind die Balken hell: Nichts ist sicher.",
  "You are {0} below the middle of {1}.": (points, whom) =>
    `Du liegst ${counted(points, "Punkt", "Punkte")} unter der Mitte ${ofThem(whom)}.`,
  "You are at the middle or above it: build on it.": "Du liegst in der Mitte oder darüber: Bau darauf auf.",
  "It counts more than others{0}.": "Das zählt{0} mehr als anderes.",
  " for your role ({0})": " für deine Rolle ({0})",
  "Change ÷ noise: right is better": "Veränderung ÷ Rauschen: rechts ist besser",
  "Bars: the change over the noise of the test. It is called real where it is the larger of the two.{0}":
    "Balken: die Veränderung, geteilt durch das Rauschen des Tests. Echt heißt sie, wo sie von beiden die größere ist.{0}",
  "Test results vary by themselves from day to day; one result decides nothing. Pain, or back from an injury: speak to your physiotherapist or doctor before you train or test.":
    "Testergebnisse schwanken von selbst von Tag zu Tag; ein Ergebnis entscheidet nichts. Schmerz, oder zurück nach einer Verletzung: Sprich mit deiner Physiotherapie oder Arztpraxis, bevor du trainierst oder testest.",
  "Tests up to {0}": "Tests bis {0}",
  "Where you stand": "Wo du stehst",
  "There are no tests to compare yet.": "Es gibt noch keine Tests zum Vergleichen.",
  "Your strengths: {0}.": "Deine Stärken: {0}.",
  "No quality stands out beyond the noise of the tests yet.":
    "Noch ragt keine Fähigkeit über das Rauschen der Tests hinaus.",
  "Not tested: {0}.": "Nicht getestet: {0}.",
  "What to work on": "Woran du arbeitest",
  "Nothing can be said before you have been tested.": "Solange du nicht getestet bist, lässt sich nichts sagen.",
  "Since the last tests": "Seit den letzten Tests",
  "What is next": "Was als Nächstes kommt",
  "a strength": "eine Stärke",
  "to work on": "daran arbeiten",
  "as most": "wie die meisten",
  "too close to say": "zu knapp für ein Urteil",
  "not tested": "nicht getestet",
  "A physical quality.": "Eine körperliche Fähigkeit.",
  Points: "Punkte",
  "In words": "In Worten",
  "What the points mean, the noise of the tests considered.":
    "Was die Punkte bedeuten, das Rauschen der Tests bedacht.",
  "The test, with its unit.": "Der Test, mit seiner Einheit.",
  "Score at the earlier test day.": "Wert am früheren Testtag.",
  Now: "Jetzt",
  "Score at the latest test day.": "Wert am letzten Testtag.",
  "The change over what the test's noise alone explains: beyond 1 to either side is more than noise.":
    "Die Veränderung, geteilt durch das, was das Rauschen des Tests allein erklärt: über 1 zu einer Seite ist mehr als Rauschen.",
  "Was it real?": "War es echt?",
  "The change against the test's own noise.": "Die Veränderung gegen das Rauschen des Tests.",
  "Change, in sizes of the test's noise": "Veränderung, gemessen am Rauschen des Tests",
  " You were there for {0}.": " Du warst dabei: {0}.",
  "noise not known": "Rauschen nicht bekannt",
  "yes, better": "ja, besser",
  "yes, worse": "ja, schlechter",
  "cannot tell": "nicht zu sagen",
  "Your results": "Deine Ergebnisse",
  "The test.": "Der Test.",
  "Score of the latest test day.": "Wert des letzten Testtags.",
  "Unit of the result.": "Einheit des Ergebnisses.",
  "From {0}: {1} with {2} a week. {3}.": (begins, weeks, sessions, exercises) =>
    `Ab ${begins}: ${counted(weeks, "Woche", "Wochen")} mit ${counted(sessions, "Einheit", "Einheiten")} je Woche. ${exercises}.`,
  "Under 18: heavy lifting and maximal tests only under qualified supervision.":
    "Unter 18: schweres Heben und maximale Tests nur unter fachkundiger Aufsicht.",
  "{0} and {1}": "{0} und {1}",
  // attendance
  "{0} of {1} sessions": "{0} von {1} Einheiten",
  "{0} sessions, of which the group held {1}": "{0} Einheiten, davon {1} mit der Gruppe",
  // blockForm
  Deload: "Entlastung",
  Weeks: "Wochen",
  "Length of the block, the deload week included.": "Länge des Blocks, Entlastungswoche eingeschlossen.",
  "Sessions a week": "Einheiten je Woche",
  "Sessions of this programme, beside the training of the sport.":
    "Einheiten dieses Programms, neben dem Training der Sportart.",
  "Exercises a session": "Übungen je Einheit",
  "How many exercises fit into one session.": "Wie viele Übungen in eine Einheit passen.",
  "Aim of the block": "Ziel des Blocks",
  "Sets, repetitions and effort to begin with follow from it; all can be changed in the plan.":
    "Sätze, Wiederholungen und Anstrengung zu Beginn folgen daraus; alles lässt sich im Plan ändern.",
  "Build up: more repetitions, far from failure": "Aufbau: mehr Wiederholungen, weit vom Versagen",
  "Strength: heavier, fewer repetitions": "Kraft: schwerer, weniger Wiederholungen",
  "Power: few and fast": "Schnellkraft: wenige und schnell",
  "In season: little, to keep what is there": "In der Saison: wenig, zum Erhalten",
  "Last week": "Letzte Woche",
  "A deload week has half the sets at the effort of the first week.":
    "Eine Entlastungswoche hat halb so viele Sätze bei der Anstrengung der ersten Woche.",
  "As the others": "Wie die anderen",
  "Mass of the empty bar.": "Gewicht der leeren Stange.",
  "Lightest plate of which there is a pair.": "Leichteste Scheibe, von der es ein Paar gibt.",
  // comparedWith
  // In the dative, as most sentences have them; ofThem turns them.
  "the squad": "dem Kader",
  "the group {0}": "der Gruppe {0}",
  "the role {0}": "der Rolle {0}",
  "the under-18s": "den unter 18-Jährigen",
  "those over 18": "den Volljährigen",
  // demandTemplates
  Cricket: "Cricket",
  Football: "Fußball",
  Handball: "Handball",
  Hockey: "Hockey",
  Netball: "Netball",
  Rugby: "Rugby",
  // exerciseLibrary
  Groin: "Leiste",
  Hamstrings: "Oberschenkel hinten",
  Legs: "Beine",
  Shoulder: "Schulter",
  Trunk: "Rumpf",
  "Only with a rack or spotters, and with a technique that holds. Stop at pain.":
    "Nur mit Ablage oder Hilfestellung und mit sicherer Technik. Bei Schmerz aufhören.",
  "Only on a floor that gives, with quiet landings. Stop at pain in knee, shin or Achilles tendon.":
    "Nur auf federndem Boden, mit leisen Landungen. Bei Schmerz in Knie, Schienbein oder Achillessehne aufhören.",
  Dumbbell: "Kurzhantel",
  Dumbbells: "Kurzhanteln",
  "Upper body": "Oberkörper",
  "Bar in a rack": "Stange in der Ablage",
  Box: "Kasten",
  "Medicine ball": "Medizinball",
  "Whole body": "Ganzer Körper",
  "Only warm and fresh; full rest between runs. Stop at a pull in the thigh.":
    "Nur warm und frisch; volle Pause zwischen den Läufen. Bei einem Ziehen im Oberschenkel aufhören.",
  "Lower leg": "Unterschenkel",
  Band: "Band",
  Ball: "Ball",
  // loadReport
  "{0} times as many {1} as in the weeks before.": "{1}: das {0}-Fache der Wochen davor.",
  "{0} of the squad by week": "{0} des Kaders nach Wochen",
  "One week in the diary.": "Eine Woche im Tagebuch.",
  "The highest mean is that of the week of {0}: {1}.": "Das höchste Mittel hat die Woche vom {0}: {1}.",
  "How many have a number in the week.": "Wie viele in der Woche eine Zahl haben.",
  "Mean {0}": "Mittel: {0}",
  "{0} Mean of these athletes.": "{0} Mittel dieser Athlet:innen.",
  "Of these athletes.": "Von diesen Athlet:innen.",
  "{0} by week": "{0} nach Wochen",
  "{0} a week": "{0} je Woche",
  "Nothing written down.": "Nichts aufgeschrieben.",
  "1 session without a rating: the load is too low by as much.":
    "1 Einheit ohne Bewertung: Um so viel ist die Belastung zu niedrig.",
  "{0} sessions without a rating: the load is too low by as much.":
    "{0} Einheiten ohne Bewertung: Um so viel ist die Belastung zu niedrig.",
  "{0} times the mean of the weeks before: ask how she or he is.":
    "Das {0}-Fache des Mittels der Wochen davor: Frag nach, wie es geht.",
  "Too few weeks before to compare with.": "Zu wenige Wochen davor zum Vergleichen.",
  "Name as in the diary.": "Name wie im Tagebuch.",
  "Week of": "Woche vom",
  "Monday of the week, YYYY-MM-DD.": "Montag der Woche, JJJJ-MM-TT.",
  Sessions: "Einheiten",
  "Sessions the athlete was at.": "Besuchte Einheiten.",
  load: "Belastung",
  "Rating times minutes, added up over the week.": "Bewertung mal Minuten, über die Woche zusammengezählt.",
  "From the week before, in percent of it.": "Gegenüber der Woche davor, in Prozent davon.",
  Monotony: "Monotonie",
  "Mean of the days over their standard deviation: high where all days are alike.":
    "Mittel der Tage durch ihre Standardabweichung: hoch, wo alle Tage gleich sind.",
  Strain: "Beanspruchung",
  "Load times monotony.": "Belastung mal Monotonie.",
  "At full effort, in the week.": "Mit voller Anstrengung, in der Woche.",
  "Bowled or pitched, in the week.": "Als Bowler oder Pitcher geworfen, in der Woche.",
  Note: "Hinweis",
  "What to look at, if anything.": "Worauf zu achten ist, falls auf etwas.",
  "Athlete and week: by it a row is found again.": "Athlet:in und Woche: Daran wird eine Zeile wiedergefunden.",
  "A week far above the others is a reason to talk, no prediction of an injury: such measures describe how the load moved, and none has been shown to say who will be hurt.":
    "Eine Woche weit über den anderen ist ein Grund zu reden, keine Vorhersage einer Verletzung: Solche Maße beschreiben, wie sich die Belastung bewegt hat, und von keinem ist gezeigt, dass es sagt, wen es trifft.",
  "Monotony and strain stem from observations in endurance athletes and have no validated limits.":
    "Monotonie und Beanspruchung stammen aus Beobachtungen an Ausdauersportler:innen und haben keine überprüften Grenzen.",
  "Ratings are how hard it felt. Compare athletes with themselves, not with each other.":
    "Bewertungen sind, wie hart es sich anfühlte. Vergleiche alle mit sich selbst, nicht untereinander.",
  "Load is rating (0 to 10) times minutes; a day without an entry counts as rest (Foster 1998, Med Sci Sports Exerc ":
    "Belastung ist Bewertung (0 bis 10) mal Minuten; ein Tag ohne Eintrag zählt als Ruhe (Foster 1998, Med Sci Sports Exerc ",
  "30:1164-1168). A week at {0} times the mean of the four before is named: common practice, no source.":
    "30:1164-1168). Genannt wird eine Woche ab dem {0}-Fachen des Mittels der vier davor: gängige Praxis, ohne Quelle.",
  "Load by week": "Belastung nach Wochen",
  "Load by week: {0}": "Belastung nach Wochen: {0}",
  "No week stands out from the weeks before it.": "Keine Woche ragt aus den Wochen davor heraus.",
  "{0} out from the weeks before: {1}.": "{0} aus den Wochen davor heraus: {1}.",
  "One week stands": "Eine Woche ragt",
  "{0} weeks stand": "{0} Wochen ragen",
  "{0} (week of {1})": "{0} (Woche vom {1})",
  "Season load": "Saisonbelastung",
  "{0} weeks in the diary.": "{0} Wochen im Tagebuch.",
  "Squad's mean": "Mittel des Kaders",
  "Load (rating × minutes)": "Belastung (Bewertung × Minuten)",
  "{0} athletes, {1} sessions": "{0} Athlet:innen, {1} Einheiten",
  // nextCycle
  "Others come first now.": "Jetzt kommen andere zuerst.",
  "Others come first now; it has not been shown to have improved.":
    "Jetzt kommen andere zuerst; eine Verbesserung ist nicht gezeigt.",
  "Not tested again.": "Nicht wieder getestet.",
  " There for {0}.": " Dabei: {0}.",
  // nextCycleReport
  "{0} priorities are carried over and {1} are new; {2} are done and {3} set aside.": (kept, fresh, done, aside) =>
    `Prioritäten: ${kept} laufen weiter, ${fresh} neu, ${done} erledigt, ${aside} zurückgestellt.`,
  "carried over": "läuft weiter",
  new: "neu",
  done: "erledigt",
  "set aside": "zurückgestellt",
  "From one cycle to the next": "Von einem Zyklus zum nächsten",
  "The physical quality to work on.": "Die körperliche Fähigkeit, an der zu arbeiten ist.",
  "What becomes of it": "Was daraus wird",
  "Carried over, new, done, or set aside.": "Läuft weiter, neu, erledigt oder zurückgestellt.",
  "Rank before": "Rang davor",
  "Its place in the last block; 1 had the most work.": "Ihr Platz im letzten Block; 1 hatte die meiste Arbeit.",
  "Rank next": "Rang danach",
  "Its place in the next; 1 is the most urgent.": "Ihr Platz im nächsten; 1 ist am dringendsten.",
  "What changed in its tests, and why it stands as it does.":
    "Was sich in ihren Tests verändert hat, und warum sie so steht.",
  "Athlete and quality: by it a row is found again.": "Athlet:in und Fähigkeit: Daran wird eine Zeile wiedergefunden.",
  "“Done” means improved beyond the noise and no longer among the first needs; what is not worked on can be lost again.":
    "„Erledigt“ heißt: über dem Rauschen verbessert und nicht mehr unter dem Dringendsten; woran nicht gearbeitet wird, das kann wieder verloren gehen.",
  "An aid to a conversation: overrule it on the sheet of priorities, and say why.":
    "Eine Hilfe für das Gespräch: Entscheide auf dem Blatt der Prioritäten anders, und sag, warum.",
  "What was worked on in the last block, by the exercises planned, against the priorities that follow from the retest. Common practice, no source.":
    "Woran im letzten Block nach den geplanten Übungen gearbeitet wurde, gegen die Prioritäten, die aus dem Retest folgen. Gängige Praxis, ohne Quelle.",
  "{0} athletes, {1} priorities": "{0} Athlet:innen, {1} Prioritäten",
  // phases
  "Every second week one repetition less is left in reserve, so the load rises; where no load is reckoned, one set is added (two at most). A deload week has half the sets at the effort of week 1. Common practice, no source.":
    "Jede zweite Woche bleibt eine Wiederholung weniger in Reserve, damit die Last steigt; wo keine Last berechnet wird, kommt ein Satz dazu (höchstens zwei). Eine Entlastungswoche hat halb so viele Sätze bei der Anstrengung von Woche 1. Gängige Praxis, ohne Quelle.",
  // planBlock
  " contacts": " Kontakte",
  "{0}: no priorities, so nothing is planned. Test first.":
    "{0}: keine Prioritäten, also ist nichts geplant. Zuerst testen.",
  "{0}: the exercises hold nothing for {1}.": "{0}: Für {1} gibt es keine Übung.",
  ", one set more on the {0}": (which) => `, ein Satz mehr ${side(which)}`,
  "leave {0} in reserve": "{0} in Reserve lassen",
  "{0}: no estimated maximum of {1}, so {2} has no load in kg.":
    "{0}: kein geschätztes Maximum in {1}, also hat {2} keine Last in kg.",
  "{0}: the bar alone is heavier than the load for {1}.": "{0}: Die Stange allein ist schwerer als die Last für {1}.",
  "clean, never to failure": "sauber, nie bis zum Versagen",
  "hold your form; stop when it goes": "Form halten; aufhören, wenn sie verloren geht",
  "every one at full effort, and clean": "jeder mit voller Anstrengung, und sauber",
  "full speed, full rest": "volles Tempo, volle Pause",
  "hard but even": "hart, aber gleichmäßig",
  " each side": " je Seite",
  // priorities
  here: "hier",
  "{0} SD below {1}{2}.{3}": "{0} SD unter {1}{2}.{3}",
  "Below {0} in nothing: build on it{1}.": "In nichts unter {0}: darauf aufbauen{1}.",
  "{0}: no test of the battery with enough others to compare with.":
    "{0}: kein Test der Testbatterie mit genug anderen zum Vergleichen.",
  " The noise of the test could explain that.": " Das Rauschen des Tests könnte das erklären.",
  ", and it counts {0} {1}": ", mit Gewicht {0} {1}",
  "for a {0}": "für die Rolle {0}",
  "{0} {1}{2} ({3} SD)": "{0} {1}{2} ({3} SD)",
  // ratios
  "Height of the drop jump over its time on the ground. Depends on the height of the box: compare like with like.":
    "Höhe des Drop Jumps durch seine Zeit am Boden. Hängt von der Höhe des Kastens ab: Vergleiche nur Gleiches.",
  "Eccentric utilisation ratio": "Verhältnis CMJ zu SJ",
  "Countermovement jump over squat jump; about 1.0 to 1.2. It carries the noise of both jumps.":
    "Countermovement Jump durch Squat Jump; etwa 1,0 bis 1,2. Trägt das Rauschen beider Sprünge.",
  "Dynamic strength index": "Dynamischer Kraftindex",
  "Peak force of the jump over that of the isometric pull. It also rises when the pull gets worse; its use is disputed.":
    "Spitzenkraft des Sprungs durch die des isometrischen Zugs. Steigt auch, wenn der Zug schlechter wird; sein Nutzen ist umstritten.",
  "Sprint force at the start": "Sprintkraft am Start",
  "From the curve of the split times. From a few gates it carries several percent of error.":
    "Aus der Kurve der Zwischenzeiten. Aus wenigen Schranken trägt sie einige Prozent Fehler.",
  "Sprint maximal speed": "Höchstgeschwindigkeit im Sprint",
  "The speed that the curve of the split times tends to. A guess where the run was too short to reach it.":
    "Die Geschwindigkeit, der die Kurve der Zwischenzeiten zustrebt. Eine Schätzung, wo der Lauf zu kurz war, sie zu erreichen.",
  " (the middle of all {0})": " (die Mitte aller {0})",
  // review
  "never tested.": "nie getestet.",
  "not tested again since the block began.": "seit Beginn des Blocks nicht wieder getestet.",
  "no result from before the block to compare with.": "kein Ergebnis von vor dem Block zum Vergleichen.",
  "no athlete has results both before the block and since.": "niemand hat Ergebnisse von vor dem Block und von danach.",
  "{0}: never tested.": "{0}: nie getestet.",
  "{0}: not tested again since the block began, so no change can be told.":
    "{0}: seit Beginn des Blocks nicht wieder getestet, also ist keine Veränderung zu sagen.",
  "{0}: no tests from before the block, so there is nothing to compare with.":
    "{0}: keine Tests von vor dem Block, also gibt es nichts zum Vergleichen.",
  // reviewReport
  "The squad got better in {0} of {1} tests, by intervals that leave no room for no change.":
    "Der Kader wurde in {0} von {1} Tests besser, nach Intervallen, die keine Veränderung ausschließen.",
  "Of {0} changes, {1} are improvements beyond the noise and {2} declines. The rest cannot be told from noise.":
    "Von {0} Veränderungen sind {1} Verbesserungen über dem Rauschen und {2} Verschlechterungen. Der Rest ist vom Rauschen nicht zu unterscheiden.",
  "Review of the block: every change": "Rückblick auf den Block: jede Veränderung",
  "Each change as in the analysis of change since last time.":
    "Jede Veränderung wie in der Auswertung der Veränderung seit dem letzten Mal.",
  "Review by test": "Rückblick nach Tests",
  "Review of the block: the squad, test by test": "Rückblick auf den Block: der Kader, Test für Test",
  "It got worse in: {0}.": "Schlechter wurde er in: {0}.",
  "Tested before the block and since.": "Vor dem Block und seither getestet.",
  "After minus before, in the unit.": "Nachher minus vorher, in der Einheit.",
  "Lower 95 % limit of the mean change.": "Untere 95-%-Grenze der mittleren Veränderung.",
  "Upper 95 % limit of the mean change.": "Obere 95-%-Grenze der mittleren Veränderung.",
  "Better by (SD)": "Besser um (SD)",
  "The mean change in standard deviations between athletes (g_av): above 0 is better, also for times.":
    "Die mittlere Veränderung in Standardabweichungen zwischen den Athlet:innen (g_av): über 0 ist besser, auch bei Zeiten.",
  "SD low": "SD unten",
  "Lower 95 % limit of it.": "Untere 95-%-Grenze davon.",
  "SD high": "SD oben",
  "Upper 95 % limit of it.": "Obere 95-%-Grenze davon.",
  Improved: "Verbessert",
  "Athletes who improved beyond the noise.": "Athlet:innen, die sich über dem Rauschen verbessert haben.",
  Declined: "Verschlechtert",
  "Athletes who declined beyond the noise.": "Athlet:innen, die sich über dem Rauschen verschlechtert haben.",
  "Whether the interval leaves room for no change.": "Ob das Intervall auch keine Veränderung zulässt.",
  "The squad's change, in standard deviations": "Veränderung des Kaders, in Standardabweichungen",
  "SD between athletes": "SD zwischen den Athlet:innen",
  Worse: "Schlechter",
  "Mean change with its 95 % interval; in standard deviations as g_av, small samples corrected (Lakens 2013, Front Psychol 4:863; Cumming 2012). Fewer than five athletes are looked at one by one.":
    "Mittlere Veränderung mit ihrem 95-%-Intervall; in Standardabweichungen als g_av, für kleine Gruppen korrigiert (Lakens 2013, Front Psychol 4:863; Cumming 2012). Weniger als fünf Athlet:innen werden einzeln betrachtet.",
  "Better as a group": "Als Gruppe besser",
  "Worse as a group": "Als Gruppe schlechter",
  "Cannot tell: no change is possible too": "Nicht zu sagen: auch keine Veränderung ist möglich",
  "Too few for a group: look at each athlete": "Zu wenige für eine Gruppe: einzeln betrachten",
  "Review by athlete": "Rückblick nach Athlet:innen",
  "Review of the block: who did the work, who changed":
    "Rückblick auf den Block: wer die Arbeit gemacht hat, wer sich verändert hat",
  "Of {0} athletes, {1} improved beyond the noise in at least one test, and {2} declined in one.":
    "Von {0} Athlet:innen: {1} in mindestens einem Test über dem Rauschen verbessert, {2} in einem verschlechtert.",
  "The diary says nothing of this block, so nobody's attendance is known.":
    "Das Tagebuch sagt nichts über diesen Block, also ist von niemandem die Anwesenheit bekannt.",
  "They were there for {0} to {1} % of their group's sessions.":
    "Anwesend waren sie bei {0} bis {1} % der Einheiten ihrer Gruppe.",
  "Attended (%)": "Anwesend (%)",
  "Sessions attended, of those held.": "Besuchte Einheiten, von den gehaltenen.",
  "Tests compared": "Verglichene Tests",
  "Tests done before the block and since.": "Tests, die vor dem Block und seither gemacht wurden.",
  "Mean change (noise)": "Mittlere Veränderung (Rauschen)",
  "Mean of the changes, each over what noise alone explains 19 times in 20: above 0 is better, beyond 1 more than noise.":
    "Mittel der Veränderungen, jede geteilt durch das, was Rauschen allein 19-mal von 20 erklärt: über 0 ist besser, über 1 mehr als Rauschen.",
  "Improved in": "Verbessert in",
  "Tests in which the change was beyond noise, for the better.":
    "Tests, in denen die Veränderung über dem Rauschen lag, zum Besseren.",
  "Declined in": "Verschlechtert in",
  "Tests in which the change was beyond noise, for the worse.":
    "Tests, in denen die Veränderung über dem Rauschen lag, zum Schlechteren.",
  "Attendance (%, across) and mean change (upwards)": "Anwesenheit (%, waagrecht) und mittlere Veränderung (senkrecht)",
  "Mean change, in sizes of the noise": "Mittlere Veränderung, gemessen am Rauschen",
  "A session counts as held when at least half of the athlete's group was there; changes as in the review of every change.":
    "Eine Einheit gilt als gehalten, wenn mindestens die Hälfte der eigenen Gruppe da war; Veränderungen wie im Rückblick auf jede Veränderung.",
  Review: "Rückblick",
  "Role as in the squad.": "Rolle wie im Kader.",
  "Test and measure.": "Test und Messwert.",
  "Unit of the scores.": "Einheit der Werte.",
  "Last score before the block.": "Letzter Wert vor dem Block.",
  "Latest score since the block began.": "Neuester Wert seit Beginn des Blocks.",
  "Chance better (%)": "Chance besser (%)",
  "Chance worse (%)": "Chance schlechter (%)",
  "The change beside the test's noise.": "Die Veränderung neben dem Rauschen des Tests.",
  "Sessions attended": "Besuchte Einheiten",
  "Of the block, by the diary.": "Des Blocks, nach dem Tagebuch.",
  "Sessions held": "Gehaltene Einheiten",
  "Sessions of the block at which at least half of the athlete's group was.":
    "Einheiten des Blocks, bei denen mindestens die Hälfte der eigenen Gruppe war.",
  "Athlete and test: by it a row is found again.": "Athlet:in und Test: Daran wird eine Zeile wiedergefunden.",
  "Attendance beside a change is no proof that the one made the other.":
    "Anwesenheit neben einer Veränderung ist kein Beweis, dass die eine die andere bewirkt hat.",
  "{0} athletes, {1} changes": "{0} Athlet:innen, {1} Veränderungen",
  // sessionSheets
  "Done, set by set": "Geschafft, Satz für Satz",
  "Load and repetitions of each set: room for a pencil.": "Last und Wiederholungen je Satz: Platz für den Bleistift.",
  "Week {0} (from {1}), session {2}": "Woche {0} (ab {1}), Einheit {2}",
  "What to do.": "Was zu tun ist.",
  "Number of sets.": "Zahl der Sätze.",
  "Amount of each set.": "Umfang je Satz.",
  "Warm up first. Stop at pain or when technique breaks down, and tell the coach.":
    "Zuerst aufwärmen. Bei Schmerz oder wenn die Technik nachlässt aufhören und dem Trainerteam sagen.",
  "Rating of the session (0 to 10): ____   Minutes: ____": "Bewertung der Einheit (0 bis 10): ____   Minuten: ____",
  // squadPage
  Above: "Darüber",
  Below: "Darunter",
  "{0} overview": "{0} im Überblick",
  "{0} · Tests up to {1}": (athletes, date) => `${counted(athletes, "Athlet:in", "Athlet:innen")} · Tests bis ${date}`,
  "What the game asks for, and who stands out": "Was das Spiel verlangt, und wer heraussticht",
  "Who has changed for real": "Wer sich wirklich verändert hat",
  "Who was there": "Wer da war",
  "For the coaching staff: personal data. Test results vary from day to day; who plays is not decided by them. Pain, injury and return from it: ask those who treat the athlete. Maximal tests of under-18s only under qualified supervision.":
    "Für das Trainerteam: persönliche Daten. Testergebnisse schwanken von Tag zu Tag; wer spielt, entscheiden sie nicht. Schmerz, Verletzung und Rückkehr daraus: Frag die Behandelnden. Maximale Tests von Minderjährigen nur unter fachkundiger Aufsicht.",
  "To the left": "Nach links",
  "To the right": "Nach rechts",
  "Mean of its weights over the athletes' roles; 1 as any other.":
    "Mittel ihrer Gewichte über die Rollen der Athlet:innen; 1 wie jede andere.",
  "Athletes with results.": "Athlet:innen mit Ergebnissen.",
  "Athletes below the rest by more than noise.": "Athlet:innen, die um mehr als das Rauschen unter den anderen liegen.",
  "Athletes above the rest by more than noise.": "Athlet:innen, die um mehr als das Rauschen über den anderen liegen.",
  "Athletes who stand out": "Athlet:innen, die herausstechen",
  "Athletes below the rest (left) and above it (right)": "Athlet:innen unter den anderen (links) und darüber (rechts)",
  "All qualities are asked for alike, as the weights stand.":
    "Nach den Gewichten, wie sie stehen, sind alle Fähigkeiten gleich gefragt.",
  "Asked for most: {0}.": "Am meisten gefragt: {0}.",
  "In no quality does anybody stand below the rest by more than noise.":
    "In keiner Fähigkeit liegt jemand um mehr als das Rauschen unter den anderen.",
  "{0}: {1} of {2} below the rest ({3}).": "{0}: {1} von {2} unter den anderen ({3}).",
  "Each is compared with {0}, so nobody is below because all are: these are the ones who stand out by more than the noise of the tests.{1}":
    "Verglichen wird mit {0}, also liegt niemand darunter, weil es alle tun: Das sind die, die um mehr als das Rauschen der Tests herausstechen.{1}",
  " Asked for, but not tested: {0}.": " Gefragt, aber nicht getestet: {0}.",
  "Not at the latest tests: {0}.": "Nicht bei den letzten Tests: {0}.",
  "Nobody has been tested again yet.": "Noch ist niemand wieder getestet.",
  "{0} ({1} tests)": "{0} ({1} Tests)",
  "{0}: nobody.": "{0}: niemand.",
  "Tested again": "Wieder getestet",
  "Athletes with results before and after.": "Athlet:innen mit Ergebnissen davor und danach.",
  "Worse by more than noise.": "Um mehr als das Rauschen schlechter.",
  "Better by more than noise.": "Um mehr als das Rauschen besser.",
  "Athletes who changed beyond noise": "Athlet:innen mit Veränderung über dem Rauschen",
  "Athletes who are worse (left) and better (right)": "Athlet:innen, die schlechter (links) und besser (rechts) sind",
  "Better for real": "Wirklich besser",
  "Worse for real": "Wirklich schlechter",
  "By chance alone one change in twenty looks real; who is not named has changed too little to tell.":
    "Schon durch Zufall sieht eine von zwanzig Veränderungen echt aus; wer nicht genannt ist, hat sich zu wenig verändert, um es zu sagen.",
  "There is no diary of sessions to tell it from.": "Es gibt kein Tagebuch der Einheiten, das es sagen könnte.",
  "Half of the squad were at {0} of the sessions or more. {1}":
    "Der halbe Kader war bei {0} der Einheiten oder mehr. {1}",
  "Nobody was below {0}.": "Unter {0} war niemand.",
  "Below {0}: {1}.": "Unter {0}: {1}.",
  "the last {0} days of training": "den letzten {0} Trainingstagen",
  "{0} (last there on {1})": "{0} (zuletzt da am {1})",
  "{0} (since {1})": "{0} (seit {1})",
  "Nobody has missed all of {0}.": "Niemand hat an {0} immer gefehlt.",
  "Away on all of {0}: {1}.": "An {0} immer gefehlt: {1}.",
  "Back after {0} days or more: {1}. How much they may do is for those who treat them to say.":
    "Zurück nach {0} Tagen oder mehr: {1}. Wie viel schon geht, sagen die Behandelnden.",
  "No block is planned yet.": "Noch ist kein Block geplant.",
  "A block of {0} from {1}.": (weeks, begins) => `Ein Block von ${counted(weeks, "Woche", "Wochen")} ab ${begins}.`,
  "First priority of most: {0}.": "Erste Priorität der meisten: {0}.",
  // weakerSides
  "{0}: the {1} is {2} % weaker, beyond the test's noise.": (series, which, percent) =>
    `${series}: ${side(which)} ${percent} % schwächer, über dem Rauschen des Tests.`,
};
