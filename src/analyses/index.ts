import type { AnyAnalysis } from "./analysis";
import { asymmetry } from "./asymmetry/asymmetry";
import { endurance } from "./endurance/endurance";
import { jumps } from "./jumps/jumps";
import { ranking } from "./ranking/ranking";
import { reliability } from "./reliability/reliability";
import { sprints } from "./sprints/sprints";
import { standing } from "./standing/standing";
import { strength } from "./strength/strength";

/** Every analysis, in the order in which the pane offers them. */
export const analyses: readonly AnyAnalysis[] = [
  reliability,
  standing,
  ranking,
  asymmetry,
  strength,
  jumps,
  sprints,
  endurance,
];
