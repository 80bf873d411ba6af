import { atStart, type Catalogue } from "../say";
import { direction, side, sided } from "./grammar";

/** German of src/analyses. */
export const analyses: Catalogue = {
  // asymmetry
  "Left-right asymmetry": "Links-rechts-Unterschied",
  Asymmetry: "Seitenunterschied",
  "Is the difference between left and right bigger than the test's own noise?":
    "Ist der Unterschied zwischen links und rechts größer als das Rauschen des Tests?",
  "Score of each side": "Wert jeder Seite",
  "How the trials of one side become one score. Use the same way at every retest.":
    "Wie aus den Versuchen einer Seite ein Wert wird. Nimm bei jedem Retest denselben Weg.",
  "Noise from": "Rauschen aus",
  "What the difference is held against. Three trials tell little about one athlete's scatter, and the group's scatter is wrong for an athlete who scatters more or less than the rest: so the athlete's own is steadied by the group's. The CV rule is common and lenient: equal legs fail it in about one athlete of three.":
    "Woran der Unterschied gemessen wird. Drei Versuche sagen wenig über die Streuung einer Athlet:in, und die Streuung der Gruppe ist falsch für alle, die mehr oder weniger streuen als die übrigen: Deshalb wird die eigene durch die der Gruppe gestützt. Die CV-Regel ist verbreitet und mild: Gleiche Beine fallen bei etwa einer von drei Athlet:innen durch.",
  "Own trials, steadied by the group's": "Eigene Versuche, gestützt durch die Gruppe",
  "The group's trials": "Die Versuche der Gruppe",
  "Own trials only": "Nur die eigenen Versuche",
  "The larger CV of the two sides": "Der größere CV der beiden Seiten",
  "Your threshold": "Deine Schwelle",
  "The size from which a difference matters to you. 10 to 15 % is custom, not a proven limit of risk.":
    "Ab welcher Größe ein Unterschied für dich zählt. 10 bis 15 % sind Gewohnheit, keine belegte Risikogrenze.",
  "Name as it stands in your sheet.": "Name, wie er auf deinem Blatt steht.",
  Left: "Links",
  "Score of the left side, reduced from its trials as chosen.":
    "Wert der linken Seite, aus ihren Versuchen wie gewählt.",
  Right: "Rechts",
  "Score of the right side, reduced from its trials as chosen.":
    "Wert der rechten Seite, aus ihren Versuchen wie gewählt.",
  "How far the smaller side is below the larger, in percent of the larger. Plus: right larger. Minus: left larger.":
    "Wie weit die kleinere Seite unter der größeren liegt, in Prozent der größeren. Plus: rechts größer. Minus: links größer.",
  "Stronger side": "Stärkere Seite",
  "The side with the better score.": "Die Seite mit dem besseren Wert.",
  "Noise limit": "Rauschgrenze",
  "By the scatter of the trials alone, equal sides stay below this difference 19 times in 20 (or, if so chosen, the larger CV).":
    "Allein durch die Streuung der Versuche bleiben gleiche Seiten 19-mal von 20 unter diesem Unterschied (oder, wenn so gewählt, der größere CV).",
  Verdict: "Urteil",
  "Whether the difference is beyond the noise, and beyond your threshold.":
    "Ob der Unterschied über dem Rauschen liegt und über deiner Schwelle.",
  "Trial CV": "CV der Versuche",
  "How much this athlete's trials of one side scatter: the larger CV of the two sides.":
    "Wie stark die Versuche einer Seite bei dieser Athlet:in streuen: der größere CV der beiden Seiten.",
  "Left trials": "Versuche links",
  "How many left trials were used.": "Wie viele Versuche links verwendet wurden.",
  "Right trials": "Versuche rechts",
  "How many right trials were used.": "Wie viele Versuche rechts verwendet wurden.",
  Beyond: "Darüber",
  "The asymmetry where it is beyond the noise limit. For the chart.":
    "Der Seitenunterschied, wo er über der Rauschgrenze liegt. Für das Diagramm.",
  Within: "Darin",
  "The asymmetry where it is not beyond the noise limit. For the chart.":
    "Der Seitenunterschied, wo er nicht über der Rauschgrenze liegt. Für das Diagramm.",
  "Select the results of a one-leg or one-arm test with its headings: a row per athlete with columns for left and right trials, or a row per attempt with a column for the side.":
    "Wähle die Ergebnisse eines Tests mit einem Bein oder Arm samt Überschriften aus: eine Zeile je Athlet:in mit Spalten für die Versuche links und rechts, oder eine Zeile je Versuch mit einer Spalte für die Seite.",
  "Asymmetry: minus left larger, plus right larger": "Seitenunterschied: minus links größer, plus rechts größer",
  "Beyond noise": "Über dem Rauschen",
  "Within noise": "Im Rauschen",
  "Asymmetry (%)": "Seitenunterschied (%)",
  "left larger": "links größer",
  "right larger": "rechts größer",
  Noise: "Rauschen",
  "One test on one day: asymmetry changes with task and day, so test again before you act on it.":
    "Ein Test an einem Tag: Der Seitenunterschied wechselt mit Aufgabe und Tag. Teste noch einmal, bevor du danach handelst.",
  "No number here clears an athlete after injury or predicts one; that is for the clinician in charge.":
    "Keine Zahl hier gibt jemanden nach einer Verletzung frei oder sagt eine voraus; das ist Sache der Behandelnden.",
  "100 × (right − left) ÷ larger side": "100 × (rechts − links) ÷ größere Seite",
  "Percentage difference: Bishop et al. 2018, Strength Cond J 40(4). Noise: t interval for the difference of two scores on logarithms, with the scatter of the reduced score from normal order statistics; steadied as in Smyth 2004, Stat Appl Genet Mol Biol 3(1).":
    "Prozentualer Unterschied: Bishop et al. 2018, Strength Cond J 40(4). Rauschen: t-Intervall für den Unterschied zweier Werte auf Logarithmen, mit der Streuung des gewählten Werts aus normalen Ordnungsstatistiken; gestützt wie bei Smyth 2004, Stat Appl Genet Mol Biol 3(1).",
  "athletes with a result": "Athlet:innen mit einem Ergebnis",
  Even: "Gleich",
  "Beyond noise, above {0} %": "Über dem Rauschen, über {0} %",
  "Beyond noise, not above {0} %": "Über dem Rauschen, nicht über {0} %",
  "Above {0} %, but could be noise: test again": "Über {0} %, kann aber Rauschen sein: noch einmal testen",
  "Cannot tell: too few trials to know the noise": "Nicht zu sagen: zu wenig Versuche, um das Rauschen zu kennen",
  "no trial": "kein Versuch",
  "{0} trials needed": "{0} Versuche nötig",
  "left and right": "links und rechts",
  "No answer: {0} has {1}": "Keine Antwort: {0} {1}",
  "{0} of {1} differ between left and right beyond the noise{2}.":
    "Bei {0} von {1} ist der Unterschied zwischen links und rechts größer als das Rauschen{2}.",
  ", {0} of them by more than {1} %": ", bei {0} davon größer als {1} %",
  "{0}: above {1} %, but noise can do that. Test again.":
    "{0}: über {1} %, aber das kann Rauschen sein. Noch einmal testen.",
  "Trials of one side scatter by {0} % (CV, 95 % interval {1} to {2}).":
    "Die Versuche einer Seite streuen um {0} % (CV, 95-%-Intervall {1} bis {2}).",
  "1 athlete": "1 Athlet:in",
  "{0} athletes": "{0} Athlet:innen",
  "{0} ({1} stronger, {2} %)": "{0} ({1} stärker, {2} %)",
  "{0} and {1} more": "{0} und {1} weitere",
  "Not everybody has the same number of trials; more trials give a better best, which the noise limit allows for.":
    "Nicht alle haben gleich viele Versuche; mehr Versuche geben einen besseren besten, und die Rauschgrenze rechnet das ein.",
  "The CV rule is lenient: with truly equal legs it still calls about one athlete in three asymmetric.":
    "Die CV-Regel ist mild: Auch bei wirklich gleichen Beinen nennt sie etwa eine von drei Athlet:innen ungleich.",
  "The noise rests on few trials and is rough.": "Das Rauschen beruht auf wenigen Versuchen und ist grob.",
  "With {0} athletes, noise alone is expected to put about {1} beyond the limit.":
    "Bei {0} Athlet:innen bringt allein das Rauschen etwa {1} über die Grenze.",
  "Best trial of each side": "Bester Versuch jeder Seite",
  "Mean of each side's trials": "Mittel der Versuche jeder Seite",
  "Middle trial of each side": "Mittlerer Versuch jeder Seite",
  "Mean of each side's best two trials": "Mittel der zwei besten Versuche jeder Seite",
  "noise from each athlete's own trials, steadied by the group's, 95 % limit":
    "Rauschen aus den eigenen Versuchen, gestützt durch die der Gruppe, 95-%-Grenze",
  "noise from all athletes' trials pooled, 95 % limit": "Rauschen aus den Versuchen aller zusammen, 95-%-Grenze",
  "noise from each athlete's own trials, 95 % limit": "Rauschen aus den eigenen Versuchen, 95-%-Grenze",
  "noise as the larger CV of the two sides (Exell et al. 2012)":
    "Rauschen als der größere CV der beiden Seiten (Exell et al. 2012)",
  "{0} ({1} is better), percentage difference of the larger side; {2}; threshold {3} %.": (
    score,
    better,
    noise,
    threshold,
  ) =>
    `${score} (${direction(better)} ist besser), Unterschied in Prozent der größeren Seite; ${noise}; Schwelle ${threshold} %.`,
  // athleteScores
  "Two sides": "Zwei Seiten",
  "What counts where a test is done left and right. An athlete with one side alone has no score: it would not compare.":
    "Was zählt, wo ein Test links und rechts gemacht wird. Wer nur eine Seite hat, bekommt keinen Wert: Er wäre nicht vergleichbar.",
  "Mean of both sides": "Mittel beider Seiten",
  "The better side": "Die bessere Seite",
  "The weaker side": "Die schwächere Seite",
  Day: "Tag",
  "Which day counts where an athlete was tested on several.":
    "Welcher Tag zählt, wo jemand an mehreren getestet wurde.",
  "Each athlete's latest": "Jeweils der letzte",
  "Each athlete's best": "Jeweils der beste",
  "Too few trials": "Zu wenig Versuche",
  "Too few trials of both sides": "Zu wenig Versuche auf beiden Seiten",
  "No {0} side": (which) => `Keine ${sided(which)} Seite`,
  // capacity
  "Capacity of each side": "Kraftausdauer jeder Seite",
  Capacity: "Kraftausdauer",
  "How long does each side last, and is the difference more than a retest brings?":
    "Wie lange hält jede Seite durch, und ist der Unterschied größer, als ein Retest ihn bringt?",
  "A retest alone brings": "Ein Retest allein bringt",
  "For counts: how far apart two results of the same limb lie without any change. 6 is from calf raises; take your own from the reliability of your test.":
    "Für Zahlen von Wiederholungen: wie weit zwei Ergebnisse derselben Seite ohne jede Veränderung auseinanderliegen. 6 stammt vom Wadenheben; nimm deine eigene Zahl aus der Zuverlässigkeit deines Tests.",
  "For times such as a side plank: how far apart two results of the same side lie without any change. 0 where you do not know it: then no difference is judged.":
    "Für Zeiten wie beim Seitstütz: wie weit zwei Ergebnisse derselben Seite ohne jede Veränderung auseinanderliegen. 0, wo du es nicht weißt: Dann wird kein Unterschied beurteilt.",
  "Stopped at": "Abgebrochen bei",
  "Where you end the test for those who could go on: their true result is at least this. 0 where you never do.":
    "Wo du den Test für die beendest, die noch weiter könnten: Ihr wahres Ergebnis ist mindestens so hoch. 0, wo du es nie tust.",
  "reps or s": "Wdh. oder s",
  "Best result of the left side on the latest day.": "Bestes Ergebnis der linken Seite am letzten Tag.",
  "Best result of the right side on the latest day.": "Bestes Ergebnis der rechten Seite am letzten Tag.",
  "Right less left": "Rechts weniger links",
  "How much longer the right side lasted; with a minus, the left side.":
    "Wie viel länger die rechte Seite durchhielt; mit einem Minus die linke.",
  "Weaker side": "Schwächere Seite",
  "The weaker side in percent of the better one. With small numbers one repetition is many percent.":
    "Die schwächere Seite in Prozent der besseren. Bei kleinen Zahlen ist eine Wiederholung viele Prozent.",
  "Whether the sides differ by more than a retest alone brings.":
    "Ob sich die Seiten um mehr unterscheiden, als ein Retest allein bringt.",
  "Select repetitions or seconds to failure (calf raises, bridges, side planks) with their headings: a row per athlete with columns for left and right, or a row per attempt with a column for the side.":
    "Wähle Wiederholungen oder Sekunden bis zum Versagen (Wadenheben, Beckenheben, Seitstütz) samt Überschriften aus: eine Zeile je Athlet:in mit Spalten für links und rechts, oder eine Zeile je Versuch mit einer Spalte für die Seite.",
  Result: "Ergebnis",
  "Compare only results with the same pace, range of movement and rule for stopping.":
    "Vergleiche nur Ergebnisse mit gleichem Takt, gleichem Bewegungsumfang und gleicher Abbruchregel.",
  "No count here clears an athlete after injury or predicts one; that is for the clinician in charge.":
    "Keine Zahl von Wiederholungen hier gibt jemanden nach einer Verletzung frei oder sagt eine voraus; das ist Sache der Behandelnden.",
  "right − left, in repetitions or seconds; weaker ÷ better side":
    "rechts − links, in Wiederholungen oder Sekunden; schwächere ÷ bessere Seite",
  "Retests of calf raises differ by about 6 repetitions either way: Hébert-Losier et al. 2017, Physiotherapy 103:446-452. Quartiles: Hyndman & Fan 1996, Am Stat 50:361-365, type 7. Results stopped at the cap count as at least so high.":
    "Retests des Wadenhebens unterscheiden sich um etwa 6 Wiederholungen nach oben oder unten: Hébert-Losier et al. 2017, Physiotherapy 103:446-452. Quartile: Hyndman & Fan 1996, Am Stat 50:361-365, Typ 7. An der Obergrenze abgebrochene Ergebnisse zählen als mindestens so hoch.",
  "Calf raise": "Wadenheben",
  "results of a left or a right side": "Ergebnisse einer linken oder rechten Seite",
  "A result to failure cannot be below zero.": "Ein Ergebnis bis zum Versagen kann nicht unter null sein.",
  "No answer: the {0} side has no result.": (which) => `Keine Antwort: Die ${sided(which)} Seite hat kein Ergebnis.`,
  "No answer: {0}": "Keine Antwort: {0}",
  "Not judged: say what a retest of this test brings.": "Nicht beurteilt: Gib an, was ein Retest dieses Tests bringt.",
  "The {0} lasts longer by more than a retest brings.{1}": (which, stopped) =>
    `${atStart(side(which))} hält länger durch, und zwar um mehr, als ein Retest bringt.${stopped}`,
  "Cannot tell: {0}": "Nicht zu sagen: {0}",
  "Within what a retest brings.": "Im Rahmen dessen, was ein Retest bringt.",
  "The {0} was stopped, so the difference is at least this.": (which) =>
    `${atStart(side(which))} wurde abgebrochen, also ist es mindestens so viel.`,
  "What a retest brings is not known for this test, so no difference is judged.":
    "Was ein Retest bringt, ist für diesen Test nicht bekannt; deshalb wird kein Unterschied beurteilt.",
  "{0} of {1} between the sides by more than {2}.": "Bei {0} von {1} unterscheiden sich die Seiten um mehr als {2}.",
  "1 athlete differs": "1 Athlet:in",
  "{0} athletes differ": "{0} Athlet:innen",
  "{0}: the middle of {1} is {2}, the middle half from {3} to {4}.":
    "{0}: Die Mitte von {1} liegt bei {2}, die mittlere Hälfte von {3} bis {4}.",
  "at least ": "mindestens ",
  "With small numbers one repetition is a large percentage: read the difference, not the percentage.":
    "Bei kleinen Zahlen ist eine Wiederholung viel in Prozent: Lies den Unterschied, nicht den Prozentsatz.",
  "{0} of {1} results were stopped: their true size is not known.":
    "{0} von {1} Ergebnissen wurden abgebrochen: Ihre wahre Größe ist nicht bekannt.",
  "Best result of each side on the athlete's latest day{0}{1}.":
    "Bestes Ergebnis jeder Seite am jeweils letzten Tag{0}{1}.",
  "; a difference counts beyond {0}": "; ein Unterschied zählt über {0}",
  "; stopped at {0}": "; abgebrochen bei {0}",
  // change
  "Change since last time": "Veränderung seit dem letzten Mal",
  Change: "Veränderung",
  "Was the change from one session to the next real?": "War die Veränderung von einem Termin zum nächsten echt?",
  "Compared with": "Verglichen mit",
  "The session each athlete's latest one is held against.": "Der Termin, mit dem der jeweils letzte verglichen wird.",
  "The session before": "Dem Termin davor",
  "The first session": "Dem ersten Termin",
  "Score of a session": "Wert eines Termins",
  "How the trials of a session become one score. Use the same way at every retest.":
    "Wie aus den Versuchen eines Termins ein Wert wird. Nimm bei jedem Retest denselben Weg.",
  "Typical error you know": "Dein bekannter typischer Fehler",
  "The test's error from day to day, in percent. 0: from your data, by two sessions within a fortnight, else by the trials.":
    "Der Fehler des Tests von Tag zu Tag, in Prozent. 0: aus deinen Daten, über zwei Termine innerhalb von vierzehn Tagen, sonst über die Versuche.",
  "Change that matters": "Veränderung, die zählt",
  "The smallest change worth having, in percent. 0: a fifth of the spread between your athletes.":
    "Die kleinste Veränderung, die sich lohnt, in Prozent. 0: ein Fünftel der Streuung zwischen deinen Athlet:innen.",
  "Role or group, from your sheet or from the squad.": "Rolle oder Gruppe, von deinem Blatt oder aus dem Kader.",
  Before: "Vorher",
  "Score of the earlier session.": "Wert des früheren Termins.",
  After: "Nachher",
  "Score of the latest session.": "Wert des letzten Termins.",
  "After minus before.": "Nachher minus vorher.",
  "Change low": "Veränderung von",
  "Lower 95 % limit of the true change.": "Untere 95-%-Grenze der wahren Veränderung.",
  "Change high": "Veränderung bis",
  "Upper 95 % limit of the true change.": "Obere 95-%-Grenze der wahren Veränderung.",
  "Chance better": "Chance besser",
  "How likely the true change is an improvement that matters, from these data alone.":
    "Wie wahrscheinlich die wahre Veränderung eine Verbesserung ist, die zählt, aus diesen Daten allein.",
  "Chance worse": "Chance schlechter",
  "How likely the true change is a decline that matters, from these data alone.":
    "Wie wahrscheinlich die wahre Veränderung eine Verschlechterung ist, die zählt, aus diesen Daten allein.",
  "The change beside the test's noise and the smallest change that matters.":
    "Die Veränderung neben dem Rauschen des Tests und der kleinsten Veränderung, die zählt.",
  Days: "Tage",
  "The two days compared.": "Die zwei verglichenen Tage.",
  "Change in percent where it is beyond the noise. For the chart.":
    "Veränderung in Prozent, wo sie über dem Rauschen liegt. Für das Diagramm.",
  "Change in percent where it is not. For the chart.":
    "Veränderung in Prozent, wo sie nicht darüber liegt. Für das Diagramm.",
  "The change that noise alone explains, 19 times in 20. For the chart.":
    "Die Veränderung, die Rauschen allein 19-mal von 20 erklärt. Für das Diagramm.",
  "Select the results of a test on two or more days, with their headings and a column for the date.":
    "Wähle die Ergebnisse eines Tests an zwei oder mehr Tagen aus, mit Überschriften und einer Spalte für das Datum.",
  "Change in percent": "Veränderung in Prozent",
  "Change (%)": "Veränderung (%)",
  "A change tells that something changed, not what made it: growth, rest, practice of the test and the block all count.":
    "Eine Veränderung sagt, dass sich etwas verändert hat, nicht wodurch: Wachstum, Erholung, Übung im Test und der Block zählen alle mit.",
  "Who was far below their usual last time will come back by itself: expect less of a gain that follows a bad day.":
    "Wer letztes Mal weit unter dem Üblichen lag, kommt von selbst zurück: Erwarte weniger von einem Gewinn nach einem schlechten Tag.",
  "change ∓ t × √2 × typical error; chance better = P(true change > smallest change that matters)":
    "Veränderung ∓ t × √2 × typischer Fehler; Chance besser = P(wahre Veränderung > kleinste Veränderung, die zählt)",
  "Hopkins 2000, Sports Med 30:1-15; Swinton et al. 2018, Front Nutr 5:41. A fifth of the spread: Hopkins 2004, Sportscience 8:1-7.":
    "Hopkins 2000, Sports Med 30:1-15; Swinton et al. 2018, Front Nutr 5:41. Ein Fünftel der Streuung: Hopkins 2004, Sportscience 8:1-7.",
  "days with results": "Tage mit Ergebnissen",
  "athletes with scores on two days": "Athlet:innen mit Werten an zwei Tagen",
  "of {0} results, those of the days compared": "von {0} Ergebnissen die der verglichenen Tage",
  "{0} to {1}": "{0} bis {1}",
  "Cannot tell: the noise, or the spread between athletes, is not known":
    "Nicht zu sagen: Das Rauschen oder die Streuung zwischen den Athlet:innen ist nicht bekannt",
  "Of 1 athlete, {0} improved beyond the noise and {1} declined.":
    "Von 1 Athlet:in haben sich {0} über das Rauschen hinaus verbessert und {1} verschlechtert.",
  "Of {0} athletes, {1} improved beyond the noise and {2} declined.":
    "Von {0} Athlet:innen haben sich {1} über das Rauschen hinaus verbessert und {2} verschlechtert.",
  "The group changed by {0}{1} on average (95 % interval {2} to {3}).":
    "Die Gruppe hat sich im Mittel um {0}{1} verändert (95-%-Intervall {2} bis {3}).",
  "The noise is that of trials on one day, a lower bound: another day adds to it. Test twice within a fortnight to know it.":
    "Das Rauschen ist das der Versuche eines Tages, eine untere Grenze: Ein anderer Tag kommt hinzu. Teste zweimal innerhalb von vierzehn Tagen, um es zu kennen.",
  "The noise is taken from the very sessions that are compared: athletes who truly changed otherwise than the rest make it look larger. Test twice within a fortnight before the block, or give the error you know.":
    "Das Rauschen stammt aus genau den Terminen, die verglichen werden: Wer sich wirklich anders verändert hat als die übrigen, lässt es größer aussehen. Teste vor dem Block zweimal innerhalb von vierzehn Tagen, oder gib den Fehler an, den du kennst.",
  "The noise rests on few results and is rough.": "Das Rauschen beruht auf wenigen Ergebnissen und ist grob.",
  "Not everybody's change is between the same days.": "Nicht bei allen liegt die Veränderung zwischen denselben Tagen.",
  "With {0} athletes, noise alone puts about {1} beyond the limits: a count of them is no success rate.":
    "Bei {0} Athlet:innen bringt allein das Rauschen etwa {1} über die Grenzen: Ihre Zahl ist keine Erfolgsquote.",
  "typical error as you gave it": "typischer Fehler, wie du ihn angegeben hast",
  "typical error from two earlier sessions within a fortnight":
    "typischer Fehler aus zwei früheren Terminen innerhalb von vierzehn Tagen",
  "typical error from the two sessions compared": "typischer Fehler aus den zwei verglichenen Terminen",
  "typical error from the trials of all sessions": "typischer Fehler aus den Versuchen aller Termine",
  "a fifth of the spread between athletes": "ein Fünftel der Streuung zwischen den Athlet:innen",
  "first session": "ersten Termin",
  "session before": "Termin davor",
  "Latest session against the {0}, {1} ({2} is better); {3}; a change that matters is {4}.": (
    earlier,
    score,
    better,
    error,
    matters,
  ) =>
    `Letzter Termin, verglichen mit dem ${earlier}, ${score} (${direction(better)} ist besser); ${error}; eine Veränderung, die zählt, ist ${matters}.`,
  // derivedResults
  "first 10 m": "erste 10 m",
  // describe
  "{0} athletes, {1} {2}": "{0} Athlet:innen, {1} {2}",
  "{0} athletes, {1} results": "{0} Athlet:innen, {1} Ergebnisse",
  "Say which column holds {0}.": "Gib an, in welcher Spalte steht: {0}.",
  "No test here was done left and right.": "Kein Test hier wurde links und rechts gemacht.",
  "No number here says anything by itself: a load needs the repetitions done with it.":
    "Keine Zahl hier sagt allein etwas: Zu einer Last gehören die damit geschafften Wiederholungen.",
  "the athletes' names": "die Namen der Athlet:innen",
  "the left results": "die Ergebnisse links",
  "the right results": "die Ergebnisse rechts",
  "the results": "die Ergebnisse",
  "the side": "die Seite",
  nothing: "nichts",
  "the attempt number": "die Nummer des Versuchs",
  "the test": "der Test",
  "what was measured": "was gemessen wurde",
  "the unit": "die Einheit",
  "the date": "das Datum",
  "the role or group": "die Rolle oder Gruppe",
  "the body mass": "das Körpergewicht",
  "the stature": "die Körpergröße",
  // endurance
  "How fast and how long can each athlete run, and which intervals follow?":
    "Wie schnell und wie lange können alle laufen, und welche Intervalle folgen daraus?",
  "results that can be of this protocol": "Ergebnisse, die zu diesem Protokoll passen",
  "Which test was run, and what was written down. The same number means another thing in another protocol.":
    "Welcher Test gelaufen und was aufgeschrieben wurde. Dieselbe Zahl bedeutet in einem anderen Protokoll etwas anderes.",
  "Equation for": "Formel für",
  "Some equations differ for women and men; others do not use it.":
    "Manche Formeln unterscheiden Frauen und Männer, andere nicht.",
  "First shuttle stage": "Erste Stufe des Pendellaufs",
  "Speed of the first stage of the 20 m shuttle run: versions differ.":
    "Tempo der ersten Stufe des 20-m-Pendellaufs: Es gibt verschiedene Fassungen.",
  "8.5 km/h": "8,5 km/h",
  "8.0 km/h": "8,0 km/h",
  "Run for": "Laufdauer",
  "How long the all-out run lasted: 5 or 6 minutes.": "Wie lange der maximale Lauf dauerte: 5 oder 6 Minuten.",
  "Run over": "Laufstrecke",
  "How far the all-out run was: 1200 to 2000 m.": "Wie weit der maximale Lauf war: 1200 bis 2000 m.",
  "Intervals at": "Intervalle mit",
  "Share of the speed at which intervals are to be run.":
    "Anteil des Tempos, mit dem die Intervalle gelaufen werden sollen.",
  "Intervals of": "Intervalldauer",
  "How long one interval lasts.": "Wie lange ein Intervall dauert.",
  "Best result of the latest day: the number to keep and to compare at a retest.":
    "Bestes Ergebnis des letzten Tages: die Zahl zum Behalten und zum Vergleich beim Retest.",
  "Place by the result; 1 is the best.": "Platz nach dem Ergebnis; 1 ist der beste.",
  "Final speed of the test, or mean speed of the all-out run (maximal aerobic speed).":
    "Endtempo des Tests oder mittleres Tempo des maximalen Laufs (maximale aerobe Geschwindigkeit).",
  "Oxygen uptake": "Sauerstoffaufnahme",
  "Maximal oxygen uptake as a group's regression estimates it: for one athlete a rough guess.":
    "Maximale Sauerstoffaufnahme, wie die Regression einer Gruppe sie schätzt: für Einzelne ein grober Anhalt.",
  "Interval run": "Intervallstrecke",
  "How far to run in one interval as chosen; only from tests whose speed holds for straight running.":
    "Wie weit in einem Intervall wie gewählt zu laufen ist; nur aus Tests, deren Tempo für geraden Lauf gilt.",
  "What is missing, and why.": "Was fehlt, und warum.",
  "Select the results of one running test with their headings: a row per athlete with the metres, the final speed, the stage or the time. Then say which protocol it was. Birth years and body mass come from your squad's table.":
    "Wähle die Ergebnisse eines Lauftests samt Überschriften aus: eine Zeile je Athlet:in mit den Metern, dem Endtempo, der Stufe oder der Zeit. Gib dann an, welches Protokoll es war. Geburtsjahre und Körpergewicht kommen aus der Tabelle deines Kaders.",
  "Track the result itself. An oxygen uptake from it is a group's regression, off by 3 to 6 ml/kg/min for one athlete, and sets no training zone.":
    "Verfolge das Ergebnis selbst. Eine Sauerstoffaufnahme daraus ist die Regression einer Gruppe, für Einzelne um 3 bis 6 ml/kg/min daneben, und legt keinen Trainingsbereich fest.",
  "Final speeds of different protocols are different things: that of the 30-15 test lies 2 to 5 km/h above a maximal aerobic speed.":
    "Endtempi verschiedener Protokolle sind verschiedene Dinge: Das des 30-15-Tests liegt 2 bis 5 km/h über einer maximalen aeroben Geschwindigkeit.",
  "These are tests to exhaustion: for healthy athletes only, minors under qualified supervision; stop at pain, dizziness or chest complaints and send to a physician.":
    "Das sind Tests bis zur Erschöpfung: nur für Gesunde, Minderjährige unter fachkundiger Aufsicht; brich bei Schmerz, Schwindel oder Brustbeschwerden ab und schicke zur Ärztin oder zum Arzt.",
  "maximal aerobic speed = distance ÷ time; interval run = share × speed × seconds":
    "maximale aerobe Geschwindigkeit = Strecke ÷ Zeit; Intervallstrecke = Anteil × Tempo × Sekunden",
  "Oxygen uptake: Bangsbo et al. 2008, Sports Med 38:37-51; Buchheit 2008, J Strength Cond Res 22:365-374; Léger et al. 1988, J Sports Sci 6:93-101 (under 18); Stickland et al. 2003 (adults); Léger & Lambert 1982. Interval runs: common practice, no source.":
    "Sauerstoffaufnahme: Bangsbo et al. 2008, Sports Med 38:37-51; Buchheit 2008, J Strength Cond Res 22:365-374; Léger et al. 1988, J Sports Sci 6:93-101 (unter 18); Stickland et al. 2003 (Erwachsene); Léger & Lambert 1982. Intervallstrecken: gängige Praxis, ohne Quelle.",
  "Not said: the result by itself": "Nicht angegeben: nur das Ergebnis",
  "Intermittent recovery shuttles, level 1: metres": "Intervall-Pendellauf mit Pausen, Stufe 1: Meter",
  "Intermittent recovery shuttles, level 2: metres": "Intervall-Pendellauf mit Pausen, Stufe 2: Meter",
  "30-15 intermittent fitness test: final speed": "30-15-Intervalltest: Endtempo",
  "birth year": "Geburtsjahr",
  "20 m shuttle run, one-minute stages: last half-stage completed":
    "20-m-Pendellauf, Stufen von einer Minute: letzte geschaffte halbe Stufe",
  "20 m shuttle run, one-minute stages: final speed": "20-m-Pendellauf, Stufen von einer Minute: Endtempo",
  "20 m shuttle run, two-minute stages: final speed": "20-m-Pendellauf, Stufen von zwei Minuten: Endtempo",
  "All-out run for set minutes: metres": "Maximaler Lauf über feste Minuten: Meter",
  "All-out run over a set distance: time": "Maximaler Lauf über feste Strecke: Zeit",
  "{0} is no whole or half stage: stage 9 and the fifth shuttle is not 9.5. Give the last half-stage completed.":
    "{0} ist keine ganze oder halbe Stufe: Stufe 9 und die fünfte Bahn ist nicht 9,5. Gib die letzte geschaffte halbe Stufe an.",
  "A number of stages is wanted; this is in {0}.": "Gebraucht wird eine Zahl von Stufen; das hier ist in {0}.",
  "The protocol's results are in {0}; “{1}” is another kind of unit.":
    "Die Ergebnisse des Protokolls stehen in {0}; „{1}“ ist eine andere Art von Einheit.",
  "No estimate: {0}": "Keine Schätzung: {0}",
  "stage {0}": "Stufe {0}",
  "Best of {0}: {1}, {2}; the middle is {3}.": "Beste von {0}: {1}, {2}; die Mitte liegt bei {3}.",
  "Speeds: {0} km/h.": "Tempi: {0} km/h.",
  "At {0} % for {1} s that is {2} m a run.": "Mit {0} % über {1} s sind das {2} m je Lauf.",
  "Estimated oxygen uptake: {0} ml/kg/min.": "Geschätzte Sauerstoffaufnahme: {0} ml/kg/min.",
  "Say which protocol it was, and speeds, estimates and intervals follow.":
    "Gib an, welches Protokoll es war; dann folgen Tempi, Schätzungen und Intervalle.",
  "{0} of {1} without an estimate: see the verdict.": "{0} von {1} ohne Schätzung: siehe Urteil.",
  "No unit is said: the results were taken for {0}.":
    "Keine Einheit angegeben: Die Ergebnisse wurden als {0} genommen.",
  " ({0} min)": " ({0} min)",
  ", first stage {0} km/h": ", erste Stufe {0} km/h",
  ", equation for {0}": ", Formel für {0}",
  women: "Frauen",
  men: "Männer",
  Women: "Frauen",
  Men: "Männer",
  "Protocol: {0}{1}{2}{3}. Best result of each athlete's latest day; age from the birth year alone.":
    "Protokoll: {0}{1}{2}{3}. Jeweils bestes Ergebnis des letzten Tages; Alter allein aus dem Geburtsjahr.",
  // fields
  "As set up, else the best trial": "Wie eingerichtet, sonst der beste Versuch",
  "Best trial": "Bester Versuch",
  "Mean of all trials": "Mittel aller Versuche",
  "Middle trial": "Mittlerer Versuch",
  "Mean of the best two": "Mittel der zwei besten",
  "Better is": "Besser ist",
  "Whether a larger result is the better one, as in a jump, or a smaller one, as in a sprint time. The battery says it where it knows the test; else a time counts as better when shorter, all else when larger.":
    "Ob ein größeres Ergebnis besser ist, wie beim Sprung, oder ein kleineres, wie bei einer Sprintzeit. Die Testbatterie sagt es, wo sie den Test kennt; sonst gilt bei einer Zeit kürzer als besser, bei allem anderen größer.",
  "As set up, else by the unit": "Wie eingerichtet, sonst nach der Einheit",
  // jumps
  "What do the jumps say about spring and power?": "Was sagen die Sprünge über Sprungkraft und Leistung?",
  "There is no vertical jump with a height or a flight time. Name the tests after the jump, or say what other jumps are.":
    "Es gibt keinen Vertikalsprung mit Höhe oder Flugzeit. Benenne die Tests nach dem Sprung, oder gib an, was andere Sprünge sind.",
  "countermovement jump": "Countermovement Jump",
  "Equation for peak power": "Formel für die Spitzenleistung",
  "How height (h, cm), body mass (m, kg) and stature (s, cm) become an estimate of peak power. Equations differ by hundreds of watts: keep one.":
    "Wie Höhe (h, cm), Körpergewicht (m, kg) und Körpergröße (s, cm) eine Schätzung der Spitzenleistung werden. Formeln unterscheiden sich um Hunderte Watt: Bleib bei einer.",
  "Other jumps are": "Andere Sprünge sind",
  "What a jump is whose name does not say it (CMJ, squat jump, drop jump ..). A jump with a contact time is always a drop jump.":
    "Was ein Sprung ist, dessen Name es nicht sagt (CMJ, Squat Jump, Drop Jump ..). Ein Sprung mit Kontaktzeit ist immer ein Drop Jump.",
  "Left out": "Weggelassen",
  "Countermovement jumps": "Countermovement Jumps",
  "Squat jumps": "Squat Jumps",
  "Drop jumps": "Drop Jumps",
  "Highest of the latest day; from the time in the air where no height was measured.":
    "Der höchste des letzten Tages; aus der Zeit in der Luft, wo keine Höhe gemessen wurde.",
  "Rank, height": "Rang, Höhe",
  "Place by the countermovement jump; 1 is the highest.": "Platz nach dem Countermovement Jump; 1 ist der höchste.",
  "Squat jump": "Squat Jump",
  "Highest of the latest day.": "Der höchste des letzten Tages.",
  "Countermovement ÷ squat": "Countermovement ÷ Squat",
  "Eccentric utilisation ratio, where both were jumped on one day. About 1.0 to 1.2.":
    "Verhältnis von Countermovement Jump zu Squat Jump (exzentrischer Nutzungsquotient), wo beide an einem Tag gesprungen wurden. Etwa 1,0 bis 1,2.",
  "Estimated from the countermovement jump (else the squat jump) and body mass.":
    "Geschätzt aus dem Countermovement Jump (sonst dem Squat Jump) und dem Körpergewicht.",
  "Power per kg": "Leistung je kg",
  "Estimated peak power divided by body mass.": "Geschätzte Spitzenleistung geteilt durch das Körpergewicht.",
  "Height of the drop jump with the best index of the latest day.":
    "Höhe des Drop Jumps mit dem besten Index des letzten Tages.",
  Contact: "Kontakt",
  "How long the same jump was on the ground.": "Wie lange derselbe Sprung am Boden war.",
  RSI: "RSI",
  "Reactive strength index: height of the drop jump divided by its contact time.":
    "Reaktivkraftindex: Höhe des Drop Jumps geteilt durch seine Kontaktzeit.",
  "Rank, RSI": "Rang, RSI",
  "Place by the reactive strength index; 1 is the largest.": "Platz nach dem Reaktivkraftindex; 1 ist der größte.",
  "What the numbers say side by side, and what is missing.": "Was die Zahlen nebeneinander sagen, und was fehlt.",
  "Select vertical jumps with their headings: columns for the athlete and for height or flight time, and the contact time of drop jumps. The test's name says which jump it is: countermovement, squat or drop jump.":
    "Wähle Vertikalsprünge samt Überschriften aus: Spalten für die Athlet:in und für Höhe oder Flugzeit, dazu die Kontaktzeit der Drop Jumps. Der Name des Tests sagt, welcher Sprung es ist: Countermovement, Squat oder Drop Jump.",
  "Height (cm)": "Höhe (cm)",
  "Height from the time in the air is true only when athletes land as straight as they took off; heights by reach, flight and force plate are not comparable.":
    "Die Höhe aus der Zeit in der Luft stimmt nur, wenn so gestreckt gelandet wie abgesprungen wird; Höhen aus Reichhöhe, Flugzeit und Kraftmessplatte sind nicht vergleichbar.",
  "Peak power is an estimate with an error of hundreds of watts: a change in it with the same height is a change in body mass.":
    "Die Spitzenleistung ist eine Schätzung mit einem Fehler von Hunderten Watt: Verändert sie sich bei gleicher Höhe, hat sich das Körpergewicht verändert.",
  "Drop jumps are for athletes used to landing from that height; minors only under qualified supervision.":
    "Drop Jumps sind für alle, die Landungen aus dieser Höhe gewohnt sind; Minderjährige nur unter fachkundiger Aufsicht.",
  "height = 9.81 × flight² ÷ 8; RSI = height ÷ contact; ratio = countermovement ÷ squat jump":
    "Höhe = 9,81 × Flugzeit² ÷ 8; RSI = Höhe ÷ Kontaktzeit; Verhältnis = Countermovement Jump ÷ Squat Jump",
  "Flight time: uniform motion under gravity. RSI: Young 1995; Flanagan & Comyns 2008. Ratio: McGuigan et al. 2006, J Strength Cond Res 20:992-995 (all from memory). Power: Sayers et al. 1999, Med Sci Sports Exerc 31:572-577, and others; 20 % too much in women: Canavan & Vescovi 2004, ibid. 36:1589-1593.":
    "Flugzeit: gleichförmige Bewegung unter Schwerkraft. RSI: Young 1995; Flanagan & Comyns 2008. Verhältnis: McGuigan et al. 2006, J Strength Cond Res 20:992-995 (alle aus dem Gedächtnis). Leistung: Sayers et al. 1999, Med Sci Sports Exerc 31:572-577, und andere; 20 % zu viel bei Frauen: Canavan & Vescovi 2004, ibid. 36:1589-1593.",
  "A jump on one leg: ask for the left-right asymmetry of it.":
    "Ein Sprung auf einem Bein: Frag nach seinem Links-rechts-Unterschied.",
  "A contact time without a height or a flight time: nothing follows.":
    "Eine Kontaktzeit ohne Höhe oder Flugzeit: Daraus folgt nichts.",
  "The heading does not say which jump it is; say in the settings what other jumps are.":
    "Die Überschrift sagt nicht, welcher Sprung es ist; gib in den Einstellungen an, was andere Sprünge sind.",
  "“{0}” does not say which jump it is; say in the settings what other jumps are.":
    "„{0}“ sagt nicht, welcher Sprung es ist; gib in den Einstellungen an, was andere Sprünge sind.",
  "Countermovement and squat jump are of two days: no ratio.":
    "Countermovement Jump und Squat Jump sind von zwei Tagen: kein Verhältnis.",
  "No contact time: no RSI.": "Keine Kontaktzeit: kein RSI.",
  "{0} No power.": "{0} Keine Leistung.",
  "The squat jump was the higher one: it probably began with a small countermovement.":
    "Der Squat Jump war der höhere: Er begann wohl mit einer kleinen Ausholbewegung.",
  "The countermovement adds {0} % to the squat jump.": "Die Ausholbewegung bringt {0} % auf den Squat Jump dazu.",
  "Drop jump among the squad's highest and shortest on the ground.":
    "Drop Jump unter den höchsten des Kaders und unter den kürzesten am Boden.",
  "Drop jump among the squad's highest, but long on the ground.":
    "Drop Jump unter den höchsten des Kaders, aber lang am Boden.",
  "Drop jump short on the ground, but among the squad's lowest.":
    "Drop Jump kurz am Boden, aber unter den niedrigsten des Kaders.",
  "Drop jump among the squad's lowest and longest on the ground.":
    "Drop Jump unter den niedrigsten des Kaders und unter den längsten am Boden.",
  "reactive strength index": "Reaktivkraftindex",
  "In {0} the squat jump was the higher one: watch that it starts from a standstill.":
    "Bei {0} war der Squat Jump der höhere: Achte darauf, dass er aus dem Stillstand beginnt.",
  "{0} with vertical jumps; see the table.": "{0} mit Vertikalsprüngen; siehe Tabelle.",
  "Best {0}: {1}, {2}; the middle of {3} athletes is {4}.":
    "{0}, bester Wert: {1}, {2}; die Mitte von {3} Athlet:innen liegt bei {4}.",
  "Some heights were measured, others computed from the time in the air: do not compare these with those.":
    "Manche Höhen wurden gemessen, andere aus der Zeit in der Luft errechnet: Vergleiche die einen nicht mit den anderen.",
  "{0} without a power: see the verdict.": "{0} ohne Leistung: siehe Urteil.",
  "The highest jump of each athlete's latest day, of drop jumps the one with the largest RSI; peak power by {0}, {1}.{2}":
    "Der jeweils höchste Sprung des letzten Tages, bei Drop Jumps der mit dem größten RSI; Spitzenleistung nach {0}, {1}.{2}",
  // liveFormulas
  "These columns follow your results: {0}. All others, verdicts too, are of {1} until the table is ":
    "Diese Spalten folgen deinen Ergebnissen: {0}. Alle anderen, auch die Urteile, sind vom {1}, bis die Tabelle ",
  "renewed. #N/A in a column that follows means that the results were sorted or moved: renew the table. A trial in a cell ":
    "erneuert wird. #NV in einer Spalte, die folgt, heißt, dass die Ergebnisse sortiert oder verschoben wurden: Erneuere die Tabelle. Ein Versuch in einer Zelle, ",
  "that was not read is not seen.": "die nicht gelesen wurde, wird nicht gesehen.",
  // loadVelocity
  "Load-velocity profile": "Last-Geschwindigkeits-Profil",
  "Load and velocity": "Last und Geschwindigkeit",
  "How heavy could each athlete lift, going by the speed of the bar?":
    "Wie schwer könnten alle heben, nach der Geschwindigkeit der Stange?",
  "sets with a load and a bar velocity": "Sätze mit einer Last und einer Stangengeschwindigkeit",
  "Velocity of a maximal lift": "Geschwindigkeit beim Maximum",
  "The mean velocity at which one repetition just goes. It depends on the lift: about 0.17 in the bench press, 0.3 in the back squat. Keep one for each lift, and use it again at every retest.":
    "Die mittlere Geschwindigkeit, bei der eine Wiederholung gerade noch gelingt. Sie hängt von der Übung ab: etwa 0,17 beim Bankdrücken, 0,3 bei der Kniebeuge. Bleib je Übung bei einer, auch bei jedem Retest.",
  Lift: "Übung",
  "The exercise, and the side where there are two.": "Die Übung, und die Seite, wo es zwei gibt.",
  Loads: "Lasten",
  "How many different loads were lifted on the latest day; three are the least.":
    "Wie viele verschiedene Lasten am letzten Tag gehoben wurden; drei sind das Mindeste.",
  Heaviest: "Schwerste",
  "The heaviest of these loads.": "Die schwerste dieser Lasten.",
  "The load at which the line comes down to the velocity of a maximal lift.":
    "Die Last, bei der die Gerade auf die Geschwindigkeit beim Maximum sinkt.",
  "Maximum low": "Maximum von",
  "Lower 95 % limit of what the line says; how wrong the threshold is for her is not in it.":
    "Untere 95-%-Grenze dessen, was die Gerade sagt; wie falsch die Schwelle für diese Athlet:in ist, steckt nicht darin.",
  "Maximum high": "Maximum bis",
  "Upper 95 % limit of the same.": "Obere 95-%-Grenze davon.",
  "Velocity without load": "Geschwindigkeit ohne Last",
  "Where the line meets no load at all.": "Wo die Gerade auf gar keine Last trifft.",
  "Change per 10 kg": "Änderung je 10 kg",
  "How much the bar slows down with each 10 kg.": "Um wie viel die Stange mit je 10 kg langsamer wird.",
  "How well the line fits: 1 is all loads on the line. At least 0.95 is wanted.":
    "Wie gut die Gerade passt: 1 heißt alle Lasten auf der Geraden. Mindestens 0,95 ist erwünscht.",
  "What to keep in mind with this athlete's line.": "Was bei dieser Geraden zu bedenken ist.",
  Row: "Zeile",
  "Athlete and lift, by which a rerun finds the row.":
    "Athlet:in und Übung; daran findet ein neuer Lauf die Zeile wieder.",
  "Select sets with their headings: columns for the athlete, the load and the mean velocity of the bar, at three loads or more for each athlete; the lift and the date where you have them.":
    "Wähle Sätze samt Überschriften aus: Spalten für die Athlet:in, die Last und die mittlere Geschwindigkeit der Stange, bei drei oder mehr Lasten je Athlet:in; Übung und Datum, wo du sie hast.",
  "Estimated maximum (kg)": "Geschätztes Maximum (kg)",
  "Each lift must be as fast as possible: a bar held back reads as a heavier load.":
    "Jeder Versuch muss so schnell wie möglich sein: Eine gebremste Stange liest sich wie eine schwerere Last.",
  "For free-weight squats such estimates were not accurate enough to prescribe loads from: use them to watch one athlete over time, with the same device and threshold.":
    "Bei freien Kniebeugen waren solche Schätzungen nicht genau genug, um Lasten vorzugeben: Nimm sie, um jemanden über die Zeit zu verfolgen, mit demselben Gerät und derselben Schwelle.",
  "Heavy lifts only for athletes who master them, with spotters; minors only under qualified supervision. After an injury the clinician in charge decides.":
    "Schwere Versuche nur für alle, die die Übung beherrschen, mit Hilfestellung; Minderjährige nur unter fachkundiger Aufsicht. Nach einer Verletzung entscheiden die Behandelnden.",
  "velocity = a + b × load; maximum = (velocity of a maximal lift − a) ÷ b":
    "Geschwindigkeit = a + b × Last; Maximum = (Geschwindigkeit beim Maximum − a) ÷ b",
  "Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31:347-352 (from memory). Limits: delta method. Squats: Banyard et al. 2017, J Strength Cond Res 31:1897-1904 (title read). r² of at least 0.90: common practice, no source.":
    "Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31:347-352 (aus dem Gedächtnis). Grenzen: Delta-Methode. Kniebeugen: Banyard et al. 2017, J Strength Cond Res 31:1897-1904 (Titel gelesen). r² von mindestens 0,90: gängige Praxis, ohne Quelle.",
  "A bar velocity without a load: not used.": "Eine Stangengeschwindigkeit ohne Last: nicht verwendet.",
  "A load without a bar velocity: not used.": "Eine Last ohne Stangengeschwindigkeit: nicht verwendet.",
  "A straight line through all loads.": "Eine Gerade durch alle Lasten.",
  "1 maximum estimated from the speed of the bar.": "1 Maximum aus der Geschwindigkeit der Stange geschätzt.",
  "{0} maxima estimated from the speed of the bar.": "{0} Maxima aus der Geschwindigkeit der Stange geschätzt.",
  "1 row without an answer: see the verdict.": "1 Zeile ohne Antwort: siehe Urteil.",
  "{0} rows without an answer: see the verdict.": "{0} Zeilen ohne Antwort: siehe Urteil.",
  "Each athlete's latest day: the straight line of velocity on load, all sets alike, read at {0} m/s; limits of 95 %.":
    "Jeweils der letzte Tag: die Gerade der Geschwindigkeit über der Last, alle Sätze gleich, abgelesen bei {0} m/s; 95-%-Grenzen.",
  "of {0} sets, those of the latest day": "von {0} Sätzen die des letzten Tages",
  // measuredAttempts
  "{0} is wanted in {1}; “{2}” is another kind of unit.":
    "{0} wird in {1} gebraucht; „{2}“ ist eine andere Art von Einheit.",
  "{0} ms is no likely {1}; in s it would be. Say which unit it is.":
    "{0} ms ist kaum möglich ({1}); in s ginge es. Gib an, welche Einheit es ist.",
  "A second {0} for {1}'s attempt {2}: give each attempt its own number.":
    "Zweiter Wert ({0}) für {1}, Versuch {2}: Gib jedem Versuch eine eigene Nummer.",
  // ranking
  "Squad ranking": "Rangliste des Kaders",
  Ranking: "Rangliste",
  "Who stands where over all tests, by quality and by role?":
    "Wer steht wo über alle Tests, nach Fähigkeit und nach Rolle?",
  "tests with three comparable scores": "Tests mit drei vergleichbaren Werten",
  "T score of {0}: 50 is the middle of these athletes, 10 a standard deviation, plus is better.":
    "T-Wert aus {0}: 50 ist die Mitte dieser Athlet:innen, 10 eine Standardabweichung, plus ist besser.",
  "it needs a formula before athletes can be compared": "Es braucht eine Formel, bevor verglichen werden kann",
  "the battery names no quality for it": "Die Testbatterie nennt dafür keine Fähigkeit",
  "All results": "Alle Ergebnisse",
  "Score of each test": "Wert jedes Tests",
  "How an athlete's trials of a test become one score.": "Wie aus den Versuchen eines Tests ein Wert wird.",
  "How much each quality counts. The weights of your table of weights are your judgement of what a role asks for; nothing proves them.":
    "Wie viel jede Fähigkeit zählt. Die Gewichte deiner Tabelle sind dein Urteil darüber, was eine Rolle verlangt; belegt sind sie nicht.",
  "As set up for the athlete's role": "Wie für die Rolle eingerichtet",
  "All qualities alike": "Alle Fähigkeiten gleich",
  "1 for the best overall among all athletes. Equal ones share a rank.":
    "1 für insgesamt am besten unter allen. Gleiche teilen sich einen Rang.",
  "Rank in role": "Rang in der Rolle",
  "1 for the best overall among the athletes of the same role.":
    "1 für insgesamt am besten unter allen mit derselben Rolle.",
  "Overall (T)": "Gesamt (T)",
  "Weighted mean of the qualities, as a T score: 50 is the middle of these athletes, 10 a standard deviation. Empty where less than 70 % of the weight was tested.":
    "Gewichtetes Mittel der Fähigkeiten als T-Wert: 50 ist die Mitte dieser Athlet:innen, 10 eine Standardabweichung. Leer, wo weniger als 70 % des Gewichts getestet wurden.",
  Tested: "Getestet",
  "Share of the qualities' weight on which the athlete was tested.":
    "Anteil am Gewicht der Fähigkeiten, in dem getestet wurde.",
  "Not tested": "Nicht getestet",
  "Qualities, or tests of them, without a result. Nothing is put in their place.":
    "Fähigkeiten oder zugehörige Tests ohne Ergebnis. An ihre Stelle wird nichts gesetzt.",
  "From the middle": "Von der Mitte",
  "The overall score in standard deviations from the middle. For the chart.":
    "Der Gesamtwert in Standardabweichungen von der Mitte. Für das Diagramm.",
  "100 m hurdles": "100 m Hürden",
  "High jump": "Hochsprung",
  "Shot put": "Kugelstoßen",
  "Select the results of several tests with their headings. The battery says which quality a test stands for; without it each test counts as a quality of its own.":
    "Wähle die Ergebnisse mehrerer Tests samt Überschriften aus. Die Testbatterie sagt, für welche Fähigkeit ein Test steht; ohne sie zählt jeder Test als eigene Fähigkeit.",
  "Overall, in standard deviations from the middle": "Gesamt, in Standardabweichungen von der Mitte",
  Overall: "Gesamt",
  "below the middle": "unter der Mitte",
  "above the middle": "über der Mitte",
  "Neighbours in a ranking are often no more than noise apart: look at the single tests before you say one is better.":
    "Nachbarn in einer Rangliste liegen oft nur ein Rauschen auseinander: Sieh dir die einzelnen Tests an, bevor du jemanden besser nennst.",
  "Weights are an opinion. A ranking is a start for a talk, not a selection; keep lists with young athletes' names to yourself.":
    "Gewichte sind eine Meinung. Eine Rangliste ist ein Anfang für ein Gespräch, keine Auswahl; behalte Listen mit Namen von Jugendlichen für dich.",
  "overall = Σ weight × mean z of the quality's tests ÷ Σ weight, over what was tested":
    "gesamt = Σ Gewicht × mittlerer z-Wert der Tests der Fähigkeit ÷ Σ Gewicht, über das, was getestet wurde",
  "Mean of z scores: total score of athleticism, Turner et al. 2019, Strength Cond J 41(6):91-101. 70 % of the weight as the least for a rank: common practice, no source.":
    "Mittel von z-Werten: Gesamtwert der Athletik, Turner et al. 2019, Strength Cond J 41(6):91-101. 70 % des Gewichts als das Mindeste für einen Rang: gängige Praxis, ohne Quelle.",
  "{0} ranked over {1}: {2}.": "{0} in der Rangliste über {1}: {2}.",
  "1 quality": "1 Fähigkeit",
  "{0} qualities": "{0} Fähigkeiten",
  "At the front: {0}.": "Vorn: {0}.",
  "1 athlete has no rank: less than 70 % of what counts for them was tested.":
    "1 Athlet:in hat keinen Rang: Weniger als 70 % von dem, was für sie zählt, wurde getestet.",
  "{0} athletes have no rank: less than 70 % of what counts for them was tested.":
    "{0} Athlet:innen haben keinen Rang: Weniger als 70 % von dem, was für sie zählt, wurde getestet.",
  "{0} is not in the ranking: {1}.": (test, why) => `${test} fehlt in der Rangliste. ${atStart(why)}.`,
  "The test": "Der Test",
  "No battery is set up, so each test counts as a quality of its own and related tests count double.":
    "Es ist keine Testbatterie eingerichtet; deshalb zählt jeder Test als eigene Fähigkeit, und verwandte Tests zählen doppelt.",
  "Each athlete is judged by the weights of their own role: compare overall scores within a role.":
    "Alle werden nach den Gewichten der eigenen Rolle beurteilt: Vergleiche Gesamtwerte innerhalb einer Rolle.",
  "Where no role is known, all qualities count alike.": "Wo keine Rolle bekannt ist, zählen alle Fähigkeiten gleich.",
  "Among so few athletes one result moves everybody's score.":
    "Bei so wenigen verschiebt ein Ergebnis die Werte aller.",
  "score as set up, else the best trial": "Wert wie eingerichtet, sonst bester Versuch",
  "all qualities alike": "alle Fähigkeiten gleich",
  "Z scores among all these athletes of each test's {0}; weights: {1}.":
    "z-Werte unter allen diesen Athlet:innen, je Test: {0}; Gewichte: {1}.",
  "all alike": "alle gleich",
  "without a role": "ohne Rolle",
  // reliability
  "Reliability of a test": "Zuverlässigkeit eines Tests",
  Reliability: "Zuverlässigkeit",
  "How much does this test vary by itself, and what can it show?":
    "Wie sehr schwankt dieser Test von selbst, und was kann er zeigen?",
  "Repeats are": "Messungen sind",
  "Trials of one session tell how a test scatters on the day. Only sessions on different days tell whether a retest shows a change. Where your sheet has no dates, each result column counts as one session.":
    "Versuche eines Termins sagen, wie ein Test am selben Tag streut. Nur Termine an verschiedenen Tagen sagen, ob ein Retest eine Veränderung zeigt. Wo dein Blatt kein Datum hat, zählt jede Ergebnisspalte als ein Termin.",
  "Trials of one session": "Versuche eines Termins",
  "Sessions on different days": "Termine an verschiedenen Tagen",
  "How the trials of one session become one score. Not used between trials.":
    "Wie aus den Versuchen eines Termins ein Wert wird. Zwischen Versuchen nicht gebraucht.",
  "The test, and the side where there are two.": "Der Test, und die Seite, wo es zwei gibt.",
  "Unit of this row's results, where the tests have different ones.":
    "Einheit der Ergebnisse dieser Zeile, wo die Tests verschiedene haben.",
  Athletes: "Athlet:innen",
  "How many athletes have at least two results.": "Wie viele mindestens zwei Ergebnisse haben.",
  Repeats: "Messungen",
  "How many trials or sessions were compared.": "Wie viele Versuche oder Termine verglichen wurden.",
  Mean: "Mittel",
  "Mean of all results.": "Mittel aller Ergebnisse.",
  Shift: "Verschiebung",
  "Mean change from the first to the last repeat: learning, warming up or tiring, if beyond chance.":
    "Mittlere Veränderung von der ersten zur letzten Messung: Lernen, Warmwerden oder Ermüden, wenn sie über den Zufall hinausgeht.",
  "Typical error": "Typischer Fehler",
  "How much one athlete's result varies from repeat to repeat, with any shared shift removed.":
    "Wie sehr das Ergebnis einer Athlet:in von Mal zu Mal schwankt, eine gemeinsame Verschiebung herausgenommen.",
  "TE low": "Fehler von",
  "Lower 95 % limit of the typical error.": "Untere 95-%-Grenze des typischen Fehlers.",
  "TE high": "Fehler bis",
  "Upper 95 % limit of the typical error.": "Obere 95-%-Grenze des typischen Fehlers.",
  CV: "CV",
  "The typical error in percent, from logarithms.": "Der typische Fehler in Prozent, aus Logarithmen.",
  "Share of the differences that lies between athletes: 1 is none within. Falls in a squad of like athletes.":
    "Anteil der Unterschiede, der zwischen den Athlet:innen liegt: 1 heißt keiner innerhalb. Sinkt in einem Kader von Gleichen.",
  "ICC low": "ICC von",
  "Lower 95 % limit of the intraclass correlation.": "Untere 95-%-Grenze der Intraklassenkorrelation.",
  "ICC high": "ICC bis",
  "Upper 95 % limit of the intraclass correlation.": "Obere 95-%-Grenze der Intraklassenkorrelation.",
  "Small change": "Kleine Veränderung",
  "A fifth of the true spread between athletes: the smallest change usually held worthwhile.":
    "Ein Fünftel der wahren Streuung zwischen den Athlet:innen: die kleinste Veränderung, die meist als bedeutsam gilt.",
  "Detectable change": "Nachweisbar",
  "A change between two sessions beyond this is more than noise, 95 times in 100. Between sessions only.":
    "Eine Veränderung zwischen zwei Terminen über dieser Größe ist 95-mal von 100 mehr als Rauschen. Nur zwischen Terminen.",
  "What the test can and cannot show.": "Was der Test zeigen kann und was nicht.",
  "Select repeated results with their headings: a row per athlete with a column for each trial or session, or a row per attempt with columns for athlete and date.":
    "Wähle wiederholte Ergebnisse samt Überschriften aus: eine Zeile je Athlet:in mit einer Spalte für jeden Versuch oder Termin, oder eine Zeile je Versuch mit Spalten für Athlet:in und Datum.",
  "Variation from repeat to repeat": "Schwankung von Mal zu Mal",
  "CV (%)": "CV (%)",
  "The numbers hold for athletes, testers and equipment like these.":
    "Die Zahlen gelten für solche Athlet:innen, Testende und Geräte wie hier.",
  "5 and 10 % as limits for a CV are custom without a statistical reason; hold the error against the change you look for.":
    "5 und 10 % als Grenzen für einen CV sind Gewohnheit ohne statistischen Grund; miss den Fehler an der Veränderung, die du suchst.",
  "typical error = square root of the variance within athletes, shared shift removed":
    "typischer Fehler = Wurzel der Varianz innerhalb der Athlet:innen, gemeinsame Verschiebung herausgenommen",
  "Typical error: Hopkins 2000, Sports Med 30:1-15, from all results by restricted maximum likelihood. ICC: Shrout & Fleiss 1979, Psychol Bull 86:420-428, complete athletes only.":
    "Typischer Fehler: Hopkins 2000, Sports Med 30:1-15, aus allen Ergebnissen mit Restricted Maximum Likelihood. ICC: Shrout & Fleiss 1979, Psychol Bull 86:420-428, nur wer alle Ergebnisse hat.",
  "Results still improve from repeat to repeat: add practice trials.":
    "Die Ergebnisse werden noch von Mal zu Mal besser: Ergänze Übungsversuche.",
  "Results get worse from repeat to repeat: allow more rest.":
    "Die Ergebnisse werden von Mal zu Mal schlechter: Gib mehr Pause.",
  "Steady from trial to trial.": "Gleichmäßig von Versuch zu Versuch.",
  "Athletes differ no more than the test's noise.":
    "Die Athlet:innen unterscheiden sich nicht stärker als das Rauschen des Tests.",
  "One retest can show a small change.": "Ein Retest kann eine kleine Veränderung zeigen.",
  "One retest can just show a small change.": "Ein Retest kann eine kleine Veränderung gerade noch zeigen.",
  "One retest cannot show a small change: average more trials, or trust only changes beyond the detectable one.":
    "Ein Retest kann eine kleine Veränderung nicht zeigen: Mittle mehr Versuche, oder trau nur Veränderungen über der nachweisbaren.",
  "trial to trial": "Versuch zu Versuch",
  "session to session": "Termin zu Termin",
  "No test has enough repeated results for an answer.": "Kein Test hat genug wiederholte Ergebnisse für eine Antwort.",
  "{0} varies by {1} % from {2}.": "{0}: {1} % Schwankung von {2}.",
  "From {0} the tests vary by {1} % ({2}) to {3} % ({4}).":
    "Von {0} schwanken die Tests um {1} % ({2}) bis {3} % ({4}).",
  "This is noise within one session; a retest on another day varies more. Compare sessions before you judge a change.":
    "Das ist das Rauschen innerhalb eines Termins; ein Retest an einem anderen Tag schwankt mehr. Vergleiche Termine, bevor du eine Veränderung beurteilst.",
  "The sheet has no dates: each result column was taken for one session.":
    "Das Blatt hat kein Datum: Jede Ergebnisspalte wurde als ein Termin genommen.",
  "With fewer than ten athletes the limits are wide: see the low and high columns.":
    "Bei weniger als zehn Athlet:innen sind die Grenzen weit: siehe die Spalten „von“ und „bis“.",
  "better as set up, else by the unit": "besser wie eingerichtet, sonst nach der Einheit",
  "{0} is better": (better) => `${direction(better)} ist besser`,
  "Between the trials of a session ({0}).": "Zwischen den Versuchen eines Termins ({0}).",
  "Between sessions, the {0} of each ({1}).": "Zwischen Terminen, jeweils: {0} ({1}).",
  // retest
  "Look again": "Noch einmal hinsehen",
  "Which results should be looked at or tested again?": "Welche Ergebnisse solltest du prüfen oder noch einmal testen?",
  "Trials too far apart": "Versuche zu weit auseinander",
  "How many times the usual spread an athlete's trials may have before they are named. At 1, noise alone gets 5 sets of trials in 100 named, at 1.25 about 1, at 1.5 about 1 in 500.":
    "Das Wievielfache der üblichen Spanne die Versuche haben dürfen, bevor sie genannt werden. Bei 1 nennt allein das Rauschen 5 von 100 Gruppen von Versuchen, bei 1,25 etwa 1, bei 1,5 etwa 1 von 500.",
  "Far from the squad": "Weit vom Kader",
  "Scores with a robust z beyond 3.5: an error, or an exceptional athlete.":
    "Werte mit einem robusten z-Wert über 3,5: ein Fehler oder eine Ausnahmeathlet:in.",
  "Name them": "Nennen",
  "Do not": "Nicht",
  "Retest after": "Retest nach",
  "Where the battery sets no interval of its own. 0: only as the battery says.":
    "Wo die Testbatterie keinen eigenen Abstand setzt. 0: nur, wie die Testbatterie sagt.",
  "Squad without a result": "Kader ohne Ergebnis",
  "Whether athletes of the squad who have no result of a test are named.":
    "Ob genannt wird, wer im Kader steht und von einem Test kein Ergebnis hat.",
  "Do not name them": "Nicht nennen",
  "How trials become the score that is compared with the squad and between sides.":
    "Wie aus Versuchen der Wert wird, der mit dem Kader und zwischen den Seiten verglichen wird.",
  What: "Was",
  "Whose result of which test and side; or the cell, where it could not be read.":
    "Wessen Ergebnis, von welchem Test und welcher Seite; oder die Zelle, wo sie nicht zu lesen war.",
  "What was found. Nothing was changed or deleted.": "Was gefunden wurde. Nichts wurde geändert oder gelöscht.",
  "What to do": "Was zu tun ist",
  "The first thing to do about it.": "Das Erste, was dazu zu tun ist.",
  Cell: "Zelle",
  "Where to look.": "Wo hinzusehen ist.",
  Reasons: "Gründe",
  "How many things were found.": "Wie viel gefunden wurde.",
  "Select the results with their headings, of one test or of many. With days in them, sides that changed places and overdue retests are found as well.":
    "Wähle die Ergebnisse samt Überschriften aus, von einem Test oder von vielen. Mit Tagen darin werden auch vertauschte Seiten und überfällige Retests gefunden.",
  "Things to look at": "Was zu prüfen ist",
  "What is named here is a question, not an error: an athlete may be exceptional, and noise alone names one now and then.":
    "Was hier genannt wird, ist eine Frage, kein Fehler: Es kann eine Ausnahmeleistung sein, und ab und zu nennt allein das Rauschen jemanden.",
  "What is not named can still be wrong.": "Was nicht genannt wird, kann trotzdem falsch sein.",
  "robust z = 0.6745 × (score − median) ÷ MAD; trials: range beyond the studentized range":
    "robuster z-Wert = 0,6745 × (Wert − Median) ÷ MAD; Versuche: Spanne über der studentisierten Spannweite",
  "Outliers: Iglewicz & Hoaglin 1993. Spread of trials: studentized range (Harter 1960) with the trials' pooled noise. Plausible ranges: your battery, else common practice, no source.":
    "Ausreißer: Iglewicz & Hoaglin 1993. Spanne der Versuche: studentisierte Spannweite (Harter 1960) mit dem gemeinsamen Rauschen der Versuche. Plausible Bereiche: deine Testbatterie, sonst gängige Praxis, ohne Quelle.",
  "cell {0}": "Zelle {0}",
  "Check the cell": "Die Zelle prüfen",
  "Check the unit and the comma": "Einheit und Komma prüfen",
  "Check the entry; test again if it stands": "Den Eintrag prüfen; noch einmal testen, wenn er stimmt",
  "Ask which side was which": "Klären, welche Seite welche war",
  "Test the missing side": "Die fehlende Seite testen",
  "Look at the trials; test again if nothing explains it":
    "Die Versuche ansehen; noch einmal testen, wenn nichts sie erklärt",
  "Check the entry; test again if you doubt it": "Den Eintrag prüfen; im Zweifel noch einmal testen",
  "Check the date": "Das Datum prüfen",
  "Test again": "Noch einmal testen",
  "Test, if it is wanted": "Testen, wenn gewünscht",
  "{0} is unlikely here; typed in another unit, or with the comma elsewhere, it would be {1}.":
    "{0} ist hier unwahrscheinlich; in einer anderen Einheit getippt oder mit dem Komma an anderer Stelle wären es {1}.",
  "at least {0}": "mindestens {0}",
  "{0} is outside what is plausible: {1}.": "{0} liegt außerhalb dessen, was plausibel ist: {1}.",
  " on {0}": " vom {0}",
  "The trials{0} are {1} apart; noise hardly makes more than {2}.":
    "Die Versuche{0} liegen {1} auseinander; das Rauschen macht kaum mehr als {2}.",
  "{0} Trial {1} ({2}) stands apart.": "{0} Versuch {1} ({2}) steht abseits.",
  "{0} is far from the squad, whose middle is {1}: an error, or an exceptional athlete.":
    "{0} liegt weit vom Kader, dessen Mitte {1} ist: ein Fehler oder eine Ausnahmeathlet:in.",
  "There is no result of the {0} side.": (which) => `Von der ${sided(which, "en")} Seite gibt es kein Ergebnis.`,
  "The {0} side was larger by {1} on {2}, the {3} by {4} on {5}, both beyond the noise: were left and right swapped on one of these days?":
    (before, size, day, now, sizeNow, dayNow) =>
      `Am ${day} war die ${sided(before)} Seite um ${size} größer, am ${dayNow} die ${sided(now)} um ${sizeNow}, beides über dem Rauschen: Wurden links und rechts an einem dieser Tage vertauscht?`,
  "The last result is dated {0}, ahead of today.": "Das letzte Ergebnis trägt das Datum {0}, nach heute.",
  "The last result is of {0}; a retest every 1 week was planned.":
    "Das letzte Ergebnis ist vom {0}; geplant war ein Retest jede Woche.",
  "The last result is of {0}; a retest every {1} weeks was planned.":
    "Das letzte Ergebnis ist vom {0}; geplant war ein Retest alle {1} Wochen.",
  "The squad has this athlete, the results do not.": "Steht im Kader, aber nicht in den Ergebnissen.",
  "Nothing to look at again was found.": "Nichts gefunden, das noch einmal zu prüfen wäre.",
  "cell that could not be read": "Zelle, die nicht zu lesen war",
  "cells that could not be read": "Zellen, die nicht zu lesen waren",
  "likely slip of unit or comma": "wahrscheinlicher Fehler bei Einheit oder Komma",
  "likely slips of unit or comma": "wahrscheinliche Fehler bei Einheit oder Komma",
  "implausible value": "unplausibler Wert",
  "implausible values": "unplausible Werte",
  "change of sides": "Seitenwechsel",
  "changes of sides": "Seitenwechsel",
  "missing side": "fehlende Seite",
  "missing sides": "fehlende Seiten",
  "set of trials far apart": "Versuchsgruppe weit auseinander",
  "sets of trials far apart": "Versuchsgruppen weit auseinander",
  "score far from the squad": "Wert weit vom Kader",
  "scores far from the squad": "Werte weit vom Kader",
  "date in the future": "Datum in der Zukunft",
  "dates in the future": "Daten in der Zukunft",
  "retest due": "fälliger Retest",
  "retests due": "fällige Retests",
  "test without a result": "Test ohne Ergebnis",
  "tests without a result": "Tests ohne Ergebnis",
  "To look at: {0}.": "Zu prüfen: {0}.",
  "Too few repeated trials to tell whether trials are too far apart: {0}.":
    "Zu wenig wiederholte Versuche, um zu sagen, ob Versuche zu weit auseinanderliegen: {0}.",
  "No plausible range is known of {0}: a value is named there only where it is far from the squad's or from the athlete's other trials. Set lowest and highest in your table of tests.":
    "Kein plausibler Bereich ist bekannt für: {0}. Ein Wert wird dort nur genannt, wo er weit vom Kader oder von den anderen Versuchen derselben Athlet:in liegt. Setze Untergrenze und Obergrenze in deiner Tabelle der Tests.",
  "this test": "dieser Test",
  "Trials named beyond {0} times the 95 % range of the test's own noise":
    "Genannt werden Versuche über dem {0}-Fachen der 95-%-Spanne des eigenen Rauschens des Tests",
  "scores beyond a robust z of 3.5": "Werte über einem robusten z-Wert von 3,5",
  "sides that changed places beyond the noise both times": "Seiten, die getauscht haben, beide Male über dem Rauschen",
  "retests by the battery's interval{0}": "Retests nach dem Abstand der Testbatterie{0}",
  ", else {0} weeks": ", sonst {0} Wochen",
  // series
  "Left side": "Linke Seite",
  "Right side": "Rechte Seite",
  // sessions
  "of {0} results, those of each athlete's latest day": "von {0} Ergebnissen die des jeweils letzten Tages",
  "Of several days, each athlete's latest was used.": "Von mehreren Tagen wurde jeweils der letzte genommen.",
  // sprints
  "Sprints by their sections": "Sprints nach Abschnitten",
  "Where in the sprint is time won or lost?": "Wo im Sprint wird Zeit gewonnen oder verloren?",
  "sprints with rising split times": "Sprints mit steigenden Zwischenzeiten",
  "{0} to {1} m (m/s)": "{0} bis {1} m (m/s)",
  "Mean speed from {0} to {1} m.": "Mittleres Tempo von {0} bis {1} m.",
  "Timed by": "Gestoppt mit",
  "A stopwatch is started late: its times are made like those of gates by adding 0.24 s, true to about 0.1 s. Never hold the one against the other.":
    "Eine Stoppuhr wird spät gestartet: Ihre Zeiten werden mit 0,24 s denen von Lichtschranken angeglichen, auf etwa 0,1 s genau. Vergleiche nie die einen mit den anderen.",
  "Timing gates": "Lichtschranken",
  "Deficit of the 505 against": "Defizit des 505 gegen",
  "Which straight 10 m is taken off the time of the 505. Both are in use and give different numbers; the first is the usual one.":
    "Welche geraden 10 m von der Zeit des 505 abgezogen werden. Beides ist üblich und gibt verschiedene Zahlen; das erste ist das gewöhnliche.",
  "The first 10 m of the sprint": "Die ersten 10 m des Sprints",
  "The stretch from 10 to 20 m": "Die Strecke von 10 bis 20 m",
  Distance: "Strecke",
  "How far the run was timed: the longest of the latest day, of several the fastest.":
    "Über welche Strecke der Lauf gestoppt wurde: der längste des letzten Tages, von mehreren der schnellste.",
  "Time over that distance, corrected where a stopwatch was used.":
    "Zeit über diese Strecke, korrigiert, wo eine Stoppuhr verwendet wurde.",
  "Most lost": "Größter Verlust",
  "The section with most time behind the squad's middle, from 0.03 s on.":
    "Der Abschnitt mit dem größten Rückstand auf die Mitte des Kaders, ab 0,03 s.",
  "Most won": "Größter Gewinn",
  "The section with most time ahead of the squad's middle, from 0.03 s on.":
    "Der Abschnitt mit dem größten Vorsprung auf die Mitte des Kaders, ab 0,03 s.",
  "Fastest section": "Schnellster Abschnitt",
  "Mean speed of the fastest section between two gates: what was reached for certain.":
    "Mittleres Tempo des schnellsten Abschnitts zwischen zwei Schranken: was sicher erreicht wurde.",
  "Speed the run's curve tends to: see its limits, and beyond which distance it is a guess.":
    "Tempo, dem die Kurve des Laufs zustrebt: Sieh auf die Grenzen, und ab welcher Strecke es geraten ist.",
  "Speed low": "Tempo von",
  "Lower 95 % limit of the maximal speed.": "Untere 95-%-Grenze der Höchstgeschwindigkeit.",
  "Speed high": "Tempo bis",
  "Upper 95 % limit of the maximal speed.": "Obere 95-%-Grenze der Höchstgeschwindigkeit.",
  Time: "Zeit",
  "Time constant": "Zeitkonstante",
  "Seconds to 63 % of the maximal speed: the smaller, the quicker the athlete gets going.":
    "Sekunden bis 63 % der Höchstgeschwindigkeit: je kleiner, desto schneller in Fahrt.",
  "First acceleration": "Erste Beschleunigung",
  "Maximal speed divided by the time constant: the curve's acceleration at the start.":
    "Höchstgeschwindigkeit geteilt durch die Zeitkonstante: die Beschleunigung der Kurve am Start.",
  Momentum: "Impuls",
  "Body mass times mean speed of the last section.": "Körpergewicht mal mittleres Tempo des letzten Abschnitts.",
  "kg m/s": "kg m/s",
  "Force at the start": "Kraft am Start",
  "Horizontal force for each kg of body mass at no speed, from curve, body mass and stature.":
    "Horizontale Kraft je kg Körpergewicht ohne Tempo, aus Kurve, Körpergewicht und Körpergröße.",
  "Horizontal power": "Horizontale Leistung",
  "The greatest horizontal power for each kg of body mass, from curve, body mass and stature.":
    "Die größte horizontale Leistung je kg Körpergewicht, aus Kurve, Körpergewicht und Körpergröße.",
  "505 left": "505 links",
  "Fastest 505 of the latest day on the left side.": "Schnellster 505 des letzten Tages auf der linken Seite.",
  "505 right": "505 rechts",
  "Fastest 505 of the latest day on the right side.": "Schnellster 505 des letzten Tages auf der rechten Seite.",
  "Deficit left": "Defizit links",
  "The 505 on the left less the straight 10 m of the same day.":
    "Der 505 links weniger die geraden 10 m desselben Tages.",
  "Deficit right": "Defizit rechts",
  "The 505 on the right less the straight 10 m of the same day.":
    "Der 505 rechts weniger die geraden 10 m desselben Tages.",
  "What is extrapolated or missing, and why.": "Was hochgerechnet ist oder fehlt, und warum.",
  "Select split times with their headings: columns for the athlete and for 5, 10, 20, 30 m .., counted from the start. The 505, left and right, may stand beside them.":
    "Wähle Zwischenzeiten samt Überschriften aus: Spalten für die Athlet:in und für 5, 10, 20, 30 m .., ab dem Start gezählt. Der 505, links und rechts, darf daneben stehen.",
  "Maximal speed of the curve": "Höchstgeschwindigkeit der Kurve",
  "Speed (m/s)": "Tempo (m/s)",
  "Compare only runs with the same start, the same distance to the first gate, the same surface and the same way of timing.":
    "Vergleiche nur Läufe mit gleichem Start, gleichem Abstand zur ersten Schranke, gleichem Boden und gleicher Zeitmessung.",
  "From a few gates speed, force and power of the curve carry several percent of error: describe with them, prescribe nothing.":
    "Bei wenigen Schranken tragen Tempo, Kraft und Leistung der Kurve einige Prozent Fehler: Beschreibe damit, schreib nichts danach vor.",
  "All-out sprints and turns need a full warm-up; after an injury the clinician in charge decides.":
    "Maximale Sprints und Wenden brauchen volles Aufwärmen; nach einer Verletzung entscheiden die Behandelnden.",
  "distance = V (t − τ (1 − exp(−t ÷ τ))); deficit = 505 − straight 10 m":
    "Strecke = V (t − τ (1 − exp(−t ÷ τ))); Defizit = 505 − gerade 10 m",
  "Curve, force and power: Samozino et al. 2016, Scand J Med Sci Sports 26:648-658. Deficit: Nimphius et al. 2016, J Strength Cond Res 30:3024-3032. Stopwatch: Mann et al. 2015, ibid. 29:1509-1514. 0.03 s: common practice, no source.":
    "Kurve, Kraft und Leistung: Samozino et al. 2016, Scand J Med Sci Sports 26:648-658. Defizit: Nimphius et al. 2016, J Strength Cond Res 30:3024-3032. Stoppuhr: Mann et al. 2015, ibid. 29:1509-1514. 0,03 s: gängige Praxis, ohne Quelle.",
  "A 505 without a side: say left or right.": "Ein 505 ohne Seite: Gib links oder rechts an.",
  "A 505 is wanted in s; “{0}” is another kind of unit.":
    "Ein 505 wird in s gebraucht; „{0}“ ist eine andere Art von Einheit.",
  "{0} to {1} m": "{0} bis {1} m",
  "no 10 m time of the same day": "keine 10-m-Zeit vom selben Tag",
  "no 10 and 20 m times of the same day": "keine 10- und 20-m-Zeiten vom selben Tag",
  "No run with rising split times.": "Kein Lauf mit steigenden Zwischenzeiten.",
  "No curve: {0}": "Keine Kurve: {0}",
  "A section is too fast to be true: check the gate times.":
    "Ein Abschnitt ist zu schnell, um wahr zu sein: Prüfe die Zeiten der Schranken.",
  "Maximal speed is extrapolated: the run ends at {0} m.":
    "Die Höchstgeschwindigkeit ist hochgerechnet: Der Lauf endet bei {0} m.",
  "Over {0} m: {1}, {2} s.": "Über {0} m: {1}, {2} s.",
  "Over {0} m the fastest is {1}, {2} s; the middle of {3} athletes is {4} s.":
    "Über {0} m am schnellsten ist {1}, {2} s; die Mitte von {3} Athlet:innen liegt bei {4} s.",
  "from {0} by {1}": "{0} (bei {1})",
  "Of {0}, most time on the squad's middle is lost {1}.":
    "Von {0} wird die meiste Zeit auf die Mitte des Kaders hier verloren: {1}.",
  "A 505 takes {0} to {1} s longer than the straight 10 m.":
    "Ein 505 dauert {0} bis {1} s länger als die geraden 10 m.",
  Stopwatch: "Stoppuhr",
  "Stopwatch: 0.24 s were added to every time, true to about 0.1 s, which is more than most differences here.":
    "Stoppuhr: Jeder Zeit wurden 0,24 s zugeschlagen, auf etwa 0,1 s genau, und das ist mehr als die meisten Unterschiede hier.",
  "With fewer than {0} gates the limits of the maximal speed are rough.":
    "Mit weniger als {0} Schranken sind die Grenzen der Höchstgeschwindigkeit grob.",
  "Force and power need body mass and stature: missing, or not usable, for {0} of {1}.":
    "Kraft und Leistung brauchen Körpergewicht und Körpergröße: Sie fehlen oder sind nicht brauchbar bei {0} von {1}.",
  "Not all ran the same distance: times are comparable only where it is the same.":
    "Nicht alle liefen dieselbe Strecke: Zeiten sind nur bei gleicher Strecke vergleichbar.",
  "Longest run of each athlete's latest day, of several the fastest; {0}; gaps to the squad's median section times; curve by least squares of distance on time, in still air of 20 °C; fastest 505 of a side less the {1} of the same day.":
    "Jeweils längster Lauf des letzten Tages, von mehreren der schnellste; {0}; Abstände zu den mittleren Abschnittszeiten (Median) des Kaders; Kurve nach kleinsten Quadraten der Strecke über der Zeit, in ruhiger Luft von 20 °C; schnellster 505 einer Seite, davon abgezogen vom selben Tag: {1}.",
  "times as read": "Zeiten wie gelesen",
  "0.24 s added to stopwatch times": "Stoppuhrzeiten um 0,24 s erhöht",
  "stretch from 10 to 20 m": "Strecke von 10 bis 20 m",
  // standing
  Everybody: "Alle",
  "Standing in the squad": "Stand im Kader",
  Standing: "Stand",
  "Where does each athlete stand in the squad, and how sure is that?":
    "Wo steht jede Athlet:in im Kader, und wie sicher ist das?",
  "of {0} results, those of the days that count": "von {0} Ergebnissen die der Tage, die zählen",
  "How an athlete's trials become one score. Use the same way for everybody.":
    "Wie aus den Versuchen ein Wert wird. Nimm für alle denselben Weg.",
  "Whose results an athlete's is held against.": "Mit wessen Ergebnissen verglichen wird.",
  "Their own role": "Die eigene Rolle",
  "Percentile rank": "Prozentrang",
  "Three published definitions, which differ most in small squads. The first is fair with ties and never 0 or 100; the others agree with the sheet's own functions.":
    "Drei veröffentlichte Definitionen, die sich in kleinen Kadern am meisten unterscheiden. Die erste ist fair bei Gleichstand und nie 0 oder 100; die anderen stimmen mit den Funktionen von Excel überein.",
  "Share below, ties half": "Anteil darunter, Gleiche halb",
  "As PERCENTRANK.INC: worst 0, best 100": "Wie QUANTILSRANG.INKL: schlechteste 0, beste 100",
  "As PERCENTRANK.EXC": "Wie QUANTILSRANG.EXKL",
  "The athlete's score, reduced from the trials as chosen.": "Der Wert, aus den Versuchen wie gewählt.",
  "1 for the best. Equal scores share a rank.": "1 für den besten. Gleiche Werte teilen sich einen Rang.",
  "Ranks within noise": "Ränge im Rauschen",
  "Scores at these ranks lie so close that the trials' noise alone explains the gap, 19 times in 20: any of them could be this athlete's rank.":
    "Die Werte auf diesen Rängen liegen so nah beieinander, dass das Rauschen der Versuche den Abstand 19-mal von 20 allein erklärt: Jeder davon könnte der eigene Rang sein.",
  "The share of these athletes who stand below, in percent. Left out below 8 athletes, to the nearest 5 below 20. It describes them and is no norm.":
    "Der Anteil dieser Athlet:innen, die darunter stehen, in Prozent. Fällt unter 8 weg, unter 20 auf 5 gerundet. Er beschreibt sie und ist keine Norm.",
  "Distance from the mean in standard deviations. Plus is always better, also for times.":
    "Abstand vom Mittel in Standardabweichungen. Plus ist immer besser, auch bei Zeiten.",
  "The same with 50 for the mean and 10 for a standard deviation.":
    "Dasselbe mit 50 für das Mittel und 10 für eine Standardabweichung.",
  "Half a standard deviation or more from the middle counts, if the noise of the trials does not reach past the middle.":
    "Eine halbe Standardabweichung oder mehr von der Mitte zählt, wenn das Rauschen der Versuche nicht über die Mitte reicht.",
  "Day of the score.": "Tag des Werts.",
  "Robust z": "Robuster z-Wert",
  "The same distance by median and median deviation, which one wild result does not move. Beyond 3.5 look for a slip.":
    "Derselbe Abstand mit Median und Median der Abweichungen, den ein wildes Ergebnis nicht verschiebt. Über 3,5 such einen Fehler.",
  Clear: "Deutlich",
  "The z score where it is a strength or a weakness. For the chart.":
    "Der z-Wert, wo er eine Stärke oder Schwäche ist. Für das Diagramm.",
  "Not clear": "Nicht deutlich",
  "The z score where it is neither. For the chart.": "Der z-Wert, wo er keins von beiden ist. Für das Diagramm.",
  "The size of z that the trials' noise alone explains. For the chart.":
    "Die Größe von z, die das Rauschen der Versuche allein erklärt. Für das Diagramm.",
  "Select the results of a test with their headings: a row per athlete with a column for each trial, or a row per attempt. A column of roles, or the squad's table, lets you compare within a role.":
    "Wähle die Ergebnisse eines Tests samt Überschriften aus: eine Zeile je Athlet:in mit einer Spalte für jeden Versuch, oder eine Zeile je Versuch. Mit einer Spalte der Rollen oder der Tabelle des Kaders kannst du innerhalb einer Rolle vergleichen.",
  "Distance from the middle, in standard deviations": "Abstand von der Mitte, in Standardabweichungen",
  "A rank describes these athletes on this day; it is no norm and no selection.":
    "Ein Rang beschreibt diese Athlet:innen an diesem Tag; er ist keine Norm und keine Auswahl.",
  "Young athletes' ranks say as much about growth as about training. Keep lists with names to yourself.":
    "Bei Jugendlichen sagen Ränge so viel über das Wachstum wie über das Training. Behalte Listen mit Namen für dich.",
  "z = (score − mean) ÷ standard deviation, plus is better; T = 50 + 10 z":
    "z = (Wert − Mittel) ÷ Standardabweichung, plus ist besser; T = 50 + 10 z",
  "z, T, percentile ranks (midrank: Hazen): textbook. Robust z: Iglewicz & Hoaglin 1993. Noise: trials pooled on logarithms (Hopkins 2000, Sports Med 30:1-15). Half a standard deviation as a strength: common practice, no source.":
    "z, T, Prozentränge (Mittelrang: Hazen): Lehrbuch. Robuster z-Wert: Iglewicz & Hoaglin 1993. Rauschen: Versuche zusammen auf Logarithmen (Hopkins 2000, Sports Med 30:1-15). Eine halbe Standardabweichung als Stärke: gängige Praxis, ohne Quelle.",
  "Clearly above the middle": "Deutlich über der Mitte",
  "Clearly below the middle": "Deutlich unter der Mitte",
  "Near the middle": "Nahe der Mitte",
  "Too noisy to say": "Zu viel Rauschen für ein Urteil",
  "No score: {0}": "Kein Wert: {0}",
  "No role known": "Keine Rolle bekannt",
  "Too few to compare": "Zu wenige zum Vergleichen",
  "Above the middle; noise not known": "Über der Mitte; Rauschen nicht bekannt",
  "Below the middle; noise not known": "Unter der Mitte; Rauschen nicht bekannt",
  "{0} ranked.": "{0} in der Rangliste.",
  "Of {0}, {1} stand clearly above the middle and {2} clearly below.":
    "Von {0} stehen {1} deutlich über der Mitte und {2} deutlich darunter.",
  "{0} may, but the trials are too noisy to say.":
    "Bei {0} kann es so sein, aber für ein Urteil ist das Rauschen der Versuche zu groß.",
  "Two athletes less than {0} apart cannot be told apart by these trials.":
    "Wer weniger als {0} auseinanderliegt, ist durch diese Versuche nicht zu unterscheiden.",
  "Below 8 athletes there is no percentile rank: the rank says as much. Below 3 there is no z score.":
    "Unter 8 Athlet:innen gibt es keinen Prozentrang: Der Rang sagt ebenso viel. Unter 3 gibt es keinen z-Wert.",
  "Percentile ranks are rounded to 5: with so few athletes one place is several points.":
    "Prozentränge sind auf 5 gerundet: Bei so wenigen ist ein Platz mehrere Punkte.",
  "No trials were repeated, so nobody knows how much of a gap between two athletes is noise.":
    "Es wurden keine Versuche wiederholt; deshalb weiß niemand, wie viel von einem Abstand Rauschen ist.",
  "The noise is that of trials on one day; another day adds to it, so ranks are less sure than shown.":
    "Das Rauschen ist das der Versuche eines Tages; ein anderer Tag kommt hinzu, also sind die Ränge weniger sicher als gezeigt.",
  "Not everybody's score is from the same day: see the column Day.":
    "Nicht alle Werte sind vom selben Tag: siehe die Spalte „Tag“.",
  "mean of both sides": "Mittel beider Seiten",
  "better side": "bessere Seite",
  "weaker side": "schwächere Seite",
  "percentile rank by midranks": "Prozentrang nach Mittelrängen",
  "percentile rank inclusive": "Prozentrang einschließend",
  "percentile rank exclusive": "Prozentrang ausschließend",
  "{0} ({1} is better)": (score, better) => `${score} (${direction(better)} ist besser)`,
  "{0} where there are two": "{0}, wo es zwei gibt",
  "latest day": "letzter Tag",
  "best day": "bester Tag",
  "compared with everybody": "verglichen mit allen",
  "compared within each role": "verglichen innerhalb der Rolle",
  // strength
  "Estimated strength and loads": "Geschätzte Kraft und Lasten",
  "How strong is each athlete, and which loads follow?": "Wie stark sind alle, und welche Lasten folgen daraus?",
  "sets with a load and 1 to 15 repetitions": "Sätze mit einer Last und 1 bis 15 Wiederholungen",
  Equation: "Formel",
  "How a load and its repetitions (w and r) become a maximum. None is best for all lifts: keep one, and use it again at every retest. The range over all of them stands beside each estimate.":
    "Wie aus einer Last und ihren Wiederholungen (w und r) ein Maximum wird. Keine ist für alle Übungen die beste: Bleib bei einer, auch bei jedem Retest. Die Spanne über alle steht neben jeder Schätzung.",
  "Repetitions planned": "Geplante Wiederholungen",
  "How many repetitions a working set is to have.": "Wie viele Wiederholungen ein Arbeitssatz haben soll.",
  "To leave in reserve": "In Reserve bleiben",
  "How many more repetitions should be possible after the working set.":
    "Wie viele Wiederholungen nach dem Arbeitssatz noch möglich sein sollen.",
  Bar: "Stange",
  "What the empty bar weighs.": "Was die leere Stange wiegt.",
  "Smallest plate": "Kleinste Scheibe",
  "The lightest plate of which you have a pair.": "Die leichteste Scheibe, von der du ein Paar hast.",
  "Round the load": "Last runden",
  "Rounding down never asks for more than was planned.": "Abrunden verlangt nie mehr, als geplant war.",
  "To the nearest": "Zur nächsten",
  "Load of the set that counts: the highest estimate of the latest day.":
    "Last des Satzes, der zählt: die höchste Schätzung des letzten Tages.",
  "To failure": "Bis zum Versagen",
  "Repetitions of that set, those left in reserve counted in.":
    "Wiederholungen dieses Satzes, die in Reserve gebliebenen mitgezählt.",
  "The load that can be expected to go once, by the equation chosen.":
    "Die Last, die nach der gewählten Formel wohl einmal gelingt.",
  "Lowest equation": "Niedrigste Formel",
  "The lowest answer of all equations for the same set.": "Die niedrigste Antwort aller Formeln für denselben Satz.",
  "Highest equation": "Höchste Formel",
  "The highest answer of all equations for the same set.": "Die höchste Antwort aller Formeln für denselben Satz.",
  "Per body mass": "Je Körpergewicht",
  "Estimated maximum divided by body mass: kg for each kg. Favours light athletes.":
    "Geschätztes Maximum geteilt durch das Körpergewicht: kg je kg. Begünstigt Leichte.",
  "Place by estimated maximum among those who did this lift; 1 is the strongest.":
    "Platz nach dem geschätzten Maximum unter allen mit dieser Übung; 1 ist am stärksten.",
  "Working load": "Arbeitslast",
  "Bar and plates for the repetitions planned: where to start.":
    "Stange und Scheiben für die geplanten Wiederholungen: ein Anfang.",
  "Of the maximum": "Vom Maximum",
  "The working load, as it can be loaded, in percent of the estimated maximum.":
    "Die Arbeitslast, wie sie aufzulegen ist, in Prozent des geschätzten Maximums.",
  "Plates per side": "Scheiben je Seite",
  "Plates in kg for one side of the bar, heaviest first.":
    "Scheiben in kg für eine Seite der Stange, schwerste zuerst.",
  "What to keep in mind with this athlete's numbers.": "Was bei diesen Zahlen zu bedenken ist.",
  "Select sets with their headings: columns for the athlete, the load and the repetitions done with it; repetitions in reserve, the lift and the date where you have them. Body mass comes from the selection or from your squad's table.":
    "Wähle Sätze samt Überschriften aus: Spalten für die Athlet:in, die Last und die damit geschafften Wiederholungen; dazu Wiederholungen in Reserve, Übung und Datum, wo du sie hast. Das Körpergewicht kommt aus der Auswahl oder aus der Tabelle deines Kaders.",
  "These are estimates: one athlete's may be wrong by a tenth, and no tested maximum may be compared with them as a change.":
    "Das sind Schätzungen: Im Einzelfall können sie um ein Zehntel falsch sein, und kein getestetes Maximum darf als Veränderung mit ihnen verglichen werden.",
  "Working loads are where to start; let the first set correct them.":
    "Arbeitslasten sind ein Anfang; lass den ersten Satz sie berichtigen.",
  "Test heavy only athletes who master the lift, with spotters; minors only under qualified supervision. After an injury the clinician in charge decides.":
    "Schwer testen soll nur, wer die Übung beherrscht, mit Hilfestellung; Minderjährige nur unter fachkundiger Aufsicht. Nach einer Verletzung entscheiden die Behandelnden.",
  "maximum = load × factor of the repetitions; working load = maximum ÷ factor of the repetitions planned":
    "Maximum = Last × Faktor der Wiederholungen; Arbeitslast = Maximum ÷ Faktor der geplanten Wiederholungen",
  "Equations as quoted by secondary pages; several were never validated when first printed (Richens & Cleather 2014, Biol Sport 31:157-161). No more than 10 repetitions: Reynolds et al. 2006, J Strength Cond Res 20:584-592. Error of an estimate: Hutchins & Gearhart 2010.":
    "Formeln nach Sekundärquellen; mehrere waren beim ersten Druck nie überprüft (Richens & Cleather 2014, Biol Sport 31:157-161). Höchstens 10 Wiederholungen: Reynolds et al. 2006, J Strength Cond Res 20:584-592. Fehler einer Schätzung: Hutchins & Gearhart 2010.",
  "Repetitions without a load: no maximum follows.": "Wiederholungen ohne Last: Daraus folgt kein Maximum.",
  "A load without repetitions: no maximum follows.": "Eine Last ohne Wiederholungen: Daraus folgt kein Maximum.",
  "No answer: no set with a load and 1 to 15 repetitions.":
    "Keine Antwort: kein Satz mit einer Last und 1 bis 15 Wiederholungen.",
  "Lifted once: measured, not estimated.": "Einmal gehoben: gemessen, nicht geschätzt.",
  "Rough: {0} repetitions say little about one.": "Grob: {0} Wiederholungen sagen wenig über eine einzelne.",
  "More than 3 in reserve can hardly be judged: go closer to failure.":
    "Mehr als 3 in Reserve sind kaum zu beurteilen: Geh näher ans Versagen.",
  "Rests on the athlete's own count of repetitions in reserve.":
    "Beruht auf der eigenen Zählung der Wiederholungen in Reserve.",
  "No body mass.": "Kein Körpergewicht.",
  "{0} to {1} kg by the choice of equation": "{0} bis {1} kg je nach Formel",
  "{0}: {1} {2} kg ({3}).": "{0}: {1} {2} kg ({3}).",
  "{0}: {1} athletes from {2} to {3} kg; highest {4} ({5}).":
    "{0}: {1} Athlet:innen von {2} bis {3} kg; am höchsten {4} ({5}).",
  "{0}, {1} repetitions with {2} in reserve: {3} kg on the bar.":
    "{0}, {1} Wiederholungen mit {2} in Reserve: {3} kg auf der Stange.",
  "1 athlete has no body mass: strength per body mass is blank there.":
    "1 Athlet:in hat kein Körpergewicht: Die Kraft je Körpergewicht bleibt dort leer.",
  "{0} athletes have no body mass: strength per body mass is blank there.":
    "{0} Athlet:innen haben kein Körpergewicht: Die Kraft je Körpergewicht bleibt dort leer.",
  "{0} of the estimates rest on more than {1} repetitions.":
    "{0} der Schätzungen beruhen auf mehr als {1} Wiederholungen.",
  "So many repetitions lie where the equations differ most: take the working loads as rough.":
    "Bei so vielen Wiederholungen gehen die Formeln am weitesten auseinander: Nimm die Arbeitslasten als grob.",
  "Highest estimate of each athlete's latest day by {0}, {1}; sets of more than 10 repetitions only where there is no other, of more than 15 never. Loads rounded {2} for a bar of {3} kg and plates from {4} kg.":
    "Jeweils höchste Schätzung des letzten Tages nach {0}, {1}; Sätze mit mehr als 10 Wiederholungen nur, wo es keine anderen gibt, mit mehr als 15 nie. Lasten gerundet: {2}, für eine Stange von {3} kg und Scheiben ab {4} kg.",
  down: "nach unten",
  Down: "Nach unten",
  sets: "Sätze",
  "to the nearest": "zur nächsten",
  // testFacts
  "A time was taken as better when it is shorter. For a time to hold, such as a plank, set “Better is” to Higher.":
    "Eine kürzere Zeit wurde als besser genommen. Bei einer Zeit zum Halten, wie beim Seitstütz, stelle „Besser ist“ auf „Höher“.",
  "best trial": "bester Versuch",
  "mean of the trials": "Mittel der Versuche",
  "middle trial": "mittlerer Versuch",
  "mean of the best two trials": "Mittel der zwei besten Versuche",
};
