import { type AsymmetryFormula, asymmetry as asymmetryBy, asymmetryFormulas } from "../engine/asymmetry/asymmetry";
import { reduceTrials } from "../engine/trials/reduceTrials";
import type { Direction, Reduction } from "../engine/trials/reduction";
import { say } from "../language/say";
import { answer, directionOf, measured, reductionOf, trialsOf, type Words, wordOf } from "./border";
import { cellByCell } from "./spill";

/**
 * Left-right difference in percent of the larger side; plus where the right is larger, minus where the left is.
 * Empty cells, zeros and marks such as DNS count as missing trials.
 * @customfunction ASYMMETRY
 * @param left Cells with the left trials, e.g. C4:E4.
 * @param right Cells with the right trials, e.g. F4:H4.
 * @param [reduction] How to score each side: best (when left out), mean, median or meanOfBestTwo.
 * @param [better] Which results are better: higher (when left out) or lower.
 * @returns The difference in percent, e.g. 8.4.
 * @example =TAPELINE.ASYMMETRY({171,174,168},{147,150,144})
 * @source Bishop et al. 2018, Strength Cond J 40(4):1-6 (from memory).
 */
export function asymmetry(left: any[][], right: any[][], reduction?: string, better?: string): number {
  const sides = scores(left, right, reductionOf(reduction), directionOf(better));
  return answer(asymmetryBy(sides.left, sides.right, "percentDifference"));
}

/**
 * The side with the better score: Left, Right or Even.
 * Empty cells, zeros and marks such as DNS count as missing trials.
 * @customfunction STRONGERSIDE
 * @param left Cells with the left trials, e.g. C4:E4.
 * @param right Cells with the right trials, e.g. F4:H4.
 * @param [reduction] How to score each side: best (when left out), mean, median or meanOfBestTwo.
 * @param [better] Which results are better: higher (when left out) or lower.
 * @returns Left, Right or Even.
 * @example =TAPELINE.STRONGERSIDE({171,174,168},{147,150,144},"mean")
 * @source The larger or smaller of two scores.
 */
export function strongerSide(left: any[][], right: any[][], reduction?: string, better?: string): string {
  const direction = directionOf(better);
  const sides = scores(left, right, reductionOf(reduction), direction);
  if (sides.left === sides.right) return say`Even`;
  return sides.right > sides.left === (direction === "higher") ? say`Right` : say`Left`;
}

const formulas = Object.keys(asymmetryFormulas) as unknown as Words<AsymmetryFormula>;

/**
 * Left-right difference of two scores by the formula you name, one for each cell; plus where the right is larger. Formulas give
 * different numbers for the same legs (180 and 200 cm: 10.0 to 11.1), so a threshold holds for its own formula only. Empty cells
 * and zeros are missing.
 * @customfunction SIDEDIFFERENCE
 * @param left Scores of the left side, e.g. C4:C29.
 * @param right Scores of the right side in the same unit, e.g. D4:D29.
 * @param [formula] percentDifference (of the larger side, when left out), bilateralLegAsymmetry, symmetryIndex, percentOfTotal, symmetryAngle, limbSymmetryIndex (100 when equal) or logRatio.
 * @returns Difference in percent, e.g. 8.4.
 * @example =TAPELINE.SIDEDIFFERENCE({180;174},{200;176})
 * @source Each formula's own, e.g. Bishop et al. 2018, Strength Cond J 40(4):1-6; symmetryAngle Zifchock et al. 2008, Gait Posture 27:622-627 (from memory).
 */
export function sideDifference(left: any[][], right: any[][], formula?: string): any[][] {
  const name = wordOf(formula, formulas, say`formula of asymmetry`);
  return cellByCell({ "left score": measured(left), "right score": measured(right) }, (athlete) =>
    asymmetryBy(athlete["left score"], athlete["right score"], name),
  );
}

function scores(left: any[][], right: any[][], reduction: Reduction, direction: Direction) {
  const score = (trials: any[][]) => answer(reduceTrials(trialsOf(trials), { reduction, direction })).score;
  return { left: score(left), right: score(right) };
}
