import type { EccentricUtilisationRatio } from "../../engine/jumps/eccentricUtilisationRatio";
import type { JumpPower } from "../../engine/jumps/jumpPower";
import { powerEquation } from "../../engine/jumps/powerEquations";
import { median } from "../../engine/moments";
import type { Refusal, Result } from "../../engine/result";
import { atStart, numeral, say } from "../../language/say";
import type { DropStanding } from "./compute";
import type { JumpAttempt } from "./jumpAttempts";
import type { JumpsRow, JumpsSettings } from "./jumps";

export const oneLeg = say`A jump on one leg: ask for the left-right asymmetry of it.`;
export const noHeight = say`A contact time without a height or a flight time: nothing follows.`;

export const unknownJump = (test: string): string =>
  test === ""
    ? say`The heading does not say which jump it is; say in the settings what other jumps are.`
    : say`“${test}” does not say which jump it is; say in the settings what other jumps are.`;

export const reasons = (refusals: readonly Refusal[]): string => refusals.map(({ message }) => message).join(" ");

export function verdict(found: {
  readonly utilisation: EccentricUtilisationRatio | null;
  readonly areOnTwoDays: boolean;
  readonly power: Result<JumpPower> | null;
  readonly drop: JumpAttempt | null;
  readonly standing: DropStanding | null;
}): string {
  const { utilisation, areOnTwoDays, power, drop, standing } = found;
  return [
    utilisation ? countermovementAdds(utilisation) : "",
    areOnTwoDays ? say`Countermovement and squat jump are of two days: no ratio.` : "",
    standing ? spring(standing) : "",
    drop && drop.reactive === null ? say`No contact time: no RSI.` : "",
    power?.ok === false ? say`${reasons(power.reasons)} No power.` : "",
    power?.ok ? outsideRange(power.value) : "",
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

const countermovementAdds = ({ ratio, cautions }: EccentricUtilisationRatio): string =>
  cautions.length > 0
    ? say`The squat jump was the higher one: it probably began with a small countermovement.`
    : say`The countermovement adds ${(100 * (ratio - 1)).toFixed(0)} % to the squat jump.`;

/** How height and contact make up the index: only where both are of an outer third of the squad. */
function spring({ height, contact }: DropStanding): string {
  if (height === "first" && contact === "first")
    return say`Drop jump among the squad's highest and shortest on the ground.`;
  if (height === "first" && contact === "last")
    return say`Drop jump among the squad's highest, but long on the ground.`;
  if (height === "last" && contact === "first")
    return say`Drop jump short on the ground, but among the squad's lowest.`;
  if (height === "last" && contact === "last")
    return say`Drop jump among the squad's lowest and longest on the ground.`;
  return "";
}

const outsideRange = ({ cautions }: JumpPower): string =>
  cautions
    .filter(({ code }) => code === "outsideFittedRange")
    .map(({ message }) => message)
    .join(" ");

type Measured = "countermovement" | "reactive";

export function summary(rows: readonly JumpsRow[]): string[] {
  const sentences = [
    leader(rows, "countermovement", say`countermovement jump`, (value) => numeral(`${value.toFixed(1)} cm`)),
    leader(rows, "reactive", say`reactive strength index`, (value) => numeral(`${value.toFixed(2)} m/s`)),
  ];
  const hidden = rows.filter(({ utilisation }) => utilisation !== null && utilisation < 1).length;
  if (hidden > 0) {
    sentences.push(
      say`In ${athletes(hidden)} the squat jump was the higher one: watch that it starts from a standstill.`,
    );
  }
  const first = sentences.filter((sentence) => sentence !== "");
  return first.length > 0 ? first : [say`${athletes(rows.length)} with vertical jumps; see the table.`];
}

function leader(rows: readonly JumpsRow[], field: Measured, what: string, shown: (value: number) => string): string {
  const ordered = rows.flatMap((row) => {
    const value = row[field];
    return value === null ? [] : [{ athlete: row.athlete, value }];
  });
  const best = ordered.sort((a, b) => b.value - a.value)[0];
  if (!best) return "";
  const middle = median(ordered.map(({ value }) => value));
  return ordered.length === 1
    ? `${atStart(what)}: ${best.athlete}, ${shown(best.value)}.`
    : say`Best ${what}: ${best.athlete}, ${shown(best.value)}; the middle of ${ordered.length} athletes is ${shown(middle)}.`;
}

const athletes = (count: number): string => (count === 1 ? say`1 athlete` : say`${count} athletes`);

export function cautions(rows: readonly JumpsRow[], jumps: readonly JumpAttempt[]): string[] {
  const notes: string[] = [];
  if ([true, false].some((isDrop) => isMixed(jumps.filter(({ kind }) => (kind === "drop") === isDrop)))) {
    notes.push(
      say`Some heights were measured, others computed from the time in the air: do not compare these with those.`,
    );
  }
  const powerless = rows.filter((row) => row.power === null && (row.countermovement ?? row.squat) !== null).length;
  if (powerless > 0) notes.push(say`${athletes(powerless)} without a power: see the verdict.`);
  return notes;
}

const isMixed = (jumps: readonly JumpAttempt[]): boolean =>
  new Set(jumps.map(({ isFromFlight }) => isFromFlight)).size > 1;

export const method = ({ equation }: JumpsSettings): string => {
  const { label, formula, reservation } = powerEquation(equation);
  return say`The highest jump of each athlete's latest day, of drop jumps the one with the largest RSI; peak power by ${label}, ${formula}.${reservation === null ? "" : ` ${reservation}`}`;
};
