import { say } from "../../language/say";
import type { Screen } from "../screen";

/** What the pane says of its search, and the words by which a coach may know a thing. */
export const searchWords = {
  label: say`Find what you can do`,
  results: say`What was found`,
  isFunction: say`Function for your own formulas`,
  found: (count: number) => (count === 0 ? say`Nothing found.` : count === 1 ? say`1 found.` : say`${count} found.`),

  /** Other words for each question, by its name, and for each of the other screens. */
  alsoFoundBy: {
    retest: say`outlier typing error mistake check data quality implausible swapped`,
    reliability: say`typical error noise CV ICC repeatability smallest worthwhile change SWC MDC`,
    change: say`progress improvement before after pre post better worse`,
    asymmetry: say`imbalance symmetry side leg limb dominant weaker difference`,
    standing: say`percentile z-score compare norm profile average`,
    ranking: say`order best table total score`,
    strength: say`1RM one repetition maximum max percent plates lift squat bench`,
    loadVelocity: say`velocity-based bar speed force m/s`,
    jumps: say`CMJ countermovement drop jump height RSI reactive power`,
    sprints: say`speed acceleration split force-velocity gate 30 m`,
    endurance: say`MAS aerobic yo-yo intermittent run VO2 interval`,
    capacity: say`repetitions hold muscle endurance calf hamstring`,
    setUp: say`athletes players names team roster battery roles weights`,
    testDay: say`entry form protocol paper print`,
    keep: say`import save store collect results`,
    priorities: say`weakness need focus what to train`,
    plan: say`programme periodisation exercises sets loads block training`,
    deliver: say`print session log diary attendance RPE wellness`,
    load: say`workload RPE acute chronic week monitoring throws`,
    outcome: say`review evaluate effect retest`,
    pages: say`report print handout PDF parents`,
    removeAthlete: say`delete forget privacy data protection leave`,
    functions: say`formula TAPELINE custom function cell`,
  } satisfies Record<Exclude<Screen["kind"], "home" | "question">, string> & Record<string, string>,
} as const;
