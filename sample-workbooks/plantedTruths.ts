/**
 * What the script put into the season on purpose: the answers that a sound analysis has to find (and the ones it must
 * not find). Trials are distances of the single-leg hop in centimetres, in the order they were hopped.
 */
export type HopTrials = { readonly left: readonly number[]; readonly right: readonly number[] };

export type PlantedAsymmetry = HopTrials & {
  readonly athlete: string;
  /** The side that is truly stronger; "neither" where the difference is only noise. */
  readonly strongerSide: "left" | "right" | "neither";
  readonly truth: string;
};

export const plantedAsymmetries: readonly PlantedAsymmetry[] = [
  {
    athlete: "Torvei Bjørnemose",
    left: [171, 174, 168],
    right: [147, 150, 144],
    strongerSide: "left",
    truth: "Large and real: every left trial is far beyond every right one, and her trials repeat well.",
  },
  {
    athlete: "Marvi Skumring",
    left: [139, 143, 141],
    right: [163, 160, 165],
    strongerSide: "right",
    truth: "Large and real, the other way round.",
  },
  {
    athlete: "Gudvi Solgangsbris",
    left: [168, 137, 141],
    right: [150, 136, 149],
    strongerSide: "neither",
    truth:
      "Best against best differs by more than 10 %, but one lucky left trial made it: her trials scatter as widely.",
  },
  {
    athlete: "Sivje Fjærestein",
    left: [156, 155, 157],
    right: [167, 166, 168],
    strongerSide: "right",
    truth: "Small and real: below 10 %, yet far beyond the scatter of her very even trials.",
  },
];

/** Everyone else's true difference between the sides is at most this many percent. */
export const largestUnplantedDifference = 3;

/** One trial of an ordinary athlete varies about her own true distance with this coefficient of variation, in percent. */
export const trialVariation = 3;
