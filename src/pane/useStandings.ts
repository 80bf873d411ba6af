import { useMemo } from "react";
import { type KeptSeries, keptSeries } from "../programme/keptSeries";
import { type QualityProfile, qualityProfiles } from "../programme/qualityProfile";
import { type WeakerSide, weakerSides } from "../programme/weakerSides";
import type { TestResult } from "../reading/testResult";
import type { ProgrammeFacts } from "./useProgramme";
import { useWorkbook } from "./workbook";

/** Kept results with those that follow from them, and those that nobody can have. */
export function useSeries({ kept }: ProgrammeFacts): KeptSeries {
  const { background } = useWorkbook();
  return useMemo(() => keptSeries(kept, background), [kept, background]);
}

/** Kept results with those that follow from them. */
export const useResults = (facts: ProgrammeFacts): readonly TestResult[] => useSeries(facts).results;

/** How every athlete stands in each quality. */
export function useProfiles(results: readonly TestResult[]): readonly QualityProfile[] {
  const { background } = useWorkbook();
  return useMemo(() => qualityProfiles(results, background), [results, background]);
}

/** The sides that are weaker beyond noise. */
export function useWeakerSides(results: readonly TestResult[]): readonly WeakerSide[] {
  const { background } = useWorkbook();
  return useMemo(() => weakerSides(results, background), [results, background]);
}
