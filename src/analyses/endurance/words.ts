import type { Caution } from "../../engine/caution";
import type { OxygenUptake } from "../../engine/endurance/oxygenUptake";
import { median } from "../../engine/moments";
import type { Refusal, Result } from "../../engine/result";
import { numeral, say } from "../../language/say";
import type { TestResult } from "../../reading/testResult";
import type { CellRemark } from "../analysis";
import type { EnduranceRow, EnduranceSettings } from "./endurance";
import type { Protocol } from "./protocols";

export const otherUnit = ({ unit: wanted }: Protocol, unit: string | null): string =>
  wanted === null
    ? say`A number of stages is wanted; this is in ${unit}.`
    : say`The protocol's results are in ${wanted}; “${unit}” is another kind of unit.`;

/** Why the first result could not be used, where none could. */
export const firstReason = (leftOut: readonly CellRemark[]): Refusal[] =>
  leftOut.slice(0, 1).map(({ cell, why }) => ({ code: "noneOfProtocol", message: `${cell}: ${why}`, facts: { cell } }));

export function verdict(uptake: Result<OxygenUptake> | null): string {
  if (uptake === null) return "";
  if (!uptake.ok) return say`No estimate: ${uptake.reasons.map(({ message }) => message).join(" ")}`;
  return uptake.value.cautions
    .filter(({ code }) => code !== "groupEstimate")
    .map(({ message }) => message)
    .join(" ");
}

export function summary(
  rows: readonly EnduranceRow[],
  { intensity, intervalSeconds }: EnduranceSettings,
  { unit }: Protocol,
): string[] {
  const results = rows.map(({ result }) => result!);
  const first = rows[0]!;
  const shown = (value: number): string => {
    const number = Number(value.toFixed(2));
    return unit === null ? say`stage ${number}` : numeral(number);
  };
  const sentences = [
    rows.length === 1
      ? `${first.athlete}: ${shown(first.result!)}.`
      : say`Best of ${rows.length}: ${first.athlete}, ${shown(first.result!)}; the middle is ${shown(median(results))}.`,
  ];
  const speeds = present(rows.map(({ speed }) => speed));
  if (speeds.length > 0) sentences.push(say`Speeds: ${range(speeds, 1)} km/h.`);
  const runs = present(rows.map(({ run }) => run));
  if (runs.length > 0)
    sentences.push(say`At ${intensity} % for ${intervalSeconds} s that is ${range(runs, 0)} m a run.`);
  const uptakes = present(rows.map(({ uptake }) => uptake));
  if (uptakes.length > 0) sentences.push(say`Estimated oxygen uptake: ${range(uptakes, 1)} ml/kg/min.`);
  return sentences;
}

const present = (values: readonly (number | null)[]): number[] => values.filter((value) => value !== null);

function range(values: readonly number[], decimals: number): string {
  const [low, high] = [Math.min(...values).toFixed(decimals), Math.max(...values).toFixed(decimals)];
  return low === high ? low : say`${low} to ${high}`;
}

export function cautions(
  rows: readonly EnduranceRow[],
  ofEstimates: readonly Caution[],
  protocol: Protocol,
  results: readonly TestResult[],
): string[] {
  const notes = [...new Set(ofEstimates.filter(({ code }) => code === "groupEstimate").map(({ message }) => message))];
  const without = rows.filter(({ uptake, verdict: why }) => uptake === null && why !== "").length;
  if (protocol.unit === "any") notes.push(say`Say which protocol it was, and speeds, estimates and intervals follow.`);
  if (without > 0) notes.push(say`${without} of ${rows.length} without an estimate: see the verdict.`);
  if (protocol.unit !== null && protocol.unit !== "any" && results.some(({ unit }) => unit === null)) {
    notes.push(say`No unit is said: the results were taken for ${protocol.unit}.`);
  }
  return notes;
}

export const method = (
  { runMinutes, runMetres, sex, firstStage, protocol: name }: EnduranceSettings,
  { label }: Protocol,
): string => {
  const run = name === "timedRun" ? say` (${runMinutes} min)` : name === "timeTrial" ? ` (${runMetres} m)` : "";
  const stage = name === "shuttleStage" ? say`, first stage ${firstStage === "at80" ? "8.0" : "8.5"} km/h` : "";
  const by =
    name === "fitness3015" || name === "shuttleStage"
      ? say`, equation for ${sex === "female" ? say`women` : say`men`}`
      : "";
  return say`Protocol: ${label}${run}${stage}${by}. Best result of each athlete's latest day; age from the birth year alone.`;
};
