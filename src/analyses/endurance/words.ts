import type { Caution } from "../../engine/caution";
import type { OxygenUptake } from "../../engine/endurance/oxygenUptake";
import { median } from "../../engine/moments";
import type { Refusal, Result } from "../../engine/result";
import type { TestResult } from "../../reading/testResult";
import type { CellRemark } from "../analysis";
import type { EnduranceRow, EnduranceSettings } from "./endurance";
import type { Protocol } from "./protocols";

export const otherUnit = ({ unit: wanted }: Protocol, unit: string | null): string =>
  wanted === null
    ? `A number of stages is wanted; this is in ${unit}.`
    : `The protocol's results are in ${wanted}; “${unit}” is another kind of unit.`;

/** Why the first result could not be used, where none could. */
export const firstReason = (leftOut: readonly CellRemark[]): Refusal[] =>
  leftOut.slice(0, 1).map(({ cell, why }) => ({ code: "noneOfProtocol", message: `${cell}: ${why}`, facts: { cell } }));

export function verdict(uptake: Result<OxygenUptake> | null): string {
  if (uptake === null) return "";
  if (!uptake.ok) return `No estimate: ${uptake.reasons.map(({ message }) => message).join(" ")}`;
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
  const of = unit === null ? "stage " : "";
  const shown = (value: number): string => `${of}${Number(value.toFixed(2))}`;
  const sentences = [
    rows.length === 1
      ? `${first.athlete}: ${shown(first.result!)}.`
      : `Best of ${rows.length}: ${first.athlete}, ${shown(first.result!)}; the middle is ${shown(median(results))}.`,
  ];
  const speeds = present(rows.map(({ speed }) => speed));
  if (speeds.length > 0) sentences.push(`Speeds: ${range(speeds, 1)} km/h.`);
  const runs = present(rows.map(({ run }) => run));
  if (runs.length > 0) sentences.push(`At ${intensity} % for ${intervalSeconds} s that is ${range(runs, 0)} m a run.`);
  const uptakes = present(rows.map(({ uptake }) => uptake));
  if (uptakes.length > 0) sentences.push(`Estimated oxygen uptake: ${range(uptakes, 1)} ml/kg/min.`);
  return sentences;
}

const present = (values: readonly (number | null)[]): number[] => values.filter((value) => value !== null);

function range(values: readonly number[], decimals: number): string {
  const [low, high] = [Math.min(...values).toFixed(decimals), Math.max(...values).toFixed(decimals)];
  return low === high ? low : `${low} to ${high}`;
}

export function cautions(
  rows: readonly EnduranceRow[],
  ofEstimates: readonly Caution[],
  protocol: Protocol,
  results: readonly TestResult[],
): string[] {
  const notes = [...new Set(ofEstimates.filter(({ code }) => code === "groupEstimate").map(({ message }) => message))];
  const without = rows.filter(({ verdict: words }) => words.startsWith("No estimate")).length;
  if (protocol.unit === "any") notes.push("Say which protocol it was, and speeds, estimates and intervals follow.");
  if (without > 0) notes.push(`${without} of ${rows.length} without an estimate: see the verdict.`);
  if (protocol.unit !== null && protocol.unit !== "any" && results.some(({ unit }) => unit === null)) {
    notes.push(`No unit is said: the results were taken for ${protocol.unit}.`);
  }
  return notes;
}

export const method = (
  { runMinutes, runMetres, sex, firstStage, protocol: name }: EnduranceSettings,
  { label }: Protocol,
): string => {
  const run = name === "timedRun" ? ` (${runMinutes} min)` : name === "timeTrial" ? ` (${runMetres} m)` : "";
  const stage = name === "shuttleStage" ? `, first stage ${firstStage === "at80" ? "8.0" : "8.5"} km/h` : "";
  const by =
    name === "fitness3015" || name === "shuttleStage" ? `, equation for ${sex === "female" ? "women" : "men"}` : "";
  return `Protocol: ${label}${run}${stage}${by}. Best result of each athlete's latest day; age from the birth year alone.`;
};
