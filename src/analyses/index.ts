import type { AnyAnalysis } from "./analysis";
import { asymmetry } from "./asymmetry/asymmetry";
import { jumps } from "./jumps/jumps";
import { reliability } from "./reliability/reliability";
import { standing } from "./standing/standing";
import { strength } from "./strength/strength";

/** Every analysis, in the order in which the pane offers them. */
export const analyses: readonly AnyAnalysis[] = [reliability, standing, asymmetry, strength, jumps];
