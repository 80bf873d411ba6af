import { tooFew } from "../../engine/refusals";
import { ok, type Result, refuse } from "../../engine/result";
import { say } from "../../language/say";
import { seriesName } from "../../reading/measures";
import type { TestResult } from "../../reading/testResult";
import { type Background, memberCalled } from "../../store/background";
import type { Answer, CellRemark, Occasion } from "../analysis";
import { groupBy } from "../groupBy";
import { areRepeats, sideName } from "../series";
import { ofLatestDays } from "../sessions";
import { factsOf } from "../testFacts";
import { type Finding, findingKinds } from "./finding";
import { hasRange, implausibleResults } from "./implausible";
import type { RetestRow, RetestSettings } from "./retest";
import { due, missingSides, noiseOfSeries, outliers, swappedSides, wideSets } from "./sessionsAndSides";
import { unreadCells } from "./unread";
import * as words from "./words";

/** Everything about these results that a coach should look at before believing them, the likeliest slips first. */
export function compute(
  results: readonly TestResult[],
  settings: RetestSettings,
  background: Background,
  occasion?: Occasion,
): Result<Answer<RetestRow>> {
  const remarks = occasion?.remarks ?? [];
  if (results.length === 0 && remarks.length === 0) return refuse(tooFew(say`results`, 1, 0));
  const series = [...groupBy(results, ({ test, measure }) => seriesName(test, measure)).values()];
  const isRepeat = areRepeats(results);
  const findings = [
    ...unreadCells(remarks, results),
    ...implausibleResults(results, background),
    ...series.filter((own) => isRepeat(own[0]!)).flatMap((own) => findingsOf(own, settings, background)),
    ...series.flatMap((own) => calendarOf(own, settings, background, occasion?.today ?? null)),
  ];
  const known = findings.filter((finding) => !isRepeated(finding, findings));
  const rows = rowsOf(known);
  const noiseUnknown = series.filter((own) => isRepeat(own[0]!) && noiseOfSeries(own) === null);
  return ok({
    rows,
    summary: words.summary(rows, known),
    cautions: words.cautions({
      withoutNoise: noiseUnknown.map(seriesNameOf),
      withoutRange: series.filter((own) => isRepeat(own[0]!) && !hasRange(own[0]!, background)).map(seriesNameOf),
    }),
    method: words.method(settings),
    leftOut: [],
    marks: marksOf(known, results),
    testAgain: known.filter(({ kind }) => testedAgain.has(kind)).map(({ athlete, test }) => ({ athlete, test })),
  });
}

const seriesNameOf = ([first]: readonly TestResult[]): string => seriesName(first!.test, first!.measure);

/** What typing alone cannot put right. */
const testedAgain: ReadonlySet<Finding["kind"]> = new Set([
  "implausible",
  "sideMissing",
  "spread",
  "outlier",
  "overdue",
  "untested",
]);

/** What the trials, sides and days of one series say. */
function findingsOf(own: readonly TestResult[], settings: RetestSettings, background: Background): Finding[] {
  const facts = factsOf(own[0]!, settings, background);
  const latest = ofLatestDays(own);
  const noise = noiseOfSeries(own);
  return [
    ...missingSides(latest, facts),
    ...(settings.outliers === "yes" ? outliers(latest, facts) : []),
    ...(noise === null ? [] : [...wideSets(own, noise, settings.spread), ...swappedSides(own, facts, noise)]),
  ];
}

/** Retests that are due, and athletes of the squad without a result. */
function calendarOf(
  own: readonly TestResult[],
  settings: RetestSettings,
  background: Background,
  today: string | null,
): Finding[] {
  const { setUp } = factsOf(own[0]!, settings, background);
  const weeks = setUp?.retestAfterWeeks ?? (settings.weeks > 0 ? settings.weeks : null);
  const test = sideName(seriesName(own[0]!.test, own[0]!.measure), null);
  const tested = new Set(own.map(({ athlete }) => memberCalled(background, athlete)));
  const untested = settings.untested === "no" ? [] : background.squad.filter((member) => !tested.has(member));
  return [
    ...(weeks === null || today === null ? [] : due(own, today, weeks)),
    ...untested.map(({ athlete }): Finding => ({ kind: "untested", athlete, test, why: words.untested, cells: [] })),
  ];
}

/** A far outlier or wide trials are no news where the same cell is already told as implausible. */
function isRepeated({ kind, cells }: Finding, findings: readonly Finding[]): boolean {
  if (kind !== "outlier" && kind !== "spread") return false;
  return findings.some(
    (other) =>
      (other.kind === "unitSlip" || other.kind === "implausible") && other.cells.some((cell) => cells.includes(cell)),
  );
}

/** One row for each athlete, test and side, or for each cell of which no more is known. */
function rowsOf(findings: readonly Finding[]): RetestRow[] {
  const place = ({ kind }: Finding) => findingKinds.indexOf(kind);
  const sorted = [...findings].sort((a, b) => place(a) - place(b) || inSheetOrder(a.cells[0] ?? "", b.cells[0] ?? ""));
  return [...groupBy(sorted, words.nameOf)].map(([what, own]) => ({
    what,
    athlete: own[0]!.athlete,
    test: own[0]!.test,
    why: own.map(({ why }) => why).join(" "),
    action: words.action(own[0]!.kind),
    cell: [...new Set(own.flatMap(({ cells }) => cells))].sort(inSheetOrder).join(", "),
    reasons: own.length,
  }));
}

const inSheetOrder = (a: string, b: string): number => a.localeCompare(b, "en", { numeric: true });

/** Every cell once, with all that is to be said of it. */
function marksOf(findings: readonly Finding[], results: readonly TestResult[]): CellRemark[] {
  const known = new Set(results.map(({ cell }) => cell));
  const said = findings.flatMap(({ cells, why, kind }) =>
    cells.map((cell) => ({ cell, why, isOnSheet: known.has(cell) || kind === "unread" || kind === "unitSlip" })),
  );
  return [
    ...groupBy(
      said.filter(({ isOnSheet }) => isOnSheet),
      ({ cell }) => cell,
    ),
  ].map(([cell, own]) => ({ cell, why: own.map(({ why }) => why).join(" ") }));
}
