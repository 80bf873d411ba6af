import type { About } from "../analysis";

export const about = {
  id: "ranking",
  title: "Squad ranking",
  sheet: "Ranking",
  question: "Who stands where over all tests, by quality and by role?",
  part: "understand",
} as const satisfies About;
