import { atStart, type Catalogue } from "../say";
import { quantity, sided, unitShown } from "./grammar";

/** German of src/engine. */
export const engine: Catalogue = {
  // asymmetry/asymmetry
  "Percentage difference (of the larger side)": "Unterschied in Prozent (der größeren Seite)",
  "Bilateral leg asymmetry (of the smaller side)": "Beidseitige Bein-Asymmetrie (der kleineren Seite)",
  "Symmetry index (of the mean of the sides)": "Symmetrieindex (des Mittels der Seiten)",
  "Difference of the total of both sides": "Unterschied an der Summe beider Seiten",
  "Symmetry angle": "Symmetriewinkel",
  "Limb symmetry index (right of left)": "Seitensymmetrie-Index (rechts von links)",
  "Logarithm of the ratio, times 100": "Logarithmus des Verhältnisses, mal 100",
  "the left value": "der linke Wert",
  "the right value": "der rechte Wert",
  // asymmetry/asymmetryInterval
  "left trials": "Versuche links",
  "right trials": "Versuche rechts",
  "every trial": "jeder Versuch",
  "trials of both sides together": "Versuche beider Seiten zusammen",
  "trials of each side": "Versuche jeder Seite",
  // asymmetry/directionAgreement
  "first directions": "erste Richtungen",
  "second directions": "zweite Richtungen",
  "athletes with a direction in both sessions": "Athlet:innen mit einer Richtung an beiden Terminen",
  // asymmetry/noiseLimit
  "the noise": "das Rauschen",
  "the degrees of freedom": "die Zahl der Freiheitsgrade",
  // asymmetry/squadAsymmetry
  "athletes with both sides": "Athlet:innen mit beiden Seiten",
  // caution
  "The {0} ({1}) lies far beyond what was measured ({2}): extrapolated.": (what, estimate, measured) =>
    `${atStart(what)}: ${estimate} liegt weit über dem, was gemessen wurde (${measured}), und ist hochgerechnet.`,
  "The equation is trusted for a {0} of {1} to {2} {3}; {4} {5} is outside.":
    "Die Formel gilt als verlässlich bei {0} von {1} bis {2} {3}; {4} {5} liegt außerhalb.",
  "The {0} is estimated from a group's regression ({1}); track the raw result and set no training zone from it alone.":
    "Die {0} ist mit der Regression einer Gruppe geschätzt ({1}); verfolge das Rohergebnis und leite daraus allein keinen Trainingsbereich ab.",
  "The limits rest on 1 degree of freedom and are rough.": "Die Grenzen beruhen auf 1 Freiheitsgrad und sind grob.",
  "The limits rest on {0} degrees of freedom and are rough.":
    "Die Grenzen beruhen auf {0} Freiheitsgraden und sind grob.",
  // change/beyondNoiseCounts
  "athletes with both results": "Athlet:innen mit beiden Ergebnissen",
  "the minimal detectable change": "die kleinste nachweisbare Veränderung",
  // change/groupChange
  "earlier scores": "frühere Werte",
  "later scores": "spätere Werte",
  // change/holm
  "every p value": "jeder p-Wert",
  // change/individualChange
  "the earlier score": "der frühere Wert",
  "the later score": "der spätere Wert",
  "the typical error": "der typische Fehler",
  "the smallest worthwhile change": "die kleinste bedeutsame Veränderung",
  // change/judgeChange
  "clear improvement": "klare Verbesserung",
  "improvement likely beyond measurement noise": "wahrscheinlich verbessert, über dem Messrauschen",
  "change within measurement noise": "Veränderung im Messrauschen",
  "unclear - too noisy to say": "unklar, zu viel Rauschen",
  "decline likely beyond measurement noise": "wahrscheinlich verschlechtert, über dem Messrauschen",
  "clear decline": "klare Verschlechterung",
  // change/regressionToTheMean
  "the score": "der Wert",
  "the intraclass correlation": "die Intraklassenkorrelation",
  // change/twoGroups
  "scores in the first group": "Werte in der ersten Gruppe",
  "scores in the second group": "Werte in der zweiten Gruppe",
  "scores of each group": "Werte jeder Gruppe",
  // confidence
  confidence: "Vertrauensniveau",
  // endurance/capacityDifference
  "A side was stopped at the cap while the other scored as much or more, so their difference is not known.":
    "Eine Seite wurde an der Obergrenze abgebrochen, während die andere gleich viel oder mehr erreichte; ihr Unterschied ist also nicht bekannt.",
  "With scores this small ({0}) one repetition is a large percentage; read the difference in repetitions.":
    "Bei so kleinen Werten ({0}) ist eine Wiederholung viel in Prozent; lies den Unterschied in Wiederholungen.",
  // endurance/capacityScores
  "capacity scores": "Werte der Kraftausdauer",
  "{0} of {1} were stopped at the cap; their true scores are at least what was recorded.":
    "{0} von {1} wurden an der Obergrenze abgebrochen; ihre wahren Werte sind mindestens so hoch wie notiert.",
  // endurance/intermittentFitnessTest
  "final speed in km/h": "Endtempo in km/h",
  "body mass": "Körpergewicht",
  "maximal oxygen uptake": "maximale Sauerstoffaufnahme",
  "error not known here": "Fehler hier nicht bekannt",
  // endurance/intermittentRecoveryTest
  "correlation about 0.70": "Korrelation etwa 0,70",
  "correlation about 0.58": "Korrelation etwa 0,58",
  "The test counts whole shuttles of 40 m; {0} m is none.":
    "Der Test zählt ganze Pendelläufe von 40 m; {0} m passt nicht.",
  // endurance/shuttleRun
  "standard error about 6 ml/kg/min, from memory": "Standardfehler etwa 6 ml/kg/min, aus dem Gedächtnis",
  // endurance/shuttleRunOfAdults
  "standard error 4.07 ml/kg/min": "Standardfehler 4,07 ml/kg/min",
  "standard error 3.64 ml/kg/min": "Standardfehler 3,64 ml/kg/min",
  // endurance/shuttleSpeed
  "speed of the first stage": "Tempo der ersten Stufe",
  // endurance/twoMinuteShuttleRun
  "standard error 5.4 ml/kg/min": "Standardfehler 5,4 ml/kg/min",
  // flags/directionFlip
  "Both differences exceed the noise: check that left and right were not swapped.":
    "Beide Unterschiede liegen über dem Rauschen: Prüfe, ob links und rechts vertauscht wurden.",
  "One of them may be no more than noise.": "Einer davon kann bloßes Rauschen sein.",
  "The {0} side was larger before ({1}), the {2} side is now ({3}). {4}": (
    before,
    sizeBefore,
    now,
    sizeNow,
    judgement,
  ) =>
    `Früher war die ${sided(before)} Seite größer (${sizeBefore}), jetzt ist es die ${sided(now)} (${sizeNow}). ${judgement}`,
  // flags/implausibleValue
  "{0} {1} is outside the {2} to {3} {4} that a {5} plausibly takes.": (value, unit, low, high, same, what) =>
    `${value} ${unitShown(unit)} liegt außerhalb von ${low} bis ${high} ${unitShown(same)}, dem plausiblen Bereich für ${what}.`,
  "{0} is no likely {1} in {2}; typed {3} it would be {4} {5}.": (value, what, unit, way, corrected, same) =>
    `${value} ist unwahrscheinlich (${what} in ${unitShown(unit)}); ${way} getippt wären es ${corrected} ${unitShown(same)}.`,
  // flags/overdueRetest
  "There is no result of this test yet.": "Von diesem Test gibt es noch kein Ergebnis.",
  "The last result is dated {0} days ahead of today.": "Das letzte Ergebnis trägt ein Datum {0} Tage nach heute.",
  "The last result is {0} days old; a retest every {1} days was planned.":
    "Das letzte Ergebnis ist {0} Tage alt; geplant war ein Retest alle {1} Tage.",
  // flags/plausibleRanges
  stature: "Körpergröße",
  "jump height": "Sprunghöhe",
  "flight time": "Flugzeit",
  "contact time": "Kontaktzeit",
  "single hop": "Einbeinsprung",
  "broad jump": "Standweitsprung",
  "5 m sprint": "5-m-Sprint",
  "10 m sprint": "10-m-Sprint",
  "20 m sprint": "20-m-Sprint",
  "30 m sprint": "30-m-Sprint",
  "40 m sprint": "40-m-Sprint",
  "session rating": "Bewertung der Einheit",
  "session duration": "Dauer der Einheit",
  // flags/sideMissing
  "There is no result for the {0} side, so the sides cannot be compared.": (which) =>
    `Für die ${sided(which)} Seite gibt es kein Ergebnis; die Seiten lassen sich also nicht vergleichen.`,
  // flags/squadOutliers
  "{0} is far from the rest of the squad (median {1}, modified z score {2}): an error, or an exceptional athlete.":
    "{0} liegt weit vom übrigen Kader (Median {1}, modifizierter z-Wert {2}): ein Fehler oder eine Ausnahmeathlet:in.",
  // flags/trialSpread
  " Trial {0} stands apart from the others.": " Versuch {0} steht abseits der anderen.",
  "The trials are {0} apart; the test's own noise keeps them within {1} in 95 of 100 cases.{2}":
    "Die Versuche liegen {0} auseinander; das Rauschen des Tests hält sie in 95 von 100 Fällen innerhalb von {1}.{2}",
  // flags/unitSlips
  "with the decimal sign lost": "mit verlorenem Komma",
  "in metres": "in Metern",
  "in millimetres": "in Millimetern",
  "in inches": "in Zoll",
  "in centimetres": "in Zentimetern",
  "in milliseconds": "in Millisekunden",
  "as minutes and seconds, which the sheet took for a time of day":
    "als Minuten und Sekunden, die Excel für eine Uhrzeit hielt,",
  "in pounds": "in Pfund",
  "in grams": "in Gramm",
  "in seconds": "in Sekunden",
  "as hours and minutes, which the sheet took for a time of day":
    "als Stunden und Minuten, die Excel für eine Uhrzeit hielt,",
  "in hours": "in Stunden",
  "on a scale to 100": "auf einer Skala bis 100",
  // grouping/qualityPriorities
  "z score of {0}": "z-Wert von {0}",
  "target of {0}": "Zielwert von {0}",
  "weight of {0}": "Gewicht von {0}",
  "trainability of {0}": "Trainierbarkeit von {0}",
  // grouping/standingJudgement
  "z score": "z-Wert",
  // jumps/dynamicStrengthIndex
  "The jump gave more force than the isometric pull: the pull was probably not maximal, or body weight is counted in one only.":
    "Der Sprung ergab mehr Kraft als der isometrische Zug: Der Zug war wohl nicht maximal, oder das Körpergewicht ist nur bei einem mitgezählt.",
  // jumps/eccentricUtilisationRatio
  "The squat jump was the higher one; it probably began with a small countermovement.":
    "Der Squat Jump war der höhere; er begann wohl mit einer kleinen Ausholbewegung.",
  // jumps/heightFromFlightTime
  "flight time in seconds": "Flugzeit in Sekunden",
  // jumps/jumpPower
  "estimated power": "geschätzte Leistung",
  "The equation of {0} needs the athlete's stature in centimetres.":
    "Die Formel von {0} braucht die Körpergröße in Zentimetern.",
  // jumps/powerEquations
  "Sayers et al., squat jump": "Sayers et al., Squat Jump",
  "Sayers et al., countermovement jump": "Sayers et al., Countermovement Jump",
  "Harman et al., peak": "Harman et al., Spitze",
  "Harman et al., average": "Harman et al., Mittel",
  "Johnson & Bahamonde, peak": "Johnson & Bahamonde, Spitze",
  "Johnson & Bahamonde, average": "Johnson & Bahamonde, Mittel",
  "Copies of this equation differ in its constants.": "Abschriften dieser Formel unterscheiden sich in den Konstanten.",
  "Canavan & Vescovi, women": "Canavan & Vescovi, Frauen",
  "Fitted on 20 young women in countermovement jumps.": "An 20 jungen Frauen mit Countermovement Jumps bestimmt.",
  Lewis: "Lewis",
  "Not recommended: it estimates the average power of falling back, not of jumping.":
    "Nicht empfohlen: Sie schätzt die mittlere Leistung des Zurückfallens, nicht des Springens.",
  // load/actionCounts
  "daily count": "Tageszahl",
  "reported days": "gemeldete Tage",
  "Actions are counted in whole numbers; {0} is none.": "Aktionen werden in ganzen Zahlen gezählt; {0} ist keine.",
  "{0} of {1} days were not reported, so the counts are too low by what happened then.":
    "{0} von {1} Tagen wurden nicht gemeldet; die Zahlen sind um das zu niedrig, was dort geschah.",
  // load/acuteChronicRatio
  "day total": "Tagessumme",
  "reported days in a row": "gemeldete Tage in Folge",
  "This ratio describes how the load moved; it does not predict injury and has no safe zone. Acute and chronic load correlate by construction (about 0.5 in random data), and findings stay when the chronic load is replaced by random numbers.":
    "Dieses Verhältnis beschreibt, wie sich die Belastung bewegt hat; es sagt keine Verletzung voraus und hat keinen sicheren Bereich. Akute und chronische Belastung hängen schon durch die Rechnung zusammen (etwa 0,5 bei Zufallsdaten), und Befunde bleiben, wenn die chronische durch Zufallszahlen ersetzt wird.",
  "The three weeks before the last one hold too little load to compare with, as after a break; read the loads themselves.":
    "Die drei Wochen vor der letzten enthalten zu wenig Belastung zum Vergleichen, wie nach einer Pause; lies die Belastungen selbst.",
  // load/dayTotals
  "days of the diary": "Zahl der Tage im Tagebuch",
  "A day must be a whole serial number; {0} is not.": "Ein Tag muss eine ganze fortlaufende Zahl sein; {0} ist keine.",
  // load/sessionLoad
  "perceived exertion": "Anstrengungsempfinden",
  "minutes of the session": "Dauer der Einheit in Minuten",
  // load/weekSummary
  "A week has seven days; {0} were given. Leave days nobody reported blank and type 0 for rest.":
    "Eine Woche hat sieben Tage; angegeben sind {0}. Lass Tage leer, die niemand gemeldet hat, und tippe 0 für Ruhe.",
  "1 of the 7 days was not reported: the total counts the others only, and monotony is not given. Type 0 for a rest day.":
    "1 der 7 Tage wurde nicht gemeldet: Die Summe zählt nur die anderen, und Monotonie wird nicht angegeben. Tippe 0 für einen Ruhetag.",
  "{0} of the 7 days were not reported: the total counts the others only, and monotony is not given. Type 0 for a rest day.":
    "{0} der 7 Tage wurden nicht gemeldet: Die Summe zählt nur die anderen, und Monotonie wird nicht angegeben. Tippe 0 für einen Ruhetag.",
  "All seven days are equal; monotony is not defined without variation.":
    "Alle sieben Tage sind gleich; ohne Schwankung ist Monotonie nicht bestimmt.",
  // load/weekToWeekChange
  "last week's total": "die Summe der letzten Woche",
  // refusals
  "At least {0} {1} are needed; there is 1.": "Gebraucht werden mindestens {0} {1}; vorhanden: 1.",
  "At least {0} {1} are needed; there are {2}.": "Gebraucht werden mindestens {0} {1}; vorhanden: {2}.",
  "{0} must be above zero; {1} is not.": (what, value) =>
    `${quantity(what)} muss über null liegen, nicht bei ${value}.`,
  "{0} cannot be below zero; {1} is.": (what, value) =>
    `${quantity(what)} kann nicht unter null liegen, hier: ${value}.`,
  "{0} must be from {1} to {2}; {3} is not.": (what, low, high, value) =>
    `${quantity(what)} muss zwischen ${low} und ${high} liegen, nicht bei ${value}.`,
  "All {0} are equal, so there is no spread to compare with. Check for copied data.":
    "Alle gleich: {0}. Ohne Streuung gibt es nichts zum Vergleichen. Prüfe, ob Daten kopiert sind.",
  "{0} must be a number.": (what) => `${quantity(what)} muss eine Zahl sein.`,
  "{0} and {1} must be equally many; there are {2} and {3}.": (first, second, ofFirst, ofSecond) =>
    `${quantity(first)} und ${quantity(second)} müssen gleich viele sein; es sind ${ofFirst} und ${ofSecond}.`,
  "{0} is missing.": (what) => `${atStart(quantity(what))} fehlt.`,
  "{0} cannot be told: the athletes differ no more from each other than their own results do.":
    "{0} lässt sich nicht bestimmen: Die Athlet:innen unterscheiden sich nicht stärker voneinander als ihre eigenen Ergebnisse.",
  "More than half of the {0} are equal, so their median spread is zero.":
    "Mehr als die Hälfte ist gleich ({0}), also ist die Streuung um den Median null.",
  "Everybody has the same side larger both times, so agreement beyond chance cannot be told.":
    "Bei allen ist beide Male dieselbe Seite größer; eine Übereinstimmung über den Zufall hinaus lässt sich also nicht bestimmen.",
  // regression/leastSquaresLine
  "x values": "x-Werte",
  "y values": "y-Werte",
  "points for a line": "Punkte für eine Gerade",
  // reliability/athleteVariations
  "athletes with two results": "Athlet:innen mit zwei Ergebnissen",
  // reliability/blandAltman
  pairs: "Paare",
  differences: "Unterschiede",
  // reliability/correlation
  "first values": "erste Werte",
  "second values": "zweite Werte",
  "values of one kind": "Werte einer Art",
  // reliability/intraclassCorrelation
  "one-way random, one result": "einfach zufällig, ein Ergebnis",
  "two-way random, absolute agreement, one result": "zweifach zufällig, absolute Übereinstimmung, ein Ergebnis",
  "two-way mixed, consistency, one result": "zweifach gemischt, Konsistenz, ein Ergebnis",
  "one-way random, mean of k results": "einfach zufällig, Mittel von k Ergebnissen",
  "two-way random, absolute agreement, mean of k results":
    "zweifach zufällig, absolute Übereinstimmung, Mittel von k Ergebnissen",
  "two-way mixed, consistency, mean of k results": "zweifach gemischt, Konsistenz, Mittel von k Ergebnissen",
  "athletes' means": "Mittelwerte der Athlet:innen",
  "{0} with its limits": "{0} mit Grenzen",
  // reliability/logarithms
  "every result": "jedes Ergebnis",
  // reliability/meanChange
  changes: "Veränderungen",
  // reliability/mixedModel
  "repeated results": "wiederholte Ergebnisse",
  results: "Ergebnisse",
  // reliability/oneWayLayout
  "results of each athlete": "Ergebnisse jeder Athlet:in",
  // reliability/pooledNoise
  "sets with two trials": "Gruppen mit zwei Versuchen",
  "trials of each set": "Versuche jeder Gruppe",
  // reliability/standardErrorOfMeasurement
  "the standard deviation": "die Standardabweichung",
  // reliability/steadiedNoise
  "athletes with two trials of a side": "Athlet:innen mit zwei Versuchen einer Seite",
  // reliability/twoWayLayout
  sessions: "Termine",
  "athletes with every result": "Athlet:innen mit allen Ergebnissen",
  // sprints/changeOfDirectionDeficit
  "The 505 was no slower than the straight run; one of the times must be wrong.":
    "Der 505 war nicht langsamer als der gerade Lauf; eine der Zeiten muss falsch sein.",
  // sprints/electronicTime
  "Converted from a hand time by adding {0} s, true to about {1} s: not to be ranked with electronic times.":
    "Aus einer Handzeit umgerechnet, {0} s zugeschlagen, auf etwa {1} s genau: nicht mit elektronischen Zeiten in eine Rangliste stellen.",
  // sprints/forceVelocityProfile
  "stature in metres": "Körpergröße in Metern",
  "air temperature": "Lufttemperatur",
  "air pressure in Torr": "Luftdruck in Torr",
  // sprints/splitVelocities
  splits: "Zwischenzeiten",
  "From {0} to {1} m the athlete would have run {2} m/s, far faster than just beside it: check the gate times.":
    "Von {0} bis {1} m wäre das Tempo {2} m/s gewesen, viel schneller als gleich daneben: Prüfe die Zeiten der Schranken.",
  // sprints/splits
  distances: "Strecken",
  "Distances and times must rise from split to split; {0} m in {1} s follows {2} m in {3} s.":
    "Strecken und Zeiten müssen von Zwischenzeit zu Zwischenzeit steigen; {0} m in {1} s folgt auf {2} m in {3} s.",
  // sprints/sprintCurve
  "maximal velocity": "Höchstgeschwindigkeit",
  "time constant": "Zeitkonstante",
  // sprints/sprintModel
  "maximal velocity in m/s": "Höchstgeschwindigkeit in m/s",
  "No sprint curve fits these splits. Check the distances and times.":
    "Keine Sprintkurve passt zu diesen Zwischenzeiten. Prüfe Strecken und Zeiten.",
  // standing/compositeScores
  "tests of each quality": "Tests jeder Fähigkeit",
  "the weight of {0}": "das Gewicht von {0}",
  "scores of {0}": "Werte von {0}",
  // standing/modifiedZScores
  scores: "Werte",
  // standing/quantile
  values: "Zahlen",
  "the share": "der Anteil",
  // strength/equations
  Epley: "Epley",
  Brzycki: "Brzycki",
  "Brzycki, decimal form": "Brzycki, Dezimalform",
  Lander: "Lander",
  Lombardi: "Lombardi",
  "Mayhew et al.": "Mayhew et al.",
  "O'Conner et al.": "O'Conner et al.",
  Wathan: "Wathan",
  // strength/loadVelocityProfile
  loads: "Lasten",
  "different loads with a velocity": "verschiedene Lasten mit einer Geschwindigkeit",
  "r squared of the line": "r² der Geraden",
  "estimated maximum": "geschätztes Maximum",
  "Velocity must fall as the load rises; in these lifts it does not. Check that loads and velocities are paired.":
    "Die Geschwindigkeit muss mit steigender Last fallen; hier tut sie es nicht. Prüfe, ob Lasten und Geschwindigkeiten zusammengehören.",
  "The lifts scatter around the line (r squared {0}, at least 0.95 is wanted): a rough estimate.":
    "Die Versuche streuen um die Gerade (r² {0}, mindestens 0,95 ist erwünscht): eine grobe Schätzung.",
  "There are too few or too scattered lifts for finite limits of the maximum. Add loads.":
    "Für endliche Grenzen des Maximums sind es zu wenige oder zu verstreute Versuche. Nimm Lasten dazu.",
  "The estimated maximum is below the heaviest load already lifted: the threshold or an effort was wrong.":
    "Das geschätzte Maximum liegt unter der schwersten schon gehobenen Last: Die Schwelle oder ein Versuch war falsch.",
  // strength/perceivedExertion
  "repetitions in reserve": "Zahl der Wiederholungen in Reserve",
  // strength/percentOfMaximum
  "rows in the table": "Zeilen in der Tabelle",
  "From row to row of the table the repetitions must rise and the percentages fall, from at most 100 and above zero.":
    "Von Zeile zu Zeile der Tabelle müssen die Wiederholungen steigen und die Prozente fallen, von höchstens 100 und über null.",
  "Copies of this table disagree at {0} repetitions: {1} %.":
    "Abschriften dieser Tabelle widersprechen sich bei {0} Wiederholungen: {1} %.",
  "The table has no such row; the percentage is taken between {0} and {1} repetitions.":
    "Die Tabelle hat keine solche Zeile; der Prozentsatz liegt zwischen {0} und {1} Wiederholungen.",
  // strength/repetitionsInReserve
  "perceived exertion of the set": "Anstrengungsempfinden im Satz",
  // strength/repetitionsToFailure
  "repetitions done": "Zahl der Wiederholungen",
  "repetitions with those in reserve": "Zahl der Wiederholungen mit denen in Reserve",
  "Only complete repetitions count: {0} is taken as {1}.":
    "Nur vollständige Wiederholungen zählen: {0} wird als {1} genommen.",
  "The set was not taken to failure: {0} in reserve is the lifter's own estimate.":
    "Der Satz ging nicht bis zum Versagen: {0} in Reserve ist die eigene Schätzung.",
  "More than 3 repetitions in reserve ({0}) can hardly be judged; take the set closer to failure.":
    "Mehr als 3 Wiederholungen in Reserve ({0}) sind kaum zu beurteilen; geh im Satz näher ans Versagen.",
  "{0} repetitions say little about a single one: a rough estimate. Use 2 to 10.":
    "{0} Wiederholungen sagen wenig über eine einzelne: eine grobe Schätzung. Nimm 2 bis 10.",
  // strength/roundToDumbbells
  dumbbells: "Kurzhanteln",
  "the lightest dumbbell": "die leichteste Kurzhantel",
  // strength/roundToPlates
  "target load": "Ziellast",
  "the bar": "die Stange",
  "plate weight": "Gewicht der Scheibe",
  "pairs of a plate": "Zahl der Paare einer Scheibe",
  "The {0} must be a whole number; {1} is not.": (what, value) =>
    `${atStart(what)} muss eine ganze Zahl sein; ${value} ist keine.`,
  // strength/rounding
  "{0} is below {1} ({2}); use a lighter implement or another exercise.": (target, what, lightest) =>
    `${target} liegt unter dem Möglichen (${what}: ${lightest}); nimm ein leichteres Gerät oder eine andere Übung.`,
  // trials/reduceTrials
  trials: "Versuche",
};
