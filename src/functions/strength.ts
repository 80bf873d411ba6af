import { allometricStrength as allometricStrengthOf } from "../engine/strength/allometricStrength";
import { type StrengthEquationName, strengthEquations } from "../engine/strength/equations";
import { estimatedMaximum } from "../engine/strength/estimatedMaximum";
import { loadForRepetitions } from "../engine/strength/loadForRepetitions";
import { percentOfMaximum } from "../engine/strength/percentOfMaximum";
import { relativeStrength as relativeStrengthOf } from "../engine/strength/relativeStrength";
import type { LoadRounding } from "../engine/strength/rounding";
import { roundToDumbbells } from "../engine/strength/roundToDumbbells";
import { roundToPlates } from "../engine/strength/roundToPlates";
import { say } from "../language/say";
import { answer, counted, measured, numberOf, orElse, paired, trialsOf, values, type Words, wordOf } from "./border";
import { cellByCell, part } from "./spill";

const equationNames = strengthEquations.map(({ name }) => name) as unknown as Words<StrengthEquationName>;
const equationOf = (name: unknown): StrengthEquationName => wordOf(name, equationNames, say`strength equation`);

const roundings: Words<LoadRounding> = ["down", "nearest"];
const roundingOf = (name: unknown): LoadRounding => wordOf(name, roundings, say`way to round`);

/**
 * Estimated one-repetition maximum from loads and the repetitions done with them, one for each cell; a single is the maximum
 * itself. Equations differ by up to 8 % at 10 repetitions; more than 15 are refused. Never compare an estimate with a tested
 * maximum as a change. Empty cells and zeros are missing sets.
 * @customfunction ONEREPMAX
 * @param loads Everything lifted, bar included, in kg or lb, e.g. C4:C29.
 * @param repetitions Complete repetitions done, 1 to 15, e.g. D4:D29.
 * @param [equation] epley (when left out), brzycki, brzyckiDecimal, lander, lombardi, mayhew, oConner or wathan.
 * @param [reserve] Repetitions left in reserve, e.g. E4:E29; 0 when left out or empty.
 * @returns Estimated maximum in the unit of the loads, e.g. 93.3.
 * @example =TAPELINE.ONEREPMAX({80;72.5},{5;3})
 * @source Each equation's own, e.g. Epley 1985, Brzycki 1993, JOPERD 64:88-90 (as quoted by secondary pages).
 */
export function oneRepMax(loads: any[][], repetitions: any[][], equation?: string, reserve?: any[][]): any[][] {
  const name = equationOf(equation);
  return cellByCell(
    { load: measured(loads), repetitions: measured(repetitions), reserve: orElse(reserve, counted, 0) },
    (set) =>
      part(
        estimatedMaximum(set.load, set.repetitions, { equation: name, repetitionsInReserve: set.reserve }),
        ({ maximum }) => maximum,
      ),
  );
}

/**
 * Load with which a number of repetitions is possible, one for each cell: a starting load, to be corrected in the first
 * set. A column of maxima with a row of repetitions gives a whole table. Empty cells and zeros are missing.
 * @customfunction LOADFORREPS
 * @param maximums One-repetition maxima in kg or lb, e.g. C4:C29.
 * @param repetitions Repetitions planned, 1 to 15, e.g. 5 or D3:H3.
 * @param [equation] epley (when left out), brzycki, brzyckiDecimal, lander, lombardi, mayhew, oConner or wathan.
 * @param [reserve] Repetitions to leave in reserve, e.g. 2; 0 when left out or empty.
 * @returns Load in the unit of the maxima, e.g. 85.7.
 * @example =TAPELINE.LOADFORREPS(100,{3,5,8})
 * @source Each equation's own, solved for the load; Nuzzo et al. 2024, Sports Med 54:303-321 (abstract read) on how much lifters differ.
 */
export function loadForReps(maximums: any[][], repetitions: any[][], equation?: string, reserve?: any[][]): any[][] {
  const name = equationOf(equation);
  return cellByCell(
    { maximum: measured(maximums), repetitions: measured(repetitions), reserve: orElse(reserve, counted, 0) },
    (set) =>
      part(
        loadForRepetitions(set.maximum, set.repetitions, { equation: name, repetitionsInReserve: set.reserve }),
        ({ load }) => load,
      ),
  );
}

/**
 * Percentage of the maximum at which a number of repetitions is usually possible, by a printed table of training loads; lifters
 * differ much, and copies of the table disagree from 11 repetitions on. Empty cells and zeros are missing.
 * @customfunction PERCENTFORREPS
 * @param repetitions Repetitions planned, 1 to 15, e.g. C4:C9.
 * @returns Percent of the maximum, e.g. 87.
 * @example =TAPELINE.PERCENTFORREPS({3;5;8})
 * @source Training-load chart of the NSCA (as quoted by secondary pages).
 */
export function percentForReps(repetitions: any[][]): any[][] {
  return cellByCell({ repetitions: measured(repetitions) }, (set) =>
    part(percentOfMaximum(set.repetitions), ({ percent }) => percent),
  );
}

