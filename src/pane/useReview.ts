import { useMemo } from "react";
import { type Review, type ReviewedBlock, review } from "../programme/review";
import { dayNumber, isoDay } from "../reading/days";
import type { TestResult } from "../reading/testResult";
import type { ProgrammeFacts } from "./useProgramme";
import { useWorkbook } from "./workbook";

/** The block to review: as planned; without a plan, from the first test day to the last. Null where all is of one day. */
function reviewedBlock({ programme, kept }: ProgrammeFacts): ReviewedBlock | null {
  const begins = programme.plan.map((row) => row.begins).sort();
  if (begins.length > 0) return { begins: begins[0]!, ends: isoDay(dayNumber(begins.at(-1)!) + 6) };
  const days = [...new Set(kept.map(({ date }) => date))].sort();
  if (days.length < 2) return null;
  return { begins: isoDay(dayNumber(days[0]!) + 1), ends: days.at(-1)! };
}

/** Retests against baselines; null where there is nothing to hold against each other yet. */
export function useReview(facts: ProgrammeFacts, results: readonly TestResult[]): Review | null {
  const { background } = useWorkbook();
  return useMemo(() => {
    const block = reviewedBlock(facts);
    return block && review(results, facts.programme.diary, background, block);
  }, [facts, results, background]);
}
