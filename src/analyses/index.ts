import type { AnyAnalysis } from "./analysis";
import { asymmetry } from "./asymmetry/asymmetry";
import { capacity } from "./capacity/capacity";
import { change } from "./change/change";
import { endurance } from "./endurance/endurance";
import { jumps } from "./jumps/jumps";
import { loadVelocity } from "./loadVelocity/loadVelocity";
import { ranking } from "./ranking/ranking";
import { reliability } from "./reliability/reliability";
import { retest } from "./retest/retest";
import { sprints } from "./sprints/sprints";
import { standing } from "./standing/standing";
import { strength } from "./strength/strength";

/** Every analysis, in the order in which the pane offers them. */
export const analyses: readonly AnyAnalysis[] = [
  retest,
  reliability,
  change,
  asymmetry,
  standing,
  ranking,
  strength,
  loadVelocity,
  jumps,
  sprints,
  endurance,
  capacity,
];
