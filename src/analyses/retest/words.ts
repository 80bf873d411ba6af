import { rounded } from "../../engine/caution";
import type { Flag } from "../../engine/flags/flag";
import { atStart, say } from "../../language/say";
import type { TestResult } from "../../reading/testResult";
import type { Finding } from "./finding";
import type { RetestRow, RetestSettings } from "./retest";
import type { SideDifference } from "./sessionsAndSides";

export function nameOf({ athlete, test, cells }: Finding): string {
  const about = test === "" ? say`cell ${cells[0] ?? ""}` : test;
  return athlete === "" ? atStart(about) : `${athlete}: ${about}`;
}

export function action(kind: Finding["kind"]): string {
  switch (kind) {
    case "unread":
      return say`Check the cell`;
    case "unitSlip":
      return say`Check the unit and the comma`;
    case "implausible":
      return say`Check the entry; test again if it stands`;
    case "sidesSwapped":
      return say`Ask which side was which`;
    case "sideMissing":
      return say`Test the missing side`;
    case "spread":
      return say`Look at the trials; test again if nothing explains it`;
    case "outlier":
      return say`Check the entry; test again if you doubt it`;
    case "inFuture":
      return say`Check the date`;
    case "overdue":
      return say`Test again`;
    case "untested":
      return say`Test, if it is wanted`;
  }
}

const withUnit = (value: number, unit: string | null): string =>
  unit === null ? `${rounded(value)}` : `${rounded(value)} ${unit}`;

/** A plausible range in the unit of the result, and the value a slip would have hidden; `high` null where there is no top. */
export type Bounds = { readonly low: number; readonly high: number | null; readonly corrected: number | null };

export function implausible({ value, unit }: TestResult, { code }: Flag, { low, high, corrected }: Bounds): string {
  const typed = unit === null ? `${value}` : `${value} ${unit}`;
  if (code === "unitSlip" && corrected !== null) {
    return say`${typed} is unlikely here; typed in another unit, or with the comma elsewhere, it would be ${withUnit(corrected, unit)}.`;
  }
  const range = high === null ? say`at least ${withUnit(low, unit)}` : say`${rounded(low)} to ${withUnit(high, unit)}`;
  return say`${typed} is outside what is plausible: ${range}.`;
}

export function spread({ facts }: Flag, odd: TestResult | undefined, { unit, date }: TestResult): string {
  const day = date === null ? "" : say` on ${date}`;
  const apart = say`The trials${day} are ${withUnit(Number(facts.range), unit)} apart; noise hardly makes more than ${withUnit(Number(facts.limit), unit)}.`;
  return odd ? say`${apart} Trial ${odd.attempt} (${withUnit(odd.value, unit)}) stands apart.` : apart;
}

export const outlier = ({ facts }: Flag, { unit }: TestResult): string =>
  say`${withUnit(Number(facts.value), unit)} is far from the squad, whose middle is ${withUnit(Number(facts.median), unit)}: an error, or an exceptional athlete.`;

export const sideMissing = ({ facts }: Flag): string => say`There is no result of the ${facts.side} side.`;

export const sidesSwapped = (before: SideDifference, now: SideDifference): string =>
  say`The ${sideOf(before)} side was larger by ${size(before)} on ${before.day}, the ${sideOf(now)} by ${size(now)} on ${now.day}, both beyond the noise: were left and right swapped on one of these days?`;

const sideOf = ({ difference }: SideDifference): string => ((difference ?? 0) > 0 ? "right" : "left");
const size = ({ difference }: SideDifference): string => `${Math.abs(difference ?? 0).toFixed(1)} %`;

export const inFuture = (last: string): string => say`The last result is dated ${last}, ahead of today.`;

export const overdue = (last: string, weeks: number): string =>
  weeks === 1
    ? say`The last result is of ${last}; a retest every 1 week was planned.`
    : say`The last result is of ${last}; a retest every ${weeks} weeks was planned.`;

export const untested = say`The squad has this athlete, the results do not.`;

export function summary(rows: readonly RetestRow[], findings: readonly Finding[]): string[] {
  if (rows.length === 0) return [say`Nothing to look at again was found.`];
  const counted = (kinds: readonly Finding["kind"][], one: string, several: string) => {
    const count = findings.filter(({ kind }) => kinds.includes(kind)).length;
    return count === 0 ? [] : [`${count} ${count === 1 ? one : several}`];
  };
  const parts = [
    ...counted(["unread"], say`cell that could not be read`, say`cells that could not be read`),
    ...counted(["unitSlip"], say`likely slip of unit or comma`, say`likely slips of unit or comma`),
    ...counted(["implausible"], say`implausible value`, say`implausible values`),
    ...counted(["sidesSwapped"], say`change of sides`, say`changes of sides`),
    ...counted(["sideMissing"], say`missing side`, say`missing sides`),
    ...counted(["spread"], say`set of trials far apart`, say`sets of trials far apart`),
    ...counted(["outlier"], say`score far from the squad`, say`scores far from the squad`),
    ...counted(["inFuture"], say`date in the future`, say`dates in the future`),
    ...counted(["overdue"], say`retest due`, say`retests due`),
    ...counted(["untested"], say`test without a result`, say`tests without a result`),
  ];
  return [say`To look at: ${parts.join(", ")}.`];
}

export function cautions(of: {
  readonly withoutNoise: readonly string[];
  readonly withoutRange: readonly string[];
}): string[] {
  const named = (names: readonly string[]) => names.map((name) => name || say`this test`).join(", ");
  return [
    ...(of.withoutNoise.length > 0
      ? [say`Too few repeated trials to tell whether trials are too far apart: ${named(of.withoutNoise)}.`]
      : []),
    ...(of.withoutRange.length > 0
      ? [
          say`No plausible range is known of ${named(of.withoutRange)}: a value is named there only where it is far from the squad's or from the athlete's other trials. Set lowest and highest in your table of tests.`,
        ]
      : []),
  ];
}

export const method = ({ spread, outliers, weeks }: RetestSettings): string =>
  [
    say`Trials named beyond ${spread} times the 95 % range of the test's own noise`,
    outliers === "yes" ? say`scores beyond a robust z of 3.5` : "",
    say`sides that changed places beyond the noise both times`,
    say`retests by the battery's interval${weeks > 0 ? say`, else ${weeks} weeks` : ""}`,
  ]
    .filter((part) => part !== "")
    .join("; ")
    .concat(".");
