import { rounded } from "../../engine/caution";
import type { Flag } from "../../engine/flags/flag";
import type { TestResult } from "../../reading/testResult";
import type { Finding } from "./finding";
import type { RetestRow, RetestSettings } from "./retest";
import type { SideDifference } from "./sessionsAndSides";

export function nameOf({ athlete, test, cells }: Finding): string {
  const about = test === "" ? `cell ${cells[0] ?? ""}` : test;
  return athlete === "" ? about.charAt(0).toUpperCase() + about.slice(1) : `${athlete}: ${about}`;
}

export function action(kind: Finding["kind"]): string {
  switch (kind) {
    case "unread":
      return "Check the cell";
    case "unitSlip":
      return "Check the unit and the comma";
    case "implausible":
      return "Check the entry; test again if it stands";
    case "sidesSwapped":
      return "Ask which side was which";
    case "sideMissing":
      return "Test the missing side";
    case "spread":
      return "Look at the trials; test again if nothing explains it";
    case "outlier":
      return "Check the entry; test again if you doubt it";
    case "inFuture":
      return "Check the date";
    case "overdue":
      return "Test again";
    case "untested":
      return "Test, if it is wanted";
  }
}

const withUnit = (value: number, unit: string | null): string =>
  unit === null ? `${rounded(value)}` : `${rounded(value)} ${unit}`;

/** A plausible range in the unit of the result, and the value a slip would have hidden; `high` null where there is no top. */
export type Bounds = { readonly low: number; readonly high: number | null; readonly corrected: number | null };

export function implausible({ value, unit }: TestResult, { code }: Flag, { low, high, corrected }: Bounds): string {
  const typed = unit === null ? `${value}` : `${value} ${unit}`;
  if (code === "unitSlip" && corrected !== null) {
    return `${typed} is unlikely here; typed in another unit, or with the comma elsewhere, it would be ${withUnit(corrected, unit)}.`;
  }
  const range = high === null ? `at least ${withUnit(low, unit)}` : `${rounded(low)} to ${withUnit(high, unit)}`;
  return `${typed} is outside what is plausible: ${range}.`;
}

export function spread({ facts }: Flag, odd: TestResult | undefined, { unit, date }: TestResult): string {
  const day = date === null ? "" : ` on ${date}`;
  const apart = `The trials${day} are ${withUnit(Number(facts.range), unit)} apart; noise hardly makes more than ${withUnit(Number(facts.limit), unit)}.`;
  return odd ? `${apart} Trial ${odd.attempt} (${withUnit(odd.value, unit)}) stands apart.` : apart;
}

export const outlier = ({ facts }: Flag, { unit }: TestResult): string =>
  `${withUnit(Number(facts.value), unit)} is far from the squad, whose middle is ${withUnit(Number(facts.median), unit)}: an error, or an exceptional athlete.`;

export const sideMissing = ({ facts }: Flag): string => `There is no result of the ${facts.side} side.`;

export const sidesSwapped = (before: SideDifference, now: SideDifference): string =>
  `The ${sideOf(before)} side was larger by ${size(before)} on ${before.day}, the ${sideOf(now)} by ${size(now)} on ${now.day}, both beyond the noise: were left and right swapped on one of these days?`;

const sideOf = ({ difference }: SideDifference): string => ((difference ?? 0) > 0 ? "right" : "left");
const size = ({ difference }: SideDifference): string => `${Math.abs(difference ?? 0).toFixed(1)} %`;

export const inFuture = (last: string): string => `The last result is dated ${last}, ahead of today.`;

export const overdue = (last: string, weeks: number): string =>
  `The last result is of ${last}; a retest every ${weeks} ${weeks === 1 ? "week" : "weeks"} was planned.`;

export const untested = "The squad has this athlete, the results do not.";

export function summary(rows: readonly RetestRow[], findings: readonly Finding[]): string[] {
  if (rows.length === 0) return ["Nothing to look at again was found."];
  const counted = (kinds: readonly Finding["kind"][], one: string, several: string) => {
    const count = findings.filter(({ kind }) => kinds.includes(kind)).length;
    return count === 0 ? [] : [`${count} ${count === 1 ? one : several}`];
  };
  const parts = [
    ...counted(["unread"], "cell that could not be read", "cells that could not be read"),
    ...counted(["unitSlip"], "likely slip of unit or comma", "likely slips of unit or comma"),
    ...counted(["implausible"], "implausible value", "implausible values"),
    ...counted(["sidesSwapped"], "change of sides", "changes of sides"),
    ...counted(["sideMissing"], "missing side", "missing sides"),
    ...counted(["spread"], "set of trials far apart", "sets of trials far apart"),
    ...counted(["outlier"], "score far from the squad", "scores far from the squad"),
    ...counted(["inFuture"], "date in the future", "dates in the future"),
    ...counted(["overdue"], "retest due", "retests due"),
    ...counted(["untested"], "test without a result", "tests without a result"),
  ];
  return [`To look at: ${parts.join(", ")}.`];
}

export function cautions(of: {
  readonly withoutNoise: readonly string[];
  readonly withoutRange: readonly string[];
}): string[] {
  const named = (names: readonly string[]) => names.map((name) => name || "this test").join(", ");
  return [
    ...(of.withoutNoise.length > 0
      ? [`Too few repeated trials to tell whether trials are too far apart: ${named(of.withoutNoise)}.`]
      : []),
    ...(of.withoutRange.length > 0
      ? [
          `No plausible range is known of ${named(of.withoutRange)}: a value is named there only where it is far from the squad's or from the athlete's other trials. Set lowest and highest in your table of tests.`,
        ]
      : []),
  ];
}

export const method = ({ spread, outliers, weeks }: RetestSettings): string =>
  [
    `Trials named beyond ${spread} times the 95 % range of the test's own noise`,
    outliers === "yes" ? "scores beyond a robust z of 3.5" : "",
    "sides that changed places beyond the noise both times",
    `retests by the battery's interval${weeks > 0 ? `, else ${weeks} weeks` : ""}`,
  ]
    .filter((part) => part !== "")
    .join("; ")
    .concat(".");
