import { say } from "../../language/say";
import { presentValues } from "../presentValues";
import { missing, notPositive } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { bilateralLegAsymmetry } from "./bilateralLegAsymmetry";
import { limbSymmetryIndex } from "./limbSymmetryIndex";
import { logRatio } from "./logRatio";
import { percentDifference } from "./percentDifference";
import { percentOfTotal } from "./percentOfTotal";
import { symmetryAngle } from "./symmetryAngle";
import { symmetryIndex } from "./symmetryIndex";

/**
 * The formulas in use. They give different numbers for the same legs (180 and 200 cm: 10.0, 11.1, 10.5, 5.3, 3.3, 111.1,
 * 10.5), so a published threshold holds only for its own formula.
 */
export const asymmetryFormulas = {
  percentDifference: {
    get label() {
      return say`Percentage difference (of the larger side)`;
    },
    source: "Bishop et al. 2018, Strength Cond J 40(4):1-6",
    equalSides: 0,
    compute: percentDifference,
  },
  bilateralLegAsymmetry: {
    get label() {
      return say`Bilateral leg asymmetry (of the smaller side)`;
    },
    source: "Bishop et al. 2016, Strength Cond J 38(6):27-32",
    equalSides: 0,
    compute: bilateralLegAsymmetry,
  },
  symmetryIndex: {
    get label() {
      return say`Symmetry index (of the mean of the sides)`;
    },
    source: "Robinson et al. 1987, J Manipulative Physiol Ther 10:172-176",
    equalSides: 0,
    compute: symmetryIndex,
  },
  percentOfTotal: {
    get label() {
      return say`Difference of the total of both sides`;
    },
    source: "Bishop et al. 2018, Strength Cond J 40(4):1-6",
    equalSides: 0,
    compute: percentOfTotal,
  },
  symmetryAngle: {
    get label() {
      return say`Symmetry angle`;
    },
    source: "Zifchock et al. 2008, Gait Posture 27:622-627",
    equalSides: 0,
    compute: symmetryAngle,
  },
  limbSymmetryIndex: {
    get label() {
      return say`Limb symmetry index (right of left)`;
    },
    source: "Wellsandt et al. 2017, J Orthop Sports Phys Ther 47:334-338",
    equalSides: 100,
    compute: limbSymmetryIndex,
  },
  logRatio: {
    get label() {
      return say`Logarithm of the ratio, times 100`;
    },
    source: "Cole 2000, Stat Med 19:3109-3125",
    equalSides: 0,
    compute: logRatio,
  },
} as const satisfies Record<string, AsymmetryFormulaDescription>;

type AsymmetryFormulaDescription = {
  readonly label: string;
  readonly source: string;
  /** What the formula gives when the sides are equal. */
  readonly equalSides: number;
  readonly compute: (left: number, right: number) => number;
};

export type AsymmetryFormula = keyof typeof asymmetryFormulas;

/**
 * Asymmetry of two sides in percent by the named formula; positive (limb symmetry index: above 100) when the right side
 * has the larger value, whichever direction is better.
 *
 * Refuses a missing side and values that are not above zero: a ratio of differences, angles from neutral or z scores
 * has no meaning.
 */
export function asymmetry(left: number | null, right: number | null, formula: AsymmetryFormula): Result<number> {
  const reasons = [...sideRefusals(say`the left value`, left), ...sideRefusals(say`the right value`, right)];
  if (left === null || right === null || reasons.length > 0) return refuse(...reasons);
  return ok(asymmetryFormulas[formula].compute(left, right));
}

function sideRefusals(what: string, value: number | null) {
  const [present] = presentValues([value]);
  if (present === undefined) return [missing(what)];
  return present > 0 ? [] : [notPositive(what, present)];
}
