import type { Catalogue } from "../say";
import { counted, firstCapital, side } from "./grammar";

/** German of src/programme. */
export const programme: Catalogue = {
  // athletePage
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
  "From the squad's middle: 10 points are one standard deviation; above 0 is better.":
    "Von der Mitte des Kaders: 10 Punkte sind eine Standardabweichung; über 0 ist besser.",
  "In words": "In Worten",
  "What the points mean, the noise of the tests considered.":
    "Was die Punkte bedeuten, das Rauschen der Tests bedacht.",
  "You, against the squad's middle (0)": "Du, gegen die Mitte des Kaders (0)",
  You: "Du",
  "Points: right of 0 is better": "Punkte: rechts von 0 ist besser",
  "0 is the middle of the squad. Two in three athletes lie between −10 and +10 points.":
    "0 ist die Mitte des Kaders. Zwei von drei Athlet:innen liegen zwischen −10 und +10 Punkten.",
  "The test, with its unit.": "Der Test, mit seiner Einheit.",
  "Score at the earlier test day.": "Wert am früheren Testtag.",
  Now: "Jetzt",
  "Score at the latest test day.": "Wert am letzten Testtag.",
  "The change over what the test's noise alone explains: beyond 1 to either side is more than noise.":
    "Die Veränderung, geteilt durch das, was das Rauschen des Tests allein erklärt: über 1 zu einer Seite ist mehr als Rauschen.",
  "Was it real?": "War es echt?",
  "The change against the test's own noise.": "Die Veränderung gegen das Rauschen des Tests.",
  "Change, in sizes of the test's noise": "Veränderung, gemessen am Rauschen des Tests",
  "Right of +1: better for real": "Rechts von +1: wirklich besser",
  "Change in sizes of the test's noise: between −1 and +1 nobody can tell it from chance.{0}":
    "Veränderung, gemessen am Rauschen des Tests: Zwischen −1 und +1 ist sie vom Zufall nicht zu unterscheiden.{0}",
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
  "Test results vary by themselves from day to day; one result decides nothing. Pain or injury: speak to your physiotherapist or doctor first.":
    "Testergebnisse schwanken von selbst von Tag zu Tag; ein Ergebnis entscheidet nichts. Bei Schmerz oder Verletzung: Sprich zuerst mit deiner Physiotherapie oder Arztpraxis.",
  "Under 18: heavy lifting and maximal tests only under qualified supervision.":
    "Unter 18: schweres Heben und maximale Tests nur unter fachkundiger Aufsicht.",
  "{0} and {1}": "{0} und {1}",
  // attendance
  "{0} of {1} sessions": "{0} von {1} Einheiten",
  "{0} sessions, of which the group held {1}": "{0} Einheiten, davon {1} mit der Gruppe",
  // blockForm
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
  // diaryFromCells
  "session rpe": "session rpe",
  "how hard": "how hard",
  "balls bowled": "balls bowled",
  // exerciseLibrary
  "Only with a rack or spotters, and with a technique that holds. Stop at pain.":
    "Nur mit Ablage oder Hilfestellung und mit sicherer Technik. Bei Schmerz aufhören.",
  "Only on a floor that gives, with quiet landings. Stop at pain in knee, shin or Achilles tendon.":
    "Nur auf federndem Boden, mit leisen Landungen. Bei Schmerz in Knie, Schienbein oder Achillessehne aufhören.",
  "Goblet squat": "Goblet Squat",
  Dumbbell: "Kurzhantel",
  "Split squat": "Split Squat",
  Dumbbells: "Kurzhanteln",
  "Upper body": "Oberkörper",
  "Inverted row": "Rudern im Hang",
  "Bar in a rack": "Stange in der Ablage",
  "Rear-foot-raised split squat": "Split Squat, hinterer Fuß erhöht",
  "Box jump, step down": "Kastensprung, absteigen",
  Box: "Kasten",
  "Single-leg hop and hold": "Einbeinsprung mit Halten",
  "Countermovement jump for height": "Countermovement Jump auf Höhe",
  "Drop jump from a low box": "Drop Jump vom niedrigen Kasten",
  "Overhead ball throw": "Ballwurf über Kopf",
  "Medicine ball": "Medizinball",
  "Rotational ball throw": "Ballwurf aus der Drehung",
  "Bench press, fast": "Bankdrücken, schnell",
  "Acceleration from standing": "Antritt aus dem Stand",
  "Whole body": "Ganzer Körper",
  "Falling start": "Fallstart",
  "Flying sprint": "Fliegender Sprint",
  "Only warm and fresh; full rest between runs. Stop at a pull in the thigh.":
    "Nur warm und frisch; volle Pause zwischen den Läufen. Bei einem Ziehen im Oberschenkel aufhören.",
  "Run, brake and hold": "Laufen, bremsen und halten",
  "Side cut and go": "Seitschritt und los",
  "Half turn and back": "Halbe Drehung und zurück",
  "Lower leg": "Unterschenkel",
  "Side-lying adductor raise": "Adduktoren heben in Seitlage",
  "Outward rotation with a band": "Außenrotation mit Band",
  Band: "Band",
  "Runs of four minutes, three minutes easy": "Läufe von vier Minuten, drei Minuten locker",
  "Small-sided games": "Kleinfeldspiele",
  Ball: "Ball",
  // loadReport
  "Nothing written down.": "Nichts aufgeschrieben.",
  "{0} session{1} without a rating: the load is too low by as much.": (count, _ending) =>
    `${counted(count, "Einheit", "Einheiten")} ohne Bewertung: Um so viel ist die Belastung zu niedrig.`,
  "{0} times the mean of the weeks before: ask how she or he is.":
    "Das {0}-Fache des Mittels der Wochen davor: Frag nach, wie es geht.",
  "Too few weeks before to compare with.": "Zu wenige Wochen davor zum Vergleichen.",
  "Name as in the diary.": "Name wie im Tagebuch.",
  "Week of": "Woche vom",
  "Monday of the week, YYYY-MM-DD.": "Montag der Woche, JJJJ-MM-TT.",
  Sessions: "Einheiten",
  "Sessions the athlete was at.": "Besuchte Einheiten.",
  "Rating times minutes, added up over the week.": "Bewertung mal Minuten, über die Woche zusammengezählt.",
  "From the week before, in percent of it.": "Gegenüber der Woche davor, in Prozent davon.",
  Monotony: "Monotonie",
  "Mean of the days over their standard deviation: high where all days are alike.":
    "Mittel der Tage durch ihre Standardabweichung: hoch, wo alle Tage gleich sind.",
  Strain: "Beanspruchung",
  "Load times monotony.": "Belastung mal Monotonie.",
  "At full effort, in the week.": "Mit voller Anstrengung, in der Woche.",
  Deliveries: "Bälle",
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
  "Load of the squad by week": "Belastung des Kaders nach Wochen",
  "{0} weeks in the diary.": "{0} Wochen im Tagebuch.",
  "How many have a load in the week.": "Wie viele in der Woche eine Belastung haben.",
  "Mean load": "Mittlere Belastung",
  "Rating times minutes, mean of these athletes.": "Bewertung mal Minuten, Mittel dieser Athlet:innen.",
  "Squad's mean": "Mittel des Kaders",
  "Load (rating × minutes)": "Belastung (Bewertung × Minuten)",
  "{0} athletes, {1} sessions": "{0} Athlet:innen, {1} Einheiten",
  // nextCycle
  "carried over": "läuft weiter",
  "set aside": "zurückgestellt",
  "Others come first now.": "Jetzt kommen andere zuerst.",
  "Others come first now; it has not been shown to have improved.":
    "Jetzt kommen andere zuerst; eine Verbesserung ist nicht gezeigt.",
  "Not tested again.": "Nicht wieder getestet.",
  " There for {0}.": " Dabei: {0}.",
  // phases
  "Every second week one repetition less is left in reserve, so the load rises; where no load is reckoned, one set is added (two at most). A deload week has half the sets at the effort of week 1. Common practice, no source.":
    "Jede zweite Woche bleibt eine Wiederholung weniger in Reserve, damit die Last steigt; wo keine Last berechnet wird, kommt ein Satz dazu (höchstens zwei). Eine Entlastungswoche hat halb so viele Sätze bei der Anstrengung von Woche 1. Gängige Praxis, ohne Quelle.",
  // planBlock
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
  "{0}: no test of the battery with enough others to compare with.":
    "{0}: kein Test der Testbatterie mit genug anderen zum Vergleichen.",
  " The noise of the test could explain that.": " Das Rauschen des Tests könnte das erklären.",
  "{0} SD below the squad{1}.{2}": "{0} SD unter dem Kader{1}.{2}",
  "Below the squad in nothing: build on it{0}.": "In nichts unter dem Kader: darauf aufbauen{0}.",
  ", and it counts {0} {1}": (weight, where) => `, mit Gewicht ${weight} ${where.replace("here", "hier")}`,
  "for a {0}": (role) => `für die Rolle ${firstCapital(role)}`,
  "{0} {1}{2} ({3} SD)": "{0} {1}{2} ({3} SD)",
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
  Review: "Rückblick",
  "Review of the block": "Rückblick auf den Block",
  "Of {0} changes, {1} are improvements beyond the noise and {2} declines.":
    "Von {0} Veränderungen sind {1} Verbesserungen über dem Rauschen und {2} Verschlechterungen.",
  "Group changes in standard deviations (95 % interval): {0}.":
    "Veränderungen der Gruppe in Standardabweichungen (95-%-Intervall): {0}.",
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
  "Each change as in the analysis of change since last time; group changes as g_av, small samples corrected (Lakens 2013, Front Psychol 4:863; Cumming 2012).":
    "Jede Veränderung wie in der Auswertung „Veränderung seit dem letzten Mal“; Veränderungen der Gruppe als g_av, für kleine Gruppen korrigiert (Lakens 2013, Front Psychol 4:863; Cumming 2012).",
  "{0} athletes, {1} changes": "{0} Athlet:innen, {1} Veränderungen",
  "{0} ({1} to {2})": "{0} ({1} bis {2})",
  // sessionSheets
  "What to do.": "Was zu tun ist.",
  "Number of sets.": "Zahl der Sätze.",
  "Amount of each set.": "Umfang je Satz.",
  "Done: load × repetitions of each set": "Geschafft: Last × Wiederholungen je Satz",
  "Room for a pencil.": "Platz für den Bleistift.",
  "Warm up first. Stop at pain or when technique breaks down, and tell the coach.":
    "Zuerst aufwärmen. Bei Schmerz oder wenn die Technik nachlässt aufhören und dem Trainerteam sagen.",
  "Week {0}, session {1}": "Woche {0}, Einheit {1}",
  "Rating of the session (0 to 10): ____   Minutes: ____": "Bewertung der Einheit (0 bis 10): ____   Minuten: ____",
  // weakerSides
  "{0}: the {1} is {2} % weaker, beyond the test's noise.": (series, which, percent) =>
    `${series}: ${side(which)} ${percent} % schwächer, über dem Rauschen des Tests.`,
};