/**
 * The load a bar and your plates can make, nearest to each target from below, or nearest at all. Empty cells and zeros are
 * missing targets.
 * @customfunction BARLOAD
 * @param targets Loads wished for, in kg or lb, e.g. D4:D29.
 * @param bar Weight of the bar in the same unit, e.g. 20.
 * @param plates Weights of the plates you own, e.g. K2:K8.
 * @param [rule] down (never above the target, when left out) or nearest.
 * @param [pairs] How many pairs of each plate, e.g. L2:L8; as many as needed when left out or where a dash stands.
 * @returns Bar and plates together, in the unit of the bar, e.g. 82.5.
 * @example =TAPELINE.BARLOAD({63;81.2},20,{25;20;15;10;5;2.5;1.25})
 * @source Bounded subset sum; rounding down is common practice, no source.
 */
export function barLoad(targets: any[][], bar: any, plates: any[][], rule?: string, pairs?: any[][]): any[][] {
  const rack = rackOf(bar, plates, rule, pairs);
  return cellByCell({ "target load": measured(targets) }, (wish) =>
    part(roundToPlates(wish["target load"], rack), ({ load }) => load),
  );
}

/**
 * Plates for one side of the bar, heaviest first, in a row: the fewest that come nearest to the target.
 * @customfunction BARPLATES
 * @param target Load wished for, in kg or lb, e.g. D4.
 * @param bar Weight of the bar in the same unit, e.g. 20.
 * @param plates Weights of the plates you own, e.g. K2:K8.
 * @param [rule] down (never above the target, when left out) or nearest.
 * @param [pairs] How many pairs of each plate, e.g. L2:L8; as many as needed when left out or where a dash stands.
 * @returns Plate weights side by side, e.g. 25, 5, 1.25; an empty cell for the bare bar.
 * @example =TAPELINE.BARPLATES(81.2,20,{25;20;15;10;5;2.5;1.25})
 * @source Bounded subset sum; rounding down is common practice, no source.
 */
export function barPlates(target: any, bar: any, plates: any[][], rule?: string, pairs?: any[][]): any[][] {
  const wish = numberOf(target, say`target load`);
  const { perSide } = answer(roundToPlates(wish, rackOf(bar, plates, rule, pairs)));
  return [perSide.length > 0 ? [...perSide] : [""]];
}

function rackOf(bar: unknown, plates: any[][], rule: unknown, pairs: any[][] | undefined) {
  const weights = values(measured(plates)).flat();
  const counts = pairs ? values(counted(pairs)).flat() : weights.map(() => null);
  return {
    bar: numberOf(bar, say`weight of the bar`),
    plates: paired(["plates", weights], ["pairs", counts]).flatMap(([weight, pairsOwned]) =>
      weight === null ? [] : [{ weight, pairs: pairsOwned }],
    ),
    rule: roundingOf(rule),
  };
}

/**
 * The dumbbell nearest to each target from below, or nearest at all, out of those you own. Empty cells and zeros are missing.
 * @customfunction DUMBBELL
 * @param targets Loads wished for, in kg or lb, e.g. D4:D29.
 * @param weights Weights of the dumbbells you own in the same unit, e.g. K2:K20.
 * @param [rule] down (never above the target, when left out) or nearest.
 * @returns Weight of the dumbbell, in the unit of the targets, e.g. 22.5.
 * @example =TAPELINE.DUMBBELL({17.3;23.9},{10;12.5;15;17.5;20;22.5;25})
 * @source Rounding down is common practice, no source.
 */
export function dumbbell(targets: any[][], weights: any[][], rule?: string): any[][] {
  const owned = trialsOf(weights).filter((weight) => weight !== null);
  const rounding = roundingOf(rule);
  return cellByCell({ "target load": measured(targets) }, (wish) =>
    part(roundToDumbbells(wish["target load"], { weights: owned, rule: rounding }), ({ load }) => load),
  );
}

/**
 * Strength per body mass: strength divided by mass, one for each cell. It favours light athletes; see ALLOMETRICSTRENGTH.
 * Empty cells and zeros are missing.
 * @customfunction RELATIVESTRENGTH
 * @param strengths Maxima in kg, or forces in N, e.g. C4:C29.
 * @param masses Body masses of the same week in kg, e.g. D4:D29.
 * @returns Strength per kg of body mass, e.g. 1.5.
 * @example =TAPELINE.RELATIVESTRENGTH({95;102},{66;71})
 * @source A ratio.
 */
export function relativeStrength(strengths: any[][], masses: any[][]): any[][] {
  return cellByCell({ strength: measured(strengths), "body mass": measured(masses) }, (athlete) =>
    relativeStrengthOf(athlete.strength, athlete["body mass"]),
  );
}

/**
 * Strength scaled for body size: strength divided by mass to the power of 0.67 (Jaric 2002; 2/3 is printed too). Results with
 * different exponents cannot be compared; not for children through growth. Empty cells and zeros are missing.
 * @customfunction ALLOMETRICSTRENGTH
 * @param strengths Maxima in kg, or forces in N, e.g. C4:C29.
 * @param masses Body masses of the same week in kg, e.g. D4:D29.
 * @param [exponent] From 0 to 1, e.g. 0.67 (when left out).
 * @returns Scaled strength in kg per kg to that power, e.g. 6.5.
 * @example =TAPELINE.ALLOMETRICSTRENGTH({95;102},{66;71})
 * @source Jaric 2002, Sports Med 32:615-631 (from memory).
 */
export function allometricStrength(strengths: any[][], masses: any[][], exponent?: any): any[][] {
  const power = numberOf(exponent, "exponent", 0.67);
  return cellByCell({ strength: measured(strengths), "body mass": measured(masses) }, (athlete) =>
    allometricStrengthOf(athlete.strength, athlete["body mass"], { exponent: power }),
  );
}
