import { median } from "../../engine/moments";
import type { Refusal, Result } from "../../engine/result";
import type { ChangeOfDirectionDeficit } from "../../engine/sprints/changeOfDirectionDeficit";
import type { SprintModel } from "../../engine/sprints/sprintModel";
import { numeral, say } from "../../language/say";
import type { Side } from "../../reading/vocabulary";
import type { TurnOfSide } from "./compute";
import type { Gap } from "./sections";
import type { SprintRun } from "./sprintRuns";
import type { SprintsRow, SprintsSettings } from "./sprints";
import type { Straight } from "./turns";

export const reasons = (refusals: readonly Refusal[]): string => refusals.map(({ message }) => message).join(" ");

export const turnWithoutSide = say`A 505 without a side: say left or right.`;
export const turnIsNoTime = (unit: string | null): string =>
  say`A 505 is wanted in s; “${unit}” is another kind of unit.`;

export const gap = (found: Gap | null): string =>
  found === null ? "" : `${section(found)}: ${numeral(`${Math.abs(found.seconds).toFixed(2)} s`)}`;

const section = ({ from, to }: Pick<Gap, "from" | "to">): string => say`${from} to ${to} m`;

/** What is to be said of a deficit, or why there is none. */
export function deficit(found: Result<ChangeOfDirectionDeficit> | null, straight: Straight): string {
  if (found === null) {
    return straight === "first 10 m" ? say`no 10 m time of the same day` : say`no 10 and 20 m times of the same day`;
  }
  return found.ok ? found.value.cautions.map(({ message }) => message).join(" ") : reasons(found.reasons);
}

export function verdict(found: {
  readonly model: Result<SprintModel> | null;
  readonly best: SprintRun | null;
  readonly turned: Readonly<Record<Side, TurnOfSide>>;
}): string {
  const { model, best, turned } = found;
  const remarks = [...new Set([turned.left.remark, turned.right.remark].filter((remark) => remark !== ""))];
  return [
    best === null ? say`No run with rising split times.` : "",
    model?.ok === false ? say`No curve: ${reasons(model.reasons)}` : "",
    model?.ok ? ofCurve(model.value, best) : "",
    best && best.cautions.length > 0 ? say`A section is too fast to be true: check the gate times.` : "",
    remarks.length > 0 ? `505: ${remarks.join("; ")}${/[.]$/.test(remarks.at(-1)!) ? "" : "."}` : "",
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

const ofCurve = ({ cautions }: SprintModel, best: SprintRun | null): string =>
  cautions.some(({ code }) => code === "extrapolated")
    ? say`Maximal speed is extrapolated: the run ends at ${best?.splits.at(-1)?.distance} m.`
    : "";

export function summary(rows: readonly SprintsRow[], losses: readonly (Gap | null)[]): string[] {
  const longest = Math.max(...rows.map(({ distance }) => distance ?? 0));
  const runners = rows.filter(({ distance }) => distance === longest);
  const times = runners.map(({ time }) => time!).sort((a, b) => a - b);
  const fastest = runners.find(({ time }) => time === times[0])!;
  const sentences = [
    runners.length === 1
      ? say`Over ${longest} m: ${fastest.athlete}, ${times[0]!.toFixed(2)} s.`
      : say`Over ${longest} m the fastest is ${fastest.athlete}, ${times[0]!.toFixed(2)} s; the middle of ${runners.length} athletes is ${median(times).toFixed(2)} s.`,
  ];
  const lost = lossesBySection(losses).map(([where, count]) => say`from ${where} by ${count}`);
  if (lost.length > 0)
    sentences.push(say`Of ${rows.length}, most time on the squad's middle is lost ${lost.join(", ")}.`);
  const deficits = rows
    .flatMap(({ deficitLeft, deficitRight }) => [deficitLeft, deficitRight])
    .filter((d) => d !== null);
  if (deficits.length > 0) {
    sentences.push(
      say`A 505 takes ${Math.min(...deficits).toFixed(2)} to ${Math.max(...deficits).toFixed(2)} s longer than the straight 10 m.`,
    );
  }
  return sentences;
}

/** How many lose most in each section, from the start on. */
function lossesBySection(losses: readonly (Gap | null)[]): [string, number][] {
  const counts = new Map<string, number>();
  const present = losses.filter((loss) => loss !== null).sort((a, b) => a.from - b.from || a.to - b.to);
  for (const loss of present) counts.set(section(loss), (counts.get(section(loss)) ?? 0) + 1);
  return [...counts];
}

/** A curve needs three gates; below five its limits rest on one or two degrees of freedom. */
const fewestGates = 3;
const fewGates = 5;

export function cautions(
  rows: readonly SprintsRow[],
  { timing }: SprintsSettings,
  bests: readonly (SprintRun | null)[],
): string[] {
  const notes: string[] = [];
  if (timing === "stopwatch") {
    notes.push(
      say`Stopwatch: 0.24 s were added to every time, true to about 0.1 s, which is more than most differences here.`,
    );
  }
  const curves = rows.filter(({ maximal }) => maximal !== null);
  if (bests.some((best) => best !== null && best.splits.length < fewGates && best.splits.length >= fewestGates)) {
    notes.push(say`With fewer than ${fewGates} gates the limits of the maximal speed are rough.`);
  }
  const forceless = curves.filter(({ force }) => force === null).length;
  if (forceless > 0) {
    notes.push(
      say`Force and power need body mass and stature: missing, or not usable, for ${forceless} of ${curves.length}.`,
    );
  }
  const lengths = new Set(bests.flatMap((best) => best?.splits.at(-1)?.distance ?? []));
  if (lengths.size > 1) notes.push(say`Not all ran the same distance: times are comparable only where it is the same.`);
  return notes;
}

export const method = ({ timing, straight }: SprintsSettings): string =>
  say`Longest run of each athlete's latest day, of several the fastest; ${timing === "gates" ? say`times as read` : say`0.24 s added to stopwatch times`}; gaps to the squad's median section times; curve by least squares of distance on time, in still air of 20 °C; fastest 505 of a side less the ${straight === "first 10 m" ? say`first 10 m` : say`stretch from 10 to 20 m`} of the same day.`;
