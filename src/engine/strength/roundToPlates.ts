import { say } from "../../language/say";
import { positiveRefusals, rangeRefusals } from "../quantities";
import { ok, type Refusal, type Result, refuse } from "../result";
import { belowLightest, type LoadRounding, pickLoad } from "./rounding";

/** A plate size and how many pairs of it are at hand; `null` is as many as needed. */
export type Plates = { readonly weight: number; readonly pairs: number | null };

export type LoadedBar = {
  /** Bar and plates together, in the unit of the bar. */
  readonly load: number;
  readonly percentOfTarget: number;
  /** Plates for one side, heaviest first: the fewest that make the load. */
  readonly perSide: readonly number[];
};

const lightestTarget = 0.1;
const heaviestTarget = 1000;
const mostPlatesOfOneSize = 1000;
const smallestPlate = 0.1;

/**
 * The load on a bar nearest to a target, or nearest from below (the default, for safety), that the plates at hand can make:
 * bar + 2 x (plates of one side), each size used at most as often as there are pairs. Of two equally near the lighter.
 * All weights in one unit, to a thousandth. Refuses a target below the bar or outside 0.1 to 1000, plates lighter than 0.1
 * and pair counts that are not whole numbers from 0 to 1000.
 *
 * Method: bounded subset sum, one plate size after the other. Rounding down: common practice, no source.
 */
export function roundToPlates(
  target: number,
  {
    bar,
    plates,
    rule = "down",
  }: { readonly bar: number; readonly plates: readonly Plates[]; readonly rule?: LoadRounding },
): Result<LoadedBar> {
  const refusals: Refusal[] = [
    ...rangeRefusals(say`target load`, lightestTarget, heaviestTarget, target),
    ...positiveRefusals({ bar }),
    ...plates.flatMap(plateRefusals),
  ];
  if (refusals.length > 0) return refuse(...refusals);

  // Whole thousandths throughout; the target to a millionth, so that 84.9999999999 from a percentage is 85.
  const aim = Math.round(target * 1e6) / 1e3;
  const empty = thousandths(bar);
  const sides = reachableSides(plates, aim - empty);
  const load = pickLoad(
    [...sides.keys()].map((sum) => empty + 2 * sum),
    aim,
    rule,
  );
  if (load === null) return refuse(belowLightest(say`the bar`, bar, target));
  return ok({
    load: load / 1000,
    percentOfTarget: (100 * (load / 1000)) / target,
    perSide: platesOf(sides.get((load - empty) / 2)!).map((weight) => weight / 1000),
  });
}

/** One side of the bar: the plate put on last, what was on before, and how many plates there are. */
type Side = { readonly count: number; readonly outermost: number; readonly before: Side | null };

const emptySide: Side = { count: 0, outermost: 0, before: null };

/**
 * Every sum of plates one side can carry, with the fewest plates that make it; thousandths. Sums end one plate beyond
 * half of `toShare`: the load nearest to a target from above needs no more.
 */
function reachableSides(plates: readonly Plates[], toShare: number): Map<number, Side> {
  const heaviest = Math.max(0, ...plates.map(({ weight }) => thousandths(weight)));
  const most = toShare / 2 + heaviest;
  let reachable = new Map<number, Side>([[0, emptySide]]);
  for (const { weight, pairs } of [...plates].sort((a, b) => b.weight - a.weight)) {
    const plate = thousandths(weight);
    const extended = new Map(reachable);
    for (const [sum, side] of reachable) {
      const fitting = Math.min(pairs ?? Number.POSITIVE_INFINITY, Math.floor((most - sum) / plate));
      let loaded = side;
      for (let added = 1; added <= fitting; added++) {
        loaded = { count: loaded.count + 1, outermost: plate, before: loaded };
        const known = extended.get(sum + added * plate);
        if (!known || loaded.count < known.count) extended.set(sum + added * plate, loaded);
      }
    }
    reachable = extended;
  }
  return reachable;
}

/** The plates of one side, heaviest (put on first) to lightest. */
function platesOf(side: Side): number[] {
  return side.before === null ? [] : [...platesOf(side.before), side.outermost];
}

const plateRefusals = ({ weight, pairs }: Plates): Refusal[] => [
  ...rangeRefusals(say`plate weight`, smallestPlate, heaviestTarget, weight),
  ...(pairs === null ? [] : rangeRefusals(say`pairs of a plate`, 0, mostPlatesOfOneSize, pairs)),
  ...(pairs === null || Number.isInteger(pairs) ? [] : [notWhole(say`pairs of a plate`, pairs)]),
];

const thousandths = (weight: number): number => Math.round(weight * 1000);

const notWhole = (what: string, value: number): Refusal => ({
  code: "notWhole",
  message: say`The ${what} must be a whole number; ${value} is not.`,
  facts: { what, value },
});
