import { useMemo } from "react";
import { blocksOf, lastBegun } from "../programme/blocks";
import { type Review, type ReviewedBlock, review } from "../programme/review";
import { dayNumber, isoDay } from "../reading/days";
import type { TestResult } from "../reading/testResult";
import type { PlanRow } from "../store/planTable";
import type { ProgrammeFacts } from "./useProgramme";
import { useWorkbook } from "./workbook";

/** A block to review, and what was planned in it; null where no plan is kept of it. */
export type BlockToReview = ReviewedBlock & { readonly rows: readonly PlanRow[] | null };

/**
 * The last block that had begun when the latest results came; without a plan, from the first test day to the last.
 * Null where there is nothing to hold against each other yet.
 */
export function blockToReview({ programme, kept }: ProgrammeFacts): BlockToReview | null {
  const days = [...new Set(kept.map(({ date }) => date))].sort();
  if (days.length < 2) return null;
  if (programme.plan.length > 0) return lastBegun(blocksOf(programme.plan), days.at(-1)!);
  return { begins: isoDay(dayNumber(days[0]!) + 1), ends: days.at(-1)!, rows: null };
}

/** Retests against baselines; null where there is nothing to hold against each other yet. */
export function useReview(facts: ProgrammeFacts, results: readonly TestResult[]): Review | null {
  const { background } = useWorkbook();
  return useMemo(() => {
    const block = blockToReview(facts);
    return block && review(results, facts.programme.diary, background, block);
  }, [facts, results, background]);
}
