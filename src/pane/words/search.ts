import type { Screen } from "../screen";

/** What the pane says of its search, and the words by which a coach may know a thing. */
export const searchWords = {
  label: "Find what you can do",
  results: "What was found",
  isFunction: "Function for your own formulas",
  found: (count: number) => (count === 0 ? "Nothing found." : count === 1 ? "1 found." : `${count} found.`),

  /** Other words for each question, by its name, and for each of the other screens. */
  alsoFoundBy: {
    retest: "outlier typing error mistake check data quality implausible swapped",
    reliability: "typical error noise CV ICC repeatability smallest worthwhile change SWC MDC",
    change: "progress improvement before after pre post better worse",
    asymmetry: "imbalance symmetry side leg limb dominant weaker difference",
    standing: "percentile z-score compare norm profile average",
    ranking: "order best table total score",
    strength: "1RM one repetition maximum max percent plates lift squat bench",
    loadVelocity: "velocity-based bar speed force m/s",
    jumps: "CMJ countermovement drop jump height RSI reactive power",
    sprints: "speed acceleration split force-velocity gate 30 m",
    endurance: "MAS aerobic yo-yo intermittent run VO2 interval",
    capacity: "repetitions hold muscle endurance calf hamstring",
    setUp: "athletes players names team roster battery roles weights",
    testDay: "entry form protocol paper print",
    keep: "import save store collect results",
    priorities: "weakness need focus what to train",
    plan: "programme periodisation exercises sets loads block training",
    deliver: "print session log diary attendance RPE wellness",
    load: "workload RPE acute chronic week monitoring throws",
    outcome: "review evaluate effect retest",
    pages: "report print handout PDF parents",
    removeAthlete: "delete forget privacy data protection leave",
    functions: "formula TAPELINE custom function cell",
  } satisfies Record<Exclude<Screen["kind"], "home" | "question">, string> & Record<string, string>,
} as const;
