import type { About, AnyAnalysis } from "./analysis";
import { about as asymmetry } from "./asymmetry/about";
import { about as capacity } from "./capacity/about";
import { about as change } from "./change/about";
import { about as endurance } from "./endurance/about";
import { about as jumps } from "./jumps/about";
import { about as loadVelocity } from "./loadVelocity/about";
import { about as ranking } from "./ranking/about";
import { about as reliability } from "./reliability/about";
import { about as retest } from "./retest/about";
import { about as sprints } from "./sprints/about";
import { about as standing } from "./standing/about";
import { about as strength } from "./strength/about";

export type Question = About & { readonly load: () => Promise<AnyAnalysis> };

/** Every question a coach can ask, in the order in which the pane offers them; each analysis is fetched when asked. */
export const questions: readonly Question[] = [
  { ...retest, load: async () => (await import("./retest/retest")).retest },
  { ...reliability, load: async () => (await import("./reliability/reliability")).reliability },
  { ...change, load: async () => (await import("./change/change")).change },
  { ...asymmetry, load: async () => (await import("./asymmetry/asymmetry")).asymmetry },
  { ...standing, load: async () => (await import("./standing/standing")).standing },
  { ...ranking, load: async () => (await import("./ranking/ranking")).ranking },
  { ...strength, load: async () => (await import("./strength/strength")).strength },
  { ...loadVelocity, load: async () => (await import("./loadVelocity/loadVelocity")).loadVelocity },
  { ...jumps, load: async () => (await import("./jumps/jumps")).jumps },
  { ...sprints, load: async () => (await import("./sprints/sprints")).sprints },
  { ...endurance, load: async () => (await import("./endurance/endurance")).endurance },
  { ...capacity, load: async () => (await import("./capacity/capacity")).capacity },
];
