import type { Caution } from "../caution";

/** Maximal oxygen uptake in ml/kg/min as a field test estimates it. */
export type OxygenUptake = { readonly oxygenUptake: number; readonly cautions: readonly Caution[] };
