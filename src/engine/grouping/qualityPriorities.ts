import { say } from "../../language/say";
import { negativeRefusals, rangeRefusals } from "../quantities";
import { ok, type Refusal, type Result, refuse } from "../result";

/** One physical quality of an athlete; `z` is the mean z score of its tests, positive is better, `null` when untested. */
export type Quality = {
  readonly name: string;
  readonly z: number | null;
  /** The z score the role asks for. */
  readonly target: number;
  /** How much the role needs the quality, zero or more. */
  readonly weight: number;
  /** How well it can be trained now, 0 to 1; 1 when not given. */
  readonly trainability?: number;
};

export type QualityPriority = {
  readonly name: string;
  readonly priority: number;
  /** The parts the priority is made of. */
  readonly weight: number;
  readonly shortfall: number;
  readonly trainability: number;
};

export type QualityPriorities = {
  /** Qualities with a priority above zero, the highest first, at most `top`; equal ones in the order given. */
  readonly priorities: readonly QualityPriority[];
  readonly untested: readonly string[];
};

/**
 * What to train first: priority = weight x max(0, target - z) x trainability, with its parts. An aid to a conversation, not a
 * diagnosis. Refuses a z score or target outside -10 to 10, negative weights and a trainability outside 0 to 1.
 *
 * Source: common practice, no source.
 */
export function qualityPriorities(
  qualities: readonly Quality[],
  { top = 3 }: { readonly top?: number } = {},
): Result<QualityPriorities> {
  const refusals = qualities.flatMap(qualityRefusals);
  if (refusals.length > 0) return refuse(...refusals);

  const priorities: QualityPriority[] = [];
  for (const { name, z, target, weight, trainability = 1 } of qualities) {
    if (z === null) continue;
    const shortfall = Math.max(0, target - z);
    const priority = weight * shortfall * trainability;
    if (priority > 0) priorities.push({ name, priority, weight, shortfall, trainability });
  }
  priorities.sort((a, b) => b.priority - a.priority);
  return ok({
    priorities: priorities.slice(0, top),
    untested: qualities.filter(({ z }) => z === null).map(({ name }) => name),
  });
}

const qualityRefusals = ({ name, z, target, weight, trainability = 1 }: Quality): Refusal[] => [
  ...(z === null ? [] : rangeRefusals(say`z score of ${name}`, -10, 10, z)),
  ...rangeRefusals(say`target of ${name}`, -10, 10, target),
  ...negativeRefusals({ [say`weight of ${name}`]: weight }),
  ...rangeRefusals(say`trainability of ${name}`, 0, 1, trainability),
];
